import type { Fault } from 'esu-limits';
import type { Plan } from 'esu-limits/procedure';
import { safeReadDocument } from 'esu-limits/schema';
import { textOf } from './document-text.js';
import { type Entries, noEntries } from './entries.js';
import { isTraceSheet } from './import-trace.js';
import { takeReadings } from './take-readings.js';

/** What a file that was opened brings. */
export interface Opened {
  readonly entries?: Entries;
  /** What was taken from the file. */
  readonly what: string;
  readonly faults: readonly Fault[];
}

/**
 * Takes what a file holds: a specification, a bench, readings, a plan, a record, or a sheet of readings or a trace of
 * the monitor as CSV. A specification or a bench is taken as it is written, with its units; a CSV sheet waits to be
 * looked at.
 */
export function openDocument(text: string, entries: Entries, plan: Plan | undefined): Opened {
  if (!/^\ufeff?\s*[{[]/.test(text)) {
    return isTraceSheet(text)
      ? { entries: { ...entries, traceCsv: text }, what: 'trace of the monitor', faults: [] }
      : { entries: { ...entries, csv: text }, what: 'sheet of readings', faults: [] };
  }
  const result = safeReadDocument(text);
  if (!result.ok) return { what: '', faults: result.faults };
  const document = result.value;
  const plain = text.replace(/^\ufeff/, '');
  switch (document.schema) {
    case 'esu-limits/specification':
      return { entries: { ...entries, specification: plain }, what: 'specification', faults: [] };
    case 'esu-limits/bench':
      return { entries: { ...entries, bench: plain }, what: 'bench', faults: [] };
    case 'esu-limits/readings':
      return { entries: takeReadings(entries, document, plan), what: 'readings', faults: [] };
    case 'esu-limits/plan':
      return { entries: { ...entries, ...sourcesOf(document) }, what: 'specification and bench of a plan', faults: [] };
    case 'esu-limits/record': {
      const { occasion = '', by = '', date = '', remarks = '' } = document.signature;
      const opened = takeReadings({ ...noEntries, ...sourcesOf(document.plan) }, document.readings, document.plan);
      return { entries: { ...opened, signature: { occasion, by, date, remarks } }, what: 'record', faults: [] };
    }
    default:
      return {
        what: '',
        faults: [
          {
            code: 'unknown-document',
            path: 'schema',
            received: JSON.stringify(document.schema),
            requirement: 'must be a specification, a bench, readings, a plan or a record',
            hint: 'Findings are worked out anew from a record.',
          },
        ],
      };
  }
}

function sourcesOf({ specification, bench }: Plan): Pick<Entries, 'specification' | 'bench'> {
  return { specification: textOf(specification), bench: textOf(bench) };
}
