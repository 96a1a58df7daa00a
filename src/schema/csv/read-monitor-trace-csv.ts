import type { Fault } from '../../checks/index.js';
import type { MonitorTrace, Phase } from '../../procedure/index.js';
import { mostFaults } from '../document-limits.js';
import { failure, faultOf, type ParseResult, unwrap } from '../fault-list.js';
import { safeParseReadings } from '../parse-readings.js';
import { type MonitorTraceColumnName, monitorTraceHeader } from './monitor-trace-columns.js';
import { openSheet, type SheetTextOptions } from './open-sheet.js';
import type { Header } from './read-header.js';
import { readTraceRow, type StandingAlarm, type TraceResistanceColumn, type TraceRow } from './read-trace-row.js';
import type { CsvRow } from './split-csv.js';
import { traceFromRows } from './trace-from-rows.js';

/** What a trace does not say itself. */
export interface MonitorTraceCsvOptions extends SheetTextOptions {
  /** What was done, in a few words. */
  readonly name?: string;
  /** State of the unit; `as-found` unless stated. */
  readonly phase?: Phase;
  /** What the resistances are, where their column is called `resistance`: there is no default. */
  readonly of?: MonitorTrace['of'];
}

/**
 * Reads a trace of the return-electrode monitor from CSV text: the resistance against time, and the alarms that were
 * noted. It gives what `monitorTraces` of a readings document holds.
 *
 * The header names `time`, `set` or `displayed`, and `alarm`; every time and resistance has a unit, in its cell or in
 * the header: `time [ms]`, `set [kohm]`. An open circuit is the word `open`. `alarm` is `alarm` or `no alarm`, in the
 * first row and wherever it changes; a cell that is empty is as before. The column `alarm reason` may say why, where an
 * alarm begins. A row with `end` in place of a resistance ends the trace. Byte-order mark, any line ends, quoted cells and blank rows are read as in `readReadingsCsv`.
 *
 * @param text CSV with a header
 * @param options Name, state of the unit, what the resistances are
 * @returns The trace, in seconds and ohms
 * @throws CalculationError with all faults in `faults`, each with line and column: `csv-malformed`, `unknown-member`,
 * `missing-member`, `duplicate`, `contradiction`, `unknown-choice`, `not-ascending` (time runs backwards), `negative`,
 * `text-unsuitable`, and the codes of `parseQuantity`, such as `unit-missing` and `number-malformed`
 * @example
 * ```ts
 * import { readMonitorTraceCsv } from 'esu-limits/schema';
 * const rows = ['time [s],set [ohm],alarm', '0,60,no alarm', '10,170,', '11.5,,alarm', '20,open,', '30,end,'];
 * const trace = readMonitorTraceCsv(rows.join('\n'));
 * trace.resistance; // → [60, 170, "open"]
 * trace.alarms; // → [{ from: 11.5 }]
 * trace.end; // → 30
 * ```
 */
export function readMonitorTraceCsv(text: string, options?: MonitorTraceCsvOptions): MonitorTrace {
  return unwrap(safeReadMonitorTraceCsv(text, options));
}

/**
 * Reads a trace of the monitor from CSV text, and says what is wrong where it cannot: the twin of `readMonitorTraceCsv`.
 *
 * @param text CSV with a header
 * @param options Name, state of the unit, what the resistances are
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 * @example
 * ```ts
 * import { safeReadMonitorTraceCsv } from 'esu-limits/schema';
 * const result = safeReadMonitorTraceCsv('time [s],set [ohm],alarm\n10,60,no alarm\n5,170,alarm');
 * result.ok ? '' : result.faults[0]?.path; // → "line 3, column 1 (time)"
 * ```
 */
