import { fail } from '../../checks/index.js';
import { momentsOf } from './moments.js';

/** Mean and spread of a series. */
export interface MeanAndVariance {
  readonly count: number;
  readonly mean: number;
  /** Sum of squared deviations over count − 1. */
  readonly variance: number;
  readonly standardDeviation: number;
}

/**
 * Arithmetic mean, and variance with divisor count − 1.
 *
 * @param values Two values or more
 * @throws CalculationError `wrong-count`
 * @source JCGM 100:2008, 4.2.1 and 4.2.2
 */
export function meanAndVariance(values: ArrayLike<number>): MeanAndVariance {
  if (values.length < 2) fail('wrong-count', 'values', values.length, 'must hold at least two values');
  const { count, mean, squares } = momentsOf(values);
  const variance = squares / (count - 1);
  return { count, mean, variance, standardDeviation: Math.sqrt(variance) };
}
