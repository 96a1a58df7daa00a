import type { Fault } from 'esu-limits';
import type { Plan } from 'esu-limits/procedure';
import { safeReadReadingsCsv } from 'esu-limits/schema';
import type { Entries } from './entries.js';
import { takeReadings } from './take-readings.js';

/** What a sheet would bring. */
export interface CsvSheet {
  /** Entries with its readings taken over; undefined while anything in it is wrong. */
  readonly entries?: Entries;
  /** How many readings it holds, and how many values and challenges of the monitor; how many traces. */
  readonly count: number;
  readonly faults: readonly Fault[];
  /** The same text without the lines that are wrong; undefined where these cannot be told from the rest. */
  readonly rest?: string;
  /** Numbers of the lines that are wrong, as an editor counts them. */
  readonly wrongLines: readonly number[];
}

/** Reads a sheet of readings. Nothing is taken over while a row is wrong, unless the person leaves that row out. */
export function readCsvSheet(text: string, entries: Entries, plan: Plan | undefined): CsvSheet {
  if (text.trim() === '') return { count: 0, faults: [], wrongLines: [] };
  const result = safeReadReadingsCsv(text, { phase: entries.phase });
  if (result.ok) {
    const { readings, monitor = [], monitorChallenges = [] } = result.value;
    const count = readings.length + monitor.length + monitorChallenges.length;
    return { entries: { ...takeReadings(entries, result.value, plan), csv: '' }, count, faults: [], wrongLines: [] };
  }
  const wrongLines = [...new Set(result.faults.map(({ path }) => Number(/^line (\d+)\b/.exec(path)?.[1])))];
  const rest = withoutLines(text, wrongLines);
  return { count: 0, faults: result.faults, wrongLines, ...(rest === undefined ? {} : { rest }) };
}

/** A cell in quotation marks may hold a line end: then lines are not rows, and nothing is left out. */
function withoutLines(text: string, wrong: readonly number[]): string | undefined {
  const lines = text.split(/\r\n|\n|\r/);
  const isTold = wrong.every((line) => Number.isInteger(line) && line > 1);
  const isLineEach = lines.every((line) => (line.match(/"/g)?.length ?? 0) % 2 === 0);
  return isTold && isLineEach ? lines.filter((_, i) => !wrong.includes(i + 1)).join('\n') : undefined;
}
