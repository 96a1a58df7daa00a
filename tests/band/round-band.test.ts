import { describe, expect, it } from 'vitest';
import { explainRoundBand, type RoundingDirection, roundBand } from '../../src/band/index.js';
import { faultOf } from './fault-of.js';

describe('roundBand', () => {
  it('rounds inward unless asked', () => {
    expect(roundBand({ lower: 0.8431, upper: 1.1326 }, 0.001)).toEqual({ lower: 0.844, upper: 1.132 });
    expect(roundBand({ lower: 0.8431, upper: 1.1326 }, 0.001, 'nearest')).toEqual({ lower: 0.843, upper: 1.133 });
    expect(roundBand({ lower: 12.2 }, 5)).toEqual({ lower: 15 });
    expect(roundBand({ upper: 12.2 }, 5)).toEqual({ upper: 10 });
    expect(roundBand({}, 5)).toEqual({});
  });

  it('gives the number nearest to the decimal: it prints clean', () => {
    // 843 · 0.001 is 0.843, but 547 · 0.001 is 0.547 and 1145 · 0.001 is 1.145; these three are not:
    for (const [limit, resolution, wanted] of [
      [2.3004, 0.1, 2.4],
      [0.5691, 0.001, 0.57],
      [0.0681, 0.0001, 0.0681],
    ] as const) {
      expect(String(roundBand({ lower: limit }, resolution).lower)).toBe(String(wanted));
    }
    for (const resolution of [0.1, 0.01, 0.001, 0.0001, 0.002, 0.005, 0.0025]) {
      const decimals = String(resolution).length - 2;
      for (let k = 0; k < 3000; k++) {
        const { lower } = roundBand({ lower: k * resolution }, resolution);
        expect(lower).toBe(Number((k * resolution).toFixed(decimals)));
      }
    }
  });

  it('counts a limit within 1e-12 of a step as on it', () => {
    // 0.3 / 0.1 is 2.9999999999999996, 0.7 / 0.1 is 6.999999999999999, 1.1 · 1.1 is 1.2100000000000002.
    expect(roundBand({ upper: 0.3 }, 0.1)).toEqual({ upper: 0.3 });
    expect(roundBand({ upper: 0.7 }, 0.1)).toEqual({ upper: 0.7 });
    expect(roundBand({ lower: 1.1 * 1.1 }, 0.01)).toEqual({ lower: 1.21 });
    expect(roundBand({ lower: 0.843 * (1 + 9e-13) }, 0.001)).toEqual({ lower: 0.843 });
    expect(roundBand({ lower: 0.843 * (1 + 2e-12) }, 0.001)).toEqual({ lower: 0.844 });
    expect(roundBand({ upper: 0.843 * (1 - 9e-13) }, 0.001)).toEqual({ upper: 0.843 });
    expect(roundBand({ upper: 0.843 * (1 - 2e-12) }, 0.001)).toEqual({ upper: 0.842 });
  });

  it('takes ties of nearest away from 0', () => {
    expect(roundBand({ lower: 2.5, upper: 3.5 }, 1, 'nearest')).toEqual({ lower: 3, upper: 4 });
    expect(roundBand({ lower: -2.5 }, 1, 'nearest')).toEqual({ lower: -3 });
    // 0.8435 / 0.001 is 843.4999999999999 and 1.0005 / 0.001 is 1000.4999999999999: ties of the decimals all the same.
    expect(roundBand({ lower: 0.8435, upper: 1.0005 }, 0.001, 'nearest')).toEqual({ lower: 0.844, upper: 1.001 });
    expect(roundBand({ lower: 0.8434, upper: 1.0006 }, 0.001, 'nearest')).toEqual({ lower: 0.843, upper: 1.001 });
  });

  it('rounds limits below 0, and to 0 without a sign', () => {
    expect(roundBand({ lower: -0.3, upper: 0.3 }, 1)).toEqual({ lower: 0, upper: 0 });
    expect(Object.is(roundBand({ lower: -0.3 }, 1).lower, 0)).toBe(true);
    expect(Object.is(roundBand({ lower: -0.3 }, 1, 'nearest').lower, 0)).toBe(true);
    expect(roundBand({ lower: -1.5, upper: -1.2 }, 0.5)).toEqual({ lower: -1.5, upper: -1.5 });
    expect(roundBand({ lower: 0 }, 0.001)).toEqual({ lower: 0 });
  });

  it('rounds to a resolution that is no short decimal, and to a coarse one', () => {
    expect(roundBand({ lower: 0.5 }, 1 / 3).lower).toBeCloseTo(2 / 3, 15);
    expect(roundBand({ lower: 1, upper: 3e7 }, 2e6)).toEqual({ lower: 2e6, upper: 3e7 });
    expect(roundBand({ lower: 1.00000001e-9 }, 1e-12)).toEqual({ lower: 1.001e-9 });
  });

  it('never loosens a limit by snapping in large counts of steps', () => {
    expect(roundBand({ lower: 4e11 + 0.3 }, 1).lower).toBe(4e11);
    expect(roundBand({ lower: 1e12 + 0.4 }, 1).lower).toBe(1e12 + 1);
    expect(roundBand({ lower: 4e12 + 0.5 }, 1).lower).toBe(4e12 + 1);
  });

  it('says when nothing is left', () => {
    expect(faultOf(() => roundBand({ lower: 0.842, upper: 0.848 }, 0.01))).toMatchObject({
      code: 'band-empty',
      path: 'resolution',
    });
    expect(roundBand({ lower: 0.842, upper: 0.848 }, 0.01, 'nearest')).toEqual({ lower: 0.84, upper: 0.85 });
  });

  it.each<[number, string]>([
    [0, 'not-positive'],
    [-0.001, 'not-positive'],
    [Number.NaN, 'not-a-number'],
    [Number.POSITIVE_INFINITY, 'not-a-number'],
    [1e-20, 'out-of-range'],
    [Number.MIN_VALUE, 'out-of-range'],
  ])('refuses a resolution of %d', (resolution, code) => {
    expect(faultOf(() => roundBand({ lower: 1, upper: 2 }, resolution))).toMatchObject({ code, path: 'resolution' });
  });

  it('refuses an unknown direction', () => {
    expect(faultOf(() => roundBand({ lower: 1 }, 1, 'outward' as RoundingDirection))).toMatchObject({
      code: 'unknown-choice',
      path: 'direction',
    });
  });

  it('says in the working how it rounded', () => {
    const band = { lower: 0.8431, upper: 1.1326 };
    const naming = { unit: 'A', symbol: 'I', name: 'current' } as const;
    const inward = explainRoundBand(band, 0.001, naming);
    expect(inward.band).toEqual(roundBand(band, 0.001));
    expect(
      inward.working.map(({ symbol, label, formula, value, unit }) => [symbol, label, formula, value, unit]),
    ).toEqual([
      ['I_lower', 'lower limit of current, rounded inward', 'rounded-up', 0.844, 'A'],
      ['I_upper', 'upper limit of current, rounded inward', 'rounded-down', 1.132, 'A'],
    ]);
    const nearest = explainRoundBand(band, 0.001, naming, 'nearest');
    expect(nearest.band).toEqual(roundBand(band, 0.001, 'nearest'));
    expect(nearest.working.map(({ label, formula }) => [label, formula])).toEqual([
      ['lower limit of current, rounded to nearest', 'rounded-to-nearest'],
      ['upper limit of current, rounded to nearest', 'rounded-to-nearest'],
    ]);
    expect(explainRoundBand({ upper: 1 }, 1, { unit: 'A' }).working).toHaveLength(1);
  });
});
