import { describe, expect, it } from 'vitest';
import {
  type Band,
  checkBand,
  contains,
  convertBand,
  explainConvertBand,
  intersectBands,
  marginIn,
} from '../../src/band/index.js';
import { faultOf } from './fault-of.js';

describe('checkBand', () => {
  it('takes every kind of band and gives it back', () => {
    for (const band of [{}, { lower: 1 }, { upper: -1 }, { lower: 1, upper: 1 }, { lower: -2, upper: 3 }]) {
      expect(checkBand(band)).toBe(band);
    }
  });

  it.each<[unknown, string, string]>([
    [{ lower: 2, upper: 1 }, 'band-reversed', 'band.lower'],
    [{ lower: Number.NaN }, 'not-a-number', 'band.lower'],
    [{ upper: Number.POSITIVE_INFINITY }, 'not-a-number', 'band.upper'],
    [{ lower: null, upper: 1 }, 'not-a-number', 'band.lower'],
    [{ upper: '1' }, 'not-a-number', 'band.upper'],
  ])('refuses %o', (band, code, path) => {
    expect(faultOf(() => checkBand(band as Band))).toMatchObject({ code, path });
    expect(faultOf(() => contains(band as Band, 1))).toMatchObject({ code, path });
    expect(faultOf(() => marginIn(band as Band, 1, 1))).toMatchObject({ code, path });
    expect(faultOf(() => intersectBands({ upper: 9 }, band as Band)).path).toBe(path.replace('band', 'bands[1]'));
  });
});

