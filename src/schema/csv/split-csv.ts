import Papa from 'papaparse';
import type { Fault } from '../../checks/index.js';
import { faultOf } from '../fault-list.js';

/** A row of a CSV text. */
export interface CsvRow {
  /** Line of the text on which the row begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** Characters that may stand between the cells of a row. */
export type Delimiter = ',' | ';' | '\t';

/** Splits a CSV text (RFC 4180) into rows that know their lines; rows without any text in them are left out. */
export function splitCsv(
  text: string,
  delimiter: Delimiter,
): { readonly rows: readonly CsvRow[]; readonly faults: readonly Fault[] } {
  const { data, errors } = Papa.parse(text, { delimiter, newline: '\n' });
  const lines: number[] = [];
  let line = 1;
  for (const cells of data) {
    lines.push(line);
    line += 1;
    for (const cell of cells) for (const character of cell) if (character === '\n') line++;
  }
  const broken = [...new Set(errors.map((error) => error.row ?? 0))];
  const faults = broken.map((row) => {
    const requirement = 'must close every quotation mark that it opens, and double those inside a cell';
    return faultOf('csv-malformed', `line ${lines[row] ?? 1}`, (data[row] ?? []).join(delimiter), requirement);
  });
  const rows = data.map((cells, i) => ({ line: lines[i] as number, cells: cells.map(trimmed) }));
  return { rows: rows.filter(({ cells }) => cells.some((cell) => cell !== '')), faults };
}

/** One kind of line end and no byte-order mark: what comes from any spreadsheet. */
export function plainLines(text: string): string {
  return text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
}

function trimmed(cell: string): string {
  return cell.replace(/^[ \t\u00a0\u202f]+|[ \t\u00a0\u202f]+$/g, '');
}
