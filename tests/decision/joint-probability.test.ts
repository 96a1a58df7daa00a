import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointProbability } from '../../src/decision/joint-probability.js';
import { normalRisks } from '../../src/decision/normal-risks.js';
import { normalSplit } from '../../src/decision/normal-split.js';
import type { NormalPrior, Prior } from '../../src/decision/prior.js';
import { priorShape } from '../../src/decision/prior-shape.js';
import { real } from './generators.js';
import { joint, riskBy, splitBy } from './quadrature.js';

const infinity = Number.POSITIVE_INFINITY;
const everything = { from: -infinity, to: infinity };

describe('probability of a quantity and its reading', () => {
  const priors: readonly Prior[] = [
    { kind: 'normal', mean: 1, standardDeviation: 0.4 },
    { kind: 'rectangular', lower: 0.2, upper: 2.2 },
    { kind: 'gamma', mean: 1, standardDeviation: 0.5 },
    { kind: 'gamma', mean: 1, standardDeviation: 1.4 },
  ];

  it.each(priors)('adds up to that of the quantity over a partition of its readings: %o', (prior) => {
    fc.assert(
      fc.property(real(0.1, 1), real(0.05, 2), real(0.001, 3), real(0, 2), (from, width, u, cut) => {
        const shape = priorShape(prior);
        const quantity = { from, to: from + width };
        const whole = jointProbability(shape, quantity, everything, u);
        const below = jointProbability(shape, quantity, { from: -infinity, to: cut }, u);
        const above = jointProbability(shape, quantity, { from: cut, to: infinity }, u);
        expect(Math.abs(below + above - whole)).toBeLessThanOrEqual(1e-13 * whole);
      }),
    );
  });

  it.each(priors)('is that of an adaptive quadrature: %o', (prior) => {
    fc.assert(
      fc.property(
        real(0.3, 1),
        real(0.2, 1),
        real(0.05, 0.5),
        real(0, 2),
        real(0.1, 1),
        (from, width, u, low, span) => {
          const quantity = { from, to: from + width };
          const reading = { from: low, to: low + span };
          const found = jointProbability(priorShape(prior), quantity, reading, u);
          const expected = joint(prior, quantity, reading, u);
          if (expected > 1e-200) expect(found / expected).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('of empty ranges is 0, and of an exact reading that of the common part', () => {
    const shape = priorShape({ kind: 'rectangular', lower: 0, upper: 10 });
    expect(jointProbability(shape, { from: 3, to: 3 }, everything, 1)).toBe(0);
    expect(jointProbability(shape, { from: 1, to: 3 }, { from: 2, to: 2 }, 1)).toBe(0);
    expect(jointProbability(shape, { from: 11, to: 13 }, everything, 1)).toBe(0);
    expect(jointProbability(shape, { from: 1, to: 5 }, { from: 4, to: 9 }, 0)).toBeCloseTo(0.1, 15);
  });
});

describe('split of a bivariate normal distribution', () => {
  it('is that of an adaptive quadrature of its definition', () => {
    fc.assert(
      fc.property(real(-3, 3), real(-3, 3), real(0.05, 0.95), (h, gap, end) => {
        const expected = splitBy(h, h - gap, end);
        if (expected > 1e-250) expect(normalSplit(h, gap, end) / expected).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('of independent quantities is the product of their probabilities', () => {
    // ρ = 0: √((1 − 0)/(1 + 0)) = 1. P(X > 0)·P(Y < 0) = 1/4.
    expect(normalSplit(0, 0, 1)).toBeCloseTo(0.25, 15);
  });

  it('comes to its end with the smallest gaps and limits, where squares fade', () => {
    const plain = normalSplit(0.3, 0, 0.5);
    for (const gap of [1e-130, 1e-141, 1e-155, 1e-161, 2e-162, 1e-163, 5e-324]) {
      for (const signed of [gap, -gap]) expect(normalSplit(0.3, signed, 0.5) / plain).toBeCloseTo(1, 15);
      expect(normalSplit(gap, gap, 0.5)).toBeCloseTo(normalSplit(0, 0, 0.5), 15);
    }
  });

  it('at 0, 0 is that of Sheppard: ¼ − arcsin ρ/2π', () => {
    for (const rho of [0.1, 0.5, 0.9, 0.99, 0.9999]) {
      const found = normalSplit(0, 0, Math.sqrt((1 - rho) / (1 + rho)));
      // arccos ρ, without its cancellation, is 2·arctan √((1 − ρ)/(1 + ρ)).
      expect(found / (Math.atan(Math.sqrt((1 - rho) / (1 + rho))) / Math.PI)).toBeCloseTo(1, 13);
    }
  });
});

describe('risks of a normal prior', () => {
  it('are those of the quadrature', () => {
    fc.assert(
      fc.property(real(-0.5, 0.5), real(0.2, 2), real(0.02, 1), real(-0.3, 0.3), (mean, deviation, u, guard) => {
        const prior: NormalPrior = { kind: 'normal', mean, standardDeviation: deviation };
        const tolerance = { from: -1, to: 1 };
        const readings = { from: -1 + guard, to: 1 - guard };
        const found = normalRisks(tolerance, readings, prior, priorShape(prior), u);
        const expected = riskBy(prior, tolerance, readings, u);
        expect(found.consumerRisk / expected.consumerRisk).toBeCloseTo(1, 9);
        expect(found.producerRisk / expected.producerRisk).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a prior', () => {
  it.each<readonly [string, string, Prior]>([
    ['not-a-number', 'prior.mean', { kind: 'normal', mean: Number.NaN, standardDeviation: 1 }],
    ['not-positive', 'prior.standardDeviation', { kind: 'normal', mean: 0, standardDeviation: 0 }],
    ['not-positive', 'prior.standardDeviation', { kind: 'normal', mean: 0, standardDeviation: -1 }],
    ['band-reversed', 'prior.lower', { kind: 'rectangular', lower: 2, upper: 1 }],
    ['not-positive', 'prior: its width', { kind: 'rectangular', lower: 1, upper: 1 }],
    ['not-a-number', 'prior.upper', { kind: 'rectangular', lower: 1, upper: infinity }],
    ['not-positive', 'prior.mean', { kind: 'gamma', mean: 0, standardDeviation: 1 }],
    ['not-positive', 'prior.standardDeviation', { kind: 'gamma', mean: 1, standardDeviation: 0 }],
    ['unknown-choice', 'prior.kind', { kind: 'other' } as unknown as Prior],
  ])('is refused with %s at %s', (code, path, prior) => {
    expect(() => priorShape(prior)).toThrow(expect.objectContaining({ code, path }));
  });
});
