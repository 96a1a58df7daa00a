import { fail } from '../checks/index.js';
import { parseQuantity } from './parse-quantity.js';
import { attempt, type ParseResult } from './parse-result.js';
import type { ParsedSides, ParsedTolerance } from './parsed-tolerance.js';
import { requirePhrase } from './phrase.js';
import type { ParsedQuantity } from './safe-parse-quantity.js';
import type { QuantityKind } from './vocabulary.js';

/** What a tolerance may be. */
export interface ToleranceOptions {
  /** Quantity of an absolute part; `number` lets it stand without a unit. Default: any quantity with a unit. */
  readonly expect?: QuantityKind;
  /** How an absolute part of current or voltage must be stated. Default: `rms`. */
  readonly form?: 'rms' | 'peak' | 'peak-to-peak';
  /** Where the text stands, for the error. Default: `tolerance`. */
  readonly path?: string;
}

const shape = 'must be a tolerance such as ±20 %, -12 %/+15 %, +15 %, ±5 ohm or ±(2 % + 0.5 ohm)';
const greaterWords = ', whichever is greater';
const floorWords = ', not below ';
const sumHint = 'Write a sum as "±(2 % + 0.5 ohm)".';
const greaterHint = 'Write the greater of two as "±10 % or ±5 ohm, whichever is greater".';

/**
 * Reads a tolerance. A side that the text does not name is unlimited: `+15 %` limits nothing below.
 *
 * @param text Text such as `±20 %`, `-12 %/+15 %`, `±5 ohm`, `±5 ohm or ±10 %, whichever is greater`,
 * `±(2 % + 0.5 ohm)`, `±5 ohm, not below 0 ohm`
 * @param options Quantity and form of an absolute part
 * @returns Fractions, and SI values with their quantity
 * @throws CalculationError `text-malformed`, `negative`, and the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseTolerance } from 'esu-limits';
 * parseTolerance('-12 %/+15 %'); // → { "relative": { "below": 0.12, "above": 0.15 } }
 * parseTolerance('±5 ohm'); // → { "absolute": 5, "absoluteQuantity": "resistance" }
 * parseTolerance('±10 % or ±5 ohm, whichever is greater').combine; // → "greater"
 * ```
 */
export function parseTolerance(text: string, options: ToleranceOptions = {}): ParsedTolerance {
  const path = options.path ?? 'tolerance';
  const phrase = requirePhrase(text, path, shape).replace(/\+\/[-\u2212]/g, '±');
  const [body = '', floorText, excess] = phrase.split(floorWords);
  if (excess !== undefined) fail('text-malformed', path, text, shape);
  const reader: Reader = { path, options, absoluteQuantity: undefined };
  const limits = readLimits(body, reader);
  const floor = floorText === undefined ? undefined : readAtom(floorText, reader, true).value;
  const { absoluteQuantity } = reader;
  return {
    ...limits,
    ...(floor === undefined ? {} : { floor }),
    ...(absoluteQuantity === undefined ? {} : { absoluteQuantity }),
  };
}

/**
 * Reads a tolerance, and says what is wrong where it cannot: the twin of `parseTolerance` for input of people.
 *
 * @param text Text such as `±20 %`
 * @param options Quantity and form of an absolute part
 * @returns `{ ok: true, value }`, or `{ ok: false, fault }`
 * @example
 * ```ts
 * import { safeParseTolerance } from 'esu-limits';
 * safeParseTolerance('±20 %'); // → { "ok": true, "value": { "relative": 0.2 } }
 * safeParseTolerance('±20').ok; // → false
 * ```
 */
export function safeParseTolerance(text: string, options?: ToleranceOptions): ParseResult<ParsedTolerance> {
  return attempt(() => parseTolerance(text, options));
}

/** What the pieces of one text share. */
interface Reader {
  readonly path: string;
  readonly options: ToleranceOptions;
  /** Set by the first piece with a unit; the others must agree. */
  absoluteQuantity: QuantityKind | undefined;
}

/** How far a side may go: a fraction, an absolute amount, or both to be added. */
interface Amount {
  readonly relative?: number;
  readonly absolute?: number;
}

interface AmountSides {
  readonly below?: Amount;
  readonly above?: Amount;
}

