import { requireFinite, requireFraction, requireNonNegative } from '../../checks/index.js';
import { type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';
import type { LimitStatement } from './limit-statement.js';

/**
 * An input between two limits, equally likely in the middle and less towards the limits: u = a·√((1 + β²)/6).
 *
 * @param statement Value, half-width a of the base, and β: width of the top over width of the base
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `not-a-number`, `negative`, `not-a-fraction`
 * @source JCGM 101:2008, 6.4.4
 * @example
 * ```ts
 * import { trapezoidalInput } from 'esu-limits/uncertainty';
 * trapezoidalInput({ value: 0, halfWidth: 6, shape: 0.5 }).standardUncertainty; // → 2.7386127875258306
 * ```
 */
export function trapezoidalInput(
  { value, halfWidth, shape }: LimitStatement & { readonly shape: number },
  naming?: InputNaming,
): UncertainInput {
  requireFinite(value, 'value');
  requireNonNegative(halfWidth, 'halfWidth');
  requireFraction(shape, 'shape');
  const standardUncertainty = halfWidth * Math.sqrt((1 + shape * shape) / 6);
  return inputOf(value, standardUncertainty, { kind: 'trapezoidal', halfWidth, shape }, naming);
}
