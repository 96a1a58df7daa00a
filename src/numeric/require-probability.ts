import { fail, requireFraction } from '../checks/index.js';

/** A probability strictly between 0 and 1, whose quantile is finite. */
export function requireProbability(value: number, path: string): number {
  if (value > 0 && value < 1) return value;
  requireFraction(value, path);
  return fail('out-of-range', path, value, 'must be greater than 0 and less than 1');
}
