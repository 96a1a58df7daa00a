import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scanJson } from '../../src/schema/scan-json.js';

/** Whether the engine's own parser reads a text: the oracle. */
function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

const hasSyntaxFault = (text: string): boolean => scanJson(text, 1e6).some((fault) => fault.code === 'not-json');

describe('the scan agrees with JSON.parse', () => {
  it('reads whatever JSON.stringify writes', () => {
    fc.assert(
      fc.property(fc.json(), fc.constantFrom(0, 1, '\t'), (text, indent) => {
        const spaced = JSON.stringify(JSON.parse(text), null, indent);
        expect(hasSyntaxFault(spaced)).toBe(false);
      }),
      { numRuns: 500 },
    );
  });

  it('accepts and refuses the same texts after one to three characters were changed', () => {
    const pieces = [...'{}[]",:0123456789.eE+-\\/u \n\r\t', 'true', 'null', '\u0000', '\ufeff', '\ud800', "'", 'x'];
    fc.assert(
      fc.property(
        fc.json({ maxDepth: 3 }),
        fc.array(fc.tuple(fc.nat(), fc.nat({ max: 2 }), fc.constantFrom(...pieces)), { minLength: 1, maxLength: 3 }),
        (text, edits) => {
          let edited = text;
          for (const [place, removed, put] of edits) {
            const at = place % (edited.length + 1);
            edited = edited.slice(0, at) + put + edited.slice(at + removed);
          }
          // A byte-order mark in front is tolerated by the scan and cut off before JSON.parse.
          expect(hasSyntaxFault(edited)).toBe(!isJson(edited.replace(/^\ufeff/, '')));
        },
      ),
      { numRuns: 8_000 },
    );
  });

  it('accepts and refuses the same numbers', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...'0019.eE+-'), { minLength: 1, maxLength: 8 }), (characters) => {
        const text = characters.join('');
        expect(hasSyntaxFault(text)).toBe(!isJson(text));
      }),
      { numRuns: 8_000 },
    );
  });

  it('finds a repeated name exactly where there is one', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 2 }), { maxLength: 6 }), (names) => {
        const text = `{${names.map((name) => `${JSON.stringify(name)}:1`).join(',')}}`;
        const repeated = scanJson(text, 64).filter((fault) => fault.code === 'duplicate');
        expect(repeated).toHaveLength(names.length - new Set(names).size);
      }),
    );
  });
});
