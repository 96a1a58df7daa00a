import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chiSquaredQuantile,
  chiSquaredTails,
  chiSquaredUpperQuantile,
  fTails,
  fUpperQuantile,
  incompleteBeta,
  incompleteGamma,
  normalCdf,
  normalDensity,
  normalInterval,
  normalLogSurvival,
  normalQuantile,
  normalSurvival,
  normalUpperQuantile,
  studentTCdf,
  studentTDensity,
  studentTSurvival,
  studentTUpperQuantile,
} from '../../src/numeric/index.js';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const z = double(-36, 36);
/** Degrees of freedom from 1 to a billion, evenly in their logarithm. */
const degrees = double(0, 9).map((exponent) => 10 ** exponent);
/** Tails from a half down to 1e-290, evenly in their logarithm. */
const tail = double(-290, -0.31).map((exponent) => 10 ** exponent);
const relative = (a: number, b: number): number => Math.abs(a - b) / Math.abs(b);

describe('the normal distribution', () => {
  it('is symmetric, and its tails add to 1', () => {
    fc.assert(
      fc.property(z, (x) => {
        expect(normalCdf(-x)).toBe(normalSurvival(x));
        expect(Math.abs(normalCdf(x) + normalSurvival(x) - 1)).toBeLessThan(3e-16);
        expect(normalDensity(-x)).toBe(normalDensity(x));
      }),
    );
  });

  it('has a quantile that undoes the tail, and is antisymmetric', () => {
    fc.assert(
      fc.property(tail, (q) => {
        const x = normalUpperQuantile(q);
        // A relative error of x of one unit in the last place is one of x² units in the tail.
        expect(relative(normalSurvival(x), q)).toBeLessThan(5e-16 * (2 + x * x));
        expect(normalQuantile(q)).toBe(-x);
      }),
    );
    expect(normalUpperQuantile(0.5)).toBe(0);
    expect(normalQuantile(0.75)).toBe(-normalQuantile(0.25));
  });

  it('has intervals that add up', () => {
    fc.assert(
      fc.property(z, z, z, (a, b, c) => {
        const [x, y, w] = [a, b, c].sort((p, q) => p - q) as [number, number, number];
        const sum = normalInterval(x, y) + normalInterval(y, w);
        expect(Math.abs(normalInterval(x, w) - sum)).toBeLessThanOrEqual(2e-15 * sum + 1e-320);
        expect(normalInterval(-w, -x)).toBe(normalInterval(x, w));
        expect(normalInterval(w, x)).toBe(0);
      }),
    );
    expect(normalInterval(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)).toBe(1);
    expect(normalInterval(3, Number.POSITIVE_INFINITY)).toBe(normalSurvival(3));
  });

  it('has a narrow interval of density times width', () => {
    fc.assert(
      fc.property(z, (x) => {
        const width = 2 ** -30;
        const middle = x + width / 2;
        expect(relative(normalInterval(x, x + width), normalDensity(middle) * (x + width - x))).toBeLessThan(1e-13);
      }),
    );
  });

  it('has a logarithm of its tail where the tail itself is 0', () => {
    fc.assert(
      fc.property(z, (x) => {
        expect(relative(Math.exp(normalLogSurvival(x)), normalSurvival(x))).toBeLessThan(3e-13);
      }),
    );
    expect(normalSurvival(50)).toBe(0);
    expect(normalLogSurvival(50)).toBeCloseTo(-1254.831361139, 8);
  });
});

