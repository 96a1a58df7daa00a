import type { Fault } from '../../checks/index.js';
import { defaultLimits, mostFaults } from '../document-limits.js';
import { failure, faultOf, type ParseResult, unwrap } from '../fault-list.js';
import { type CaptureColumn, type CapturePlace, findColumns, place } from './capture-heading.js';
import { intervalOfTimes, statedInterval } from './capture-interval.js';
import { type DecimalMark, decimalMarkOf, lastDigit, looksNumeric, numberIn } from './capture-number.js';
import { type CsvRow, type Delimiter, plainLines, splitCsv } from './split-csv.js';

/** What a capture file does not say itself. */
export interface CaptureCsvOptions {
  /** What each column holds, from the first on, where the headings do not tell it. */
  readonly columns?: readonly CaptureColumn[];
  /** Time from one sample to the next, in seconds, where neither a column of times nor a line above states it. */
  readonly sampleInterval?: number;
  /** What separates cells; the one that the last line has unless stated. */
  readonly delimiter?: Delimiter;
  /** Longest text, in characters; 67 108 864 (64 Mi) unless stated. */
  readonly maximumLength?: number;
}

/** Samples from a file: what `analyseCapture` takes. */
export interface CaptureSamples {
  /** In volts. */
  readonly voltage?: Float64Array;
  /** In amperes. */
  readonly current?: Float64Array;
  /** In seconds. */
  readonly sampleInterval: number;
}

/**
 * Reads a capture from CSV text as oscilloscopes commonly write it: lines above with a key and a value, a row of
 * headings, a row of units, then the samples of one or two channels, with a column of times or a line that states the
 * sample interval or rate. Byte-order mark, any line ends, and commas, semicolons or tabs between cells are read.
 *
 * Units stand in brackets after a heading or in a row of their own; without any, numbers are in volts, amperes and
 * seconds. A decimal comma is read where it cannot be taken for anything else.
 *
 * @param text The text of the file
 * @param options What columns hold, sample interval, delimiter
 * @returns Samples in volts and amperes, and the sample interval in seconds
 * @throws CalculationError with all faults in `faults`, each with its line: `csv-malformed`, `number-malformed`,
 * `missing-member` (no channel, no interval, an empty cell), `duplicate` (two columns of the same), `contradiction` (a
 * row is missing, or the stated interval is not that of the times), `not-ascending`, `wrong-count`, `wrong-type`,
 * `too-large`, `unknown-choice`, `not-positive`, `unit-unknown`
 * @example
 * ```ts
 * import { readCaptureCsv } from 'esu-limits/schema';
 * const text = ['Sample interval,40,ns', 'Voltage (V),Current (mA)', '0.5,1.25', '-12,30'].join('\n');
 * const capture = readCaptureCsv(text);
 * [...(capture.current ?? [])]; // → [0.00125, 0.03]
 * capture.sampleInterval; // → 4e-8
 * ```
 */
export function readCaptureCsv(text: string, options?: CaptureCsvOptions): CaptureSamples {
  return unwrap(safeReadCaptureCsv(text, options));
}

/**
 * Reads a capture from CSV text, and says what is wrong where it cannot: the twin of `readCaptureCsv`.
 *
 * @param text The text of the file
 * @param options What columns hold, sample interval, delimiter
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 * @example
 * ```ts
 * import { safeReadCaptureCsv } from 'esu-limits/schema';
 * const result = safeReadCaptureCsv(['time (us),voltage (V)', '0,1.5', '0.1,', '0.2,1'].join('\n'));
 * result.ok ? '' : result.faults[0]?.path; // → "line 3, column 2"
 * ```
 */
export function safeReadCaptureCsv(text: string, options: CaptureCsvOptions = {}): ParseResult<CaptureSamples> {
  const faults = optionFaults(text, options);
  if (faults.length > 0) return failure(faults);
  const plain = plainLines(text);
  const delimiter = options.delimiter ?? delimiterOf(plain);
  const split = splitCsv(plain, delimiter);
  if (split.faults.length > 0) return failure(split.faults);
  const start = split.rows.findIndex(({ cells }) => isSamples(cells));
  const rows = start < 0 ? [] : split.rows.slice(start);
  const above = start < 0 ? split.rows : split.rows.slice(0, start);
  if (rows.length < 2) {
    return failure([faultOf('missing-member', '', `${rows.length} rows`, 'must hold two rows of numbers at least')]);
  }
  const [first] = rows as [CsvRow];
  const width = withoutEnd(first.cells).length;
  const mark = delimiter === ',' ? '.' : decimalMarkOf(cellsOf(rows, width));
  if (mark === undefined) {
    const hint = 'Write numbers with a decimal point and without marks between thousands.';
    return failure([
      faultOf(
        'number-malformed',
        `line ${first.line}`,
        first.cells.join(' '),
        'must not leave open whether a comma parts thousands or decimals',
        hint,
      ),
    ]);
  }
  const found = findColumns(above, width, options.columns, above.at(-1)?.line ?? first.line);
  if (!found.ok) return failure(found.faults);
  return samplesOf(rows, above, width, mark, found.value, options);
}

