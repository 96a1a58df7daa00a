import { CalculationError, describe, type Fault } from '../checks/index.js';
import { spellings, splitForm, trimBlanks } from './spellings.js';
import {
  formVocabulary,
  prefixVocabulary,
  type QuantityForm,
  type QuantityKind,
  type UnitEntry,
  unitVocabulary,
} from './vocabulary.js';

/** A parsed value, or what is wrong with the text. */
export type ParseResult<T> = { readonly ok: true; readonly value: T } | Refusal;

/** The unhappy half of a result. */
export interface Refusal {
  readonly ok: false;
  readonly fault: Fault;
}

/** Refuses a text: the one place where results of this room turn unhappy. */
export function refuse(
  code: Fault['code'],
  path: string,
  received: unknown,
  requirement: string,
  hint?: string,
): Refusal {
  return {
    ok: false,
    fault: { code, path, received: describe(received), requirement, ...(hint === undefined ? {} : { hint }) },
  };
}

/** The value of a result, or its fault as an error. */
export function unwrap<T>(result: ParseResult<T>): T {
  if (result.ok) return result.value;
  throw new CalculationError(result.fault);
}

/** What a reader that throws returns, or the fault that it threw. */
export function attempt<T>(read: () => T): ParseResult<T> {
  try {
    return { ok: true, value: read() };
  } catch (thrown) {
    if (thrown instanceof CalculationError) return { ok: false, fault: thrown.faults[0] as Fault };
    throw thrown;
  }
}

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

/** Refuses a unit that is missing, unknown or not followed by the end of the text, with the nearest that is known. */
export function refuseUnit(
  text: string,
  path: string,
  number: string,
  rest: string,
  kinds: readonly QuantityKind[] | undefined,
): Refusal {
  const units = listUnits(kinds);
  if (rest === '') {
    const [first = 'W'] = units;
    // No example with the number itself for a fraction: 0.2 may mean 20 % or 0.2 %.
    const hint =
      first === '%'
        ? 'Write a fraction in percent, with its sign: 0.2 is "20 %".'
        : `Write the unit, such as "${number} ${first}". Known units: ${units.join(', ')}.`;
    return refuse('unit-missing', path, text, `must have a unit of ${listKinds(kinds)}`, hint);
  }
  const spelling = firstUnit(rest);
  if (spelling !== undefined) {
    const { unit, marked } = spelling;
    if (marked) {
      const hint = `Write "${number} ${unit}": only a current or a voltage is rms or peak. Power is the mean power.`;
      return refuse('form-mismatch', path, text, 'must not carry a word for rms or peak', hint);
    }
    const words = hasWords(unit) ? ` After ${unit} only these words may stand: ${formWords()}.` : '';
    return refuse(
      'text-malformed',
      path,
      text,
      'must be a number, its unit and nothing more',
      `Write "${number} ${unit}" alone.${words}`,
    );
  }
  const outside = prefixOutside(rest);
  const near = nearestUnits(rest, kinds);
  const hint = near.length > 0 ? `Did you mean ${near.map((unit) => `"${number} ${unit}"`).join(' or ')}?` : undefined;
  return refuse(
    'unit-unknown',
    path,
    text,
    outside ?? `must have a known unit${kinds === undefined ? '' : ` of ${listKinds(kinds)}`}`,
    hint ?? `Known units: ${units.join(', ')}.`,
  );
}

/** Refuses a known unit of another quantity than the expected. */
export function refuseKind(
  text: string,
  path: string,
  number: string,
  unit: string,
  entry: UnitEntry,
  kinds: readonly QuantityKind[],
): Refusal {
  const near = unit in barePrefix ? nearestUnits(barePrefix[unit as keyof typeof barePrefix], kinds) : [];
  const guess = near.length > 0 ? ` Did you mean "${number} ${near[0]}"?` : '';
  return refuse(
    'unit-mismatch',
    path,
    text,
    `must be a value of ${listKinds(kinds)}`,
    `The unit ${unit} is one of ${entry.quantity}. Known units: ${listUnits(kinds).join(', ')}.${guess}`,
  );
}

/** Units that are mistaken for a prefix standing alone: "1.2 K" and "5 m" where ohms are expected. */
const barePrefix = { K: 'k', m: 'm' } as const;

