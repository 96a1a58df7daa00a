import type { MonitorTrace } from 'esu-limits/procedure';
import { readTraces } from './typed-traces.js';

/** The text of the traces with more after them; one that is there already is not repeated. */
export function withTraces(text: string, added: readonly MonitorTrace[]): string {
  if (added.length === 0) return text;
  const there = readTraces(text).traces;
  const known = new Set(there.map((trace) => JSON.stringify(trace)));
  return JSON.stringify([...there, ...added.filter((trace) => !known.has(JSON.stringify(trace)))], null, 2);
}
