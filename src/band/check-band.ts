import { fail, requireFinite } from '../checks/index.js';
import type { Band } from './band.js';

/**
 * A band whose limits are finite and not reversed, or an error. Equal limits are allowed: one value is inside.
 *
 * @param band Band to check, in any unit; leave a side out where there is no limit
 * @param path Where the band stands, for the error; `band` unless stated
 * @returns The same band
 * @throws CalculationError `not-a-number`, `band-reversed`
 * @example
 * ```ts
 * import { checkBand } from 'esu-limits';
 * checkBand({ lower: 0.843, upper: 1.133 }); // → { "lower": 0.843, "upper": 1.133 }
 * ```
 */
export function checkBand(band: Band, path = 'band'): Band {
  const { lower, upper } = band;
  // The text of a path is made only for an error: this runs with every limit.
  if (lower !== undefined && !Number.isFinite(lower)) requireFinite(lower, `${path}.lower`);
  if (upper !== undefined && !Number.isFinite(upper)) requireFinite(upper, `${path}.upper`);
  if (lower !== undefined && upper !== undefined && lower > upper) {
    fail('band-reversed', `${path}.lower`, lower, `must not lie above the upper limit, ${upper}`);
  }
  return band;
}
