import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { CalculationError, codeList } from '../../src/checks/index.js';
import {
  parseBand,
  parseQuantity,
  parseTolerance,
  prefixVocabulary,
  safeParseBand,
  safeParseQuantity,
  safeParseTolerance,
  unitVocabulary,
} from '../../src/units/index.js';
import { add, compare, distance, fractionOfDecimal, fractionOfDouble, neighbour, ulpsApart } from './exact.js';

/** A number as text, with what it stands for: digits × 10^exponent. */
const decimal = fc
  .record({
    sign: fc.constantFrom('', '-', '+', '\u2212'),
    whole: fc.stringMatching(/^\d{1,12}$/),
    fraction: fc.option(fc.stringMatching(/^\d{1,12}$/), { nil: '' }),
    exponent: fc.option(fc.integer({ min: -30, max: 30 }), { nil: undefined }),
  })
  .map(({ sign, whole, fraction, exponent }) => ({
    text: sign + whole + (fraction && `.${fraction}`) + (exponent === undefined ? '' : `e${exponent}`),
    digits: BigInt(whole + fraction) * (sign === '-' || sign === '\u2212' ? -1n : 1n),
    exponent: (exponent ?? 0) - fraction.length,
  }));

/** A unit as text, with what it stands for. */
const unitText = fc.constantFrom(
  ...unitVocabulary.flatMap((entry) =>
    prefixVocabulary
      .filter(({ symbol }) => entry.prefixes.includes(symbol))
      .flatMap(({ spellings, exponent }) =>
        spellings.flatMap((before) =>
          entry.symbols.map((symbol) => ({ text: before + symbol, entry, exponent: exponent + (entry.exponent ?? 0) })),
        ),
      ),
  ),
);

const blank = fc.constantFrom('', ' ', '\u00a0', '\u202f', '  ');

/** The spelling that mathjs knows: ohm, u, degC, and an ordinary minus. */
const peerText = (text: string) =>
  text
    .replace(/[\u03a9\u2126]/g, 'ohm')
    .replace(/[\u00b5\u03bc]/g, 'u')
    .replace('°C', 'degC')
    .replace(/\u2212/g, '-')
    .replace(/[\u00a0\u202f]/g, ' ');

