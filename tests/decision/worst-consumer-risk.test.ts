import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acceptanceBand, globalRisk, twoPercentRule, worstConsumerRisk } from '../../src/decision/index.js';
import { real, twoSidedBand } from './generators.js';

const band = { lower: -1, upper: 1 };

describe('worst risk', () => {
  it('is not less than that of any centred spread, with acceptance limits inside or outside', () => {
    fc.assert(
      fc.property(
        twoSidedBand(),
        real(0.005, 0.5),
        real(-1, 0.4),
        real(0.01, 50),
        (tolerance, ratio, guard, spread) => {
          const span = tolerance.upper - tolerance.lower;
          const acceptance = { lower: tolerance.lower + guard * span, upper: tolerance.upper - guard * span };
          const standardUncertainty = ratio * span;
          const worst = worstConsumerRisk({ band: tolerance, acceptance, standardUncertainty });
          const mean = tolerance.lower + span / 2;
          const prior = { kind: 'normal', mean, standardDeviation: spread * span } as const;
          const { consumerRisk } = globalRisk({ band: tolerance, acceptance, prior, standardUncertainty });
          expect(worst.consumerRisk).toBeGreaterThanOrEqual(consumerRisk * (1 - 1e-10));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is found where the acceptance limits reach far beyond the tolerance', () => {
    // Without uncertainty the worst spread of ±1 accepted up to ±A is √((A² − 1)/(2·ln A)): for A = 100 it is 32.95.
    const { prior } = worstConsumerRisk({ band, acceptance: { lower: -100, upper: 100 }, standardUncertainty: 1e-3 });
    expect(prior.standardDeviation).toBeCloseTo(Math.sqrt(9999 / (2 * Math.log(100))), 3);
  });

  it('does not depend on unit or place', () => {
    const here = worstConsumerRisk({ band, standardUncertainty: 0.125 });
    const there = worstConsumerRisk({ band: { lower: 0, upper: 2048 }, standardUncertainty: 128 });
    expect(there.consumerRisk / here.consumerRisk).toBeCloseTo(1, 11);
    expect(there.prior.mean).toBe(1024);
  });

  it.each<readonly [string, string, () => unknown]>([
    ['missing-member', 'band.lower', () => worstConsumerRisk({ band: { upper: 1 }, standardUncertainty: 0.1 })],
    ['missing-member', 'band.upper', () => worstConsumerRisk({ band: { lower: 1 }, standardUncertainty: 0.1 })],
    [
      'missing-member',
      'acceptance.lower',
      () => worstConsumerRisk({ band, acceptance: { upper: 1 }, standardUncertainty: 0.1 }),
    ],
    [
      'missing-member',
      'acceptance.upper',
      () => worstConsumerRisk({ band, acceptance: { lower: 0 }, standardUncertainty: 1 }),
    ],
    ['not-positive', 'standardUncertainty', () => worstConsumerRisk({ band, standardUncertainty: 0 })],
    [
      'not-positive',
      'band: its span',
      () => worstConsumerRisk({ band: { lower: 1, upper: 1 }, standardUncertainty: 1 }),
    ],
    [
      'band-reversed',
      'acceptance.lower',
      () => worstConsumerRisk({ band, acceptance: { lower: 1, upper: 0 }, standardUncertainty: 1 }),
    ],
  ])('is refused with %s at %s', (code, path, work) => {
    expect(work).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('2 % rule', () => {
  it('holds at the limits that were derived to hold it', () => {
    for (const u of [0.05, 0.1, 0.15, 0.2, 0.25, 0.3]) {
      const prior = { kind: 'normal', mean: 0.1, standardDeviation: 0.7 } as const;
      const rule = { kind: 'global-consumer-risk', risk: 0.02, prior } as const;
      const acceptance = acceptanceBand(band, rule, { standardUncertainty: u });
      const answer = twoPercentRule({ band, acceptance, standardUncertainty: u, prior });
      expect(answer).toMatchObject({ holds: true, isWorstCase: false, limit: 0.02, prior });
    }
  });

  it('does not hold with limits that are wider by a thousandth', () => {
    const prior = { kind: 'normal', mean: 0, standardDeviation: 0.7 } as const;
    const rule = { kind: 'global-consumer-risk', risk: 0.02, prior } as const;
    const { lower, upper } = acceptanceBand(band, rule, { standardUncertainty: 0.2 });
    const acceptance = { lower: (lower as number) * 1.001, upper: (upper as number) * 1.001 };
    expect(twoPercentRule({ band, acceptance, standardUncertainty: 0.2, prior }).holds).toBe(false);
  });

  it('takes the worst spread where none is known', () => {
    const answer = twoPercentRule({ band, standardUncertainty: 0.125 });
    expect(answer.isWorstCase).toBe(true);
    expect(answer.consumerRisk).toBe(worstConsumerRisk({ band, standardUncertainty: 0.125 }).consumerRisk);
    expect(twoPercentRule({ band, standardUncertainty: 0.125, limit: 0.03 }).holds).toBe(true);
  });

  it('with the managed-risk guard band holds for every ratio up to that where it ends', () => {
    for (let ratio = 1.1; ratio < 4.59; ratio += 0.23) {
      const rule = { kind: 'test-uncertainty-ratio', method: 'managed-risk' } as const;
      const measured = { expandedUncertainty: 1 / ratio, coverageFactor: 2 };
      const acceptance = acceptanceBand(band, rule, measured);
      expect(twoPercentRule({ band, acceptance, standardUncertainty: 0.5 / ratio }).holds, `${ratio}`).toBe(true);
    }
  });

  it.each<readonly [string, () => unknown]>([
    ['not-a-fraction', () => twoPercentRule({ band, standardUncertainty: 0.1, limit: 2 })],
    ['not-a-fraction', () => twoPercentRule({ band, standardUncertainty: 0.1, limit: -0.1 })],
    [
      'negative',
      () =>
        twoPercentRule({ band, standardUncertainty: -0.1, prior: { kind: 'gamma', mean: 1, standardDeviation: 1 } }),
    ],
    [
      'not-positive',
      () => twoPercentRule({ band, standardUncertainty: 0.1, prior: { kind: 'gamma', mean: 0, standardDeviation: 1 } }),
    ],
    ['missing-member', () => twoPercentRule({ band: { upper: 1 }, standardUncertainty: 0.1 })],
  ])('is refused with %s', (code, work) => {
    expect(work).toThrow(expect.objectContaining({ code }));
  });
});
