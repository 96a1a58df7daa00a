import { safeReadMonitorTraceCsv } from 'esu-limits/schema';
import type { Entries } from './entries.js';
import type { CsvSheet } from './import-csv.js';
import { readTraces } from './typed-traces.js';
import { withTraces } from './with-traces.js';

/**
 * Reads a trace of the monitor. Nothing is taken over while a row is wrong, and no row can be left out: without it the
 * trace would be another.
 */
export function readTraceSheet(text: string, entries: Entries): CsvSheet {
  if (text.trim() === '') return { count: 0, faults: [], wrongLines: [] };
  const result = safeReadMonitorTraceCsv(text, { phase: entries.phase });
  if (!result.ok) return { count: 0, faults: result.faults, wrongLines: [] };
  if (readTraces(entries.traces).faults.length > 0) {
    // What cannot be read would be lost.
    const requirement = 'must be right before another trace is put after them: mend the list of traces first';
    const fault = { code: 'contradiction', path: 'traces', received: 'the list of traces', requirement } as const;
    return { count: 0, faults: [fault], wrongLines: [] };
  }
  const traces = withTraces(entries.traces, [result.value]);
  return { entries: { ...entries, traces, traceCsv: '' }, count: 1, faults: [], wrongLines: [] };
}

/** Whether a CSV text is a trace of the monitor: its first row names a time, and no point. */
export function isTraceSheet(text: string): boolean {
  const header = /^\ufeff?\s*(.*)/.exec(text)?.[1] ?? '';
  const names = header.split(/[,;\t]/).map((cell) => /[a-z]+/i.exec(cell)?.[0].toLowerCase());
  return names.includes('time') && !names.includes('point');
}
