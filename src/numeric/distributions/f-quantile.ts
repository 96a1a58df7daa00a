import { requirePositive } from '../../checks/index.js';
import { requireProbability } from '../require-probability.js';
import { betaWeight, incompleteBeta } from '../special/incomplete-beta.js';
import { tailQuantile } from '../special/tail-quantile.js';

/**
 * The value that F exceeds with a given probability.
 *
 * @param upperTail Probability above the value, greater than 0 and less than 1
 * @param numerator Degrees of freedom of the numerator, greater than 0, finite, whole or not
 * @param denominator Degrees of freedom of the denominator, greater than 0, finite, whole or not
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `out-of-range`, `not-positive`
 */
export function fUpperQuantile(upperTail: number, numerator: number, denominator: number): number {
  requireProbability(upperTail, 'upperTail');
  requirePositive(numerator, 'numerator');
  requirePositive(denominator, 'denominator');
  const a = numerator / 2;
  const b = denominator / 2;
  const direction = upperTail > 0.5 ? 1 : -1;
  const at = (odds: number) => {
    const x = odds / (1 + odds);
    const y = 1 / (1 + odds);
    const tails = incompleteBeta(a, b, x, y);
    return { tail: direction === 1 ? tails.lower : tails.upper, scaledDensity: betaWeight(a, b, x, y) };
  };
  const tail = direction === 1 ? 1 - upperTail : upperTail;
  return tailQuantile(at, tail, a / b, direction) * (denominator / numerator);
}
