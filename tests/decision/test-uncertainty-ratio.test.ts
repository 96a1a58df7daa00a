import { describe, expect, it } from 'vitest';
import {
  testUncertaintyRatio,
  type UncertaintyRatioMethod,
  uncertaintyRatioGuardBand,
} from '../../src/decision/index.js';

describe('test uncertainty ratio', () => {
  it('takes the span, wherever the nominal lies', () => {
    expect(testUncertaintyRatio({ lower: 240, upper: 360 }, 15)).toBe(4);
    expect(testUncertaintyRatio({ lower: 240, upper: 360 }, 15, { nominal: 250 })).toBe(4);
    expect(testUncertaintyRatio({ lower: -60, upper: 60 }, 15)).toBe(4);
  });

  it('takes the distance of the nominal from a single limit, on either side', () => {
    expect(testUncertaintyRatio({ upper: 6 }, 0.5, { nominal: 4 })).toBe(4);
    expect(testUncertaintyRatio({ lower: 2 }, 0.5, { nominal: 4 })).toBe(4);
  });

  it.each<readonly [string, string, () => number]>([
    ['missing-member', 'nominal', () => testUncertaintyRatio({ upper: 6 }, 0.5)],
    ['no-limits', 'band', () => testUncertaintyRatio({}, 0.5)],
    ['not-positive', 'expandedUncertainty', () => testUncertaintyRatio({ lower: 1, upper: 2 }, 0)],
    ['not-positive', 'expandedUncertainty', () => testUncertaintyRatio({ lower: 1, upper: 2 }, -1)],
    ['not-positive', 'band: its span', () => testUncertaintyRatio({ lower: 1, upper: 1 }, 1)],
    [
      'not-positive',
      'nominal: its distance inside the limit',
      () => testUncertaintyRatio({ upper: 6 }, 1, { nominal: 7 }),
    ],
    [
      'not-positive',
      'nominal: its distance inside the limit',
      () => testUncertaintyRatio({ lower: 6 }, 1, { nominal: 5 }),
    ],
    ['band-reversed', 'band.lower', () => testUncertaintyRatio({ lower: 2, upper: 1 }, 1)],
    ['not-a-number', 'nominal', () => testUncertaintyRatio({ upper: 6 }, 1, { nominal: Number.NaN })],
    ['result-out-of-range', 'testUncertaintyRatio', () => testUncertaintyRatio({ lower: 0, upper: 1e300 }, 1e-300)],
  ])('is refused with %s at %s', (code, path, work) => {
    expect(work).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('guard band by the test uncertainty ratio', () => {
  it.each<readonly [UncertaintyRatioMethod, number, number]>([
    ['whole-below-four', 4, 1],
    ['whole-below-four', 4.0001, 0],
    ['whole-below-four', 0.5, 1],
    ['relaxed-below-four', 4, 0],
    ['relaxed-below-four', 10, 0],
    ['relaxed-below-four', 2, 0.5],
    ['root-sum-square', 1, 1],
    ['root-sum-square', 1.25, 0.5],
    ['managed-risk', 10, 0],
  ])('%s at %d: %d U', (method, ratio, multiplier) => {
    expect(uncertaintyRatioGuardBand(ratio, method).multiplier).toBe(multiplier);
  });

  it('of a large ratio keeps the digits of the difference from the whole tolerance', () => {
    // 1 − √(1 − 1/TUR²) = 1/(2·TUR²) + …, times TUR.
    expect(uncertaintyRatioGuardBand(1e9, 'root-sum-square').multiplier / 5e-10).toBeCloseTo(1, 15);
  });

  it('clamps and warns where the formula would loosen the limits, and only there', () => {
    const below = uncertaintyRatioGuardBand(4.591, 'managed-risk');
    const above = uncertaintyRatioGuardBand(4.593, 'managed-risk');
    expect(below.warnings).toEqual([]);
    expect(below.multiplier).toBe(below.formulaMultiplier);
    expect(above.formulaMultiplier).toBeLessThan(0);
    expect(above).toMatchObject({ multiplier: 0, acceptanceFraction: 1 });
    expect(above.warnings.map(({ code }) => code)).toEqual(['guard-band-clamped']);
  });

  it('never moves the acceptance limits outside the tolerance, and says where nothing is left', () => {
    for (const method of ['managed-risk', 'root-sum-square', 'whole-below-four', 'relaxed-below-four'] as const) {
      for (let exponent = -12; exponent <= 12; exponent++) {
        const { multiplier, acceptanceFraction } = uncertaintyRatioGuardBand(1.7 ** exponent, method);
        expect(multiplier).toBeGreaterThanOrEqual(0);
        expect(acceptanceFraction).toBeLessThanOrEqual(1);
      }
      expect(uncertaintyRatioGuardBand(0.5, method).acceptanceFraction).toBeLessThan(0);
    }
  });

  it.each([
    ['not-positive', 0, 'managed-risk'],
    ['not-positive', -4, 'managed-risk'],
    ['not-a-number', Number.NaN, 'managed-risk'],
    ['unknown-choice', 4, 'other'],
  ])('is refused with %s', (code, ratio, method) => {
    expect(() => uncertaintyRatioGuardBand(ratio, method as UncertaintyRatioMethod)).toThrow(
      expect.objectContaining({ code }),
    );
  });
});