function samplesOf(
  rows: readonly CsvRow[],
  above: readonly CsvRow[],
  width: number,
  mark: DecimalMark,
  { time, voltage, current }: Partial<Record<CaptureColumn, CapturePlace>>,
  options: CaptureCsvOptions,
): ParseResult<CaptureSamples> {
  const faults: Fault[] = [];
  const read = (column: CapturePlace): Float64Array => {
    const values = new Float64Array(rows.length);
    rows.forEach(({ line, cells }, k) => {
      if (faults.length > mostFaults) return;
      const cell = cells[column.index] ?? '';
      const value = numberIn(cell, mark);
      if (value === undefined) faults.push(cellFault(line, column.index, cell));
      else values[k] = value * column.unit;
    });
    return values;
  };
  const times = time && read(time);
  const samples = { ...(voltage && { voltage: read(voltage) }), ...(current && { current: read(current) }) };
  for (const { line, cells } of rows) {
    if (withoutEnd(cells).length <= width || faults.length > mostFaults) continue;
    const hint = 'Numbers have a decimal point where a comma separates the cells.';
    faults.push(
      faultOf('csv-malformed', place(line, width), cells[width], `must not be there: the first row has ${width}`, hint),
    );
  }
  if (faults.length > 0) return failure(faults);

  const stated = statedInterval(above, mark);
  if (stated.faults.length > 0) return failure(stated.faults);
  const given = options.sampleInterval ?? stated.interval;
  if (times === undefined || time === undefined) {
    if (given !== undefined) return { ok: true, value: { ...samples, sampleInterval: given } };
    const hint = 'Give a column of times, a line such as "Sample interval,40,ns", or the option "sampleInterval".';
    return failure([faultOf('missing-member', '', 'no times', 'must state the sample interval', hint)]);
  }
  const resolutionOf = (k: number): number =>
    times[k] === 0 ? 0 : lastDigit((rows[k] as CsvRow).cells[time.index] as string) * time.unit;
  const ofTimes = intervalOfTimes(times, resolutionOf, (k) => (rows[k] as CsvRow).line);
  if (ofTimes.interval === undefined) return failure(ofTimes.faults);
  if (given === undefined) return { ok: true, value: { ...samples, sampleInterval: ofTimes.interval } };
  // The times are off by their last digit at either end, however many there are between.
  const last = times.length - 1;
  const open = 0.001 * ofTimes.interval + (resolutionOf(0) + resolutionOf(last)) / last;
  if (Math.abs(given - ofTimes.interval) <= open) return { ok: true, value: { ...samples, sampleInterval: given } };
  return failure([
    faultOf(
      'contradiction',
      'sampleInterval',
      given,
      `must be the interval of the column of times, ${ofTimes.interval} s`,
    ),
  ]);
}

function optionFaults(text: string, { columns, sampleInterval, maximumLength }: CaptureCsvOptions): Fault[] {
  if (typeof text !== 'string')
    return [faultOf('wrong-type', '', text, 'must be text', 'Decode bytes as UTF-8 first.')];
  const longest = maximumLength ?? defaultLimits.maximumLength;
  if (text.length > longest) return [faultOf('too-large', '', text.length, `must have at most ${longest} characters`)];
  const faults: Fault[] = [];
  if (sampleInterval !== undefined && !(sampleInterval > 0 && sampleInterval < Number.POSITIVE_INFINITY)) {
    faults.push(
      faultOf('not-positive', 'sampleInterval', sampleInterval, 'must be a number of seconds greater than 0'),
    );
  }
  columns?.forEach((column, i) => {
    if (['time', 'voltage', 'current', 'skip'].includes(column)) return;
    faults.push(faultOf('unknown-choice', `columns[${i}]`, column, 'must be time, voltage, current or skip'));
  });
  return faults;
}

/** What separates the cells of the last line: no number holds a semicolon or a tab. */
function delimiterOf(text: string): Delimiter {
  const last = /([^\n]*)\s*$/.exec(text.slice(-10_000).trimEnd())?.[1] ?? '';
  if (last.includes(';')) return ';';
  return last.includes('\t') ? '\t' : ',';
}

/** Whether a row holds samples: a number in its first and its last cell, and in no cell a word. */
function isSamples(cells: readonly string[]): boolean {
  const filled = withoutEnd(cells);
  return filled.length > 0 && filled.every(looksNumeric);
}

/** Cells without the empty ones that a separator at the end of the line makes. */
function withoutEnd(cells: readonly string[]): readonly string[] {
  let end = cells.length;
  while (end > 0 && cells[end - 1] === '') end--;
  return end === cells.length ? cells : cells.slice(0, end);
}

function* cellsOf(rows: readonly CsvRow[], width: number): Iterable<string> {
  for (const { cells } of rows) for (const cell of cells.slice(0, width)) yield cell;
}

function cellFault(line: number, index: number, cell: string): Fault {
  if (cell === '') return faultOf('missing-member', place(line, index), cell, 'must hold a number');
  return faultOf('number-malformed', place(line, index), cell, 'must be a plain number, such as -1.25 or 4.0E-08');
}
