import { decimalsNeeded, exactText, fixedText } from './fixed-text.js';
import type { PrintUnit } from './print-unit.js';
import { isOrdinary, significantDigits } from './value-text.js';

/**
 * A limit in digits that an instrument of this resolution shows. A limit that is no such value is printed
 * with more digits and turned inward: what is printed is never looser than the limit.
 */
export function limitDigits(
  limit: number,
  side: 'lower' | 'upper',
  unit: PrintUnit,
  resolution: number | undefined,
): string {
  const magnitude = Math.abs(limit) * 10 ** unit.shift;
  if (limit !== 0 && !isOrdinary(magnitude)) return exactText(limit, unit);
  // A multiple of the resolution may carry the dust of binary arithmetic: 0.8430000000000001 A is 843 mA.
  const tidy = Number(limit.toPrecision(12));
  const needed = decimalsNeeded(tidy, unit);
  const shown = resolution === undefined ? 0 : decimalsNeeded(resolution, unit);
  if (needed <= shown) return fixedText(tidy, unit, resolution === undefined ? needed : shown);
  const six = Math.max(0, 5 - Math.floor(Math.log10(magnitude)));
  const decimals = Math.min(needed, Math.max(six, shown));
  return fixedText(decimals === needed ? tidy : limit, unit, decimals, side === 'lower' ? 'up' : 'down');
}

/**
 * A reading with the decimals of the resolution, or with as many more as it takes that its printed digits
 * lie on the same side of the printed limits as the reading of the limits.
 *
 * @param limits The digits of the limits, as `limitDigits` gives them
 */
export function readingDigits(
  value: number,
  unit: PrintUnit,
  resolution: number | undefined,
  limits: { readonly lower?: string; readonly upper?: string },
): string {
  if (value !== 0 && !isOrdinary(Math.abs(value) * 10 ** unit.shift)) return significantDigits(value, unit, 6);
  const needed = Math.min(decimalsNeeded(value, unit), 12);
  let decimals = resolution === undefined ? Math.min(needed, 3) : decimalsNeeded(resolution, unit);
  const side = sideOf(fixedText(value, unit, needed), limits);
  while (decimals < needed && sideOf(fixedText(value, unit, decimals), limits) !== side) decimals++;
  return fixedText(value, unit, decimals);
}

function sideOf(digits: string, { lower, upper }: { readonly lower?: string; readonly upper?: string }): number {
  const value = numberOf(digits);
  if (lower !== undefined && value < numberOf(lower)) return -1;
  return upper !== undefined && value > numberOf(upper) ? 1 : 0;
}

function numberOf(digits: string): number {
  return Number(digits.replace(/\u2212/g, '-'));
}
