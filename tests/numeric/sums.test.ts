import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compensatedDot, meanAndVariance, mergeMoments, momentsOf, sum } from '../../src/numeric/index.js';
import { faultOf } from '../band/fault-of.js';

const values = fc.array(
  fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((x) => (Math.abs(x) < 1e-20 ? 0 : x)),
  { minLength: 2, maxLength: 100 },
);

/** A double as a whole number of 2⁻¹⁰⁷⁴: sums of them are exact. */
function exactly(x: number): bigint {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, x);
  const bits = view.getBigUint64(0);
  const exponent = (bits >> 52n) & 0x7ffn;
  const fraction = bits & 0xfffffffffffffn;
  const size = exponent === 0n ? fraction : (fraction | 0x10000000000000n) << (exponent - 1n);
  return bits >> 63n ? -size : size;
}

describe('sum', () => {
  it('keeps what plain addition loses', () => {
    expect(sum([1, 1e100, 1, -1e100])).toBe(2);
    expect(sum(Array<number>(10).fill(0.1))).toBe(1);
    expect(sum([])).toBe(0);
  });

  it('is within rounding of the exact sum', () => {
    fc.assert(
      fc.property(values, (x) => {
        const exact = x.reduce((total, v) => total + exactly(v), 0n);
        const size = x.reduce((total, v) => total + Math.abs(v), 0);
        const error = Number((exactly(sum(x)) - exact) >> 900n) * 2 ** -174;
        expect(Math.abs(error)).toBeLessThanOrEqual(1.2e-16 * Math.abs(sum(x)) + 1e-28 * size);
      }),
    );
  });
});

describe('compensatedDot', () => {
  it('keeps the digits of products that cancel', () => {
    const x = 1 + 2 ** -30;
    // x² − (1 + 2⁻²⁹) is exactly 2⁻⁶⁰.
    expect(compensatedDot([x, -1], [x, 1 + 2 ** -29])).toBe(2 ** -60);
    expect(compensatedDot([1e10, 1, -1e10], [1e10, 1, 1e10])).toBe(1);
    expect(compensatedDot([2], [3], 4)).toBe(10);
  });
});

describe('moments', () => {
  it('do not change with a shift, scale with a factor', () => {
    fc.assert(
      fc.property(values, fc.integer({ min: -1000, max: 1000 }), (x, shift) => {
        const plain = meanAndVariance(x);
        const moved = meanAndVariance(x.map((v) => v + shift));
        const size = Math.max(...x.map(Math.abs), 1000);
        expect(Math.abs(moved.mean - plain.mean - shift)).toBeLessThan(1e-15 * 4 * size);
        expect(Math.abs(moved.standardDeviation - plain.standardDeviation)).toBeLessThan(1e-15 * 4 * size);
        expect(meanAndVariance(x.map((v) => v * 4)).variance).toBe(plain.variance * 16);
        expect(plain.variance).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('of equal values have no spread, not even by rounding', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.integer({ min: 2, max: 300 }), (x, count) => {
        expect(meanAndVariance(Array<number>(count).fill(x))).toEqual({
          count,
          mean: x + 0,
          variance: 0,
          standardDeviation: 0,
        });
      }),
    );
  });

  it('of two parts are those of the whole', () => {
    fc.assert(
      fc.property(values, values, (a, b) => {
        const whole = momentsOf([...a, ...b]);
        const merged = mergeMoments(momentsOf(a), momentsOf(b));
        expect(merged.count).toBe(whole.count);
        expect(Math.abs(merged.mean - whole.mean)).toBeLessThan(1e-9);
        expect(Math.abs(merged.squares - whole.squares)).toBeLessThanOrEqual(1e-13 * whole.squares);
      }),
    );
    const none = { count: 0, mean: 0, squares: 0 };
    expect(mergeMoments(none, momentsOf([1, 2]))).toEqual(momentsOf([1, 2]));
    expect(mergeMoments(momentsOf([1, 2]), none)).toEqual(momentsOf([1, 2]));
  });

  it('keep their digits beside a large common part, in a million values too', () => {
    const many = Float64Array.from({ length: 1_000_000 }, (_, i) => 1e9 + (i % 2));
    expect(meanAndVariance(many)).toMatchObject({ mean: 1e9 + 0.5, variance: 0.25 * (1e6 / (1e6 - 1)) });
  });

  it('need values', () => {
    expect(faultOf(() => momentsOf([]))).toMatchObject({ code: 'wrong-count', path: 'values' });
    expect(faultOf(() => meanAndVariance([1]))).toMatchObject({ code: 'wrong-count', path: 'values' });
  });
});
