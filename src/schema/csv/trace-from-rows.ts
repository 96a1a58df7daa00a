import type { TracedResistance } from '../../monitor/index.js';
import type { MonitorTrace, NotedAlarm } from '../../procedure/index.js';
import type { TraceRow } from './read-trace-row.js';

/** A row in which nothing is wrong. */
type GoodRow = TraceRow & { readonly time: number };

/** Steps, end and noted alarms that the rows of a trace tell. An alarm in the first row stood when the trace began. */
export function traceFromRows(
  rows: readonly GoodRow[],
): Pick<MonitorTrace, 'time' | 'resistance' | 'end' | 'startsIn' | 'alarms'> {
  const time: number[] = [];
  const resistance: TracedResistance[] = [];
  const alarms: NotedAlarm[] = [];
  let standing: NotedAlarm | undefined;
  for (const row of rows) {
    if (row.resistance !== undefined && row.resistance !== 'end') {
      time.push(row.time);
      resistance.push(row.resistance);
    }
    if (row.alarm === true)
      standing ??= { from: row.time, ...(row.reason === undefined ? {} : { reason: row.reason }) };
    if (row.alarm === false && standing !== undefined) {
      alarms.push({ ...standing, to: row.time });
      standing = undefined;
    }
  }
  if (standing !== undefined) alarms.push(standing);
  const last = rows.at(-1);
  return {
    time,
    resistance,
    // The last step is the end of a trace that says no more.
    ...(last === undefined || last.time === time.at(-1) ? {} : { end: last.time }),
    ...(rows[0]?.alarm === true ? { startsIn: 'alarm' } : {}),
    alarms,
  };
}
