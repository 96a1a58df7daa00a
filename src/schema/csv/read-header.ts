import { type Fault, nearName } from '../../checks/index.js';
import { safeParseQuantity } from '../../units/index.js';
import { faultOf } from '../fault-list.js';
import type { HeaderRules } from './header-rules.js';
import { type Delimiter, splitCsv } from './split-csv.js';

/** Where a column stands, and the unit that its header gives to all its cells. */
export interface Column {
  /** Index of the cell, from 0. */
  readonly index: number;
  readonly unit?: string;
}

/** The columns of a sheet that are read. */
export type Header<N extends string> = ReadonlyMap<N, Column>;

/** Finds the columns by the names in the first row. */
export function readHeader<N extends string>(
  cells: readonly string[],
  line: number,
  rules: HeaderRules<N>,
): { readonly header: Header<N>; readonly faults: readonly Fault[] } {
  const known = new Map<string, N>(rules.names.map((name) => [plainName(name), name]));
  const informative = new Set(rules.informative.map(plainName));
  const header = new Map<N, Column>();
  const faults: Fault[] = [];
  cells.forEach((cell, index) => {
    const place = `line ${line}, column ${index + 1}`;
    const { plain, unit } = splitUnit(cell);
    const name = known.get(plain);
    if (name === undefined) {
      if (plain !== '' && !informative.has(plain)) faults.push(unknownColumn(place, cell, plain, rules));
    } else if (header.has(name)) {
      faults.push(faultOf('duplicate', place, cell, 'must stand only once in the header'));
    } else {
      header.set(name, { index, ...(unit === undefined ? {} : { unit }) });
      if (unit !== undefined) faults.push(...unitFaults(rules, name, unit, `${place} (${name})`));
    }
  });
  for (const name of rules.required) {
    if (header.has(name)) continue;
    const hint = 'Cells are separated by commas, semicolons or tabs, and the first row names the columns.';
    faults.push(faultOf('missing-member', `line ${line}`, cells.join(' '), `must have a column "${name}"`, hint));
  }
  return { header, faults };
}

/** The delimiter under which the first line names the most columns; a comma when none names any. */
export function findDelimiter<N extends string>(text: string, { names, informative }: HeaderRules<N>): Delimiter {
  const known = new Set([...names, ...informative].map(plainName));
  const first = /^\s*(.*)/.exec(text)?.[1] ?? '';
  const count = (delimiter: Delimiter): number => {
    const cells = splitCsv(first, delimiter).rows[0]?.cells ?? [];
    return cells.filter((cell) => known.has(splitUnit(cell).plain)).length;
  };
  const delimiters: readonly Delimiter[] = [',', ';', '\t'];
  return delimiters.reduce((best, delimiter) => (count(delimiter) > count(best) ? delimiter : best));
}

/** A name in the header without what makes no difference, and the unit in brackets after it. */
function splitUnit(cell: string): { readonly plain: string; readonly unit?: string } {
  const [, name = '', unit] = /^([^[(]*)(?:[[(]([^\])]*)[\])])?\s*$/.exec(cell) ?? [cell, cell];
  return { plain: plainName(name), ...(unit === undefined ? {} : { unit: unit.trim() }) };
}

function plainName(name: string): string {
  return name.toLowerCase().replace(/[\s_-]/g, '');
}

function unitFaults<N extends string>(
  { units }: HeaderRules<N>,
  name: N,
  unit: string,
  place: string,
): readonly Fault[] {
  const kinds = units[name];
  if (kinds === undefined) return [faultOf('unit-mismatch', place, unit, 'must have no unit')];
  const read = safeParseQuantity(`1 ${unit}`, { expect: kinds, form: 'any' });
  if (read.ok) return [];
  return [faultOf(read.fault.code, place, unit, `must be a unit of ${kinds.join(' or ')}`)];
}

function unknownColumn<N extends string>(place: string, cell: string, plain: string, rules: HeaderRules<N>): Fault {
  const near = nearName(plain, rules.names);
  const { besides = '' } = rules;
  return faultOf(
    'unknown-member',
    place,
    cell,
    `must be one of the columns that are read (${rules.names.join(', ')})${besides}`,
    near === undefined ? undefined : `Did you mean "${near}"?`,
  );
}
