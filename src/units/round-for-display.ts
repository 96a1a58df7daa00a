import { fail, requireChoice, requireInteger, requirePositive } from '../checks/index.js';
import { choosePrefix, type Prefix } from './choose-prefix.js';
import { type Decimal, magnitudeOf, roundDecimal, shortestDecimal } from './decimal.js';
import type { SignedDecimal } from './display-decimal.js';
import type { FormatOptions } from './format-options.js';
import type { UnitEntry } from './vocabulary.js';

/** The digits that are printed, and the prefix that suits them after rounding. */
export function roundForDisplay(
  decimal: SignedDecimal,
  entry: UnitEntry,
  options: FormatOptions,
): { decimal: Decimal; prefix: Prefix } {
  const rounding = requireRounding(options, decimal.negative);
  let prefix = choosePrefix(decimal, entry, options.prefix);
  if (rounding === undefined) {
    return { decimal: decimal.digits === 0n ? { digits: 0n, exponent: prefix.exponent } : decimal, prefix };
  }
  let result = roundToStep(decimal, stepOf(decimal, prefix, entry, options), rounding);
  const carried = choosePrefix(result, entry, options.prefix);
  if (result.digits !== 0n && carried.exponent !== prefix.exponent) {
    // 999.96 mA is 1.00 A: decimals count anew behind the new prefix.
    prefix = carried;
    result = roundToStep(decimal, stepOf(decimal, prefix, entry, options), rounding);
  }
  // One digit more than was asked for came from a carry, and is a zero: 9.96 is 10, not 10.0.
  const excess = options.digits !== undefined && String(result.digits).length > options.digits;
  return { decimal: excess ? { digits: result.digits / 10n, exponent: result.exponent + 1 } : result, prefix };
}

function roundToStep(decimal: Decimal, step: Decimal, rounding: 'nearest' | 'down' | 'up'): Decimal {
  return decimal.digits === 0n ? { digits: 0n, exponent: step.exponent } : roundDecimal(decimal, step, rounding);
}

function stepOf(decimal: Decimal, prefix: Prefix, entry: UnitEntry, options: FormatOptions): Decimal {
  const { digits, decimals, resolution } = options;
  if (digits !== undefined) {
    return { digits: 1n, exponent: decimal.digits === 0n ? prefix.exponent : magnitudeOf(decimal) - digits + 1 };
  }
  if (decimals !== undefined) return { digits: 1n, exponent: prefix.exponent - decimals };
  const step = shortestDecimal(resolution as number);
  return { digits: step.digits, exponent: step.exponent - (entry.exponent ?? 0) };
}

/** The direction for the magnitude; undefined if nothing is to be rounded. */
function requireRounding(options: FormatOptions, negative: boolean): 'nearest' | 'down' | 'up' | undefined {
  const { digits, decimals, resolution, rounding } = options;
  const given = [digits, decimals, resolution].filter((rule) => rule !== undefined).length;
  if (given > 1) fail('wrong-count', 'digits', given, 'only one of digits, decimals and resolution may be given');
  if (given === 0) {
    if (rounding === undefined) return undefined;
    fail('wrong-count', 'rounding', rounding, 'must come with digits, decimals or resolution');
  }
  if (digits !== undefined) requireInteger(digits, 'digits', 1, 20);
  if (decimals !== undefined) requireInteger(decimals, 'decimals', 0, 20);
  if (resolution !== undefined) requirePositive(resolution, 'resolution');
  requireChoice(rounding as 'nearest', 'rounding', ['nearest', 'down', 'up'] as never);
  if (rounding === 'nearest' || !negative) return rounding;
  return rounding === 'up' ? 'down' : 'up';
}
