import { requirePositive } from '../../checks/index.js';
import { requireProbability } from '../require-probability.js';
import { gamma } from '../special/gamma.js';
import { gammaWeight, incompleteGamma } from '../special/incomplete-gamma.js';
import { tailQuantile } from '../special/tail-quantile.js';
import { normalUpperQuantile } from './normal-upper-quantile.js';

/**
 * The value below which χ² lies with a given probability.
 *
 * @param probability Probability below the value, greater than 0 and less than 1
 * @param degreesOfFreedom Greater than 0, finite, whole or not
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `out-of-range`, `not-positive`
 */
export function chiSquaredQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability(probability, 'probability');
  requirePositive(degreesOfFreedom, 'degreesOfFreedom');
  return probability > 0.5
    ? quantile(1 - probability, degreesOfFreedom, -1)
    : quantile(probability, degreesOfFreedom, 1);
}

/**
 * The value that χ² exceeds with a given probability.
 *
 * @param upperTail Probability above the value, greater than 0 and less than 1
 * @param degreesOfFreedom Greater than 0, finite, whole or not
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `out-of-range`, `not-positive`
 */
export function chiSquaredUpperQuantile(upperTail: number, degreesOfFreedom: number): number {
  requireProbability(upperTail, 'upperTail');
  requirePositive(degreesOfFreedom, 'degreesOfFreedom');
  return upperTail > 0.5 ? quantile(1 - upperTail, degreesOfFreedom, 1) : quantile(upperTail, degreesOfFreedom, -1);
}

function quantile(tail: number, degreesOfFreedom: number, direction: 1 | -1): number {
  const a = degreesOfFreedom / 2;
  const at = (x: number) => {
    const tails = incompleteGamma(a, x);
    return { tail: direction === 1 ? tails.lower : tails.upper, scaledDensity: a * gammaWeight(a, x) };
  };
  return 2 * tailQuantile(at, tail, estimate(tail, a, direction), direction);
}

/** First value: the cube of a normal variable (Wilson and Hilferty), or the leading power near 0. */
function estimate(tail: number, a: number, direction: 1 | -1): number {
  const spread = 1 / (9 * a);
  const root = 1 - spread - direction * normalUpperQuantile(tail) * Math.sqrt(spread);
  if (root > 0.3) return a * root ** 3;
  return a < 20 ? (tail * gamma(a + 1)) ** (1 / a) : a * 0.027;
}