describe('contains', () => {
  it('counts the limits as inside', () => {
    const band = { lower: 0.843, upper: 1.133 };
    expect([0.842, 0.843, 1, 1.133, 1.134].map((value) => contains(band, value))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect(contains({}, -1e300)).toBe(true);
    expect(contains({ lower: 1 }, 1e300)).toBe(true);
    expect(contains({ upper: 1 }, 1e300)).toBe(false);
    expect(faultOf(() => contains(band, Number.NaN))).toMatchObject({ code: 'not-a-number', path: 'value' });
  });
});

describe('intersectBands', () => {
  it('takes the tighter limit of each side', () => {
    expect(intersectBands()).toEqual({});
    expect(intersectBands({}, {})).toEqual({});
    expect(intersectBands({ lower: 1 }, { upper: 5 })).toEqual({ lower: 1, upper: 5 });
    expect(intersectBands({ lower: 1, upper: 9 }, { lower: 2 }, { lower: 0, upper: 5 })).toEqual({
      lower: 2,
      upper: 5,
    });
    expect(intersectBands({ upper: 2 }, { lower: 2 })).toEqual({ lower: 2, upper: 2 });
  });

  it('says when nothing is left', () => {
    expect(faultOf(() => intersectBands({ upper: 1 }, { lower: 2 }))).toMatchObject({ code: 'band-empty' });
  });
});

describe('marginIn', () => {
  const band = { lower: 80, upper: 110 };

  it('has its own scale on each side', () => {
    expect([60, 80, 90, 100, 105, 110, 120].map((value) => marginIn(band, 100, value))).toEqual([
      -2, -1, -0.5, 0, 0.5, 1, 2,
    ]);
  });

  it('uses nothing up on a side without a limit', () => {
    expect(marginIn({ upper: 110 }, 100, 20)).toBe(0);
    expect(marginIn({ lower: 80 }, 100, 1e6)).toBe(0);
    expect(marginIn({}, 100, 120)).toBe(0);
    expect(marginIn({ upper: 110 }, 100, 115)).toBe(1.5);
  });

  it('stays a number on a side of no width', () => {
    const oneSided = { upper: 100 };
    expect(marginIn(oneSided, 100, 100)).toBe(0);
    expect(marginIn(oneSided, 100, 100.1)).toBe(Number.MAX_VALUE);
    expect(marginIn({ lower: 100, upper: 110 }, 100, 99)).toBe(-Number.MAX_VALUE);
    expect(marginIn({ lower: 100, upper: 110 }, 100, 105)).toBe(0.5);
    expect(marginIn({ lower: 0, upper: Number.MIN_VALUE }, 0, 1e308)).toBe(Number.MAX_VALUE);
    expect(marginIn({ lower: -1.7e308, upper: 1.7e308 }, -1.7e308, 1.7e308)).toBe(1);
  });

  it('wants the nominal inside the band', () => {
    for (const nominal of [79, 111]) {
      expect(faultOf(() => marginIn(band, nominal, 100))).toMatchObject({ code: 'out-of-range', path: 'nominal' });
    }
    expect(marginIn(band, 80, 80)).toBe(0);
    expect(faultOf(() => marginIn(band, 100, Number.NaN))).toMatchObject({ code: 'not-a-number', path: 'value' });
    expect(faultOf(() => marginIn(band, Number.NaN, 100))).toMatchObject({ code: 'not-a-number', path: 'nominal' });
  });
});

describe('convertBand', () => {
  const toCurrent = { from: 'power', to: 'current', load: 500 } as const;

  it('converts each limit exactly, and keeps 0 and an absent side', () => {
    expect(convertBand({ lower: 125, upper: 180 }, toCurrent)).toEqual({ lower: 0.5, upper: 0.6 });
    expect(convertBand({ lower: 0, upper: 180 }, toCurrent)).toEqual({ lower: 0, upper: 0.6 });
    expect(convertBand({ upper: 180 }, toCurrent)).toEqual({ upper: 0.6 });
    expect(convertBand({ lower: 180 }, toCurrent)).toEqual({ lower: 0.6 });
    expect(convertBand({}, toCurrent)).toEqual({});
    expect(convertBand({ lower: 0.5 }, { from: 'current', to: 'voltage', load: 500 })).toEqual({ lower: 250 });
  });

  it('names what is wrong', () => {
    expect(faultOf(() => convertBand({ lower: -1, upper: 5 }, toCurrent))).toMatchObject({
      code: 'limit-negative',
      path: 'band.lower',
    });
    expect(faultOf(() => convertBand({ upper: -1 }, toCurrent))).toMatchObject({ path: 'band.upper' });
    expect(faultOf(() => convertBand({ lower: 5, upper: 1 }, toCurrent)).code).toBe('band-reversed');
    expect(faultOf(() => convertBand({ lower: 5 }, { ...toCurrent, load: 0 }))).toMatchObject({ path: 'load' });
    expect(faultOf(() => explainConvertBand({ lower: -1 }, toCurrent)).code).toBe('limit-negative');
    const unknown = { ...toCurrent, to: 'energy' } as unknown as typeof toCurrent;
    expect(faultOf(() => convertBand({ lower: 5 }, unknown))).toMatchObject({ code: 'unknown-choice', path: 'to' });
  });

  it('refuses limits that are no numbers', () => {
    for (const odd of [Number.NaN, Number.POSITIVE_INFINITY, '2', null, [2]] as unknown as number[]) {
      expect(faultOf(() => convertBand({ lower: odd, upper: 5 }, toCurrent))).toMatchObject({ path: 'band.lower' });
      expect(faultOf(() => convertBand({ lower: 1, upper: odd }, toCurrent))).toMatchObject({ path: 'band.upper' });
      expect(faultOf(() => convertBand({ lower: odd }, toCurrent)).code).toBe('not-a-number');
      expect(faultOf(() => convertBand({ upper: odd }, toCurrent)).code).toBe('not-a-number');
    }
  });

  it('checks the conversion even of a band without limits', () => {
    expect(faultOf(() => convertBand({}, { ...toCurrent, load: -5 }))).toMatchObject({ path: 'load' });
  });

  it('explains one step a limit', () => {
    const { band, working } = explainConvertBand({ lower: 125, upper: 180 }, toCurrent);
    expect(band).toEqual({ lower: 0.5, upper: 0.6 });
    expect(
      working.map(({ symbol, label, expression, inputs, value }) => [symbol, label, expression, inputs, value]),
    ).toEqual([
      ['I_lower', 'lower limit of current', 'sqrt(P / R)', { P: 125, R: 500 }, 0.5],
      ['I_upper', 'upper limit of current', 'sqrt(P / R)', { P: 180, R: 500 }, 0.6],
    ]);
  });
});
