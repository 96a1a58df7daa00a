import { requireNumber } from '../require-number.js';
import { erfcx } from '../special/erfcx.js';
import { normalSurvival } from './normal-survival.js';

/** Natural logarithm of the upper tail of the standard normal distribution: finite where the tail itself is 0. */
export function normalLogSurvival(z: number): number {
  requireNumber(z, 'z');
  if (z < 0) return Math.log1p(-normalSurvival(-z));
  return Math.log(0.5 * erfcx(z * Math.SQRT1_2)) - (z * z) / 2;
}
