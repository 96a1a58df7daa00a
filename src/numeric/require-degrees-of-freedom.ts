import { fail, requirePositive } from '../checks/index.js';

/** Degrees of freedom: a number above 0, whole or not, or infinity. */
export function requireDegreesOfFreedom(value: number, path = 'degreesOfFreedom'): number {
  if (value === Number.POSITIVE_INFINITY) return value;
  if (Number.isNaN(value)) {
    fail('not-a-number', path, value, 'must be a number greater than 0, or infinite');
  }
  return requirePositive(value, path);
}
