import { fail, requireFinite } from '../checks/index.js';
import type { Band } from './band.js';
import { checkBand } from './check-band.js';

/**
 * Where a value lies between nominal and limit: 0 at nominal, −1 at the lower limit, +1 at the upper.
 * Each side has its own scale; beyond ±1 a limit is passed.
 * It never falls as the value rises. On a side without a limit it is 0: nothing is used up.
 * On a side of no width, where nominal and limit are one, any value beyond gives ±`Number.MAX_VALUE`.
 *
 * @param band Band, in any unit
 * @param nominal Value of margin 0, inside the band
 * @param value Value to place
 * @returns Signed margin: a part of the side's width
 * @throws CalculationError `not-a-number`, `band-reversed`, `out-of-range` (nominal outside the band)
 * @example
 * ```ts
 * import { marginIn } from 'esu-limits';
 * marginIn({ lower: 80, upper: 110 }, 100, 90); // → -0.5
 * marginIn({ lower: 80, upper: 110 }, 100, 110); // → 1
 * marginIn({ upper: 110 }, 100, 20); // → 0
 * ```
 */
export function marginIn(band: Band, nominal: number, value: number): number {
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = checkBand(band);
  requireFinite(nominal, 'nominal');
  requireFinite(value, 'value');
  if (nominal < lower || nominal > upper) fail('out-of-range', 'nominal', nominal, 'must lie inside the band');
  if (value === nominal) return 0;
  // Halves, so that the distance between values of opposite sign cannot overflow.
  const distance = value / 2 - nominal / 2;
  const width = value < nominal ? nominal / 2 - lower / 2 : upper / 2 - nominal / 2;
  const margin = distance / width || 0;
  return Math.max(-Number.MAX_VALUE, Math.min(Number.MAX_VALUE, margin));
}
