import { requireDegreesOfFreedom } from '../require-degrees-of-freedom.js';
import { requireNumber } from '../require-number.js';
import { gammaHalfRatio } from '../special/gamma-half-ratio.js';
import { studentWeight } from '../special/student-weight.js';
import { normalDensity } from './normal-density.js';

/** Density of Student's t. */
export function studentTDensity(t: number, degreesOfFreedom: number): number {
  requireNumber(t, 't');
  requireDegreesOfFreedom(degreesOfFreedom);
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalDensity(t);
  const height = gammaHalfRatio(degreesOfFreedom / 2) / Math.sqrt(Math.PI * degreesOfFreedom);
  const size = Math.abs(t) / Math.sqrt(degreesOfFreedom);
  return (height * studentWeight(Math.abs(t), degreesOfFreedom)) / Math.hypot(1, size);
}
