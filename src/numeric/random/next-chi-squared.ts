import { nextGamma } from './next-gamma.js';
import type { Random } from './random.js';

/** A number with the χ² distribution of the given degrees of freedom, 0.2 or more, whole or not. */
export function nextChiSquared(random: Random, degreesOfFreedom: number): number {
  return 2 * nextGamma(random, degreesOfFreedom / 2);
}
