import { requireFinite, requireNonNegative } from '../../checks/index.js';
import { type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';
import type { LimitStatement } from './limit-statement.js';

/**
 * An input that swings sinusoidally between two limits: u = a/√2.
 *
 * @param statement Value and half-width a
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `not-a-number`, `negative`
 * @source JCGM 101:2008, 6.4.6
 * @example
 * ```ts
 * import { arcsineInput } from 'esu-limits/uncertainty';
 * arcsineInput({ value: 500, halfWidth: 6 }).standardUncertainty; // → 4.242640687119285
 * ```
 */
export function arcsineInput({ value, halfWidth }: LimitStatement, naming?: InputNaming): UncertainInput {
  requireFinite(value, 'value');
  requireNonNegative(halfWidth, 'halfWidth');
  return inputOf(value, halfWidth / Math.SQRT2, { kind: 'arcsine', halfWidth }, naming);
}
