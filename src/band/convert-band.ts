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
  if (lower === undefined || upper === undefined) return oneSided(lower, upper, conversion);
  return { lower: convertQuantity(lower, conversion), upper: convertQuantity(upper, conversion) };
}

function oneSided(lower: number | undefined, upper: number | undefined, conversion: Conversion): Band {
  // 0 stands in for two absent limits, so that a wrong conversion is an error even then.
  const converted = convertQuantity(lower ?? upper ?? 0, conversion);
  return bandOf(lower === undefined ? undefined : converted, upper === undefined ? undefined : converted);
}

/** A band of a quantity that cannot be negative, or an error. */
export function checkQuantityBand(band: Band): Band {
  const { lower, upper } = band;
  // Comparisons let every good pair through, NaN and infinity fail them. The rest is looked at elsewhere, so that
  // engines put this small function in its callers.
  const areNumbers = typeof lower === 'number' && typeof upper === 'number';
  return areNumbers && 0 <= lower && lower <= upper && upper < Number.POSITIVE_INFINITY ? band : checkEachLimit(band);
}

function checkEachLimit(band: Band): Band {
  const { lower, upper } = checkBand(band);
  if (lower !== undefined && lower < 0) fail('limit-negative', 'band.lower', lower, 'must be 0 or more');
  if (upper !== undefined && upper < 0) fail('limit-negative', 'band.upper', upper, 'must be 0 or more');
  return band;
}
