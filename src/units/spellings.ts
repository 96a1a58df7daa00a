import { formVocabulary, prefixVocabulary, type QuantityForm, type UnitEntry, unitVocabulary } from './vocabulary.js';

/** A unit as it is spelled in a text, with what the spelling means. */
export interface Spelling {
  readonly entry: UnitEntry;
  /** Power of ten of prefix and unit together. */
  readonly exponent: number;
  /** The form that the spelling states; `unmarked` for a current or a voltage without a word for it. */
  readonly form: QuantityForm | 'unmarked';
}

/** Every spelling without a word for the form. Built once, from the vocabulary. */
export const spellings: ReadonlyMap<string, Spelling> = /* @__PURE__ */ buildSpellings();

function buildSpellings(): Map<string, Spelling> {
  const built = new Map<string, Spelling>();
  for (const entry of unitVocabulary) {
    const form = hasForm(entry) ? 'unmarked' : 'plain';
    for (const prefix of prefixVocabulary) {
      if (!entry.prefixes.includes(prefix.symbol)) continue;
      const spelling = { entry, exponent: prefix.exponent + (entry.exponent ?? 0), form } as const;
      for (const before of prefix.spellings) for (const symbol of entry.symbols) built.set(before + symbol, spelling);
    }
  }
  return built;
}

/** Whether a value in this unit is rms, peak or peak-to-peak. */
export function hasForm(entry: UnitEntry): boolean {
  return entry.quantity === 'current' || entry.quantity === 'voltage';
}

/** The spelling that a text after the number stands for, such as `mA` or `kV peak`; undefined if there is none. */
export function findSpelling(text: string): Spelling | undefined {
  const plain = spellings.get(text);
  if (plain !== undefined) return plain;
  const marked = splitForm(text);
  const spelling = marked && spellings.get(marked.unit);
  return spelling && hasForm(spelling.entry) ? { ...spelling, form: marked.form } : undefined;
}

/** Splits the word for the form off the end of a unit: `kV peak` is `kV` and `peak`. */
export function splitForm(text: string): { readonly unit: string; readonly form: QuantityForm } | undefined {
  // Longer words stand before the words that they end in.
  const marked = formVocabulary.find(({ word }) => text.endsWith(word));
  return marked && { unit: trimBlanks(text.slice(0, -marked.word.length)), form: marked.form };
}

/** A text without blanks at its ends. */
export function trimBlanks(text: string): string {
  let start = 0;
  let stop = text.length;
  while (start < stop && isBlank(text.charCodeAt(start))) start++;
  while (stop > start && isBlank(text.charCodeAt(stop - 1))) stop--;
  return text.slice(start, stop);
}

/** Whether a character is an ordinary, a no-break or a narrow no-break blank. */
export function isBlank(code: number): boolean {
  return code === 0x20 || code === 0xa0 || code === 0x202f;
}
