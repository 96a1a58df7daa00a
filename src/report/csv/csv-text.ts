import Papa from 'papaparse';
import { escapeSpreadsheet } from '../escape/escape-spreadsheet.js';
import { plainText } from '../escape/plain-text.js';

/** How a sheet is written as CSV. */
export interface CsvOptions {
  /** A byte-order mark at the start: some spreadsheets need it to read letters beyond ASCII. Default: false. */
  readonly byteOrderMark?: boolean;
}

/** A cell: a number stays a number, text is made safe for a spreadsheet, undefined is empty. */
export type CsvCell = number | string | undefined;

/** Rows as CSV (RFC 4180): commas, CRLF, cells quoted where they must be. */
export function csvText(header: readonly string[], rows: readonly (readonly CsvCell[])[], options: CsvOptions): string {
  const safe = rows.map((row) =>
    row.map((cell) => (typeof cell === 'string' ? escapeSpreadsheet(plainText(cell)) : (cell ?? ''))),
  );
  const mark = options.byteOrderMark === true ? '\ufeff' : '';
  return `${mark}${Papa.unparse([header, ...safe], { newline: '\r\n' })}\r\n`;
}
