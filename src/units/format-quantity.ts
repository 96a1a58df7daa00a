import { fail, requireChoice, requireFinite, requireInteger, requirePositive } from '../checks/index.js';
import { alignDecimals, type Decimal, magnitudeOf, roundDecimal, shortestDecimal, stripZeros } from './decimal.js';
import { hasForm } from './spellings.js';
import { type PrefixSymbol, prefixVocabulary, type SiUnit, type UnitEntry, unitVocabulary } from './vocabulary.js';

/** Unit of a printed value: an SI unit, or `%` for a fraction, or `°C` for kelvins. */
export type DisplayUnit = SiUnit | '%' | '°C';

/** How a value is printed. Without `digits`, `decimals` or `resolution` it is printed exactly. */
export interface FormatOptions {
  /** Significant digits, 1 to 20. */
  readonly digits?: number;
  /** Digits after the point of the printed number, 0 to 20. */
  readonly decimals?: number;
  /** Step in the SI unit, greater than 0: 0.001 with a current prints whole milliamperes. */
  readonly resolution?: number;
  /**
   * Direction of rounding, needed with `digits`, `decimals` or `resolution`: `down` is towards minus infinity, `up`
   * towards plus infinity, `nearest` takes a tie away from zero. It works on the decimal that stands for the value, so
   * 0.843 A is 843 mA in every direction.
   */
  readonly rounding?: 'nearest' | 'down' | 'up';
  /** The fitting prefix, no prefix, or a given one. Default: `auto`. */
  readonly prefix?: 'auto' | 'none' | PrefixSymbol;
  /** Written behind a current or a voltage: a peak value says so. Default: `rms`, which is not written. */
  readonly form?: 'rms' | 'peak' | 'peak-to-peak';
  /** Whether `ohm`, `u` and `degC` are written in place of `Ω`, `µ` and `°C`. Default: false. */
  readonly ascii?: boolean;
}

/** Kelvins that are printed in °C: beyond, the exact decimal difference to 273.15 has too many digits. */
const smallestCelsius = 1e-9;
const largestCelsius = 1e15;

/**
 * Prints a value with its unit, in text that `parseQuantity` reads.
 *
 * Without rounding the text is the shortest that reads back to exactly the same number. Numbers too large or too small
 * for any prefix get an exponent.
 *
 * @param value Value in the SI unit; a fraction for `%`, kelvins for `°C`
 * @param unit Unit to print
 * @param options Rounding, prefix, form, characters
 * @returns Text such as `750 mA`
 * @throws CalculationError `not-a-number`, `unknown-choice`, `not-an-integer`, `out-of-range`, `not-positive`,
 * `wrong-count`, `form-mismatch`
 * @accuracy Exact: parse(print(x)) = x without rounding
 * @example
 * ```ts
 * import { formatQuantity } from 'esu-limits';
 * formatQuantity(0.75, 'A'); // → "750 mA"
 * formatQuantity(1234.5, 'ohm', { digits: 2, rounding: 'nearest' }); // → "1.2 kΩ"
 * formatQuantity(0.84301, 'A', { resolution: 0.001, rounding: 'up' }); // → "844 mA"
 * formatQuantity(3200, 'V', { form: 'peak' }); // → "3.2 kV peak"
 * formatQuantity(0.2, '%'); // → "20 %"
 * ```
 */
export function formatQuantity(value: number, unit: DisplayUnit, options: FormatOptions = {}): string {
  const entry = displayEntry(unit);
  const form = options.form ?? 'rms';
  requireChoice(form, 'form', ['rms', 'peak', 'peak-to-peak']);
  if (form !== 'rms' && !hasForm(entry)) fail('form-mismatch', 'form', form, `must be absent for ${entry.quantity}`);
  requireFinite(value, 'value');
  const celsius = entry.offsetHundredths !== undefined && value !== 0;
  if (celsius && !(value >= smallestCelsius && value <= largestCelsius)) {
    fail('out-of-range', 'value', value, `must be 0 K or from ${smallestCelsius} to ${largestCelsius} K to be in °C`);
  }
  const exact = displayDecimal(value, entry);
  const { decimal, prefix } = roundForDisplay(exact, entry, options);
  const number = decimalText({ digits: decimal.digits, exponent: decimal.exponent - prefix.exponent });
  if (number.length > 60) fail('out-of-range', 'resolution', options.resolution, 'is too fine to print the value');
  const sign = exact.negative && decimal.digits !== 0n ? '-' : '';
  const symbol = (options.ascii === true ? entry.symbols[1] : undefined) ?? entry.symbols[0];
  const before = options.ascii === true && prefix.symbol === 'µ' ? 'u' : prefix.symbol;
  return `${sign}${number} ${before}${symbol}${form === 'rms' ? '' : ` ${form}`}`.trimEnd();
}

/** The prefix that suits a value, as `formatQuantity` chooses it without rounding. */
export function fittingPrefix(value: number, unit: DisplayUnit): Prefix {
  const entry = displayEntry(unit);
  return choosePrefix(displayDecimal(value, entry), entry, 'auto');
}

/** A prefix and its power of ten. */
export interface Prefix {
  readonly symbol: PrefixSymbol;
  readonly exponent: number;
}

interface SignedDecimal extends Decimal {
  readonly negative: boolean;
}

function displayEntry(unit: DisplayUnit): UnitEntry {
  const entry = unitVocabulary.find(
    ({ symbols, quantity }) => symbols.includes(unit) || (unit === '1' && quantity === 'number'),
  );
  if (entry === undefined || entry.factor !== undefined) {
    return fail('unknown-choice', 'unit', unit, 'must be W, A, V, ohm, Hz, s, H, F, K, °C, m, % or 1');
  }
  return entry;
}

/** The value as the decimal that stands before the unit without prefix: percent of a fraction, Celsius of kelvins. */
function displayDecimal(value: number, { exponent = 0, offsetHundredths }: UnitEntry): SignedDecimal {
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

function choosePrefix(decimal: Decimal, entry: UnitEntry, wanted: FormatOptions['prefix']): Prefix {
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

/** The digits that are printed, and the prefix that suits them after rounding. */
function roundForDisplay(
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

/** Digits with their point, or with an exponent where the point would be far away. */
function decimalText({ digits, exponent }: Decimal): string {
  const all = String(digits);
  const magnitude = all.length - 1 + exponent;
  if (digits === 0n) return exponent < 0 ? `0.${'0'.repeat(-exponent)}` : '0';
  if (magnitude > 20 || magnitude < -7) {
    const significant = all.length > 20 ? all.replace(/0+$/, '') : all;
    return `${significant[0]}${significant.length > 1 ? '.' : ''}${significant.slice(1)}e${magnitude}`;
  }
  if (exponent >= 0) return all + '0'.repeat(exponent);
  const padded = all.padStart(1 - exponent, '0');
  return `${padded.slice(0, exponent)}.${padded.slice(exponent)}`;
}
