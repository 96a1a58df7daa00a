import type { Fault } from 'esu-limits';
import type { MonitorTrace } from 'esu-limits/procedure';
import { safeReadDocument } from 'esu-limits/schema';

/** Traces of the monitor from their JSON text; what is wrong there is said, and then none is taken. */
export function readTraces(text: string): { readonly traces: readonly MonitorTrace[]; readonly faults: readonly Fault[] } {
  if (text.trim() === '') return { traces: [], faults: [] };
  // Numbers may be written with their units, as in a document: so it is read as one.
  const document = `{"schema":"esu-limits/readings","version":1,"readings":[],"monitorTraces":${text}\n}`;
  const result = safeReadDocument(document);
  if (!result.ok) return { traces: [], faults: result.faults };
  return { traces: result.value.schema === 'esu-limits/readings' ? (result.value.monitorTraces ?? []) : [], faults: [] };
}
