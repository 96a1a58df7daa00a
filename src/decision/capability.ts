import { type Band, checkBand } from '../band/index.js';
import { fail, requireFinite, requirePositive, requireResult } from '../checks/index.js';

/** How a spread fits into its tolerance. */
export interface Capability {
  /** Distance of the mean from the nearer limit over three standard deviations; negative with the mean outside. */
  readonly cpk: number;
  /** Span of the tolerance over six standard deviations; only with two limits. */
  readonly cp?: number;
  /** Distance inside the lower limit over three standard deviations. */
  readonly lower?: number;
  /** Distance inside the upper limit over three standard deviations. */
  readonly upper?: number;
}

/**
 * Capability indices of a spread of values, such as the readings of one setting over the years.
 *
 * @param band Tolerance limits; one may be absent
 * @param mean Mean of the values, in the unit of the band
 * @param standardDeviation Their standard deviation, greater than 0
 * @returns C_pk, and C_p with two limits
 * @throws CalculationError `not-a-number`, `not-positive`, `band-reversed`, `no-limits`, `result-out-of-range`
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 6.1.6
 * @example
 * ```ts
 * import { capability } from 'esu-limits/decision';
 * const { cp, cpk } = capability({ lower: 8, upper: 20 }, 16, 2);
 * cp; // → 1
 * cpk.toFixed(4); // → "0.6667"
 * ```
 */
export function capability(band: Band, mean: number, standardDeviation: number): Capability {
  const { lower, upper } = checkBand(band);
  requireFinite(mean, 'mean');
  const three = 3 * requirePositive(standardDeviation, 'standardDeviation');
  const below = lower === undefined ? undefined : requireResult((mean - lower) / three, 'lower');
  const above = upper === undefined ? undefined : requireResult((upper - mean) / three, 'upper');
  if (below === undefined && above === undefined) fail('no-limits', 'band', band, 'must have a limit');
  return {
    cpk: Math.min(below ?? Number.POSITIVE_INFINITY, above ?? Number.POSITIVE_INFINITY),
    ...(lower === undefined || upper === undefined ? {} : { cp: requireResult((upper - lower) / (2 * three), 'cp') }),
    ...(below === undefined ? {} : { lower: below }),
    ...(above === undefined ? {} : { upper: above }),
  };
}
