import { type Band, checkBand } from '../band/index.js';
import { fail, requireFinite, requirePositive, requireResult } from '../checks/index.js';

/** What the ratio needs where the tolerance has one limit only. */
export interface UncertaintyRatioOptions {
  /** Nominal value, in the unit of the band, on the inner side of the limit. Not used with two limits. */
  readonly nominal?: number;
}

/**
 * Test uncertainty ratio: the span of the tolerance over twice the expanded uncertainty at 95 %.
 *
 * The span counts, wherever the nominal lies: with a tolerance that is not symmetric the narrower side is measured
 * worse than the ratio says. For a single limit the standard defines none; given the nominal, its distance from the
 * limit takes the place of half the span, as is common practice.
 *
 * @param band Tolerance limits
 * @param expandedUncertainty Expanded uncertainty of the measurement at 95 %, in the unit of the band, greater than 0
 * @param options The nominal, for a single limit
 * @returns Ratio, a plain number: 4 is the classic 4:1
 * @throws CalculationError `not-a-number`, `not-positive`, `band-reversed`, `no-limits`, `missing-member`
 * (a single limit without nominal), `result-out-of-range`
 * @source ANSI/NCSL Z540.3-2006, 3.11, from memory: check your copy
 * @example
 * ```ts
 * import { testUncertaintyRatio } from 'esu-limits/decision';
 * testUncertaintyRatio({ lower: 240, upper: 360 }, 15); // → 4
 * testUncertaintyRatio({ upper: 6 }, 0.5, { nominal: 4 }); // → 4
 * ```
 */
export function testUncertaintyRatio(
  band: Band,
  expandedUncertainty: number,
  { nominal }: UncertaintyRatioOptions = {},
): number {
  requirePositive(expandedUncertainty, 'expandedUncertainty');
  const { lower, upper } = checkBand(band);
  if (lower !== undefined && upper !== undefined) {
    requirePositive(upper - lower, 'band: its span');
    return requireResult((upper - lower) / (2 * expandedUncertainty), 'testUncertaintyRatio');
  }
  const limit = lower ?? upper;
  if (limit === undefined) return fail('no-limits', 'band', band, 'must have a limit');
  if (nominal === undefined) {
    return fail('missing-member', 'nominal', nominal, 'must be given: a tolerance with one limit has no span');
  }
  requireFinite(nominal, 'nominal');
  const inside = lower === undefined ? limit - nominal : nominal - limit;
  requirePositive(inside, 'nominal: its distance inside the limit');
  return requireResult(Math.abs(limit - nominal) / expandedUncertainty, 'testUncertaintyRatio');
}
