import { requirePositive } from '../checks/index.js';
import type { DegreesOfFreedom } from '../uncertainty/index.js';

/** A coverage factor, or what gives it for degrees of freedom. */
export type Coverage = number | ((degreesOfFreedom: DegreesOfFreedom) => number);

/** The coverage factor at degrees of freedom. */
export function factorAt(coverage: Coverage, degreesOfFreedom: DegreesOfFreedom): number {
  return typeof coverage === 'number' ? coverage : requirePositive(coverage(degreesOfFreedom), 'coverageFactor');
}