describe('parseQuantity', () => {
  it('gives the double nearest to the decimal that is written', () => {
    fc.assert(
      fc.property(decimal, blank, unitText, (number, between, { text, entry, exponent }) => {
        const { value } = parseBelowZero(number.text + between + text);
        if (value === undefined) return;
        const scaled = fractionOfDecimal(number.digits * BigInt(entry.factor ?? 1), number.exponent + exponent);
        const exact = add(scaled, fractionOfDecimal(BigInt(entry.offsetHundredths ?? 0), -2));
        const error = distance(fractionOfDouble(value), exact);
        if (value === 0) {
          expect(exact.numerator).toBe(0n);
          return;
        }
        for (const other of [neighbour(value, 1), neighbour(value, -1)]) {
          expect(compare(error, distance(fractionOfDouble(other), exact))).toBeLessThanOrEqual(0);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('agrees with mathjs within one unit in the last place', () => {
    const known = unitText.filter(({ entry }) => entry.quantity !== 'fraction' && entry.quantity !== 'number');
    fc.assert(
      fc.property(decimal, blank, known, (number, between, { text, entry }) => {
        const { value } = parseBelowZero(number.text + between + text);
        if (value === undefined) return;
        const peer = unit(peerText(`${number.text.replace('+', '')}${between}${text}`)).toNumber(entry.unit);
        if (entry.offsetHundredths === undefined) expect(ulpsApart(value, peer)).toBeLessThanOrEqual(1);
        // Its sum with 273.15 cancels near absolute zero: one unit in the last place of 273.15.
        else expect(Math.abs(value - peer)).toBeLessThanOrEqual(2 ** -44 + Math.abs(value) * 2 ** -52);
      }),
      { numRuns: 2000 },
    );
  });

  it('accepts what a plain statement of the grammar accepts, and nothing else', () => {
    const words = (text: string) => fc.constantFrom(...text.split(' '));
    const symbol = words('W A V ohm ohms \u03a9 \u2126 Hz s min h H F K °C degC m %');
    const prefix = words('p n \u00b5 \u03bc u m c k M G');
    const form = words('rms RMS peak pk peak-to-peak pk-pk p-p pp');
    const piece = fc.oneof(words('0 1 20 7.5 . , + - \u2212 e E e3 e-2 x \t'), blank, symbol, prefix, form);
    const number = words('7 -7.5 1e3 \u22120.25 +4E-2 12 .5 5. 1,5 --1');
    const joined = (...parts: fc.Arbitrary<string>[]) => fc.tuple(...parts).map((texts) => texts.join(''));
    const text = fc.oneof(
      fc.array(piece, { maxLength: 7 }).map((parts) => parts.join('')),
      joined(number, blank, symbol),
      joined(number, blank, prefix, symbol),
      joined(number, blank, prefix, symbol, blank, form),
      joined(number, blank, symbol, blank, form),
      joined(blank, number, blank, piece, piece),
    );
    const count = { yes: 0, no: 0 };
    fc.assert(
      fc.property(text, (input) => {
        const result = safeParseQuantity(input);
        // A value that does not fit was read all the same.
        const ok = result.ok || /out-of-range$/.test(result.fault.code);
        expect(ok).toBe(grammar.test(input));
        count[ok ? 'yes' : 'no']++;
      }),
      { numRuns: 10_000 },
    );
    // The generator finds enough of either, so that the law is not empty.
    expect(count.yes).toBeGreaterThan(1000);
    expect(count.no).toBeGreaterThan(1000);
  });
});

/** The grammar as one expression, written apart from the vocabulary. */
const grammar = (() => {
  const number = '[+\\-\u2212]?\\d+(\\.\\d+)?([eE][+\\-\u2212]?\\d+)?';
  const formed = '((p|n|\u00b5|\u03bc|u|m)?A|(n|\u00b5|\u03bc|u|m|k)?V)';
  const form = '(rms|RMS|peak|pk|peak-to-peak|pk-pk|p-p|pp)';
  const plain = [
    '(\u00b5|\u03bc|u|m|k)?W',
    '(\u00b5|\u03bc|u|m|k|M|G)?(ohms?|\u03a9|\u2126)',
    '(k|M|G)?Hz',
    '(p|n|\u00b5|\u03bc|u|m)?[sHF]',
    'min|h|°C|degC|%',
    'm?K',
    '(\u00b5|\u03bc|u|m|c)?m',
  ].join('|');
  const blanks = '[ \u00a0\u202f]*';
  return new RegExp(`^${blanks}${number}${blanks}(${plain}|${formed}(${blanks}${form})?)?${blanks}$`);
})();

/** The value, or undefined where the text lies below absolute zero or beyond the numbers. */
function parseBelowZero(text: string): { value: number | undefined } {
  const result = safeParseQuantity(text);
  if (result.ok) return result.value;
  expect(['out-of-range', 'result-out-of-range']).toContain(result.fault.code);
  return { value: undefined };
}

describe('whatever the text is, the readers', () => {
  const fragments = fc.constantFrom(
    ...['±', '+/-', '(', ')', '/', ' or ', ', whichever is greater', ', not below ', ' to ', '≤', '<=', '>', '<', '≥'],
    ...['20 %', '-12 %', '+15 %', '5 ohm', '0.5 V', '1e+3 A', '1,5 A', '20', ' ', '+', '-', '°C', '2 K', 'e', '３'],
  );
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 300 }),
    fc.string({ unit: 'grapheme', maxLength: 120 }),
    fc.string({ unit: 'grapheme-ascii', maxLength: 30 }),
    fc.array(fragments, { maxLength: 8 }).map((parts) => parts.join('')),
    fc.tuple(decimal, fc.string({ maxLength: 6 })).map(([number, rest]) => number.text + rest),
  );

  it.each([
    ['parseQuantity', parseQuantity, safeParseQuantity],
    ['parseTolerance', parseTolerance, safeParseTolerance],
    ['parseBand', parseBand, safeParseBand],
  ] as const)('%s: give finite numbers or a coded error, and both twins agree', (_name, parse, safeParse) => {
    fc.assert(
      fc.property(text, (input) => {
        const result = safeParse(input);
        if (result.ok) {
          expect(parse(input)).toEqual(result.value);
          const numbers = JSON.stringify(result.value, (_key, value) =>
            typeof value === 'number' && !Number.isFinite(value) ? 'not finite' : value,
          );
          expect(numbers).not.toContain('not finite');
          return;
        }
        const { fault } = result;
        expect(Object.keys(codeList)).toContain(fault.code);
        expect(fault.requirement).toMatch(/^must /);
        expect(fault.received.length + fault.requirement.length + (fault.hint ?? '').length).toBeLessThan(500);
        expect(() => parse(input)).toThrow(CalculationError);
      }),
      { numRuns: 3000 },
    );
  });
});
