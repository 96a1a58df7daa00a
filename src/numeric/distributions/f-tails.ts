import { requireNonNegative, requirePositive } from '../../checks/index.js';
import { incompleteBeta } from '../special/incomplete-beta.js';
import type { Tails } from '../special/tails.js';

/**
 * Probabilities that F with the given degrees of freedom lies below and above a value, each with full relative accuracy
 * where it is small.
 *
 * @param value Zero or more
 * @param numerator Degrees of freedom of the numerator, greater than 0, finite, whole or not
 * @param denominator Degrees of freedom of the denominator, greater than 0, finite, whole or not
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`
 * @source NIST DLMF 8.17(ii): I_x(d₁/2, d₂/2) with x = d₁F/(d₁F + d₂)
 * @accuracy Relative error below 1e-14 down to 1e-15 where one of the degrees of freedom is at most 1000, measured against 40 digits
 */
export function fTails(value: number, numerator: number, denominator: number): Tails {
  requireNonNegative(value, 'value');
  requirePositive(numerator, 'numerator');
  requirePositive(denominator, 'denominator');
  const ratio = (numerator / denominator) * value;
  return incompleteBeta(numerator / 2, denominator / 2, ratio / (1 + ratio), 1 / (1 + ratio));
}