function readLimits(body: string, reader: Reader): ParsedTolerance {
  if (!body.endsWith(greaterWords)) {
    if (/ or |whichever/.test(body)) fail('text-malformed', reader.path, body, shape, greaterHint);
    return toleranceOf(readSides(body, reader));
  }
  const parts = body.slice(0, -greaterWords.length).split(' or ');
  if (parts.length !== 2) fail('text-malformed', reader.path, body, 'must compare two tolerances', greaterHint);
  const both: ParsedTolerance = Object.assign({}, ...parts.map((part) => toleranceOf(readSides(part, reader))));
  if (both.combine !== undefined || both.relative === undefined || both.absolute === undefined) {
    fail('text-malformed', reader.path, body, 'must compare a relative with an absolute tolerance', greaterHint);
  }
  return { ...both, combine: 'greater' };
}

function readSides(text: string, reader: Reader): AmountSides {
  const { path } = reader;
  if (text.startsWith('±')) {
    const amount = readAmount(text.slice(1), reader);
    return { below: amount, above: amount };
  }
  if (!/^[+\-\u2212]/.test(text)) {
    const amount = readAtomAmount(text, reader);
    return { below: amount, above: amount };
  }
  const sides: { below?: Amount; above?: Amount } = {};
  for (const piece of text.split('/').map((side) => side.trim())) {
    const side = piece.startsWith('+') ? 'above' : 'below';
    if (!/^[+\-\u2212]/.test(piece)) fail('text-malformed', path, text, 'must have a sign on both sides');
    if (sides[side] !== undefined) fail('text-malformed', path, text, 'must have one side below and one above');
    sides[side] = readAmount(piece.slice(1), reader);
  }
  return sides;
}

function readAmount(text: string, reader: Reader): Amount {
  const inner = /^\((.*)\)$/.exec(text.trim())?.[1];
  if (inner === undefined) return readAtomAmount(text, reader);
  // A plus behind an e belongs to an exponent: no unit ends in e.
  const parts = inner.split(/(?<![eE])\+/);
  const sum: Amount = Object.assign({}, ...parts.map((part) => readAtomAmount(part, reader)));
  if (parts.length !== 2 || sum.relative === undefined || sum.absolute === undefined) {
    fail('text-malformed', reader.path, text, 'must add a relative and an absolute amount', sumHint);
  }
  return sum;
}

function readAtomAmount(text: string, reader: Reader): Amount {
  if (/(?<![eE])\+|±/.test(text.trim().slice(1))) fail('text-malformed', reader.path, text, shape, sumHint);
  const { value, quantity } = readAtom(text, reader, false);
  return quantity === 'fraction' ? { relative: value } : { absolute: value };
}

/** One number with its unit: a percentage, or an amount of the quantity that all pieces share. */
function readAtom(text: string, reader: Reader, isFloor: boolean): ParsedQuantity {
  const { path, options } = reader;
  const { expect, form = 'rms' } = options;
  const atom = text.trim();
  if (!isFloor && /^[+\-\u2212]/.test(atom)) {
    fail('negative', path, text, 'must be a magnitude without a second sign', `Write "±20 %" or "-12 %/+15 %".`);
  }
  const expected = expect === undefined ? {} : { expect: ['fraction', expect] as const };
  const read = parseQuantity(atom, { ...expected, form, path });
  if (read.quantity === 'number' && expect !== 'number') {
    fail('unit-missing', path, text, 'must have a unit or a percent sign', `Write "${atom} %" if percent is meant.`);
  }
  if (read.quantity === 'temperature' && atom.endsWith('C')) {
    fail('unit-mismatch', path, text, 'must be a difference of temperature', 'Write a difference in K: 2 K.');
  }
  if (read.quantity !== 'fraction') {
    reader.absoluteQuantity ??= read.quantity;
    const first = reader.absoluteQuantity;
    if (first !== read.quantity) fail('unit-mismatch', path, text, `must be a value of ${first}, like the part before`);
  } else if (isFloor) fail('unit-mismatch', path, text, 'must be an absolute floor, such as 0 ohm');
  return read;
}

/** The sides as a tolerance: where fractions and absolute amounts both occur they are added, side by side. */
function toleranceOf(sides: AmountSides): ParsedTolerance {
  const amounts = Object.values(sides) as Amount[];
  const relative = amounts.some((amount) => amount.relative !== undefined);
  const absolute = amounts.some((amount) => amount.absolute !== undefined);
  return {
    ...(relative ? { relative: partOf(sides, 'relative') } : {}),
    ...(absolute ? { absolute: partOf(sides, 'absolute') } : {}),
    ...(relative && absolute ? { combine: 'sum' } : {}),
  };
}

function partOf({ below, above }: AmountSides, part: 'relative' | 'absolute'): number | ParsedSides {
  const down = below && (below[part] ?? 0);
  const up = above && (above[part] ?? 0);
  if (down !== undefined && down === up) return down;
  return { ...(down === undefined ? {} : { below: down }), ...(up === undefined ? {} : { above: up }) };
}
