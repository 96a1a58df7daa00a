import type { Cursor } from './skip-accepted.js';
import { type TraceColumns, timeAt } from './trace.js';

/** Relative distance within which a time counts as reached. */
const onTime = 1e-12;

/**
 * Whether what the sample at the cursor began lasts until it is due. Moves the cursor to that time, or to the sample
 * that breaks it off, or past the last.
 */
export function holdUntil(
  columns: TraceColumns,
  series: number,
  cursor: Cursor,
  due: number,
  isHeld: (seen: number) => boolean,
): 'held' | 'broken' | 'ended' {
  const { resistance } = columns;
  const slack = onTime * Math.abs(due);
  for (let i = cursor.index; ; ) {
    const next = timeAt(columns, i + 1);
    if (next >= due - slack) {
      // A sample that begins when it is due applies from then on.
      const isNext = i + 1 < resistance.length && next <= due + slack;
      cursor.index = isNext ? i + 1 : i;
      cursor.time = isNext ? next : due;
      return 'held';
    }
    i++;
    cursor.index = i;
    cursor.time = next;
    if (i >= resistance.length) return 'ended';
    // What is no resistance breaks it off too, and is refused by whoever reads it next.
    if (!((resistance[i] as number) >= 0 && isHeld((resistance[i] as number) + series))) return 'broken';
  }
}