/** Refuses a peak value where rms is needed, or the other way round. */
export function refuseForm(
  text: string,
  path: string,
  number: string,
  unit: string,
  received: QuantityForm,
  needed: QuantityForm,
): Refusal {
  const hint =
    needed === 'rms'
      ? `Give the rms value: it cannot be told from a ${received} value without the crest factor.`
      : `If the value is ${needed}, write "${number} ${unit} ${needed}".`;
  return refuse('form-mismatch', path, text, `must be ${needed}, and is ${received}`, hint);
}

/** Units that a text of these quantities may use, each with its prefixes. */
export function listUnits(kinds: readonly QuantityKind[] | undefined): string[] {
  const listed: string[] = [];
  for (const entry of entriesOf(kinds)) {
    // Without an expected quantity the bare units suffice.
    const prefixes = kinds === undefined ? [''] : [...entry.prefixes].sort((a, b) => a.length - b.length);
    for (const prefix of prefixes) if (entry.symbols[0] !== '') listed.push(prefix + typed(entry));
  }
  return listed;
}

/** The spelling of a unit that every keyboard has. */
function typed(entry: UnitEntry): string {
  return entry.quantity === 'resistance' ? 'ohm' : (entry.symbols[0] as string);
}

function listKinds(kinds: readonly QuantityKind[] | undefined): string {
  return kinds === undefined ? 'the list' : kinds.join(' or ');
}

function entriesOf(kinds: readonly QuantityKind[] | undefined): readonly UnitEntry[] {
  return kinds === undefined ? unitVocabulary : unitVocabulary.filter(({ quantity }) => kinds.includes(quantity));
}

function hasWords(unit: string): boolean {
  return spellings.get(unit)?.form === 'unmarked';
}

function formWords(): string {
  return formVocabulary.map(({ word }) => word).join(', ');
}

/** The known unit at the start of a text that goes on with something else; `marked` if that is a word for the form. */
function firstUnit(rest: string): { unit: string; marked: boolean } | undefined {
  const marked = splitForm(rest);
  if (marked !== undefined && marked.unit !== '' && spellings.has(marked.unit))
    return { unit: marked.unit, marked: true };
  const unit = /^[^\s\u00a0\u202f(/;,:]+/.exec(rest)?.[0] ?? '';
  if (unit !== '' && unit !== rest && spellings.has(unit)) return { unit, marked: false };
  // A word for the form that is not known, joined to the unit: Vp, VPeak.
  const joined = rest.slice(0, Math.max(0, rest.search(/[pr]/i)));
  return joined !== '' && hasWords(joined) ? { unit: joined, marked: false } : undefined;
}

/** Says so where prefix and unit are known and do not belong together: megaamperes, millihertz. */
function prefixOutside(rest: string): string | undefined {
  for (const { spellings: befores, name } of prefixVocabulary) {
    for (const before of befores) {
      const entry = rest.startsWith(before) ? spellings.get(rest.slice(before.length))?.entry : undefined;
      if (before !== '' && entry?.symbols.includes(rest.slice(before.length)) && entry.symbols[0] !== '') {
        return `must have a unit of the trade: ${rest} would be ${name}${entry.name}`;
      }
    }
  }
  return undefined;
}

/** Known units that a text may have meant: another case, another code point, a name, a prefix alone. */
function nearestUnits(rest: string, kinds: readonly QuantityKind[] | undefined): string[] {
  const wanted = rest.normalize('NFKC').toLowerCase();
  const bare = wanted.replace(/s$/, '');
  const found = new Set<string>();
  for (const entry of entriesOf(kinds)) {
    for (const { symbol, name, spellings: befores } of prefixVocabulary) {
      if (!entry.prefixes.includes(symbol) || entry.symbols[0] === '') continue;
      const unit = symbol + typed(entry);
      // A prefix alone is no unit in another case: 1e3k is not a thousand kelvins.
      const byCase =
        rest !== 'k' && befores.some((before) => entry.symbols.some((s) => (before + s).toLowerCase() === wanted));
      const byName =
        bare.length >= name.length + 3 && bare.startsWith(name) && entry.name.startsWith(bare.slice(name.length));
      const byPrefix = kinds !== undefined && symbol !== '' && rest === symbol;
      if (byCase || byName || byPrefix) found.add(unit);
    }
  }
  return [...found];
}
