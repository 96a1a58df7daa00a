import { fail } from '../../checks/index.js';
import { requireDegreesOfFreedom } from '../require-degrees-of-freedom.js';
import { fillNormal } from './fill-normal.js';
import { nextChiSquared } from './next-chi-squared.js';
import type { Random } from './random.js';

/**
 * Fills an array with numbers of Student's t distribution, shifted and scaled: a normal number over the root of an
 * independent mean square.
 *
 * @param degreesOfFreedom 0.5 or more, whole or not, or infinite (the normal distribution)
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range`
 * @source JCGM 101:2008, 6.4.9.5
 */
export function fillStudentT(
  random: Random,
  target: Float64Array,
  degreesOfFreedom: number,
  location = 0,
  scale = 1,
): void {
  requireDegreesOfFreedom(degreesOfFreedom);
  if (degreesOfFreedom < 0.5) fail('out-of-range', 'degreesOfFreedom', degreesOfFreedom, 'must be 0.5 or more');
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) {
    fillNormal(random, target, location, scale);
    return;
  }
  fillNormal(random, target);
  for (let i = 0; i < target.length; i++) {
    const meanSquare = nextChiSquared(random, degreesOfFreedom) / degreesOfFreedom;
    target[i] = location + scale * ((target[i] as number) / Math.sqrt(meanSquare));
  }
}
