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
  /**
   * How typed text becomes a member: a plain number, a list with a line for each entry, one value or two sides such as
   * `-2 ohm/+5 ohm`, or text as it is.
   */
  readonly as?: 'number' | 'lines' | 'sides' | 'text';
  /** An empty text takes the member away. */
  readonly isOptional?: boolean;
  /** Paths whose faults are shown here, beside those of the field itself. */
  readonly covers?: readonly Path[];
  /** Paths whose own faults are shown here, without those of what lies below them. */
  readonly speaksFor?: readonly Path[];
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
  if (field.as === 'lines' && Array.isArray(value)) return value.map((entry) => textOfValue(entry, field)).join('\n');
  if (field.as === 'sides' && typeof value === 'object') return textOfSides(value, field) ?? JSON.stringify(value);
  return textOfValue(value, field);
}

function textOfValue(value: unknown, { unit }: Field): string {
  if (typeof value === 'number' && unit !== undefined && Number.isFinite(value)) {
    return formatQuantity(value, unit, { ascii: true });
  }
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}

/** Two sides, or one of them, as they are typed; undefined where it is something else. */
function textOfSides(value: object, field: Field): string | undefined {
  const sides = Object.entries(value);
  if (sides.length === 0 || sides.some(([name]) => name !== 'below' && name !== 'above')) return undefined;
  return [...sides]
    .sort(([a], [b]) => b.localeCompare(a))
    .map(([name, side]) => `${name === 'below' ? '-' : '+'}${textOfValue(side, field)}`)
    .join('/');
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
  if (field.as === 'sides') return sidesOf(text) ?? text;
  if (field.as === 'number' && /^\s*[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i.test(text)) return Number(text);
  return text;
}

/** What is typed with its signs has sides; anything else is one value, or not yet finished. */
function sidesOf(text: string): { below?: string; above?: string } | undefined {
  const [, below, above] = /^(?:[-\u2212]([^/+]*\d[^/+]*))?(?:\/?\+([^/]*\d[^/]*))?$/.exec(text) ?? [];
  if (below === undefined && above === undefined) return undefined;
  if (below !== undefined && above !== undefined && !text.includes('/')) return undefined;
  if (below === undefined && text.startsWith('/')) return undefined;
  return { ...(below === undefined ? {} : { below }), ...(above === undefined ? {} : { above }) };
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
  const spokenFor = (field.speaksFor ?? []).map(pathText);
  return faults.filter(
    ({ path }) =>
      path === own ||
      spokenFor.includes(path) ||
      isBelow(path, own) || covered.some((place) => path === place || isBelow(path, place)),
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
