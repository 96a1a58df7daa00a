import { type Fault, nearName } from '../../checks/index.js';
import { type QuantityKind, safeParseQuantity } from '../../units/index.js';
import { faultOf } from '../fault-list.js';
import { informativeColumns, type ReadingsColumnName, readingsColumns } from './readings-columns.js';
import { type Delimiter, splitCsv } from './split-csv.js';

/** Where a column stands, and the unit that its header gives to all its cells. */
export interface Column {
  /** Index of the cell, from 0. */
  readonly index: number;
  readonly unit?: string;
}

/** The columns of a sheet that are read. */
export type Header = ReadonlyMap<ReadingsColumnName, Column>;

const known = new Map<string, ReadingsColumnName>(readingsColumns.map(({ name }) => [plainName(name), name]));
const informative = new Set(informativeColumns.map(plainName));

/** Quantities that a unit in the header may be of. */
const unitsOf: Partial<Record<ReadingsColumnName, readonly QuantityKind[]>> = {
  reading: ['power', 'current', 'voltage'],
  display: ['power', 'current', 'voltage'],
  'peak voltage': ['voltage'],
  set: ['resistance'],
};

/** Finds the columns by the names in the first row. */
export function readHeader(
  cells: readonly string[],
  line: number,
): { readonly header: Header; readonly faults: readonly Fault[] } {
  const header = new Map<ReadingsColumnName, Column>();
  const faults: Fault[] = [];
  cells.forEach((cell, index) => {
    const place = `line ${line}, column ${index + 1}`;
    const { plain, unit } = splitUnit(cell);
    const name = known.get(plain);
    if (name === undefined) {
      if (plain !== '' && !informative.has(plain)) faults.push(unknownColumn(place, cell, plain));
    } else if (header.has(name)) {
      faults.push(faultOf('duplicate', place, cell, 'must stand only once in the header'));
    } else {
      header.set(name, { index, ...(unit === undefined ? {} : { unit }) });
      if (unit !== undefined) faults.push(...unitFaults(name, unit, `${place} (${name})`));
    }
  });
  for (const name of ['point', 'reading'] as const) {
    if (header.has(name)) continue;
    const hint = 'Cells are separated by commas, semicolons or tabs, and the first row names the columns.';
    faults.push(faultOf('missing-member', `line ${line}`, cells.join(' '), `must have a column "${name}"`, hint));
  }
  return { header, faults };
}

/** The delimiter under which the first line names the most columns; a comma when none names any. */
export function findDelimiter(text: string): Delimiter {
  const first = /^\s*(.*)/.exec(text)?.[1] ?? '';
  const count = (delimiter: Delimiter): number => {
    const cells = splitCsv(first, delimiter).rows[0]?.cells ?? [];
    return cells.map((cell) => splitUnit(cell).plain).filter((name) => known.has(name) || informative.has(name)).length;
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

function unitFaults(name: ReadingsColumnName, unit: string, place: string): readonly Fault[] {
  const kinds = unitsOf[name];
  if (kinds === undefined) return [faultOf('unit-mismatch', place, unit, 'must have no unit')];
  const read = safeParseQuantity(`1 ${unit}`, { expect: kinds, form: 'any' });
  if (read.ok) return [];
  return [faultOf(read.fault.code, place, unit, `must be a unit of ${kinds.join(' or ')}`)];
}

function unknownColumn(place: string, cell: string, plain: string): Fault {
  const near = nearName(
    plain,
    readingsColumns.map(({ name }) => name),
  );
  const names = readingsColumns.map(({ name }) => name).join(', ');
  return faultOf(
    'unknown-member',
    place,
    cell,
    `must be one of the columns that are read (${names}) or that a worksheet prints`,
    near === undefined ? undefined : `Did you mean "${near}"?`,
  );
}
