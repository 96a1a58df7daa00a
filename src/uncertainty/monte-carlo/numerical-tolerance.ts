import { requireInteger, requirePositive } from '../../checks/index.js';

/**
 * Numerical tolerance of a standard uncertainty: half a unit of its last meaningful digit.
 * u = c·10^l with c a whole number of `digits` figures; the tolerance is 10^l / 2.
 *
 * @param standardUncertainty Standard uncertainty, greater than 0
 * @param digits Meaningful figures, 1 to 6
 * @returns The tolerance, in the unit of the uncertainty
 * @throws CalculationError `not-positive`, `not-an-integer`, `out-of-range`
 * @source JCGM 101:2008, 7.9.2
 * @example
 * ```ts
 * import { numericalTolerance } from 'esu-limits/uncertainty';
 * numericalTolerance(0.00035, 2); // → 0.000005
 * numericalTolerance(2, 1); // → 0.5
 * ```
 */
export function numericalTolerance(standardUncertainty: number, digits: number): number {
  requirePositive(standardUncertainty, 'standardUncertainty');
  requireInteger(digits, 'digits', 1, 6);
  const exponent = Number(standardUncertainty.toExponential(digits - 1).split('e')[1]);
  return Number(`5e${exponent - digits}`);
}
