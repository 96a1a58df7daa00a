import { type Band, explainBandAround, explainRoundBand, type Tolerance } from '../band/index.js';
import { atPath, fail, requireNonNegative, requirePositive } from '../checks/index.js';
import { seenFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import type { SeriesResistance } from './monitor.js';

/** A resistance to set, with what the display may then show. */
export interface ReadingQuestion {
  /** Resistance, in ohms, or an open circuit. */
  readonly set: number | 'open';
  /** Tolerance of this row, in place of the one for all. */
  readonly tolerance?: Tolerance;
  /** Of an open circuit: the display must show less than this, in ohms. */
  readonly below?: number;
  /** Of an open circuit: the display must show more than this, in ohms, or over-range. */
  readonly above?: number;
}

/** Rows of readings with what they have in common. */
export interface ReadingRowsInput {
  readonly rows: readonly ReadingQuestion[];
  /** Tolerance of rows that state none. */
  readonly tolerance?: Tolerance;
  /** One step of the display, in ohms: limits are rounded inward to it. Needed by an open circuit; else not rounded. */
  readonly resolution?: number;
  /** Lead and fixture, which the display shows as well. */
  readonly series?: SeriesResistance;
}

/** One row with its limits. */
export interface ReadingLimits {
  readonly set: number | 'open';
  /** What a display without error shows, in ohms; `null` for an open circuit. */
  readonly expected: number | null;
  /** What the display may show, in ohms, limits included; a side that is absent is unlimited. */
  readonly limits: Band;
  readonly working: readonly Step[];
}

/**
 * What the display of a monitor may show when known resistances are set.
 *
 * A lower limit is never below 0. An open circuit has one-sided limits of its own.
 *
 * @param input Rows, tolerance, step of the display, lead and fixture
 * @returns Limits of each row with their working
 * @throws CalculationError `negative`, `not-positive`, `missing-member`, `contradiction`, `band-reversed`, and those of
 * `bandAround` and `roundBand`
 * @source Definition of the tolerance
 * @example
 * ```ts
 * import { readingRows } from 'esu-limits/monitor';
 * const rows = [{ set: 100 }, { set: 0, tolerance: { absolute: 4 } }, { set: 'open', below: 2000 }] as const;
 * readingRows({ rows, tolerance: { absolute: 7 }, resolution: 1 }).map(({ limits }) => limits);
 * // → [{ lower: 93, upper: 107 }, { lower: 0, upper: 4 }, { upper: 1999 }]
 * ```
 */
export function readingRows({ rows, tolerance, resolution, series }: ReadingRowsInput): readonly ReadingLimits[] {
  if (resolution !== undefined) requirePositive(resolution, 'resolution');
  if (series !== undefined) requireNonNegative(series.resistance, 'series.resistance');
  return rows.map((row, i) =>
    atPath(`rows[${i}]`, () => {
      if (row.set === 'open') return openRow(row, resolution);
      const R = requireNonNegative(row.set, 'set');
      if (row.below !== undefined || row.above !== undefined) {
        fail(
          'contradiction',
          row.below === undefined ? 'above' : 'below',
          row,
          'must be absent unless the set is open',
        );
      }
      const stated = row.tolerance ?? tolerance;
      if (stated === undefined) fail('missing-member', 'tolerance', stated, 'must be given, or one for all rows');
      const R_s = series?.resistance ?? 0;
      const expected = R + R_s;
      const working = series
        ? [step(seenFormula, 'resistance that the display should show', { R, R_s }, expected)]
        : [];
      const naming = { unit: 'ohm', symbol: 'R', name: 'display' } as const;
      const around = explainBandAround(expected, { ...stated, floor: Math.max(stated.floor ?? 0, 0) }, naming);
      if (resolution === undefined) {
        return { set: R, expected, limits: around.band, working: [...working, ...around.working] };
      }
      const rounded = explainRoundBand(around.band, resolution, naming);
      return { set: R, expected, limits: rounded.band, working: [...working, ...around.working, ...rounded.working] };
    }),
  );
}

/** "Below" and "above" exclude the value itself: the next step of the display is the limit. */
function openRow({ tolerance, below, above }: ReadingQuestion, resolution: number | undefined): ReadingLimits {
  if (tolerance !== undefined) fail('contradiction', 'tolerance', tolerance, 'must be absent of an open circuit');
  if (below === undefined && above === undefined) {
    fail('missing-member', 'above', above, 'must be given, or below: an open circuit has one-sided limits');
  }
  if (resolution === undefined) {
    return fail('missing-member', 'resolution', resolution, 'must be given: the next step of the display is the limit');
  }
  const naming = { unit: 'ohm', symbol: 'R', name: 'display' } as const;
  const strict = {
    ...(above === undefined ? {} : { lower: beyond(requireNonNegative(above, 'above'), resolution, 1) }),
    ...(below === undefined ? {} : { upper: beyond(requirePositive(below, 'below'), resolution, -1) }),
  };
  const { band, working } = explainRoundBand(strict, resolution, naming);
  return { set: 'open', expected: null, limits: band, working };
}

/** A value so little beyond an excluded one that rounding inward gives the next step of the display. */
function beyond(value: number, resolution: number, side: 1 | -1): number {
  return value + side * 1e-3 * resolution;
}
