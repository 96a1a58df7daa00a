import { formVocabulary, prefixVocabulary, type QuantityKind, unitVocabulary } from '../../units/index.js';

/** A value that a document may give as an SI number or as text with its unit. */
export interface QuantityRule {
  readonly kind: Exclude<QuantityKind, 'temperature' | 'number'>;
  /** `peak` where the member is named so: text may then leave the word out, and must not say rms. */
  readonly form?: 'peak';
  /** Which numbers are right; `positive` unless stated. */
  readonly range?: 'positive' | 'zero or more' | 'from 0 to 1';
}

/**
 * Regular expression of the texts that stand for a quantity, for the JSON Schema: built from the vocabulary of units,
 * so that an editor accepts what the parse functions accept.
 */
export function quantityPattern({ kind, form }: QuantityRule): string {
  const blank = '[ \\u00a0\\u202f]*';
  const number = `[+\\-\\u2212]?[0-9]+(\\.[0-9]+)?([eE][+\\-\\u2212]?[0-9]+)?`;
  const units = unitVocabulary
    .filter((unit) => unit.quantity === kind)
    .flatMap((unit) =>
      prefixVocabulary
        .filter((prefix) => unit.prefixes.includes(prefix.symbol))
        .flatMap((prefix) => prefix.spellings.flatMap((before) => unit.symbols.map((symbol) => before + symbol))),
    );
  const words = formVocabulary.filter((entry) => entry.form === (form ?? 'rms')).map(({ word }) => word);
  const word = kind === 'current' || kind === 'voltage' ? `(${blank}(${words.join('|')}))?` : '';
  return `^${blank}${number}${blank}(${units.join('|')})${word}${blank}$`;
}
