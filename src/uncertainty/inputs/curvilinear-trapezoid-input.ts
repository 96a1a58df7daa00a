import { fail, requireFinite, requireNonNegative } from '../../checks/index.js';
import { type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';
import type { LimitStatement } from './limit-statement.js';

/**
 * An input between two limits that are themselves known only to ±d: u = √(a²/3 + d²/9).
 *
 * @param statement Value, half-width a, and the inexactness d of each limit, not above a
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `not-a-number`, `negative`, `out-of-range`
 * @source JCGM 101:2008, 6.4.3
 * @example
 * ```ts
 * import { curvilinearTrapezoidInput } from 'esu-limits/uncertainty';
 * curvilinearTrapezoidInput({ value: 0, halfWidth: 3, inexactness: 0 }).standardUncertainty; // → 1.7320508075688772
 * ```
 */
export function curvilinearTrapezoidInput(
  { value, halfWidth, inexactness }: LimitStatement & { readonly inexactness: number },
  naming?: InputNaming,
): UncertainInput {
  requireFinite(value, 'value');
  requireNonNegative(halfWidth, 'halfWidth');
  requireNonNegative(inexactness, 'inexactness');
  if (inexactness > halfWidth)
    fail('out-of-range', 'inexactness', inexactness, `must not exceed the half-width, ${halfWidth}`);
  const standardUncertainty = Math.sqrt((halfWidth * halfWidth) / 3 + (inexactness * inexactness) / 9);
  return inputOf(value, standardUncertainty, { kind: 'curvilinear-trapezoid', halfWidth, inexactness }, naming);
}
