import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { specificRiskLimit } from '../../src/decision/specific-risk-limit.js';
import { tailsOf } from '../../src/decision/tails.js';
import { degreesOfFreedom, real } from './generators.js';

describe('tails of what is known of a quantity', () => {
  it.each([
    // Student's t of 1 degree of freedom: arctan; of 2: t/√(2 + t²).
    [1, (t: number) => Math.atan(t) / Math.PI],
    [2, (t: number) => t / (2 * Math.sqrt(2 + t * t))],
  ])('of %d degrees of freedom lie between two values as the closed form says', (degrees, half) => {
    const { between } = tailsOf(degrees);
    for (const [low, high] of [
      [0, 0.1],
      [-1, 2],
      [-3, -1],
      [0.5, 0.7],
      [5, 9],
    ] as const) {
      expect(between(low, high) / (half(high) - half(low))).toBeCloseTo(1, 13);
    }
    expect(between(2, 1)).toBe(0);
    expect(between(1, 1)).toBe(0);
  });

  it('keep the digits of a narrow interval far out', () => {
    // The density of the Cauchy distribution, 1/(π·(1 + t²)), times the width.
    const [low, high] = [1000, 1000 + 2 ** -20];
    const middle = (low + high) / 2;
    const expected = (high - low) / (Math.PI * (1 + middle * middle));
    expect(tailsOf(1).between(low, high) / expected).toBeCloseTo(1, 13);
    expect(tailsOf(1).between(-high, -low)).toBe(tailsOf(1).between(low, high));
  });

  it('add up over touching intervals, whichever way each is found', () => {
    fc.assert(
      fc.property(degreesOfFreedom(), real(-8, 8), real(0.001, 4), real(0.001, 4), (degrees, low, a, b) => {
        const { between } = tailsOf(degrees);
        const whole = between(low, low + a + b);
        const parts = between(low, low + a) + between(low + a, low + a + b);
        expect(Math.abs(parts - whole)).toBeLessThanOrEqual(1e-12 * whole);
      }),
    );
  });

  it('are exceeded at a quantile with its probability', () => {
    fc.assert(
      fc.property(degreesOfFreedom(), real(1e-12, 0.5), (degrees, p) => {
        const { above, quantile } = tailsOf(degrees);
        expect(above(quantile(p)) / p).toBeCloseTo(1, 11);
      }),
    );
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuse %d degrees of freedom', (degrees) => {
    expect(() => tailsOf(degrees)).toThrow(expect.objectContaining({ path: 'degreesOfFreedom' }));
  });
});

describe('limit of a specific risk', () => {
  const tails = tailsOf('infinite');
  const between = (whose: 'consumer' | 'producer', risk: number, span: number) =>
    specificRiskLimit({ whose, risk, tails, middle: span / 2, toOther: (z) => span - z });

  it('holds the risk of both tails together', () => {
    fc.assert(
      fc.property(real(1e-9, 0.5), real(0.05, 20), (risk, span) => {
        const consumer = between('consumer', risk, span);
        if (consumer === null) expect(2 * tails.above(span / 2)).toBeGreaterThan(risk);
        else expect((tails.above(consumer) + tails.above(span - consumer)) / risk).toBeCloseTo(1, 12);
        const producer = between('producer', risk, span);
        if (producer === null) expect(tails.between(-span / 2, span / 2)).toBeLessThan(risk * (1 + 1e-14));
        else expect(tails.between(-producer, span - producer) / risk).toBeCloseTo(1, 12);
      }),
    );
  });

  it('with one limit is a quantile, with its sign', () => {
    const alone = { tails, middle: Number.POSITIVE_INFINITY, toOther: () => Number.NaN };
    expect(specificRiskLimit({ whose: 'consumer', risk: 0.05, ...alone })).toBeCloseTo(1.6448536269514722, 14);
    expect(specificRiskLimit({ whose: 'producer', risk: 0.05, ...alone })).toBeCloseTo(-1.6448536269514722, 14);
  });
});
