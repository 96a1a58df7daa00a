import type { Fault } from 'esu-limits';
import { formatQuantity } from 'esu-limits';
import { type Path, pathText, valueAt, withValueAt } from './json-path.js';

/** One field of a form: it shows and changes one member of the document. */
export interface Field {
  readonly kind: 'field';
  readonly path: Path;
  readonly label: string;
  /** What may be typed, such as `120 W`. */
  readonly example?: string;
  /** Values to choose from; the empty one takes the member away. */
  readonly choices?: readonly { readonly value: string; readonly text: string }[];
  /** Unit in which a plain number of the document is shown. */
  readonly unit?: 'W' | 'A' | 'V' | 'ohm' | 'Hz' | 's' | '%';
  /** How typed text becomes a member: a plain number, a list with a line for each entry, or text as it is. */
  readonly as?: 'number' | 'lines' | 'text';
  /** An empty text takes the member away. */
  readonly isOptional?: boolean;
  /** Paths whose faults are shown here, beside those of the field itself. */
  readonly covers?: readonly Path[];
}

/** Fields under a heading. */
export interface Group {
  readonly kind: 'group';
  readonly title: string;
  readonly nodes: readonly Node[];
  /** Whether it is shown open at first. */
  readonly isOpen?: boolean;
}

/** A list of alike entries, each with its nodes. */
export interface Entry {
  readonly title: string;
  readonly path: Path;
  readonly nodes: readonly Node[];
}

export interface List {
  readonly kind: 'list';
  readonly title: string;
  /** What one entry is called, such as `load`. */
  readonly one: string;
  readonly path: Path;
  /** Entries as the rows of a table, or each as a group of its own. */
  readonly layout: 'rows' | 'groups';
  readonly entries: readonly Entry[];
  /** What a new entry begins with. */
  readonly blank: unknown;
}

/** A sentence in a form. */
export interface Remark {
  readonly kind: 'remark';
  readonly text: string;
}

export type Node = Field | Group | List | Remark;

/** Text of a field, as it stands in the document. */
export function fieldText(document: unknown, field: Field): string {
  const value = valueAt(document, field.path);
  if (value === undefined || value === null) return '';
  if (field.as === 'lines') return Array.isArray(value) ? value.map(String).join('\n') : String(value);
  if (typeof value === 'number' && field.unit !== undefined && Number.isFinite(value)) {
    return formatQuantity(value, field.unit, { ascii: true });
  }
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}

/** The document after a text was typed into a field. */
export function withFieldText(document: unknown, field: Field, text: string): unknown {
  return withValueAt(document, field.path, memberOf(field, text));
}

function memberOf(field: Field, text: string): unknown {
  if (text.trim() === '' && (field.isOptional || field.choices?.some((choice) => choice.value === '')))
    return undefined;
  if (field.as === 'lines') {
    const lines = text.split('\n');
    // A line that is being begun is kept while it is typed.
    return lines.at(-1) === '' && lines.length > 1 ? lines : lines.filter((line) => line !== '');
  }
  if (field.as === 'number' && /^\s*[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i.test(text)) return Number(text);
  return text;
}

/** The document with one entry more in a list. */
export function withEntry(document: unknown, list: List): unknown {
  const entries = valueAt(document, list.path);
  return withValueAt(document, list.path, [...(Array.isArray(entries) ? entries : []), list.blank]);
}

/** The document without an entry of a list; an empty list goes too. */
export function withoutEntry(document: unknown, list: List, index: number): unknown {
  const entries = valueAt(document, list.path);
  if (!Array.isArray(entries)) return document;
  const rest = entries.filter((_, i) => i !== index);
  return withValueAt(document, list.path, rest.length === 0 ? undefined : rest);
}

/** The faults that belong beside a field. */
export function faultsOf(field: Field, faults: readonly Fault[]): readonly Fault[] {
  const own = pathText(field.path);
  const covered = (field.covers ?? []).map(pathText);
  return faults.filter(
    ({ path }) => path === own || isBelow(path, own) || covered.some((place) => path === place || isBelow(path, place)),
  );
}

function isBelow(path: string, place: string): boolean {
  return path.startsWith(`${place}.`) || path.startsWith(`${place}[`);
}

/** All fields of a form, from the top down. */
export function fieldsOf(nodes: readonly Node[]): readonly Field[] {
  return nodes.flatMap((node): readonly Field[] => {
    switch (node.kind) {
      case 'field':
        return [node];
      case 'group':
        return fieldsOf(node.nodes);
      case 'list':
        return node.entries.flatMap((entry) => fieldsOf(entry.nodes));
      case 'remark':
        return [];
    }
  });
}

/** Whether a fault belongs beside one of the fields of some nodes. */
export function holdsFault(nodes: readonly Node[], faults: readonly Fault[]): boolean {
  return faults.length > 0 && fieldsOf(nodes).some((field) => faultsOf(field, faults).length > 0);
}

/** Identifier of a field in the page. */
export function fieldId(form: string, path: Path): string {
  return `${form}-${pathText(path).replace(/[^\w]+/g, '-')}`;
}
