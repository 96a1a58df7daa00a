import { describe, expect, it } from 'vitest';
import { bandAround, explainBandAround, type Tolerance } from '../../src/band/index.js';
import { faultOf } from './fault-of.js';

describe('bandAround', () => {
  it.each<[string, number, Tolerance, object]>([
    ['symmetric', 120, { relative: 0.2 }, { lower: 96, upper: 144 }],
    ['asymmetric', 200, { relative: { below: 0.125, above: 0.25 } }, { lower: 175, upper: 250 }],
    ['absolute', 135, { absolute: 5 }, { lower: 130, upper: 140 }],
    ['absolute, asymmetric', 135, { absolute: { below: 5, above: 10 } }, { lower: 130, upper: 145 }],
    ['absolute around a negative nominal', -8, { absolute: 1.5 }, { lower: -9.5, upper: -6.5 }],
    ['absolute below zero', 3, { absolute: 5 }, { lower: -2, upper: 8 }],
    ['sum', 100, { relative: 0.25, absolute: 2, combine: 'sum' }, { lower: 73, upper: 127 }],
    ['greater, relative wins', 100, { relative: 0.25, absolute: 5, combine: 'greater' }, { lower: 75, upper: 125 }],
    ['greater, absolute wins', 10, { relative: 0.25, absolute: 5, combine: 'greater' }, { lower: 5, upper: 15 }],
    [
      'greater, each side its own',
      10,
      { relative: { below: 0.5, above: 0.25 }, absolute: { below: 1, above: 5 }, combine: 'greater' },
      { lower: 5, upper: 15 },
    ],
    ['only above', 1200, { relative: { above: 0 } }, { upper: 1200 }],
    ['only below', 100, { absolute: { below: 20 } }, { lower: 80 }],
    ['floor raises', 3, { absolute: 5, floor: 0 }, { lower: 0, upper: 8 }],
    ['floor without effect', 30, { absolute: 5, floor: 0 }, { lower: 25, upper: 35 }],
    ['floor of an unlimited side', 30, { absolute: { above: 5 }, floor: 0 }, { upper: 35 }],
    ['no width', 100, { relative: 0 }, { lower: 100, upper: 100 }],
    ['all of it', 100, { relative: 1 }, { lower: 0, upper: 200 }],
    ['nominal 0', 0, { relative: 0.2, absolute: 1, combine: 'sum' }, { lower: -1, upper: 1 }],
  ])('%s', (_, nominal, tolerance, band) => {
    expect(bandAround(nominal, tolerance)).toEqual(band);
    const explained = explainBandAround(nominal, tolerance, { unit: 'W' });
    expect(explained.band).toEqual(band);
  });

  it('keeps the digits of a small lower limit', () => {
    // 1 − 0.9999999 is 1.0000000005838672e-7 for these numbers; N − r·N would be 8 digits worse.
    expect(bandAround(3, { relative: 0.9999999 }).lower).toBe(3 * (1 - 0.9999999));
  });

  it.each<[string, number, unknown, string, string]>([
    ['a percentage', 120, { relative: 20 }, 'not-a-fraction', 'tolerance.relative'],
    ['a percentage on a side', 120, { relative: { above: 15 } }, 'not-a-fraction', 'tolerance.relative.above'],
    ['a negative part', 120, { relative: -0.2 }, 'not-a-fraction', 'tolerance.relative'],
    ['a negative absolute part', 120, { absolute: -5 }, 'negative', 'tolerance.absolute'],
    ['a part that is no number', 120, { absolute: Number.NaN }, 'not-a-number', 'tolerance.absolute'],
    ['an infinite part', 120, { absolute: { above: Infinity } }, 'not-a-number', 'tolerance.absolute.above'],
    ['text', 120, { relative: '0.2' }, 'not-a-number', 'tolerance.relative'],
    ['null', 120, { relative: null }, 'not-a-number', 'tolerance.relative'],
    ['no part', 120, {}, 'wrong-count', 'tolerance'],
    ['a part without sides', 120, { relative: {} }, 'wrong-count', 'tolerance.relative'],
    ['two parts without a rule', 120, { relative: 0.2, absolute: 5 }, 'unknown-choice', 'tolerance.combine'],
    [
      'two parts with an unknown rule',
      120,
      { relative: 0.2, absolute: 5, combine: 'less' },
      'unknown-choice',
      'tolerance.combine',
    ],
    [
      'a side in one part only',
      120,
      { relative: 0.2, absolute: { above: 5 }, combine: 'sum' },
      'wrong-count',
      'tolerance',
    ],
    ['a floor that is no number', 120, { relative: 0.2, floor: Number.NaN }, 'not-a-number', 'tolerance.floor'],
    ['a nominal below the floor', 120, { relative: 0.2, floor: 130 }, 'out-of-range', 'nominal'],
    ['a nominal that is no number', Number.NaN, { relative: 0.2 }, 'not-a-number', 'nominal'],
    ['a fraction of a negative nominal', -5, { relative: 0.2 }, 'negative', 'nominal'],
    ['an overflow', 1.5e308, { relative: 0.5 }, 'result-out-of-range', 'upper'],
  ])('refuses %s', (_, nominal, tolerance, code, path) => {
    expect(faultOf(() => bandAround(nominal, tolerance as Tolerance))).toMatchObject({ code, path });
    expect(faultOf(() => explainBandAround(nominal, tolerance as Tolerance, { unit: 'W' }))).toMatchObject({ code });
  });

  it('gives the hint that percent is not a fraction', () => {
    expect(faultOf(() => bandAround(120, { relative: 20 })).hint).toBe('If 20 % is meant, give 0.2.');
  });
});

describe('explainBandAround', () => {
  it('names symbol, unit and quantity', () => {
    const { working } = explainBandAround(120, { relative: 0.2 }, { unit: 'W', symbol: 'P', name: 'power' });
    expect(working).toEqual([
      {
        symbol: 'P_lower',
        label: 'lower limit of power',
        formula: 'limit-below-relative',
        expression: 'N * (1 - r)',
        inputs: { N: 120, r: 0.2 },
        value: 96,
        unit: 'W',
        source: 'definition',
      },
      {
        symbol: 'P_upper',
        label: 'upper limit of power',
        formula: 'limit-above-relative',
        expression: 'N * (1 + r)',
        inputs: { N: 120, r: 0.2 },
        value: 144,
        unit: 'W',
        source: 'definition',
      },
    ]);
  });

  it('has a step of its own for the floor, and none for an unlimited side', () => {
    const { working } = explainBandAround(3, { absolute: { below: 5 }, floor: 0 }, { unit: 'ohm', symbol: 'R' });
    expect(working.map(({ symbol, label, value }) => [symbol, label, value])).toEqual([
      ['R_lower', 'lower limit of value', -2],
      ['R_lower', 'lower limit of value, raised to the floor', 0],
    ]);
  });
});
