import { type Band, checkBand } from '../band/index.js';
import { requireFinite, requireNonNegative } from '../checks/index.js';
import type { DegreesOfFreedom } from '../uncertainty/index.js';
import { type Range, rangeOf } from './range.js';
import { type Tails, tailsOf } from './tails.js';

/** Whether a measured quantity lies inside its limits, as probabilities. */
export interface Conformance {
  /** Probability that the quantity lies inside the limits. */
  readonly conforming: number;
  /** Probability that it lies outside: computed for itself, so that a small one keeps its digits. */
  readonly nonconforming: number;
  /** The part of `nonconforming` below the lower limit. */
  readonly below: number;
  /** The part of `nonconforming` above the upper limit. */
  readonly above: number;
}

/** What is known of the measured value beyond its standard uncertainty. */
export interface ConformanceOptions {
  /**
   * Degrees of freedom of the standard uncertainty; `infinite` (default) gives a normal distribution, a number Student's
   * t about the value, scaled by the standard uncertainty.
   */
  readonly degreesOfFreedom?: DegreesOfFreedom;
}

/**
 * Probability that a quantity conforms to its limits, given its measured value and standard uncertainty.
 *
 * Nothing is known of the quantity but its measurement: it is taken as normal about the measured value, or as a scaled
 * Student's t where the degrees of freedom are finite. With an uncertainty of 0 the value itself decides, limits
 * included.
 *
 * @param band Tolerance limits; one may be absent
 * @param value Measured value, in the unit of the band
 * @param standardUncertainty Its standard uncertainty, in the same unit, 0 or more
 * @param options Degrees of freedom
 * @returns Probability of conforming, of not conforming, and on which side
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `band-reversed`
 * @source JCGM 106:2012, 7.3 and 7.4; JCGM 101:2008, 6.4.9 for Student's t
 * @accuracy Relative error of each below 2e-15 down to 1e-15 of probability, measured against 30-digit values; further
 * out it is what rounding the distance to a limit makes of it
 * @example
 * ```ts
 * import { conformanceProbability } from 'esu-limits/decision';
 * const { conforming, nonconforming } = conformanceProbability({ lower: 0.358, upper: 0.438 }, 0.362, 0.004);
 * conforming.toFixed(4); // → "0.8413"
 * nonconforming.toFixed(4); // → "0.1587"
 * ```
 */
export function conformanceProbability(
  band: Band,
  value: number,
  standardUncertainty: number,
  { degreesOfFreedom }: ConformanceOptions = {},
): Conformance {
  const range = rangeOf(checkBand(band));
  requireFinite(value, 'value');
  requireNonNegative(standardUncertainty, 'standardUncertainty');
  return conformanceIn(range, value, standardUncertainty, tailsOf(degreesOfFreedom));
}

/** `conformanceProbability` of checked arguments. */
export function conformanceIn({ from, to }: Range, value: number, u: number, tails: Tails): Conformance {
  if (u === 0) {
    const below = value < from ? 1 : 0;
    const above = value > to ? 1 : 0;
    return { conforming: 1 - below - above, nonconforming: below + above, below, above };
  }
  const low = (from - value) / u;
  const high = (to - value) / u;
  const below = tails.above(-low);
  const above = tails.above(high);
  // Rounding may leave a sum of two parts a little above 1.
  return { conforming: Math.min(1, tails.between(low, high)), nonconforming: Math.min(1, below + above), below, above };
}
