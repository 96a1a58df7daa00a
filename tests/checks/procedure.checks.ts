import { assessReadings, type PreferredSeries, planVerification, preferredValues } from '../../src/procedure/index.js';
import { bench, ratedOutput, readingsOf, specificationOf } from '../procedure/documents.js';
import type { Check } from './check.js';

/** The series as IEC 60063 prints them, read from public tables. */
const published: readonly (readonly [PreferredSeries, readonly number[]])[] = [
  ['E12', [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82]],
  ['E24', [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91]],
  [
    'E96',
    [
      100, 102, 105, 107, 110, 113, 115, 118, 121, 124, 127, 130, 133, 137, 140, 143, 147, 150, 154, 158, 162, 165, 169,
      174, 178, 182, 187, 191, 196, 200, 205, 210, 215, 221, 226, 232, 237, 243, 249, 255, 261, 267, 274, 280, 287, 294,
      301, 309, 316, 324, 332, 340, 348, 357, 365, 374, 383, 392, 402, 412, 422, 432, 442, 453, 464, 475, 487, 499, 511,
      523, 536, 549, 562, 576, 590, 604, 619, 634, 649, 665, 681, 698, 715, 732, 750, 768, 787, 806, 825, 845, 866, 887,
      909, 931, 953, 976,
    ],
  ],
];

/** Relative difference of the generator's display from the instrument, by the library's own comparison. */
function displayDifference(): number {
  const plan = planVerification(specificationOf(ratedOutput), bench);
  const reading = { point: 'cut/200W/400ohm', value: 0.7, display: { quantity: 'current' as const, value: 0.714 } };
  const row = assessReadings(plan, readingsOf(reading)).points.find((entry) => entry.reading !== undefined);
  return row?.display?.relative ?? Number.NaN;
}

/** Checks of the procedure against published tables and the practice of the trade. */
export const procedureChecks: readonly Check[] = [
  ...published.map(
    ([series, values]): Check => ({
      id: `preferred-${series.toLowerCase()}`,
      room: 'procedure',
      title: `values of ${series} that agree with the printed table, in order`,
      source: 'IEC 60063, table of the series',
      standing: 'published',
      published: values.length,
      unit: '1',
      tolerance: 0,
      compute: () => {
        const ours = preferredValues(series);
        return ours.length === values.length ? ours.filter((value, i) => value === values[i]).length : -1;
      },
    }),
  ),
  {
    id: 'preferred-e192-920',
    room: 'procedure',
    title: 'the one value of E192 that differs from the rounded geometric series (919)',
    source: 'IEC 60063, table of E192',
    standing: 'published',
    published: 920,
    unit: '1',
    tolerance: 0,
    compute: () => preferredValues('E192')[185] as number,
  },
  {
    id: 'display-against-instrument',
    room: 'procedure',
    title: 'display 714 mA, instrument 700 mA: as far apart as a sound unit and a true-rms meter commonly are',
    source: 'common practice, no source',
    standing: 'common practice',
    published: 0.02,
    unit: '1',
    tolerance: 1e-15,
    compute: displayDifference,
  },
];
