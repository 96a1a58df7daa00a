import { fail } from '../checks/index.js';
import { type Decimal, magnitudeOf } from './decimal.js';
import { displayDecimal, displayEntry } from './display-decimal.js';
import type { DisplayUnit, FormatOptions } from './format-options.js';
import { type PrefixSymbol, prefixVocabulary, type UnitEntry } from './vocabulary.js';

/** A prefix and its power of ten. */
export interface Prefix {
  readonly symbol: PrefixSymbol;
  readonly exponent: number;
}

/** The prefix that suits a value, as `formatQuantity` chooses it without rounding. */
export function fittingPrefix(value: number, unit: DisplayUnit): Prefix {
  const entry = displayEntry(unit);
  return choosePrefix(displayDecimal(value, entry), entry, 'auto');
}

/** The prefix that is asked for, or the one that leaves 1 to 999 before the point. */
export function choosePrefix(decimal: Decimal, entry: UnitEntry, wanted: FormatOptions['prefix']): Prefix {
  if (wanted !== undefined && wanted !== 'auto') {
    const symbol = wanted === 'none' ? '' : wanted;
    if (!entry.prefixes.includes(symbol)) {
      fail(
        'unknown-choice',
        'prefix',
        wanted,
        `must be one of: auto, none, ${entry.prefixes.filter(Boolean).join(', ')}`,
      );
    }
    return prefixVocabulary.find((prefix) => prefix.symbol === symbol) as Prefix;
  }
  const magnitude = magnitudeOf(decimal);
  let chosen: Prefix | undefined;
  for (const prefix of prefixVocabulary) {
    if (prefix.symbol === 'c' || !entry.prefixes.includes(prefix.symbol)) continue;
    if (chosen === undefined || prefix.exponent <= magnitude) chosen = prefix;
  }
  const above = magnitude - (chosen as Prefix).exponent;
  // Beyond the reach of every prefix none helps; zero needs none.
  return above >= -3 && above <= 5 ? (chosen as Prefix) : { symbol: '', exponent: 0 };
}
