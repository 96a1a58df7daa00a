import { formatQuantity } from '../../units/index.js';
import type { PrintUnit } from './print-unit.js';

/** Direction in which a printed number may differ from its value. */
export type PrintDirection = 'nearest' | 'down' | 'up';

/** A value in a unit with a fixed count of decimals, without the unit; the minus is a true one. */
export function fixedText(
  value: number,
  unit: PrintUnit,
  decimals: number,
  rounding: PrintDirection = 'nearest',
): string {
  return digitsOf(formatQuantity(value, unit.si, { prefix: unit.prefix, decimals, rounding }));
}

/** A value in a unit with all its digits. */
export function exactText(value: number, unit: PrintUnit): string {
  return digitsOf(formatQuantity(value, unit.si, { prefix: unit.prefix }));
}

/** How many decimals a value in a unit needs to be written in full. */
export function decimalsNeeded(value: number, unit: PrintUnit): number {
  const [mantissa = '', exponent = '0'] = exactText(value, unit).split('e');
  const fraction = mantissa.split('.')[1] ?? '';
  return Math.max(0, fraction.length - Number(exponent.replace('\u2212', '-')));
}

function digitsOf(quantity: string): string {
  return (quantity.split(' ')[0] as string).replace(/-/g, '\u2212');
}
