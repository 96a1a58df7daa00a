import { requireFinite } from '../checks/index.js';
import type { Band } from './band.js';
import { checkBand } from './check-band.js';

/**
 * Whether a value lies inside a band. The limits themselves are inside.
 *
 * @param band Band, in any unit
 * @param value Value, in the unit of the band
 * @returns Whether no limit is passed
 * @throws CalculationError `not-a-number`, `band-reversed`
 * @example
 * ```ts
 * import { contains } from 'esu-limits';
 * contains({ lower: 0.843, upper: 1.133 }, 0.843); // → true
 * contains({ upper: 1.133 }, 1.134); // → false
 * ```
 */
export function contains(band: Band, value: number): boolean {
  const { lower, upper } = checkBand(band);
  requireFinite(value, 'value');
  return !((lower !== undefined && value < lower) || (upper !== undefined && value > upper));
}
