import { fail } from '../checks/index.js';
import { parseQuantity } from './parse-quantity.js';
import { attempt, type ParseResult } from './parse-result.js';
import { requirePhrase } from './phrase.js';
import type { ParsedQuantity, QuantityOptions } from './safe-parse-quantity.js';
import type { QuantityForm, QuantityKind, SiUnit } from './vocabulary.js';

/** A band as it was read from a text; an absent side is unlimited. */
export interface ParsedBand {
  /** In the SI unit. */
  readonly lower?: number;
  /** In the SI unit. */
  readonly upper?: number;
  /** Present where the text says `>`: the lower limit itself is outside. */
  readonly lowerExcluded?: true;
  /** Present where the text says `<`: the upper limit itself is outside. */
  readonly upperExcluded?: true;
  readonly quantity: QuantityKind;
  readonly unit: SiUnit;
  readonly form: QuantityForm;
}

const shape = 'must be a band such as "843 mA to 1133 mA", "≤ 150 mA", "≥ 10 ohm" or "< 2000 ohm"';

/**
 * Reads a band. The unit stands on both sides, and a dash is not a `to`, since it could be a minus.
 *
 * @param text Text such as `843 mA to 1133 mA`, `≤ 150 mA`, `<= 150 mA`, `< 2000 ohm`, `10 ohm to < 20 ohm`
 * @param options Quantity and form that are expected
 * @returns Limits in the SI unit, with quantity, unit and form
 * @throws CalculationError `text-malformed`, `band-reversed`, `band-empty`, and the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseBand } from 'esu-limits';
 * const { lower, upper } = parseBand('843 mA to 1133 mA');
 * [lower, upper]; // → [0.843, 1.133]
 * parseBand('< 2000 ohm').upperExcluded; // → true
 * ```
 */
export function parseBand(text: string, options: QuantityOptions = {}): ParsedBand {
  const path = options.path ?? 'band';
  const [firstText = '', secondText, excess] = requirePhrase(text, path, shape).split(' to ');
  if (excess !== undefined) fail('text-malformed', path, text, shape);
  const first = readSide(firstText);
  const second = secondText === undefined ? undefined : readSide(secondText);
  const read = (quantity: string) => parseQuantity(quantity, { ...options, path });
  if (second === undefined) {
    if (first.comparison === '') {
      return fail('text-malformed', path, text, shape, 'Write the unit on both sides, with the word "to" between.');
    }
    const { value, ...kind } = read(first.quantity);
    return first.comparison === '<'
      ? { upper: value, ...(first.excluded ? { upperExcluded: true } : {}), ...kind }
      : { lower: value, ...(first.excluded ? { lowerExcluded: true } : {}), ...kind };
  }
  if (first.comparison === '<' || second.comparison === '>') fail('text-malformed', path, text, shape);
  const { value: lower, ...kind } = readLower(first.quantity, second.quantity, text, path, read);
  const { value: upper, ...upperKind } = read(second.quantity);
  if (kind.quantity !== upperKind.quantity) {
    fail('unit-mismatch', path, text, 'must have units of one quantity on both sides');
  }
  if (kind.form !== upperKind.form) fail('form-mismatch', path, text, 'must be rms or peak on both sides alike');
  if (lower > upper) fail('band-reversed', path, text, 'must have its lower limit first');
  if (lower === upper && (first.excluded || second.excluded)) {
    fail('band-empty', path, text, 'must hold one value at least');
  }
  return {
    lower,
    upper,
    ...(first.excluded ? { lowerExcluded: true } : {}),
    ...(second.excluded ? { upperExcluded: true } : {}),
    ...kind,
  };
}

/**
 * Reads a band, and says what is wrong where it cannot: the twin of `parseBand` for input of people.
 *
 * @param text Text such as `843 mA to 1133 mA`
 * @param options Quantity and form that are expected
 * @returns `{ ok: true, value }`, or `{ ok: false, fault }`
 * @example
 * ```ts
 * import { safeParseBand } from 'esu-limits';
 * safeParseBand('≤ 150 mA').ok; // → true
 * safeParseBand('843–1133 mA').ok; // → false
 * ```
 */
export function safeParseBand(text: string, options?: QuantityOptions): ParseResult<ParsedBand> {
  return attempt(() => parseBand(text, options));
}

interface Side {
  readonly comparison: '' | '<' | '>';
  readonly excluded: boolean;
  readonly quantity: string;
}

function readSide(text: string): Side {
  const sign = /^([<>]=?|[≤≥])/.exec(text)?.[0] ?? '';
  const comparison = sign === '' ? '' : sign === '≤' || sign[0] === '<' ? '<' : '>';
  return { comparison, excluded: sign === '<' || sign === '>', quantity: text.slice(sign.length) };
}

/** The lower side; a unit that stands only on the upper side is asked for, since 0.8 to 1133 mA could be 0.8 A. */
function readLower(
  lower: string,
  upper: string,
  text: string,
  path: string,
  read: (quantity: string) => ParsedQuantity,
): ParsedQuantity {
  const bare = /^ ?[+\-\u2212]?[\d.]+(?:[eE][+\-\u2212]?\d+)?$/.test(lower);
  if (bare && !/\d$/.test(upper)) {
    fail(
      'unit-missing',
      path,
      text,
      'must have the unit on both sides',
      `Write the unit behind "${lower.trim()}" too.`,
    );
  }
  return read(lower);
}
