import { alignDecimals, decimalOf, decimalToNumber } from './decimal.js';
import { type ParseResult, type Refusal, refuse } from './parse-result.js';
import { continuesNumber, refuseNumber } from './refuse-number.js';
import { refuseForm, refuseKind, refuseUnit } from './refuse-unit.js';
import { type NumberToken, scanNumber } from './scan-number.js';
import { findSpelling, type Spelling, splitForm, trimBlanks } from './spellings.js';
import type { QuantityForm, QuantityKind, SiUnit } from './vocabulary.js';

/** A quantity that was read from a text. */
export interface ParsedQuantity {
  /** Value in the SI unit; a fraction, not a percentage. */
  readonly value: number;
  /** What it is a value of. */
  readonly quantity: QuantityKind;
  /** SI unit of the value; `1` for a fraction or a plain number. */
  readonly unit: SiUnit;
  /** How a current or a voltage is stated: rms unless the text says otherwise. `plain` for other quantities. */
  readonly form: QuantityForm;
}

/** What a text must be. */
export interface QuantityOptions {
  /** The quantity, or the quantities, that the text may be a value of. Default: any. */
  readonly expect?: QuantityKind | readonly QuantityKind[];
  /**
   * How a current or a voltage must be stated; of no effect on other quantities. A text without a word for it is rms,
   * so where `peak` is asked for, the text must say so. Default: `rms` if `expect` is given, else `any`.
   */
  readonly form?: 'rms' | 'peak' | 'peak-to-peak' | 'any';
  /**
   * What a current or a voltage without a word for it is. For members whose name says peak: with `form` and `unmarked`
   * both `peak`, the text may leave the word out, and must not say `rms`. Default: `rms`.
   */
  readonly unmarked?: 'rms' | 'peak' | 'peak-to-peak';
  /** Where the text stands, for the error. Default: `text`. */
  readonly path?: string;
}

/** Longest text that is read as one quantity, in characters. */
const longestText = 100;

/**
 * Reads a number with its unit, and says what is wrong where it cannot: the twin of `parseQuantity` for input of people.
 *
 * @param text Text such as `750 mA`, `1.2 kΩ`, `430 kHz`, `20 %`, `1.5 kV peak`
 * @param options Quantity and form that are expected
 * @returns `{ ok: true, value }`, or `{ ok: false, fault }` with code, path, requirement and hint
 * @example
 * ```ts
 * import { safeParseQuantity } from 'esu-limits';
 * safeParseQuantity('750 mA').ok; // → true
 * safeParseQuantity('1,5 A').ok; // → false
 * ```
 */
export function safeParseQuantity(text: string, options?: QuantityOptions): ParseResult<ParsedQuantity> {
  const path = options?.path ?? 'text';
  if (typeof text !== 'string') return refuse('wrong-type', path, text, 'must be text with a number and a unit');
  if (text.length > longestText) {
    return refuse('text-too-long', path, text, `must have at most ${longestText} characters`);
  }
  const token = scanNumber(text);
  if (token === undefined) return refuseNumber(text, path, '', '');
  const unit = trimBlanks(text.slice(token.stop));
  const spelling = findSpelling(unit);
  const expect = options?.expect;
  if (spelling === undefined || !isExpected(spelling, expect)) {
    return refuseUnitText(text, path, token, unit, spelling, expect);
  }
  const wanted = options?.form ?? (expect === undefined ? 'any' : 'rms');
  const form = spelling.form === 'unmarked' ? (options?.unmarked ?? 'rms') : spelling.form;
  if (wanted !== 'any' && form !== wanted && form !== 'plain') {
    const unmarked = splitForm(unit)?.unit || unit;
    return refuseForm(text, path, numberText(token), unmarked, form, wanted);
  }
  return quantityOf(text, path, token, spelling, form);
}

function isExpected({ entry }: Spelling, expect: QuantityOptions['expect']): boolean {
  if (expect === undefined || expect === entry.quantity) return true;
  return typeof expect !== 'string' && expect.includes(entry.quantity);
}

function refuseUnitText(
  text: string,
  path: string,
  token: NumberToken,
  unit: string,
  spelling: Spelling | undefined,
  expect: QuantityOptions['expect'],
): Refusal {
  const number = numberText(token);
  if (spelling === undefined && continuesNumber(unit)) return refuseNumber(text, path, number, text.slice(token.stop));
  const kinds = typeof expect === 'string' ? [expect] : expect;
  if (spelling === undefined || unit === '' || kinds === undefined) return refuseUnit(text, path, number, unit, kinds);
  return refuseKind(text, path, number, unit, spelling.entry, kinds);
}

function quantityOf(
  text: string,
  path: string,
  token: NumberToken,
  spelling: Spelling,
  form: QuantityForm,
): ParseResult<ParsedQuantity> {
  const { entry } = spelling;
  const { mantissa, negative } = token;
  const exponent = token.exponent + spelling.exponent;
  let value: number;
  if (entry.factor === undefined) {
    // The decimal exponent is shifted in the text: so the value is correctly rounded, as no product with 0.001 is.
    value = Number(exponent === 0 ? mantissa : `${mantissa}e${exponent}`);
  } else {
    const decimal = decimalOf(mantissa, exponent);
    value = decimalToNumber({ ...decimal, digits: decimal.digits * BigInt(entry.factor) });
  }
  if (value === Number.POSITIVE_INFINITY || (value === 0 && /[1-9]/.test(mantissa))) {
    return refuse('result-out-of-range', path, text, 'must fit in a number', 'Check the exponent and the unit.');
  }
  if (negative && value !== 0) value = -value;
  if (entry.offsetHundredths !== undefined) {
    const zero = { digits: BigInt(entry.offsetHundredths), exponent: -2 };
    const aligned = alignDecimals(decimalOf(mantissa, exponent), zero);
    const sum = negative ? aligned.b - aligned.a : aligned.b + aligned.a;
    if (sum < 0n) return refuse('out-of-range', path, text, 'must not lie below absolute zero, -273.15 °C');
    value = decimalToNumber({ digits: sum, exponent: aligned.exponent });
  }
  return { ok: true, value: { value, quantity: entry.quantity, unit: entry.unit, form } };
}

/** The number as it was written, with an ordinary minus. */
function numberText({ negative, mantissa, exponent }: NumberToken): string {
  return `${negative ? '-' : ''}${mantissa}${exponent === 0 ? '' : `e${exponent}`}`;
}
