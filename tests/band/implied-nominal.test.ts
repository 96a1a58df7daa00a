import { describe, expect, it } from 'vitest';
import { type Band, impliedNominal, type NominalQuestion } from '../../src/band/index.js';
import { faultOf } from './fault-of.js';

const atLoad = { quantity: 'current', load: 500 } as const;

describe('impliedNominal', () => {
  it('finds the middle of the current, of the power, of the voltage, and the geometric middle', () => {
    const band = { lower: 0.3, upper: 0.5 };
    const nominal = (hypothesis: NominalQuestion['hypothesis']): number =>
      impliedNominal(band, { ...atLoad, hypothesis }).nominal.power;
    expect(nominal('symmetric-in-current')).toBeCloseTo(0.4 ** 2 * 500, 12);
    expect(nominal('symmetric-in-voltage')).toBeCloseTo(0.4 ** 2 * 500, 12);
    expect(nominal('symmetric-in-power')).toBeCloseTo((45 + 125) / 2, 12);
    expect(nominal('geometric')).toBeCloseTo(0.3 * 0.5 * 500, 12);
  });

  it('gives the tolerance that the band then has', () => {
    const { toleranceInCurrent, toleranceInPower, consistent, interval, gap } = impliedNominal(
      { lower: 0.4, upper: 0.6 },
      { ...atLoad, hypothesis: 'symmetric-in-current' },
    );
    expect(toleranceInCurrent.below).toBeCloseTo(0.2, 14);
    expect(toleranceInCurrent.above).toBeCloseTo(0.2, 14);
    expect(toleranceInPower.below).toBeCloseTo(0.36, 14);
    expect(toleranceInPower.above).toBeCloseTo(0.44, 14);
    expect(consistent).toBe(true);
    expect(interval).toBeUndefined();
    expect(gap).toBeUndefined();
  });

  it('reads a known tolerance backwards from both limits, or from one', () => {
    const hypothesis = { tolerance: { relative: { below: 0.2, above: 0.5 } }, in: 'current' } as const;
    for (const band of [{ lower: 0.4, upper: 0.75 }, { lower: 0.4 }, { upper: 0.75 }]) {
      const found = impliedNominal(band, { ...atLoad, hypothesis });
      expect(found.nominal.current).toBeCloseTo(0.5, 14);
      expect(found.consistent).toBe(true);
    }
    const oneSided = { tolerance: { relative: { above: 0.5 } }, in: 'current' } as const;
    const found = impliedNominal({ lower: 0.1, upper: 0.75 }, { ...atLoad, hypothesis: oneSided });
    expect(found.nominal.current).toBeCloseTo(0.5, 14);
  });

  it('takes the limits as rounded where a resolution is given', () => {
    const found = impliedNominal(
      { lower: 0.4, upper: 0.6 },
      { ...atLoad, hypothesis: 'symmetric-in-current', resolution: 0.01 },
    );
    expect(found.interval?.current.lower).toBeCloseTo(0.495, 14);
    expect(found.interval?.current.upper).toBeCloseTo(0.505, 14);
    expect(found.interval?.power.upper).toBeCloseTo(0.505 ** 2 * 500, 11);
    expect(found.interval?.voltage.lower).toBeCloseTo(0.495 * 500, 11);
  });

  it('says when no nominal explains both limits, and how far apart they are', () => {
    const hypothesis = { tolerance: { relative: 0.2 }, in: 'current' } as const;
    // The limits lead to 0.5 A and 0.6 A.
    const found = impliedNominal({ lower: 0.4, upper: 0.72 }, { ...atLoad, hypothesis });
    expect(found.consistent).toBe(false);
    expect(found.gap).toBeCloseTo(0.1, 14);
    expect(found.nominal.current).toBeCloseTo(0.55, 14);
    expect(found.interval).toBeUndefined();
    const rounded = impliedNominal({ lower: 0.4, upper: 0.72 }, { ...atLoad, hypothesis, resolution: 0.01 });
    expect(rounded.consistent).toBe(false);
    // 0.405/0.8 = 0.50625 and 0.715/1.2 = 0.595833…
    expect(rounded.gap).toBeCloseTo(0.715 / 1.2 - 0.405 / 0.8, 14);
    const coarse = impliedNominal({ lower: 0.4, upper: 0.72 }, { ...atLoad, hypothesis, resolution: 0.1 });
    expect(coarse.consistent).toBe(true);
  });

  it('takes a lower limit of 0 where the hypothesis allows it', () => {
    const found = impliedNominal({ lower: 0, upper: 1 }, { ...atLoad, hypothesis: 'symmetric-in-current' });
    expect(found.nominal.current).toBe(0.5);
    expect(found.toleranceInCurrent).toEqual({ below: 1, above: 1 });
  });

  it.each<[string, Band, object, string, string]>([
    ['an unknown hypothesis', { lower: 1, upper: 2 }, { hypothesis: 'constructor' }, 'unknown-choice', 'hypothesis'],
    ['no hypothesis', { lower: 1, upper: 2 }, { hypothesis: null }, 'unknown-choice', 'hypothesis'],
    ['a missing limit', { lower: 1 }, { hypothesis: 'symmetric-in-power' }, 'wrong-count', 'band'],
    ['no limit at all', {}, { hypothesis: { tolerance: { relative: 0.2 }, in: 'power' } }, 'wrong-count', 'band'],
    ['a negative limit', { lower: -1, upper: 2 }, { hypothesis: 'geometric' }, 'limit-negative', 'band.lower'],
    ['a reversed band', { lower: 3, upper: 2 }, { hypothesis: 'geometric' }, 'band-reversed', 'band.lower'],
    ['0 in a geometric middle', { lower: 0, upper: 2 }, { hypothesis: 'geometric' }, 'not-positive', 'band.lower'],
    ['a band of nothing', { lower: 0, upper: 0 }, { hypothesis: 'symmetric-in-power' }, 'not-positive', 'nominal'],
    ['an unknown quantity', { lower: 1, upper: 2 }, { quantity: 'energy' }, 'unknown-choice', 'quantity'],
    ['a load of 0', { lower: 1, upper: 2 }, { load: 0 }, 'not-positive', 'load'],
    ['a resolution of 0', { lower: 1, upper: 2 }, { resolution: 0 }, 'not-positive', 'resolution'],
    [
      'a tolerance in percent',
      { lower: 1, upper: 2 },
      { hypothesis: { tolerance: { relative: 20 }, in: 'power' } },
      'not-a-fraction',
      'hypothesis.tolerance.relative',
    ],
    [
      'a tolerance in an unknown quantity',
      { lower: 1, upper: 2 },
      { hypothesis: { tolerance: { relative: 0.2 }, in: 'energy' } },
      'unknown-choice',
      'hypothesis.in',
    ],
    [
      'a tolerance of everything',
      { lower: 0, upper: 2 },
      { hypothesis: { tolerance: { relative: 1 }, in: 'power' } },
      'out-of-range',
      'hypothesis.tolerance.relative',
    ],
    [
      'a tolerance wider than the limit',
      { upper: 2 },
      { hypothesis: { tolerance: { absolute: 5 }, in: 'current' } },
      'not-positive',
      'nominal',
    ],
    [
      'a limit at the floor',
      { lower: 0, upper: 2 },
      { hypothesis: { tolerance: { absolute: 5, floor: 0 }, in: 'current' } },
      'out-of-range',
      'band.lower',
    ],
  ])('refuses %s', (_, band, change, code, path) => {
    const question = { ...atLoad, hypothesis: 'symmetric-in-current', ...change } as NominalQuestion;
    expect(faultOf(() => impliedNominal(band, question))).toMatchObject({ code, path });
  });
});