describe("Student's t", () => {
  const t = double(-1e4, 1e4);

  it('is symmetric, falls, and its tails add to 1', () => {
    fc.assert(
      fc.property(t, double(1e-6, 10), degrees, (x, step, nu) => {
        expect(studentTCdf(-x, nu)).toBe(studentTSurvival(x, nu));
        expect(studentTCdf(x, nu) + studentTSurvival(x, nu)).toBeCloseTo(1, 14);
        expect(studentTSurvival(x + step, nu)).toBeLessThanOrEqual(studentTSurvival(x, nu) * (1 + 1e-13));
      }),
    );
  });

  it('has a quantile that undoes the tail and falls with the degrees of freedom', () => {
    fc.assert(
      fc.property(double(-15, -0.31), degrees, (exponent, nu) => {
        const q = 10 ** exponent;
        const x = studentTUpperQuantile(q, nu);
        expect(relative(studentTSurvival(x, nu), q)).toBeLessThan(2e-14);
        expect(x).toBeGreaterThanOrEqual(studentTUpperQuantile(q, nu * 1.01) * (1 - 1e-14));
        expect(x).toBeGreaterThanOrEqual(normalUpperQuantile(q) * (1 - 1e-14));
        expect(studentTUpperQuantile(1 - q, nu)).toBe(-studentTUpperQuantile(1 - (1 - q), nu));
      }),
    );
    expect(studentTUpperQuantile(0.5, 7)).toBe(0);
  });

  it('is the normal distribution for infinite degrees of freedom, and tends to it', () => {
    expect(studentTSurvival(2, Number.POSITIVE_INFINITY)).toBe(normalSurvival(2));
    expect(studentTDensity(2, Number.POSITIVE_INFINITY)).toBe(normalDensity(2));
    expect(studentTUpperQuantile(0.025, Number.POSITIVE_INFINITY)).toBe(normalUpperQuantile(0.025));
    expect(relative(studentTUpperQuantile(0.025, 1e300), normalUpperQuantile(0.025))).toBeLessThan(1e-15);
    expect(relative(studentTSurvival(20, 1e12), normalSurvival(20))).toBeLessThan(1e-7);
  });

  it('has closed forms for 1 and 2 degrees of freedom', () => {
    fc.assert(
      fc.property(double(0, 50), (x) => {
        expect(relative(studentTSurvival(x, 1), Math.atan2(1, x) / Math.PI)).toBeLessThan(3e-15);
        const root = Math.sqrt(2 + x * x);
        expect(relative(studentTSurvival(x, 2), 1 / (root * (root + x)))).toBeLessThan(3e-15);
      }),
    );
  });

  it('has a density that is the slope of its tail', () => {
    fc.assert(
      fc.property(double(0.1, 6), degrees, (x, nu) => {
        const step = 1e-4;
        const slope = (studentTSurvival(x - step, nu) - studentTSurvival(x + step, nu)) / (2 * step);
        expect(relative(slope, studentTDensity(x, nu))).toBeLessThan(3e-6);
      }),
    );
  });
});

describe('χ² and F', () => {
  it('have quantiles that undo their tails', () => {
    fc.assert(
      fc.property(double(-15, -0.31), degrees, (exponent, nu) => {
        const q = 10 ** exponent;
        // At ν degrees of freedom a value rounded to a double moves its tail by √ν units in the last place and more.
        const bound = 3e-14 + 1e-15 * Math.sqrt(nu) * (1 - exponent);
        expect(relative(chiSquaredTails(chiSquaredQuantile(q, nu), nu).lower, q)).toBeLessThan(bound);
        expect(relative(chiSquaredTails(chiSquaredUpperQuantile(q, nu), nu).upper, q)).toBeLessThan(bound);
      }),
    );
  });

  it('χ² with 2 degrees of freedom is exponential, with 1 the square of a normal variable', () => {
    fc.assert(
      fc.property(double(0.001, 600), (x) => {
        expect(relative(chiSquaredTails(x, 2).upper, Math.exp(-x / 2))).toBeLessThan(1e-13);
        expect(relative(chiSquaredTails(x, 1).upper, 2 * normalSurvival(Math.sqrt(x)))).toBeLessThan(1e-13);
      }),
    );
  });

  it('F with 1 and ν degrees of freedom is the square of t', () => {
    fc.assert(
      fc.property(double(0.01, 30), double(0, 4), (x, exponent) => {
        const nu = 10 ** exponent;
        expect(relative(fTails(x * x, 1, nu).upper, 2 * studentTSurvival(x, nu))).toBeLessThan(2e-12);
      }),
    );
  });

  it('F turns over with its degrees of freedom', () => {
    fc.assert(
      fc.property(double(0.05, 20), double(0, 3), double(0, 3), (x, p, q) => {
        const [a, b] = [10 ** p, 10 ** q];
        const upper = fTails(x, a, b).upper;
        if (upper > 1e-250) expect(relative(fTails(1 / x, b, a).lower, upper)).toBeLessThan(1e-11);
      }),
    );
  });

  it('F has a quantile that undoes its tail', () => {
    fc.assert(
      fc.property(double(-12, -0.05), double(0, 4), double(0, 4), (exponent, p, q) => {
        const tailProbability = 10 ** exponent;
        const x = fUpperQuantile(tailProbability, 10 ** p, 10 ** q);
        expect(relative(fTails(x, 10 ** p, 10 ** q).upper, tailProbability)).toBeLessThan(5e-13);
      }),
    );
  });

  it('the incomplete gamma and beta functions add to 1 with their complements and stay inside', () => {
    fc.assert(
      fc.property(double(-2, 6), double(-6, 3), double(0, 1), (shape, ratio, x) => {
        const a = 10 ** shape;
        for (const { lower, upper } of [incompleteGamma(a, a * 10 ** ratio), incompleteBeta(a, 3.5, x)]) {
          expect(lower + upper).toBeCloseTo(1, 14);
          expect(Math.min(lower, upper)).toBeGreaterThanOrEqual(0);
          expect(Math.max(lower, upper)).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});
