import { type MachineLimits, topAt } from './machine-limits.js';
import { type TraceColumns, timeAt } from './trace.js';

/** Where the monitor is in a trace: the sample, the time within it, and the baseline at that time (NaN: none yet). */
export interface Cursor {
  index: number;
  time: number;
  baseline: number;
}

/**
 * Moves the cursor to the first sample that is not accepted, or past the last, with the baseline of that time.
 * One plain loop for each rule: a choice inside the loop would cost more than its work. A sample that is no
 * resistance fails the comparisons too, and ends the loop.
 */
export function skipAccepted(columns: TraceColumns, limits: MachineLimits, cursor: Cursor): void {
  const { resistance } = columns;
  const { series, low, high, rise } = limits;
  const from = cursor.index;
  let i = from;
  if (rise !== undefined && Number.isNaN(cursor.baseline)) {
    // An open circuit is no baseline, even where no upper limit refuses it.
    while (high === Number.POSITIVE_INFINITY && resistance[i] === Number.POSITIVE_INFINITY) i++;
    const seen = (resistance[i] as number) + series;
    if ((resistance[i] as number) >= 0 && seen >= low && seen <= high) cursor.baseline = seen;
  }
  if (rise === undefined || Number.isNaN(cursor.baseline) || rise.baseline === 'at-start') {
    i = skipBetween(resistance, i, series, low, topAt(limits, cursor.baseline));
  } else if (rise.baseline === 'lowest') {
    i = skipLowest(resistance, i, limits, cursor);
  } else {
    i = skipTracked(columns, i, limits, cursor);
  }
  if (i === from) return;
  cursor.index = i;
  cursor.time = timeAt(columns, i);
}

function skipBetween(resistance: Float64Array, from: number, series: number, low: number, top: number): number {
  const n = resistance.length;
  let i = from;
  for (; i < n; i++) {
    const x = resistance[i] as number;
    const seen = x + series;
    if (!(x >= 0 && seen >= low && seen <= top)) break;
  }
  return i;
}

function skipLowest(resistance: Float64Array, from: number, limits: MachineLimits, cursor: Cursor): number {
  const { series, low } = limits;
  const n = resistance.length;
  let { baseline } = cursor;
  let top = topAt(limits, baseline);
  let i = from;
  for (; i < n; i++) {
    const x = resistance[i] as number;
    const seen = x + series;
    if (!(x >= 0 && seen >= low && seen <= top)) break;
    if (seen < baseline) {
      baseline = seen;
      top = topAt(limits, baseline);
    }
  }
  cursor.baseline = baseline;
  return i;
}

function skipTracked(columns: TraceColumns, from: number, limits: MachineLimits, cursor: Cursor): number {
  const { resistance, time, interval } = columns;
  const { series, low, high } = limits;
  const { factor, floor, timeConstant } = limits.rise as NonNullable<MachineLimits['rise']>;
  const n = resistance.length;
  const perSample = Math.exp(-interval / timeConstant);
  let { baseline } = cursor;
  let i = from;
  for (; i < n; i++) {
    const x = resistance[i] as number;
    const seen = x + series;
    const limit = Math.max(baseline, floor) * factor;
    if (!(x >= 0 && seen >= low && seen <= high && seen <= limit)) break;
    // The first and the last sample may hold for another time than an interval.
    const isInner = i !== from && i + 1 < n;
    const decay =
      isInner && time === undefined
        ? perSample
        : Math.exp(-(timeAt(columns, i + 1) - (i === from ? cursor.time : timeAt(columns, i))) / timeConstant);
    baseline = seen + (baseline - seen) * decay;
  }
  cursor.baseline = baseline;
  return i;
}
