import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeList, type Fault } from '../../src/checks/index.js';
import * as schema from '../../src/schema/index.js';
import { fixture } from './fixtures.js';

const parsers = {
  specification: schema.safeParseSpecification,
  bench: schema.safeParseBench,
  readings: schema.safeParseReadings,
  plan: schema.safeParsePlan,
  findings: schema.safeParseFindings,
  record: schema.safeParseRecord,
};
const names = Object.keys(parsers) as (keyof typeof parsers)[];

/** A fault is whole when it says what, where and why, with a code of the list. */
function expectWhole(faults: readonly Fault[]): void {
  expect(faults.length).toBeGreaterThan(0);
  for (const fault of faults) {
    expect(Object.keys(codeList)).toContain(fault.code);
    expect(fault.requirement).toMatch(/\S/);
    expect(fault.requirement).not.toContain('Invalid');
    expect(fault.received.length).toBeLessThanOrEqual(200);
    expect(typeof fault.path).toBe('string');
  }
}

function expectEnd(name: keyof typeof parsers, value: unknown): void {
  const result = parsers[name](value);
  if (result.ok) expect(parsers[name](result.value)).toEqual(result);
  else expectWhole(result.faults);
}

/** Every place of a tree, as the steps to it. */
function places(tree: unknown, way: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof tree !== 'object' || tree === null) return [way];
  const steps = Array.isArray(tree) ? tree.map((_, i) => i) : Object.keys(tree);
  return [way, ...steps.flatMap((step) => places((tree as Record<string | number, unknown>)[step], [...way, step]))];
}

function withValueAt(tree: unknown, way: readonly (string | number)[], value: unknown): unknown {
  const [step, ...rest] = way;
  if (step === undefined) return value;
  // biome-ignore lint/suspicious/noExplicitAny: any place of a tree
  const copy: any = Array.isArray(tree) ? [...tree] : { ...(tree as object) };
  copy[step] = withValueAt(copy[step], rest, value);
  return copy;
}

const value = (): fc.Arbitrary<unknown> =>
  fc.oneof(
    fc.anything({
      withBigInt: true,
      withDate: true,
      withMap: true,
      withNullPrototype: true,
      withSparseArray: true,
      withTypedArray: true,
    }),
    fc.constantFrom<unknown>(
      '',
      '120 W',
      '500 ohm',
      '±20 %',
      'open',
      0,
      -1,
      1e308,
      -0,
      Number.NaN,
      null,
      undefined,
      [],
      {},
      true,
    ),
    fc.constantFrom<unknown>({ toString: '' }, { valueOf: 1, toString: null }, { toJSON: 'x' }, { length: 3 }),
    fc.string({ unit: 'binary' }),
  );

describe('any value ends in a document or in faults, and in nothing else', () => {
  it.each(names)('%s from any value', (name) => {
    fc.assert(
      fc.property(value(), (input) => expectEnd(name, input)),
      { numRuns: 200 },
    );
  });

  it.each(names)('%s from any value that says it is one', (name) => {
    const header = { schema: `esu-limits/${name}`, version: 1 };
    fc.assert(
      fc.property(fc.dictionary(fc.string(), value(), { maxKeys: 4 }), (rest) =>
        expectEnd(name, { ...rest, ...header }),
      ),
      { numRuns: 200 },
    );
  });

  it.each(['specification', 'bench', 'readings'] as const)(
    '%s with any value at one to three of its places',
    (name) => {
      const tree = fixture(`${name}-text.json`);
      const ways = places(tree);
      fc.assert(
        fc.property(
          fc.array(fc.tuple(fc.constantFrom(...ways), value()), { minLength: 1, maxLength: 3 }),
          (changes) => {
            let changed: unknown = tree;
            for (const [way, put] of changes) {
              // A place that an earlier change took away is left alone.
              try {
                changed = withValueAt(changed, way, put);
              } catch {}
            }
            expectEnd(name, changed);
          },
        ),
        { numRuns: 800 },
      );
    },
  );

  it('any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (text) => {
        const result = schema.safeReadDocument(text);
        expect(result.ok).toBe(false);
        if (!result.ok) expectWhole(result.faults);
      }),
      { numRuns: 1000 },
    );
  });
});
