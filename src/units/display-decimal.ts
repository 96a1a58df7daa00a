import { fail } from '../checks/index.js';
import { alignDecimals, type Decimal, shortestDecimal, stripZeros } from './decimal.js';
import type { DisplayUnit } from './format-options.js';
import { type UnitEntry, unitVocabulary } from './vocabulary.js';

/** A decimal with its sign. */
export interface SignedDecimal extends Decimal {
  readonly negative: boolean;
}

/** The entry of a unit that can be printed, or an error. */
export function displayEntry(unit: DisplayUnit): UnitEntry {
  const entry = unitVocabulary.find(
    ({ symbols, quantity }) => symbols.includes(unit) || (unit === '1' && quantity === 'number'),
  );
  if (entry === undefined || entry.factor !== undefined) {
    return fail('unknown-choice', 'unit', unit, 'must be W, A, V, ohm, Hz, s, H, F, K, °C, m, % or 1');
  }
  return entry;
}

/** The value as the decimal that stands before the unit without prefix: percent of a fraction, Celsius of kelvins. */
export function displayDecimal(value: number, { exponent = 0, offsetHundredths }: UnitEntry): SignedDecimal {
  const negative = value < 0;
  const { digits, exponent: own } = shortestDecimal(Math.abs(value));
  if (offsetHundredths === undefined) return { digits, exponent: own - exponent, negative };
  // Subtracted exactly as decimals, so that the sum that the reader forms is the same decimal again.
  const aligned = alignDecimals({ digits, exponent: own }, { digits: BigInt(offsetHundredths), exponent: -2 });
  const difference = aligned.a - aligned.b;
  return difference < 0n
    ? { ...stripZeros({ digits: -difference, exponent: aligned.exponent }), negative: true }
    : { ...stripZeros({ digits: difference, exponent: aligned.exponent }), negative: false };
}
