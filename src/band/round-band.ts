import { fail, requireChoice } from '../checks/index.js';
import { type Band, bandOf } from './band.js';
import { checkBand } from './check-band.js';
import { gridOf, roundOnGrid } from './grid.js';

/**
 * How limits are rounded: `inward` never loosens (lower up, upper down);
 * `nearest` may loosen by half a step, and a tie goes away from 0.
 */
export type RoundingDirection = 'inward' | 'nearest';

/**
 * Rounds the limits of a band to the resolution of an instrument.
 * A limit within 1e-12 (relative) of a step counts as on it, and the result is the number nearest to the decimal.
 *
 * @param band Band, in any unit
 * @param resolution One step of the last digit, in the unit of the band, greater than 0
 * @param direction `inward` unless stated: a rounded limit then never admits what the limit does not
 * @returns Band of steps of the display
 * @throws CalculationError `not-a-number`, `not-positive`, `band-reversed`, `unknown-choice`, `out-of-range`
 * (resolution too fine for a number), `band-empty` (no step of the display lies between the limits)
 * @source Definition of rounding
 * @accuracy Correctly rounded decimal, for a resolution of up to 12 decimals
 * @example
 * ```ts
 * import { roundBand } from 'esu-limits';
 * roundBand({ lower: 0.8431, upper: 1.1326 }, 0.001); // → { "lower": 0.844, "upper": 1.132 }
 * roundBand({ lower: 0.8431, upper: 1.1326 }, 0.001, 'nearest'); // → { "lower": 0.843, "upper": 1.133 }
 * ```
 */
export function roundBand(band: Band, resolution: number, direction: RoundingDirection = 'inward'): Band {
  const { lower, upper } = checkBand(band);
  const grid = gridOf(resolution);
  const isNearest = requireChoice(direction, 'direction', ['inward', 'nearest']) === 'nearest';
  const roundedLower = lower === undefined ? undefined : roundOnGrid(lower, grid, isNearest ? 'nearest' : 'up');
  const roundedUpper = upper === undefined ? undefined : roundOnGrid(upper, grid, isNearest ? 'nearest' : 'down');
  if (roundedLower !== undefined && roundedUpper !== undefined && roundedLower > roundedUpper) {
    fail('band-empty', 'resolution', resolution, `no step lies between the limits ${lower} and ${upper}`);
  }
  return bandOf(roundedLower, roundedUpper);
}
