import { requireFinite, requireNonNegative } from '../../checks/index.js';
import { type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';
import type { LimitStatement } from './limit-statement.js';

/**
 * An input anywhere between two limits, with nothing known of where: u = a/√3.
 *
 * @param statement Value and half-width a
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `not-a-number`, `negative`
 * @source JCGM 101:2008, 6.4.2
 * @example
 * ```ts
 * import { rectangularInput } from 'esu-limits/uncertainty';
 * rectangularInput({ value: 500, halfWidth: 6 }).standardUncertainty; // → 3.464101615137755
 * ```
 */
export function rectangularInput({ value, halfWidth }: LimitStatement, naming?: InputNaming): UncertainInput {
  requireFinite(value, 'value');
  requireNonNegative(halfWidth, 'halfWidth');
  return inputOf(value, halfWidth / Math.sqrt(3), { kind: 'rectangular', halfWidth }, naming);
}
