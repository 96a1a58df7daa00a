/**
 * Text for a spreadsheet cell: an apostrophe goes before text that a spreadsheet would run as a formula.
 * Genuine numbers are given to the CSV writer as numbers and never come here.
 */
export function escapeSpreadsheet(text: string): string {
  // A tab or a carriage return at the start, blanks before the sign and the full-width signs also start formulas.
  return /^[\t\r\n]|^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(text) ? `'${text}` : text;
}
