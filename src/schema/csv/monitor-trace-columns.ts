import type { HeaderRules } from './header-rules.js';
import type { ReadingsColumn } from './readings-columns.js';

/** Columns of a trace of the monitor that are read. A unit may stand in square brackets after the name: `time [s]`. */
export const monitorTraceColumns = [
  { name: 'time', holds: 'Time from which the row holds, with its unit: s or ms.' },
  {
    name: 'set',
    holds:
      'Resistance that was set, with its unit: ohm or kohm; open for an open circuit, end in a row that ends the trace. Empty: as before.',
  },
  { name: 'displayed', holds: 'In place of set: the resistance that the monitor displayed, or over-range.' },
  { name: 'resistance', holds: 'In place of both, where an option says which of them it is.' },
  {
    name: 'alarm',
    holds: 'What was noted: alarm or no alarm, in the first row and wherever it changes. Empty: as before.',
  },
  {
    name: 'alarm reason',
    holds:
      'In the row where an alarm begins: the reason that the monitor gave: above-upper, below-lower, rise or not-yet-accepted.',
  },
] as const satisfies readonly ReadingsColumn[];

/** Name of a column of a trace of the monitor. */
export type MonitorTraceColumnName = (typeof monitorTraceColumns)[number]['name'];

/** What the header of a trace of the monitor may hold. */
export const monitorTraceHeader: HeaderRules<MonitorTraceColumnName> = {
  names: monitorTraceColumns.map(({ name }) => name),
  informative: ['number'],
  required: ['time', 'alarm'],
  units: { time: ['time'], set: ['resistance'], displayed: ['resistance'], resistance: ['resistance'] },
};
