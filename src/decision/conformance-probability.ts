import { type Band, checkBand } from '../band/index.js';
import { requireFinite, requireNonNegative } from '../checks/index.js';
import { normalInterval, normalSurvival } from '../numeric/index.js';
import { rangeOf } from './range.js';

/** Whether a measured quantity lies inside its limits, as probabilities. */
export interface Conformance {
  /** Probability that the quantity lies inside the limits. */
  readonly conforming: number;
  /** Probability that it lies outside: computed for itself, so that a small one keeps its digits. */
  readonly nonconforming: number;
}

/**
 * Probability that a quantity conforms to its limits, given its measured value and standard uncertainty.
 *
 * The quantity is taken as normal about the measured value. With an uncertainty of 0 the value itself decides, limits
 * included.
 *
 * @param band Tolerance limits; one may be absent
 * @param value Measured value, in the unit of the band
 * @param standardUncertainty Its standard uncertainty, in the same unit, 0 or more
 * @returns Probability of conforming and of not conforming
 * @throws CalculationError `not-a-number`, `negative`, `band-reversed`
 * @source JCGM 106:2012, 7.3 and 7.4
 * @accuracy Both to a few units in the last place, tails included
 * @example
 * ```ts
 * import { conformanceProbability } from 'esu-limits';
 * const { conforming, nonconforming } = conformanceProbability({ lower: 0.358, upper: 0.438 }, 0.362, 0.004);
 * conforming.toFixed(4); // → "0.8413"
 * nonconforming.toFixed(4); // → "0.1587"
 * ```
 */
export function conformanceProbability(band: Band, value: number, standardUncertainty: number): Conformance {
  const { from, to } = rangeOf(checkBand(band));
  requireFinite(value, 'value');
  requireNonNegative(standardUncertainty, 'standardUncertainty');
  if (standardUncertainty === 0) {
    const inside = value >= from && value <= to;
    return { conforming: inside ? 1 : 0, nonconforming: inside ? 0 : 1 };
  }
  const low = (from - value) / standardUncertainty;
  const high = (to - value) / standardUncertainty;
  return {
    conforming: normalInterval(low, high),
    nonconforming: Math.min(1, normalSurvival(-low) + normalSurvival(high)),
  };
}
