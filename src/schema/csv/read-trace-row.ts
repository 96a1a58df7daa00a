import type { Fault } from '../../checks/index.js';
import type { AlarmReason, TracedResistance } from '../../monitor/index.js';
import type { MonitorTraceColumnName } from './monitor-trace-columns.js';
import { readAlarmReason } from './read-alarm-reason.js';
import type { Header } from './read-header.js';
import { RowCells } from './row-cells.js';
import type { CsvRow } from './split-csv.js';

/** Column in which the resistances of a trace stand. */
export type TraceResistanceColumn = Extract<MonitorTraceColumnName, 'set' | 'displayed' | 'resistance'>;

/** What one row of a trace says; what it leaves out is as before. */
export interface TraceRow {
  /** In seconds; undefined where a fault was reported. */
  readonly time: number | undefined;
  /** In ohms, or the word that ends the trace. */
  readonly resistance: TracedResistance | 'end' | undefined;
  readonly alarm: boolean | undefined;
  /** Why, in the row where the alarm begins; what stands in another is that of the alarm before it. */
  readonly reason: AlarmReason | undefined;
}

/** An alarm that has begun in an earlier row. */
export interface StandingAlarm {
  readonly reason: AlarmReason | undefined;
}

/** Where a row stands among the others. */
export interface TraceRowPlace {
  /** The time before it, in seconds; undefined in the first row. */
  readonly before: number | undefined;
  /** The alarm that stands before it. */
  readonly standing: StandingAlarm | undefined;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly headerLength: number;
}

/** Reads one row of a trace; every fault names line and column. */
export function readTraceRow(
  row: CsvRow,
  header: Header<MonitorTraceColumnName>,
  column: TraceResistanceColumn,
  { before, standing, isFirst, isLast, headerLength }: TraceRowPlace,
): { readonly content: TraceRow; readonly faults: readonly Fault[] } {
  const cells = new RowCells(row, header);
  const time = timeOf(cells, before);
  const resistance = resistanceOf(cells, column);
  const alarm = alarmOf(cells);
  const reason = reasonOf(cells, alarm, standing);
  const isEmpty = (name: MonitorTraceColumnName): boolean => cells.text(name) === '';
  if (isFirst && (isEmpty(column) || resistance === 'end')) {
    cells.fault(column, 'missing-member', 'must be given in the first row: a resistance, or open');
  } else if (resistance === 'end' && !isLast) {
    cells.fault(column, 'contradiction', 'must stand in the last row, because it ends the trace');
  } else if (isEmpty(column) && isEmpty('alarm')) {
    const hint = 'Write "end" where the trace ends.';
    cells.fault(column, 'missing-member', 'must be given, because the row says nothing of an alarm either', hint);
  }
  if (isFirst && isEmpty('alarm')) {
    const hint = 'Write "no alarm", and "alarm" in the row from whose time on there was one.';
    cells.fault('alarm', 'missing-member', 'must be given in the first row: alarm, or no alarm', hint);
  }
  cells.reportExcess(headerLength);
  return { content: { time, resistance, alarm, reason }, faults: cells.faults };
}

type Cells = RowCells<MonitorTraceColumnName>;

function timeOf(cells: Cells, before: number | undefined): number | undefined {
  if (cells.text('time') === '') return cells.fault('time', 'missing-member', 'must be given, with its unit');
  const time = cells.quantity('time', { expect: 'time' })?.value;
  if (time === undefined || before === undefined || time > before) return time;
  const hint = time === before ? 'What happens at one time stands in one row.' : undefined;
  return cells.fault('time', 'not-ascending', `must be later than the time before it, ${before} s`, hint);
}

function resistanceOf(cells: Cells, column: TraceResistanceColumn): TraceRow['resistance'] {
  const text = cells.text(column).toLowerCase();
  if (text === '') return undefined;
  if (text === 'open' || text === 'end') return text;
  if (column === 'displayed' && /^over[\s-]?range$/.test(text)) return 'open';
  return cells.quantity(column, { expect: 'resistance' }, column === 'displayed' ? 'over-range' : 'open')?.value;
}

function alarmOf(cells: Cells): boolean | undefined {
  const said = cells.text('alarm').toLowerCase();
  if (said === '') return undefined;
  if (said === 'alarm') return true;
  if (said === 'no alarm' || said === 'none') return false;
  // A decimal comma that parts a cell in two moves the resistance here.
  const hint = /^\d/.test(said) ? 'Numbers have a decimal point where a comma separates the cells.' : undefined;
  return cells.fault('alarm', 'unknown-choice', 'must be "alarm" or "no alarm", or empty where it is as before', hint);
}

function reasonOf(
  cells: Cells,
  alarm: boolean | undefined,
  standing: StandingAlarm | undefined,
): AlarmReason | undefined {
  const reason = readAlarmReason(cells);
  // Where it is not understood whether there is an alarm, nothing can be said of its reason.
  if (reason === undefined || (alarm === undefined && cells.text('alarm') !== '')) return undefined;
  if (!(alarm ?? standing !== undefined)) {
    return cells.fault('alarm reason', 'contradiction', 'must be empty where there is no alarm');
  }
  if (standing === undefined || standing.reason === reason) return reason;
  const requirement = `must be the same as in the row where the alarm began: ${standing.reason ?? 'empty'}`;
  return cells.fault('alarm reason', 'contradiction', requirement);
}