export function safeReadMonitorTraceCsv(text: string, options: MonitorTraceCsvOptions = {}): ParseResult<MonitorTrace> {
  const opened = openSheet(text, options, monitorTraceHeader);
  if (!opened.ok) return opened;
  const { header, line, rows, headerLength, isCut } = opened.value;
  const of = whatResistancesAre(header, options.of, line);
  const faults: Fault[] = [...opened.value.faults, ...of.faults];
  if (headerLength > 0 && rows.length === 0) {
    faults.push(faultOf('missing-member', `line ${line}`, 'no rows', 'must be followed by a row at least'));
  }
  // Without its columns, or with cells that are cut wrongly, what the rows say cannot be told.
  const isLegible = header.has('time') && of.column !== undefined && !isCut;
  const read = isLegible ? readRows(rows, header, of.column, headerLength, faults) : [];
  const { name, phase = 'as-found' } = options;
  const trace = {
    ...(name === undefined ? {} : { name }),
    phase,
    of: of.of ?? 'set',
    ...(faults.length === 0 ? traceFromRows(read) : nothing),
  };
  const document = { schema: 'esu-limits/readings', version: 1, readings: [], monitorTraces: [trace] };
  const result = safeParseReadings(document);
  if (!result.ok) return failure([...faults, ...result.faults.map(withoutPlace)]);
  return faults.length > 0 ? failure(faults) : { ok: true, value: result.value.monitorTraces?.[0] as MonitorTrace };
}

/** Stands for the rows where they are wrong, so that the options are looked at all the same. */
const nothing = { time: [0], resistance: [0], alarms: [] };

function readRows(
  rows: readonly CsvRow[],
  header: Header<MonitorTraceColumnName>,
  column: TraceResistanceColumn,
  headerLength: number,
  faults: Fault[],
): readonly (TraceRow & { readonly time: number })[] {
  const read: (TraceRow & { readonly time: number })[] = [];
  let before: number | undefined;
  let standing: StandingAlarm | undefined;
  for (const [i, row] of rows.entries()) {
    if (faults.length > mostFaults) break;
    const place = { before, standing, isFirst: i === 0, isLast: i === rows.length - 1, headerLength };
    const { content, faults: found } = readTraceRow(row, header, column, place);
    for (const fault of found) faults.push(fault);
    const { time, alarm, reason } = content;
    if (alarm === true) standing ??= { reason };
    if (alarm === false) standing = undefined;
    if (time === undefined) continue;
    before = time;
    read.push({ ...content, time });
  }
  return read;
}

/** The column of the resistances, and whether they were set or displayed. */
function whatResistancesAre(
  header: Header<MonitorTraceColumnName>,
  stated: MonitorTrace['of'] | undefined,
  line: number,
): { readonly column?: TraceResistanceColumn; readonly of?: MonitorTrace['of']; readonly faults: readonly Fault[] } {
  const [column, ...others] = (['set', 'displayed', 'resistance'] as const).filter((name) => header.has(name));
  const hint = 'Call it "set" where it was set on a box, "displayed" where the monitor showed it.';
  if (column === undefined) {
    const requirement = 'must have a column of resistances: "set" or "displayed"';
    return { faults: [faultOf('missing-member', `line ${line}`, [...header.keys()].join(' '), requirement, hint)] };
  }
  if (others.length > 0) {
    const requirement = 'must have one column of resistances';
    return { column, faults: [faultOf('contradiction', `line ${line}`, [column, ...others].join(' '), requirement)] };
  }
  if (column !== 'resistance') {
    if (stated === undefined || stated === column) return { column, of: column, faults: [] };
    return { column, faults: [faultOf('contradiction', 'of', stated, `must be "${column}", as the header says`)] };
  }
  if (stated !== undefined) return { column, of: stated, faults: [] };
  const place = `line ${line}, column ${(header.get(column)?.index ?? 0) + 1} (${column})`;
  return { column, faults: [faultOf('missing-member', place, column, 'must say what it is a resistance of', hint)] };
}

/** A fault of an option, named as the option is. */
function withoutPlace(fault: Fault): Fault {
  return { ...fault, path: fault.path.replace(/^monitorTraces\[0\]\.?/, '') };
}
