import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom, fillNormal, selectRanks } from '../../src/numeric/index.js';
import { faultOf } from '../band/fault-of.js';

/** Selects, and holds the result and the order of the array against sorting. */
function hold(values: Float64Array, ranks: readonly number[]): void {
  const sorted = values.slice().sort();
  const copy = values.slice();
  expect(selectRanks(copy, ranks)).toEqual(ranks.map((rank) => sorted[rank]));
  for (const rank of ranks) {
    const value = sorted[rank] as number;
    expect(copy.subarray(0, rank).every((x) => x <= value)).toBe(true);
    expect(copy.subarray(rank).every((x) => x >= value)).toBe(true);
  }
  expect(copy.sort()).toEqual(sorted);
}

describe('selectRanks', () => {
  it('gives what sorting gives, and parts the array there', () => {
    const few = fc.array(fc.oneof(fc.integer({ min: 0, max: 5 }), fc.double({ noNaN: true })), {
      minLength: 1,
      maxLength: 200,
    });
    fc.assert(
      fc.property(few, fc.array(fc.nat(), { maxLength: 4 }), (list, picks) => {
        // −0 and 0 are equal in size, and sorting alone tells them apart.
        const values = Float64Array.from(list, (x) => x + 0);
        hold(
          values,
          picks.map((pick) => pick % values.length).sort((a, b) => a - b),
        );
      }),
    );
  });

  const count = 30_000;
  const random = new Float64Array(count);
  fillNormal(createRandom(3), random);
  it.each<[string, Float64Array]>([
    ['random', random],
    ['ascending', random.slice().sort()],
    ['descending', random.slice().sort().reverse()],
    ['all equal', new Float64Array(count).fill(2.5)],
    ['of two values', random.map((x) => (x > 1 ? 1 : 0))],
    ['an organ pipe', Float64Array.from({ length: count }, (_, i) => Math.min(i, count - i))],
    ['a saw', Float64Array.from({ length: count }, (_, i) => i % 601)],
    ['with infinities', random.map((x) => (x > 2 ? Number.POSITIVE_INFINITY : x < -2 ? Number.NEGATIVE_INFINITY : x))],
  ])('works on many values, %s', (_, values) => {
    hold(values, [0, 749, 15_000, 29_249, count - 1]);
    hold(values, [749, 749]);
  });

  it('takes a time that grows with the number of values only', () => {
    // Counted, not timed: an array that counts what is read from it.
    const reads = (length: number): number => {
      const values = new Float64Array(length);
      fillNormal(createRandom(3), values);
      let total = 0;
      const counted = new Proxy(values, {
        get(target, name) {
          if (typeof name === 'string' && /^\d+$/.test(name)) total++;
          const member: unknown = Reflect.get(target, name);
          return typeof member === 'function' ? member.bind(target) : member;
        },
        set: (target, name, value) => Reflect.set(target, name, value),
      });
      selectRanks(counted, [Math.floor(length * 0.025), Math.floor(length * 0.975)]);
      return total / length;
    };
    expect(reads(64_000)).toBeLessThan(8);
    expect(reads(64_000)).toBeLessThan(reads(4000) * 1.5);
  });

  it('refuses ranks that are none, and values that are none', () => {
    const values = Float64Array.of(3, 1, 2);
    expect(faultOf(() => selectRanks(values, [3]))).toMatchObject({ code: 'out-of-range', path: 'ranks[0]' });
    expect(faultOf(() => selectRanks(values, [0.5]))).toMatchObject({ code: 'not-an-integer', path: 'ranks[0]' });
    expect(faultOf(() => selectRanks(values, [2, 0]))).toMatchObject({ code: 'not-ascending', path: 'ranks[1]' });
    expect(faultOf(() => selectRanks(Float64Array.of(1, Number.NaN), [0]))).toMatchObject({
      code: 'not-a-number',
      path: 'values[1]',
    });
  });
});
