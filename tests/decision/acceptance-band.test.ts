import { describe, expect, it } from 'vitest';
import {
  acceptanceBand,
  type DecisionRule,
  explainAcceptanceBand,
  type MeasurementUncertainty,
} from '../../src/decision/index.js';

const band = { lower: 240, upper: 360 };
const stated: MeasurementUncertainty = { expandedUncertainty: 12, coverageFactor: 2 };
const guarded = { kind: 'guarded-acceptance', ratio: 1 } as const;

describe('acceptance limits', () => {
  it.each<readonly [DecisionRule, object]>([
    [{ kind: 'simple-acceptance' }, band],
    [guarded, { lower: 252, upper: 348 }],
    [{ kind: 'guarded-acceptance', ratio: 0 }, band],
    [
      { kind: 'guarded-acceptance', ratio: 0.5 },
      { lower: 246, upper: 354 },
    ],
    [
      { kind: 'guarded-rejection', ratio: 1 },
      { lower: 228, upper: 372 },
    ],
    [
      { kind: 'non-binary', ratio: 1 },
      { lower: 252, upper: 348 },
    ],
    // A test uncertainty ratio of 5: none of these two has a guard band.
    [{ kind: 'test-uncertainty-ratio', method: 'whole-below-four' }, band],
    [{ kind: 'test-uncertainty-ratio', method: 'relaxed-below-four' }, band],
    [{ kind: 'test-uncertainty-ratio', method: 'managed-risk' }, band],
  ])('by %o', (rule, expected) => {
    expect(acceptanceBand(band, rule, stated)).toEqual(expected);
  });

  it('keep an absent limit absent', () => {
    expect(acceptanceBand({ lower: 240 }, guarded, stated)).toEqual({ lower: 252 });
    expect(acceptanceBand({ upper: 360 }, guarded, stated)).toEqual({ upper: 348 });
  });

  it('of simple acceptance need no uncertainty', () => {
    expect(acceptanceBand(band, { kind: 'simple-acceptance' })).toEqual(band);
  });

  it('are rounded inward to the steps of the instrument, under every rule', () => {
    const uneven = { lower: 0.24561, upper: 0.36449 };
    const measured = { expandedUncertainty: 0.0123, coverageFactor: 2 };
    const options = { resolution: 0.001 };
    const simple = { kind: 'simple-acceptance' } as const;
    expect(acceptanceBand(uneven, simple, {}, options)).toEqual({ lower: 0.246, upper: 0.364 });
    expect(acceptanceBand(uneven, guarded, measured, options)).toEqual({ lower: 0.258, upper: 0.352 });
    const rejection = { kind: 'guarded-rejection', ratio: 1 } as const;
    expect(acceptanceBand(uneven, rejection, measured, options)).toEqual({ lower: 0.234, upper: 0.376 });
  });

  it('that meet on one value accept that value alone', () => {
    // 0.3 − 0.1 is a little less than 0.2 in binary fractions.
    const { lower, upper } = acceptanceBand({ lower: 0.1, upper: 0.3 }, guarded, {
      expandedUncertainty: 0.1,
      coverageFactor: 2,
    });
    expect(lower).toBe(upper);
    expect(lower).toBeCloseTo(0.2, 15);
    const rule = { kind: 'test-uncertainty-ratio', method: 'root-sum-square' } as const;
    const single = acceptanceBand({ lower: 0.1, upper: 0.3 }, rule, { expandedUncertainty: 0.1, coverageFactor: 2 });
    expect(single.lower).toBeCloseTo(0.2, 8);
  });

  it('whose guard bands cross are an error here and a warning where it is explained', () => {
    const wide = { expandedUncertainty: 61, coverageFactor: 2 };
    expect(() => acceptanceBand(band, guarded, wide)).toThrow(expect.objectContaining({ code: 'acceptance-empty' }));
    const { acceptance, guardBand, warnings } = explainAcceptanceBand(band, guarded, wide);
    expect(acceptance).toBeNull();
    expect(guardBand).toBeNull();
    expect(warnings.map(({ code }) => code)).toEqual(['acceptance-empty']);
  });

  it('that lie between two steps of the instrument leave nothing to accept', () => {
    const { acceptance, warnings } = explainAcceptanceBand(
      { lower: 0.101, upper: 0.109 },
      { kind: 'simple-acceptance' },
      {},
      { resolution: 0.01 },
    );
    expect(acceptance).toBeNull();
    expect(warnings.map(({ code }) => code)).toEqual(['acceptance-empty']);
  });

  it.each<readonly [string, DecisionRule]>([
    ['a consumer risk that not even the middle holds', { kind: 'specific-consumer-risk', risk: 0.01 }],
    ['a ratio below 1, root sum square', { kind: 'test-uncertainty-ratio', method: 'root-sum-square' }],
    ['a ratio below 1, whole', { kind: 'test-uncertainty-ratio', method: 'whole-below-four' }],
    ['a ratio below 0.8, relaxed', { kind: 'test-uncertainty-ratio', method: 'relaxed-below-four' }],
    ['a ratio far below 1, managed risk', { kind: 'test-uncertainty-ratio', method: 'managed-risk' }],
  ])('of %s are none', (_, rule) => {
    const { acceptance } = explainAcceptanceBand(band, rule, { expandedUncertainty: 300, coverageFactor: 2 });
    expect(acceptance).toBeNull();
  });

  it('of a relative uncertainty keep the distance in uncertainties of the limit itself', () => {
    const measured = { relativeStandardUncertainty: 0.02, coverageFactor: 2 };
    const { lower, upper } = acceptanceBand(band, guarded, measured) as { lower: number; upper: number };
    expect(lower - 0.04 * lower).toBeCloseTo(240, 12);
    expect(upper + 0.04 * upper).toBeCloseTo(360, 12);
  });

  it.each<readonly [string, string, () => unknown]>([
    [
      'negative',
      'standardUncertainty',
      () => acceptanceBand(band, guarded, { standardUncertainty: -1, coverageFactor: 2 }),
    ],
    [
      'negative',
      'expandedUncertainty',
      () => acceptanceBand(band, guarded, { expandedUncertainty: -1, coverageFactor: 2 }),
    ],
    [
      'not-positive',
      'coverageFactor',
      () => acceptanceBand(band, guarded, { standardUncertainty: 1, coverageFactor: 0 }),
    ],
    ['missing-member', 'coverageFactor', () => acceptanceBand(band, guarded, { standardUncertainty: 1 })],
    ['missing-member', 'standardUncertainty', () => acceptanceBand(band, guarded)],
    ['missing-member', 'standardUncertainty', () => acceptanceBand(band, guarded, { expandedUncertainty: 1 })],
    ['negative', 'rule.ratio', () => acceptanceBand(band, { kind: 'guarded-acceptance', ratio: -1 }, stated)],
    ['not-a-number', 'rule.ratio', () => acceptanceBand(band, { kind: 'non-binary', ratio: Number.NaN }, stated)],
    ['not-a-fraction', 'rule.risk', () => acceptanceBand(band, { kind: 'specific-consumer-risk', risk: 95 }, stated)],
    ['out-of-range', 'rule.risk', () => acceptanceBand(band, { kind: 'specific-consumer-risk', risk: 0 }, stated)],
    ['out-of-range', 'rule.risk', () => acceptanceBand(band, { kind: 'specific-producer-risk', risk: 0.6 }, stated)],
    ['band-reversed', 'band.lower', () => acceptanceBand({ lower: 2, upper: 1 }, guarded, stated)],
    ['no-limits', 'band', () => acceptanceBand({}, guarded, stated)],
    ['not-positive', 'resolution', () => acceptanceBand(band, guarded, stated, { resolution: 0 })],
    ['unknown-choice', 'rule.kind', () => acceptanceBand(band, { kind: 'other' } as unknown as DecisionRule, stated)],
    [
      'unknown-choice',
      'method',
      () =>
        acceptanceBand(band, { kind: 'test-uncertainty-ratio', method: 'other' } as unknown as DecisionRule, stated),
    ],
    [
      'negative',
      'band.lower',
      () => acceptanceBand({ lower: -1 }, guarded, { relativeStandardUncertainty: 0.1, coverageFactor: 2 }),
    ],
    [
      'negative',
      'band.upper',
      () =>
        acceptanceBand(
          { upper: -1 },
          { kind: 'specific-consumer-risk', risk: 0.1 },
          { relativeStandardUncertainty: 0.1 },
        ),
    ],
    [
      'out-of-range',
      'relativeStandardUncertainty',
      () => acceptanceBand({ lower: 1 }, guarded, { relativeStandardUncertainty: 0.5, coverageFactor: 2 }),
    ],
    [
      'missing-member',
      'standardUncertainty',
      () =>
        acceptanceBand(
          band,
          { kind: 'global-consumer-risk', risk: 0.01, prior: { kind: 'normal', mean: 300, standardDeviation: 20 } },
          { relativeStandardUncertainty: 0.1 },
        ),
    ],
    [
      'not-positive',
      'rule.prior.standardDeviation',
      () =>
        acceptanceBand(
          band,
          { kind: 'global-consumer-risk', risk: 0.01, prior: { kind: 'normal', mean: 300, standardDeviation: 0 } },
          stated,
        ),
    ],
    [
      'not-positive',
      'rule.prior: its width',
      () =>
        acceptanceBand(
          band,
          { kind: 'global-consumer-risk', risk: 0.01, prior: { kind: 'rectangular', lower: 300, upper: 300 } },
          stated,
        ),
    ],
    [
      'missing-member',
      'nominal',
      () => acceptanceBand({ upper: 6 }, { kind: 'test-uncertainty-ratio', method: 'managed-risk' }, stated),
    ],
    [
      'not-positive',
      'expandedUncertainty',
      () =>
        acceptanceBand(
          band,
          { kind: 'test-uncertainty-ratio', method: 'managed-risk' },
          { standardUncertainty: 0, coverageFactor: 2 },
        ),
    ],
    [
      'result-out-of-range',
      'acceptance.upper',
      () =>
        acceptanceBand({ upper: 1 }, { kind: 'specific-consumer-risk', risk: 1e-9 }, { standardUncertainty: 1e308 }),
    ],
  ])('refuse with %s at %s', (code, path, work) => {
    expect(work).toThrow(expect.objectContaining({ code, path }));
  });

  it('hint that a percentage is no fraction', () => {
    expect(() => acceptanceBand(band, { kind: 'specific-consumer-risk', risk: 95 }, stated)).toThrow(
      expect.objectContaining({ hint: 'If 95 % is meant, give 0.95.' }),
    );
    expect(() => acceptanceBand(band, guarded, { relativeStandardUncertainty: 2, coverageFactor: 2 })).toThrow(
      expect.objectContaining({ code: 'not-a-fraction', hint: 'If 2 % is meant, give 0.02.' }),
    );
  });
});

