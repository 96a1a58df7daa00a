import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { globalRisk } from '../../src/decision/index.js';
import { integrate, normalDensity, normalInterval, normalSurvival } from '../../src/numeric/index.js';
import { real } from './generators.js';

describe('global risk', () => {
  it('agrees with an adaptive quadrature of the definition', () => {
    fc.assert(
      fc.property(real(-1, 1), real(0.2, 2), real(0.05, 0.5), real(-0.3, 0.2), (mean, deviation, u, guard) => {
        const band = { lower: -1, upper: 1 };
        const acceptance = { lower: -1 + guard, upper: 1 - guard };
        const prior = { kind: 'normal', mean, standardDeviation: deviation } as const;
        const risk = globalRisk({ band, acceptance, prior, standardUncertainty: u });
        const density = (x: number): number => normalDensity((x - mean) / deviation) / deviation;
        const accepted = (x: number): number => normalInterval((acceptance.lower - x) / u, (acceptance.upper - x) / u);
        const within = (from: number, to: number) => ({
          relative: 1e-12,
          breakpoints: [...new Set([-1 - u, acceptance.lower, acceptance.upper, 1 + u])]
            .filter((x) => x > from && x < to)
            .sort((a, b) => a - b),
        });
        const wide = 12 * deviation + 12 * u + 2;
        const outside = (x: number): number => density(x) * accepted(x);
        const consumer =
          integrate(outside, -wide, -1, within(-wide, -1)).value + integrate(outside, 1, wide, within(1, wide)).value;
        const rejected = (x: number): number =>
          normalSurvival((acceptance.upper - x) / u) + normalSurvival((x - acceptance.lower) / u);
        const producer = integrate((x) => density(x) * rejected(x), -1, 1, within(-1, 1)).value;
        expect(risk.consumerRisk / consumer).toBeCloseTo(1, 9);
        expect(risk.producerRisk / producer).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });

  it('falls for the consumer and rises for the producer as the guard band grows', () => {
    const band = { lower: 0.8, upper: 1.2 };
    const prior = { kind: 'normal', mean: 1, standardDeviation: 0.1 } as const;
    const risks = [-0.05, 0, 0.02, 0.05, 0.1, 0.15].map((w) =>
      globalRisk({ band, acceptance: { lower: 0.8 + w, upper: 1.2 - w }, prior, standardUncertainty: 0.03 }),
    );
    for (let i = 1; i < risks.length; i++) {
      expect(risks[i]?.consumerRisk).toBeLessThan(risks[i - 1]?.consumerRisk as number);
      expect(risks[i]?.producerRisk).toBeGreaterThan(risks[i - 1]?.producerRisk as number);
    }
  });

  it('is 0 for both with an exact measurement, and rejects everything where nothing is accepted', () => {
    const band = { lower: 0.8, upper: 1.2 };
    const prior = { kind: 'rectangular', lower: 0.5, upper: 1.5 } as const;
    const exact = globalRisk({ band, acceptance: band, prior, standardUncertainty: 0 });
    expect(exact.consumerRisk).toBe(0);
    expect(exact.producerRisk).toBe(0);
    expect(exact.acceptanceProbability).toBeCloseTo(0.4, 14);
    const none = globalRisk({ band, acceptance: null, prior, standardUncertainty: 0.1 });
    expect(none).toMatchObject({ consumerRisk: 0, acceptanceProbability: 0 });
    expect(none.producerRisk).toBeCloseTo(0.4, 14);
  });

  it.each([
    [{ kind: 'normal', mean: 1, standardDeviation: 0 }, 'not-positive'],
    [{ kind: 'rectangular', lower: 1, upper: 1 }, 'not-positive'],
    [{ kind: 'rectangular', lower: 2, upper: 1 }, 'band-reversed'],
  ] as const)('refuses the prior %o', (prior, code) => {
    const band = { upper: 1 };
    const work = () => globalRisk({ band, acceptance: band, prior, standardUncertainty: 0.1 });
    expect(work).toThrow(expect.objectContaining({ code }));
  });
});
