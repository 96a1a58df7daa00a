import { type Band, contains } from '../band/index.js';

/**
 * Where a reading of the display lies against its limits. Over-range is above every value that the display can show: it
 * meets a lower limit and breaks an upper one.
 *
 * @param limits Limits, in ohms; the limits themselves are inside
 * @param displayed What the display shows, in ohms, or `over-range`
 * @returns `inside`, `below` or `above`
 * @throws CalculationError `not-a-number`, `band-reversed`
 * @example
 * ```ts
 * import { placeReading } from 'esu-limits/monitor';
 * placeReading({ lower: 93, upper: 107 }, 93); // → "inside"
 * placeReading({ lower: 93, upper: 107 }, 92); // → "below"
 * placeReading({ lower: 93, upper: 107 }, 'over-range'); // → "above"
 * placeReading({ lower: 2000 }, 'over-range'); // → "inside"
 * ```
 */
export function placeReading(limits: Band, displayed: number | 'over-range'): 'inside' | 'below' | 'above' {
  if (displayed === 'over-range') return limits.upper === undefined ? 'inside' : 'above';
  if (contains(limits, displayed)) return 'inside';
  return limits.lower !== undefined && displayed < limits.lower ? 'below' : 'above';
}