describe('the working of acceptance limits', () => {
  it('names guard band, limits and rounding', () => {
    const { working, guardBand } = explainAcceptanceBand(
      band,
      guarded,
      { expandedUncertainty: 12.4, coverageFactor: 2 },
      { resolution: 1, unit: 'A' },
    );
    expect(working.slice(0, 2).map(({ symbol, value }) => [symbol, value])).toEqual([
      ['w', 12.4],
      ['A_L', 252.4],
    ]);
    expect(guardBand).toEqual({ lower: 13, upper: 13 });
    expect(new Set(working.map(({ unit }) => unit))).toEqual(new Set(['A']));
  });

  it('of a clamped multiplier shows the multiplier of the formula, and warns', () => {
    const rule = { kind: 'test-uncertainty-ratio', method: 'managed-risk' } as const;
    const { working, warnings, guardBand } = explainAcceptanceBand(band, rule, stated);
    expect(working.find(({ symbol }) => symbol === 'M')?.value).toBeLessThan(0);
    expect(guardBand).toEqual({ lower: 0, upper: 0 });
    expect(warnings.map(({ code }) => code)).toEqual(['guard-band-clamped']);
  });

  it('of a global risk that needs no guard band warns', () => {
    const prior = { kind: 'normal', mean: 300, standardDeviation: 1 } as const;
    const rule = { kind: 'global-consumer-risk', risk: 0.02, prior } as const;
    const { acceptance, warnings } = explainAcceptanceBand(band, rule, stated);
    expect(acceptance).toEqual(band);
    expect(warnings.map(({ code }) => code)).toEqual(['guard-band-clamped']);
  });
});
