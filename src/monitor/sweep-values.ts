import { roundBand } from '../band/index.js';
import type { ResistanceBox } from './box.js';
import { atOrAbove, atOrBelow } from './box-values.js';

/** Most values of one sweep. */
const most = 40;

/**
 * Values of a sweep upwards over a stretch, one beyond each end where the box has one. Of a decade they are as far apart
 * as the wanted spacing allows, and never more than about forty.
 */
export function sweepValues(box: ResistanceBox, from: number, to: number, spacing: number): readonly number[] {
  const start = atOrBelow(box, from) ?? atOrAbove(box, from);
  const stop = atOrAbove(box, to) ?? atOrBelow(box, to);
  if (start === undefined || stop === undefined) return [];
  if ('values' in box) return box.values.filter((value) => value >= start && value <= stop);
  const wanted = Math.max(spacing, (stop - start) / most);
  const times = Math.max(1, spacing >= wanted ? Math.floor(wanted / box.step) : Math.ceil(wanted / box.step));
  const values: number[] = [];
  for (let i = 0; ; i++) {
    // Whole steps, so that each is the number nearest to its decimal.
    const value = roundBand({ upper: start + i * times * box.step }, box.step, 'nearest').upper as number;
    values.push(Math.min(value, stop));
    if (value >= stop) return values;
  }
}
