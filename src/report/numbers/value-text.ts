import { fixedText } from './fixed-text.js';
import { type PrintKind, type PrintUnit, unitFor } from './print-unit.js';

/** A value in one unit to so many significant digits, without trailing zeros; far from a bench's numbers with an exponent. */
export function significantDigits(value: number, unit: PrintUnit, digits: number): string {
  if (value === 0) return '0';
  const magnitude = Math.abs(value) * 10 ** unit.shift;
  if (!isOrdinary(magnitude)) return (value * 10 ** unit.shift).toExponential(digits - 1).replace(/-/g, '\u2212');
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(magnitude)));
  const text = fixedText(value, unit, decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** Whether a number can be written without exponent in a column. */
export function isOrdinary(magnitude: number): boolean {
  return magnitude < 1e9 && magnitude >= 1e-6;
}

/** A value with its unit in the form that a technician writes: `750 mA`, `1.13 A`, `500 Ω`. */
export function valueText(value: number, kind: PrintKind, digits = 4): string {
  const unit = unitFor(kind, [value]);
  return `${significantDigits(value, unit, digits)} ${unit.symbol}`;
}
