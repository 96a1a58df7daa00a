import { fail, requireChoice, requirePositive } from '../checks/index.js';

/** Series of preferred resistances, by the number of values in a decade. */
export type PreferredSeries = 'E3' | 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192';

/** The values of E24; they are older than the rounded geometric series and differ from it at eight places. */
const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

/**
 * The values of a series of preferred resistances in one decade, with their two or three significant figures:
 * 10 to 91 for E3 to E24, 100 to 988 for E48 to E192.
 *
 * @param series Name of the series
 * @returns The values, ascending
 * @throws CalculationError `unknown-choice`
 * @source IEC 60063
 * @example
 * ```ts
 * import { preferredValues } from 'esu-limits/procedure';
 * preferredValues('E6'); // → [10, 15, 22, 33, 47, 68]
 * ```
 */
export function preferredValues(series: PreferredSeries): readonly number[] {
  requireChoice(series, 'series', ['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192']);
  const count = Number(series.slice(1));
  if (count <= 24) return e24.filter((_, i) => i % (24 / count) === 0);
  // The geometric series to three figures; the one exception of the standard is 920, where it gives 919.
  return Array.from({ length: count }, (_, i) => {
    const rounded = Math.round(100 * 10 ** (i / count));
    return rounded === 919 ? 920 : rounded;
  });
}

/**
 * The preferred resistances from one value to another: loads that a load box can be made of.
 *
 * @param series Name of the series
 * @param from Lowest resistance, in ohms, greater than 0
 * @param to Highest resistance, in ohms
 * @returns The resistances, in ohms, ascending, both ends included
 * @throws CalculationError `unknown-choice`, `not-a-number`, `not-positive`, `band-reversed`, `out-of-range`
 * @source IEC 60063
 * @example
 * ```ts
 * import { preferredLoads } from 'esu-limits/procedure';
 * preferredLoads('E12', 82, 150); // → [82, 100, 120, 150]
 * ```
 */
export function preferredLoads(series: PreferredSeries, from: number, to: number): readonly number[] {
  const values = preferredValues(series);
  requirePositive(from, 'from');
  requirePositive(to, 'to');
  if (from > to) fail('band-reversed', 'from', from, `must not be above ${to}`);
  if (from < 1e-9 || to > 1e12)
    fail('out-of-range', from < 1e-9 ? 'from' : 'to', from, 'must be from 1e-9 to 1e12 ohm');
  const digits = (values[0] as number) === 10 ? 1 : 2;
  const loads: number[] = [];
  for (let decade = Math.floor(Math.log10(from)) - 1; decade <= Math.ceil(Math.log10(to)); decade++) {
    for (const value of values) {
      // By the decimal text, so that 4.7 is 4.7.
      const load = Number(`${value}e${decade - digits}`);
      if (load >= from && load <= to) loads.push(load);
    }
  }
  return loads;
}

/**
 * The preferred resistance that is nearest to a wanted load by ratio.
 *
 * @param load Wanted load, in ohms, greater than 0
 * @param series Name of the series
 * @returns The nearest value of the series, in ohms
 * @throws CalculationError as `preferredLoads`
 * @source IEC 60063
 * @example
 * ```ts
 * import { nearestPreferredLoad } from 'esu-limits/procedure';
 * nearestPreferredLoad(400, 'E24'); // → 390
 * nearestPreferredLoad(400, 'E96'); // → 402
 * ```
 */
export function nearestPreferredLoad(load: number, series: PreferredSeries): number {
  requirePositive(load, 'load');
  const distance = (value: number): number => Math.abs(Math.log(value / load));
  return preferredLoads(series, load / 3, load * 3).reduce((a, b) => (distance(b) < distance(a) ? b : a));
}
