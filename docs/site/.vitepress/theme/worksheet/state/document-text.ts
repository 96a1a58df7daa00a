import type { Fault } from 'esu-limits';
import type { Bench, Specification } from 'esu-limits/procedure';
import { safeReadDocument } from 'esu-limits/schema';

/** What a text of JSON came to. */
export interface DocumentText<T> {
  /** The document in SI units; undefined while something is wrong. */
  readonly value?: T;
  /** The document as it was typed, for the forms; undefined while the text is no JSON object. */
  readonly typed?: unknown;
  readonly faults: readonly Fault[];
}

/** Reads the specification from the text that was typed. */
export function specificationFromText(text: string): DocumentText<Specification> {
  return read<Specification>(text, 'esu-limits/specification', 'specification');
}

/** Reads the bench from the text that was typed. */
export function benchFromText(text: string): DocumentText<Bench> {
  return read<Bench>(text, 'esu-limits/bench', 'bench');
}

function read<T>(text: string, schema: string, name: string): DocumentText<T> {
  if (text.trim() === '') return { faults: [] };
  const result = safeReadDocument(text);
  const typed = objectOf(text);
  if (!result.ok) return { ...(typed === undefined ? {} : { typed }), faults: result.faults };
  if (result.value.schema === schema) return { value: result.value as T, typed, faults: [] };
  const fault: Fault = {
    code: 'unknown-document',
    path: 'schema',
    received: JSON.stringify(result.value.schema),
    requirement: `must be "${schema}"`,
    hint: `This is a document of another kind: it cannot be used as the ${name}.`,
  };
  return { typed, faults: [fault] };
}

function objectOf(text: string): unknown {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** The least that a specification can begin with; the forms then say what is missing. */
export const blankSpecification = textOf({
  schema: 'esu-limits/specification',
  version: 1,
  generator: { name: '' },
  outputs: [blankOutput(1)],
});

/** The least that a bench can begin with. */
export const blankBench = textOf({
  schema: 'esu-limits/bench',
  version: 1,
  name: '',
  instrument: { name: '', reads: [{ quantity: 'current', ranges: [{ maximum: '', resolution: '' }] }] },
  loads: [blankLoad(1)],
});

export function blankOutput(number: number): object {
  return {
    id: `output-${number}`,
    name: '',
    circuit: 'monopolar',
    connection: '',
    scale: { kind: 'watt', minimum: '', maximum: '' },
    ratedPower: '',
    ratedLoad: '',
  };
}

export function blankLoad(number: number): object {
  return { id: `L${number}`, resistance: '', powerRating: '' };
}

/** A document as the text that the editor shows. */
export function textOf(document: unknown): string {
  return JSON.stringify(document, null, 2);
}
