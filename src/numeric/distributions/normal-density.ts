import { requireNumber } from '../require-number.js';
import { expMinusHalfSquare } from '../special/exp-minus-half-square.js';

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return expMinusHalfSquare(requireNumber(z, 'z')) / Math.sqrt(2 * Math.PI);
}
