/** How numbers are written in a capture. */
export type DecimalMark = '.' | ',';

const withPoint = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const withComma = /^[+-]?(?:\d+,?\d*|,\d+)(?:[eE][+-]?\d+)?$/;

/** Whether a cell looks like a number, with either mark. */
export function looksNumeric(cell: string): boolean {
  return withPoint.test(cell) || withComma.test(cell);
}

/** The number in a cell, or undefined where there is none or it is beyond the range of numbers. */
export function numberIn(cell: string, mark: DecimalMark): number | undefined {
  if (!(mark === '.' ? withPoint : withComma).test(cell)) return undefined;
  const value = Number(mark === '.' ? cell : cell.replace(',', '.'));
  return Number.isFinite(value) ? value : undefined;
}

/** One step of the last digit of a number as it is written: 1e-9 for 1.250E-06. */
export function lastDigit(cell: string): number {
  const [, decimals = '', exponent = '0'] = /^[^.,eE]*(?:[.,](\d*))?(?:[eE]([+-]?\d+))?$/.exec(cell) ?? [];
  return 10 ** (Number(exponent) - decimals.length);
}

/**
 * The decimal mark of cells that no comma separates: a comma only where there is no point, and where one number at least
 * shows that it does not part thousands (0,125 or 1,25, not 1,250). Undefined where that cannot be told.
 */
export function decimalMarkOf(cells: Iterable<string>): DecimalMark | undefined {
  let point = false;
  let comma = false;
  let plain = false;
  for (const cell of cells) {
    if (cell.includes('.')) point = true;
    if (!cell.includes(',')) continue;
    comma = true;
    plain ||= !/^[+-]?[1-9]\d{0,2},\d{3}$/.test(cell);
  }
  if (!comma) return '.';
  return point || !plain ? undefined : ',';
}
