import type { Cell, Table } from './sheet.js';

/**
 * Digits of each column with blanks behind, so that the points of right-aligned numbers stand under each other.
 * Only columns with one unit: a unit behind the digits would move them.
 *
 * @param table The table
 * @param blanks What stands for a missing decimal and for a missing point
 * @returns For each column a function from a number cell's digits to its text
 */
export function alignDecimals(
  table: Table,
  blanks: { readonly digit: string; readonly point: string },
): readonly ((digits: string) => string)[] {
  return table.columns.map((column, i) => {
    const cells = table.groups.flatMap((group) => group.rows.map((row) => row.cells[i] as Cell));
    const numbers = cells.flatMap((cell) => (cell.kind === 'number' && cell.unit === undefined ? [cell.digits] : []));
    const most = numbers.reduce((longest, digits) => Math.max(longest, decimals(digits)), 0);
    if (column.unit === undefined || most === 0 || most > 6) return (digits) => digits;
    return (digits) => {
      const own = decimals(digits);
      return digits + (own === 0 ? blanks.point : '') + blanks.digit.repeat(most - own);
    };
  });
}

function decimals(digits: string): number {
  return /^[^.e]*\.(\d+)$/.exec(digits)?.[1]?.length ?? 0;
}
