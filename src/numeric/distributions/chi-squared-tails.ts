import { requireNonNegative, requirePositive } from '../../checks/index.js';
import { incompleteGamma } from '../special/incomplete-gamma.js';
import type { Tails } from '../special/tails.js';

/**
 * Probabilities that χ² with ν degrees of freedom lies below and above a value, each with full relative accuracy where
 * it is small.
 *
 * @param value Zero or more
 * @param degreesOfFreedom Greater than 0, finite, whole or not
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`
 * @source NIST DLMF 8.2.4: P(ν/2, χ²/2) and Q(ν/2, χ²/2)
 * @accuracy Relative error below 1e-14 down to 1e-15, 2.5e-13 down to 1e-300, for 1 to 10⁹ degrees of freedom, measured against 40 digits
 */
export function chiSquaredTails(value: number, degreesOfFreedom: number): Tails {
  requireNonNegative(value, 'value');
  requirePositive(degreesOfFreedom, 'degreesOfFreedom');
  return incompleteGamma(degreesOfFreedom / 2, value / 2);
}
