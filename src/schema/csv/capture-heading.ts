import type { Fault } from '../../checks/index.js';
import { type QuantityKind, safeParseQuantity } from '../../units/index.js';
import { faultOf, type ParseResult } from '../fault-list.js';
import { looksNumeric } from './capture-number.js';
import type { CsvRow } from './split-csv.js';

/** What a column of a capture holds. */
export type CaptureColumn = 'time' | 'voltage' | 'current' | 'skip';

/** A column that is read. */
export interface CapturePlace {
  /** Index of the cell, from 0. */
  readonly index: number;
  /** SI value of one unit of the column. */
  readonly unit: number;
}

/** The columns that are read. */
export type CapturePlaces = Readonly<Partial<Record<Exclude<CaptureColumn, 'skip'>, CapturePlace>>>;

const unitWords: Readonly<Record<string, string>> = {
  volt: 'V',
  volts: 'V',
  ampere: 'A',
  amperes: 'A',
  amp: 'A',
  amps: 'A',
  second: 's',
  seconds: 's',
  sec: 's',
};

const columnOf: Partial<Record<QuantityKind, CaptureColumn>> = { time: 'time', voltage: 'voltage', current: 'current' };

/** A unit in words or symbols, with what it is a unit of; undefined where it is none of time, voltage and current. */
export function unitIn(text: string): { readonly column: CaptureColumn; readonly unit: number } | undefined {
  const plain = text.trim().replace(/^[([]|[)\]]$/g, '');
  if (plain === '') return undefined;
  const read = safeParseQuantity(`1 ${unitWords[plain.toLowerCase()] ?? plain}`, {
    expect: ['time', 'voltage', 'current'],
    form: 'any',
  });
  if (!read.ok) return undefined;
  const column = columnOf[read.value.quantity as QuantityKind];
  return column && { column, unit: read.value.value };
}

/** A heading without its unit, and the unit in brackets after it. */
export function splitHeading(cell: string): { readonly name: string; readonly unit: string } {
  const [, name = '', unit = ''] = /^(.*?)\s*(?:\[([^\]]*)\]|\(([^)]*)\))?\s*$/.exec(cell) ?? [];
  const round = /\(([^)]*)\)\s*$/.exec(cell)?.[1];
  return { name: name.toLowerCase().trim(), unit: unit === '' ? (round ?? '') : unit };
}

/**
 * Finds what each column holds: as stated, or from the rows above the numbers, of which one may name the columns and one
 * hold their units.
 */
export function findColumns(
  above: readonly CsvRow[],
  width: number,
  stated: readonly CaptureColumn[] | undefined,
  line: number,
): ParseResult<CapturePlaces> {
  const headings = headingsOf(above, width);
  const faults: Fault[] = [];
  const places: Partial<Record<CaptureColumn, CapturePlace>> = {};
  if (stated !== undefined && stated.length !== width) {
    faults.push(faultOf('wrong-count', 'columns', stated.length, `must name each of the ${width} columns`));
  }
  for (let index = 0; index < width; index++) {
    const heading = headings[index];
    const column = stated?.[index] ?? (heading && columnFrom(heading));
    if (column === undefined || column === 'skip') continue;
    if (places[column] !== undefined) {
      const hint = 'Say by the option "columns" which column holds what; others are to be skipped.';
      faults.push(
        faultOf('duplicate', place(line, index), heading?.name, `must be the only column of ${column}`, hint),
      );
      continue;
    }
    // A current probe shows volts: what is stated outweighs the unit, and the probe factor is given to the analysis.
    places[column] = { index, unit: heading?.unit?.unit ?? 1 };
  }
  if (faults.length === 0 && places.voltage === undefined && places.current === undefined) {
    const hint = 'Say by the option "columns" what each column holds.';
    const seen = headings.map(({ name }) => name).join(', ');
    faults.push(faultOf('missing-member', `line ${line}`, seen, 'must have a column of volts or amperes', hint));
  }
  return faults.length === 0 ? { ok: true, value: places } : { ok: false, faults };
}

/** Cells above a column: its name, and its unit in a row of units or in brackets after the name. */
interface Heading {
  readonly name: string;
  readonly unit: ReturnType<typeof unitIn>;
}

/** The last rows above the numbers: one of names, one of units, or both, as far as they have a cell for each column. */
function headingsOf(above: readonly CsvRow[], width: number): readonly Heading[] {
  const fits = ({ cells }: CsvRow): boolean =>
    cells.length >= width && cells.slice(width).every((cell) => cell === '') && !cells.some(looksNumeric);
  const last = above.at(-1);
  const before = above.at(-2);
  if (last === undefined || !fits(last)) return [];
  // A lone A or V is a unit only among units: it may as well be the name of a channel.
  const isUnits = last.cells.every((cell) => cell === '' || unitIn(cell) !== undefined);
  const names = isUnits ? (before !== undefined && fits(before) ? before.cells : []) : last.cells;
  return Array.from({ length: width }, (_, index) => {
    const { name, unit } = splitHeading(names[index] ?? '');
    return { name, unit: (isUnits ? unitIn(last.cells[index] ?? '') : undefined) ?? unitIn(unit) };
  });
}

function columnFrom({ name, unit }: Heading): CaptureColumn | undefined {
  if (unit !== undefined) return unit.column;
  if (/^(time|t)$/.test(name)) return 'time';
  if (/\bvoltage\b/.test(name)) return 'voltage';
  return /\bcurrent\b/.test(name) ? 'current' : undefined;
}

/** A cell, as faults name it. */
export function place(line: number, index: number): string {
  return `line ${line}, column ${index + 1}`;
}
