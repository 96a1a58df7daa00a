import { describe, expect, it } from 'vitest';
import { formVocabulary, parseQuantity, prefixVocabulary, type SiUnit, unitVocabulary } from '../../src/units/index.js';
import type { UnitName } from '../../src/working/index.js';

/** Every spelling that the tables allow. */
const spellings = unitVocabulary.flatMap((entry) =>
  prefixVocabulary
    .filter(({ symbol }) => entry.prefixes.includes(symbol))
    .flatMap((prefix) =>
      prefix.spellings.flatMap((before) =>
        entry.symbols.map((symbol) => ({ text: before + symbol, entry, exponent: prefix.exponent })),
      ),
    ),
);

describe('the vocabulary', () => {
  it('has one meaning for each spelling', () => {
    const texts = spellings.map(({ text }) => text);
    expect(texts.filter((text, i) => texts.indexOf(text) !== i)).toEqual([]);
  });

  it.each(spellings)('$text is read', ({ text, entry, exponent }) => {
    const { value, quantity, unit } = parseQuantity(`3 ${text}`);
    expect({ quantity, unit }).toEqual({ quantity: entry.quantity, unit: entry.unit });
    const scaled = Number(`${3 * (entry.factor ?? 1)}e${exponent + (entry.exponent ?? 0)}`);
    expect(value).toBe(entry.offsetHundredths === undefined ? scaled : 276.15);
  });

  it.each(formVocabulary)('$word is read behind volts and amperes, joined or apart', ({ word, form }) => {
    for (const unit of ['V', 'kV', 'mA']) {
      for (const text of [`3 ${unit} ${word}`, `3 ${unit}${word}`, `3${unit}\u00a0${word}`]) {
        expect(parseQuantity(text).form).toBe(form);
      }
    }
  });

  it('lists prefixes in ascending order', () => {
    const order = prefixVocabulary.map(({ symbol }) => symbol as string);
    for (const { prefixes } of unitVocabulary) {
      const places = prefixes.map((prefix) => order.indexOf(prefix));
      expect(places).toEqual([...places].sort((a, b) => a - b));
      expect(places).not.toContain(-1);
    }
    const exponents = prefixVocabulary.map(({ exponent }) => exponent);
    expect(exponents).toEqual([...exponents].sort((a, b) => a - b));
  });

  it('is plain data', () => {
    for (const table of [unitVocabulary, prefixVocabulary, formVocabulary]) {
      expect(JSON.parse(JSON.stringify(table))).toEqual(table);
    }
  });

  it('has SI units that a working can carry', () => {
    const units: readonly UnitName[] = unitVocabulary.map(({ unit }): SiUnit => unit);
    expect(new Set(units).size).toBe(11);
  });
});
