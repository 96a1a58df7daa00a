import { fail } from '../checks/index.js';
import { type Conversion, convertQuantity } from '../circuit/index.js';
import { type Band, bandOf } from './band.js';
import { checkBand } from './check-band.js';

/**
 * Turns a band of power, current or voltage into another of these quantities at a resistive load, limit by limit.
 * The conversion is exact: ±20 % in power is −10.56 %/+9.54 % in current, not ±10 %. A lower limit of 0 stays 0.
 *
 * @param band Band in the quantity `from`, limits 0 or more
 * @param conversion Quantity of the band, wanted quantity, load in ohms
 * @returns Band in the quantity `to`
 * @throws CalculationError `limit-negative`, `band-reversed`, `not-a-number`, `not-positive`, `unknown-choice`,
 * `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Within 1 unit in the last place of each limit
 * @example
 * ```ts
 * import { convertBand } from 'esu-limits';
 * convertBand({ lower: 125, upper: 180 }, { from: 'power', to: 'current', load: 500 }); // → { "lower": 0.5, "upper": 0.6 }
 * ```
 */
export function convertBand(band: Band, conversion: Conversion): Band {
  const { lower, upper } = checkQuantityBand(band);
  // 0 stands in for an absent limit, so that a wrong conversion is an error even then.
  const convertedLower = convertQuantity(lower ?? 0, conversion);
  return bandOf(
    lower === undefined ? undefined : convertedLower,
    upper === undefined ? undefined : convertQuantity(upper, conversion),
  );
}

/** A band of a quantity that cannot be negative, or an error. */
export function checkQuantityBand(band: Band): Band {
  const { lower, upper } = checkBand(band);
  if (lower !== undefined && lower < 0) fail('limit-negative', 'band.lower', lower, 'must be 0 or more');
  if (upper !== undefined && upper < 0) fail('limit-negative', 'band.upper', upper, 'must be 0 or more');
  return band;
}
