import { requireProbability } from '../require-probability.js';
import { normalUpperQuantile } from './normal-upper-quantile.js';

/**
 * The value below which a standard normal variable lies with a given probability.
 *
 * For probabilities close to 1 give the upper tail to `normalUpperQuantile` instead: it has the digits.
 *
 * @param probability Probability below the value, greater than 0 and less than 1
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `out-of-range`
 */
export function normalQuantile(probability: number): number {
  requireProbability(probability, 'probability');
  return probability > 0.5 ? normalUpperQuantile(1 - probability) : -normalUpperQuantile(probability);
}
