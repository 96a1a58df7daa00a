import { isBlank } from './spellings.js';

/** A number as it stands in a text: its parts, not yet a value. */
export interface NumberToken {
  readonly negative: boolean;
  /** Whether a sign is written. */
  readonly signed: boolean;
  /** Digits, with a point or without: `1.2`. */
  readonly mantissa: string;
  /** Exponent as written, 0 without one; cut off at ±99999, where every value is beyond a number anyway. */
  readonly exponent: number;
  /** Where the text goes on after the number. */
  readonly stop: number;
}

const exponentLimit = 99_999;

/**
 * Reads the number at the start of a text: sign, digits, point and digits, exponent.
 * One pass without regular expressions, so that no text makes it slow. Undefined where no number starts.
 */
export function scanNumber(text: string): NumberToken | undefined {
  let at = 0;
  while (isBlank(text.charCodeAt(at))) at++;
  const sign = signAt(text, at);
  if (sign !== 0) at++;
  const start = at;
  at = skipDigits(text, at);
  if (at === start) return undefined;
  if (text.charCodeAt(at) === 0x2e) {
    const fraction = skipDigits(text, at + 1);
    if (fraction > at + 1) at = fraction;
  }
  const mantissa = text.slice(start, at);
  let exponent = 0;
  const letter = text.charCodeAt(at);
  if (letter === 0x65 || letter === 0x45) {
    const exponentSign = signAt(text, at + 1);
    const from = at + (exponentSign === 0 ? 1 : 2);
    const to = skipDigits(text, from);
    if (to > from) {
      exponent = Math.min(Number(text.slice(from, to)), exponentLimit) * (exponentSign < 0 ? -1 : 1);
      at = to;
    }
  }
  return { negative: sign < 0, signed: sign !== 0, mantissa, exponent, stop: at };
}

/** −1 for a minus, written as a hyphen or as U+2212; 1 for a plus; 0 for anything else. */
function signAt(text: string, at: number): -1 | 0 | 1 {
  const code = text.charCodeAt(at);
  if (code === 0x2d || code === 0x2212) return -1;
  return code === 0x2b ? 1 : 0;
}

function skipDigits(text: string, from: number): number {
  let at = from;
  for (let code = text.charCodeAt(at); code >= 0x30 && code <= 0x39; code = text.charCodeAt(at)) at++;
  return at;
}
