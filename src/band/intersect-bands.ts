import { fail } from '../checks/index.js';
import { type Band, bandOf } from './band.js';
import { checkBand } from './check-band.js';

/**
 * The band that lies in all of the given bands: the highest of the lower limits and the lowest of the upper.
 *
 * @param bands Bands, all in one unit; no band at all gives the unlimited band
 * @returns Their intersection; bands that only touch give one of no width
 * @throws CalculationError `not-a-number`, `band-reversed`, `band-empty`
 * @example
 * ```ts
 * import { intersectBands } from 'esu-limits';
 * intersectBands({ lower: 0.8, upper: 1.2 }, { upper: 1.1 }); // → { "lower": 0.8, "upper": 1.1 }
 * ```
 */
export function intersectBands(...bands: readonly Band[]): Band {
  let lower: number | undefined;
  let upper: number | undefined;
  bands.forEach((band, i) => {
    checkBand(band, `bands[${i}]`);
    if (!(band.lower === undefined || band.lower <= (lower ?? Number.NEGATIVE_INFINITY))) lower = band.lower;
    if (!(band.upper === undefined || band.upper >= (upper ?? Number.POSITIVE_INFINITY))) upper = band.upper;
  });
  if (lower !== undefined && upper !== undefined && lower > upper) {
    fail('band-empty', 'bands', lower, `no value lies in all bands: the highest lower limit is above ${upper}`);
  }
  return bandOf(lower, upper);
}
