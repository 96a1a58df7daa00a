import { nextUniform } from './next-uniform.js';
import type { Random } from './random.js';

/**
 * Fills an array with numbers of the U-shaped (arcsine) distribution: centre + halfWidth·cos φ with a uniform phase φ,
 * taken from a point inside the unit circle so that no cosine is needed.
 *
 * @source JCGM 101:2008, 6.4.6; the circle: J. von Neumann (1951)
 */
export function fillArcsine(random: Random, target: Float64Array, centre = 0, halfWidth = 1): void {
  for (let i = 0; i < target.length; ) {
    const x = 2 * nextUniform(random) - 1;
    const y = 2 * nextUniform(random) - 1;
    const square = x * x + y * y;
    if (square <= 1 && square > 0) target[i++] = centre + (halfWidth * (x * x - y * y)) / square;
  }
}
