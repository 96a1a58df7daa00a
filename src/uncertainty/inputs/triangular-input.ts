import { requireFinite, requireNonNegative } from '../../checks/index.js';
import { type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';
import type { LimitStatement } from './limit-statement.js';

/**
 * An input between two limits, more likely near the middle: u = a/√6.
 *
 * @param statement Value and half-width a
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `not-a-number`, `negative`
 * @source JCGM 101:2008, 6.4.5
 * @example
 * ```ts
 * import { triangularInput } from 'esu-limits/uncertainty';
 * triangularInput({ value: 500, halfWidth: 6 }).standardUncertainty; // → 2.4494897427831783
 * ```
 */
export function triangularInput({ value, halfWidth }: LimitStatement, naming?: InputNaming): UncertainInput {
  requireFinite(value, 'value');
  requireNonNegative(halfWidth, 'halfWidth');
  return inputOf(value, halfWidth / Math.sqrt(6), { kind: 'triangular', halfWidth }, naming);
}
