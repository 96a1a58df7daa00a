import { type Refusal, refuse } from './parse-result.js';
import { trimBlanks } from './spellings.js';

/** Why a text has no number that can be read, with the way to write it. Runs on refusal only. */
export function refuseNumber(text: string, path: string, read: string, rest: string): Refusal {
  return refuse(
    'number-malformed',
    path,
    text,
    'must be a number with a decimal point and no grouping, then its unit',
    numberHint(trimBlanks(text), read, trimBlanks(rest)),
  );
}

function numberHint(text: string, read: string, rest: string): string {
  if (text === '') return 'The text is empty: write a number and its unit, such as "120 W".';
  if (/^[+\-\u2212]?(nan|inf|∞)/i.test(text)) return 'Write a finite number, or leave the value out.';
  if (/[\uff00-\uffef\u0660-\u0669\u06f0-\u06f9]/.test(text)) return 'Write ordinary digits 0 to 9.';
  if (read === '') {
    if (/^\.\d/.test(text)) return `Write a digit before the point: "0${text.slice(0, 20)}".`;
    if (/^[+\-\u2212]/.test(text)) return 'Write one sign at most, directly before the digits.';
    if (/^[\u2010-\u2015]/.test(text)) return 'Write the minus as a hyphen "-".';
    return 'Write a number before the unit, such as "120 W".';
  }
  if (rest[0] === 'x' || rest[0] === 'X') return 'Write a decimal number.';
  if (rest[0] === 'e' || rest[0] === 'E') return `Write digits after the e, such as "${read}e3".`;
  if (rest[0] === '.') return 'Write one decimal point, with a digit after it.';
  if (rest[0] === ',') {
    const after = /^,(\d+)/.exec(rest)?.[1] ?? '';
    const point = `${read}.${after}`;
    if (read.includes('.') || after === '' || /^,\d+[.,]/.test(rest)) return 'Write a decimal point, and no commas.';
    if (after.length !== 3) return `Write "${point}", with a decimal point.`;
    return `Write "${point}" with a decimal point, or "${read}${after}" if thousands are meant.`;
  }
  const group = /^[ '’_\u00a0\u202f]?(\d{1,20})/.exec(rest)?.[1];
  if (group !== undefined) return `Write the digits together: "${read}${group}".`;
  return `Write the number in full or with an exponent, such as "${read}e3".`;
}

/** Whether what follows a number looks like more of the number rather than like a unit. */
export function continuesNumber(rest: string): boolean {
  return /^([\d.,+\-\u2212×*·^/\uff00-\uffef]|['’_]\d|[xX][\da-fA-F]|[eE]($|[\s+\-\u2212\d]))/.test(rest);
}
