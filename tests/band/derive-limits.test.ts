import { describe, expect, it } from 'vitest';
import { deriveLimits, deriveLimitsColumns, type LimitInput } from '../../src/band/index.js';
import { faultOf } from './fault-of.js';

const point: LimitInput = { power: 125, load: 500, tolerance: { relative: { below: 0.36, above: 0.44 } } };

describe('deriveLimits', () => {
  it('applies the tolerance in power, converts exactly and rounds last', () => {
    const { expected, limits, limitsBeforeRounding, powerLimits, working } = deriveLimits({
      ...point,
      resolution: 0.01,
    });
    expect(expected).toEqual({ power: 125, current: 0.5, voltage: 250 });
    expect(powerLimits).toEqual({ lower: 80, upper: 180 });
    expect(limitsBeforeRounding).toEqual({ lower: 0.4, upper: 0.6 });
    expect(limits).toEqual({ lower: 0.4, upper: 0.6 });
    expect(working.map(({ symbol, formula, value }) => `${symbol} ${formula} ${value}`)).toEqual([
      'I current-from-power 0.5',
      'V voltage-from-power 250',
      'P_lower limit-below-relative 80',
      'P_upper limit-above-relative 180',
      'I_lower current-from-power 0.4',
      'I_upper current-from-power 0.6',
      'I_lower rounded-up 0.4',
      'I_upper rounded-down 0.6',
    ]);
  });

  it('reads voltage and power', () => {
    expect(deriveLimits({ ...point, reads: 'voltage' }).limits).toEqual({ lower: 200, upper: 300 });
    const inPower = deriveLimits({ ...point, reads: 'power', resolution: 1 });
    expect(inPower.limits).toEqual({ lower: 80, upper: 180 });
    expect(inPower.powerLimits).toEqual({ lower: 80, upper: 180 });
  });

  it('takes a tolerance in current or voltage', () => {
    const inCurrent = deriveLimits({
      power: 125,
      load: 500,
      tolerance: { absolute: { below: 0.1, above: 0.1 } },
      toleranceIn: 'current',
    });
    expect(inCurrent.limits).toEqual({ lower: 0.4, upper: 0.6 });
    expect(inCurrent.powerLimits.lower).toBeCloseTo(80, 12);
    const inVoltage = deriveLimits({
      power: 125,
      load: 500,
      tolerance: { absolute: 50 },
      toleranceIn: 'voltage',
      reads: 'current',
    });
    expect(inVoltage.limits).toEqual({ lower: 0.4, upper: 0.6 });
    expect(inVoltage.powerLimits).toEqual({ lower: 80, upper: 180 });
  });

  it('has no step twice where the limits are read in the quantity of the tolerance', () => {
    const read = deriveLimits({ ...point, toleranceIn: 'current', reads: 'power' });
    expect(read.limits).toEqual(read.powerLimits);
    const steps = read.working.map(({ symbol, label }) => `${symbol} ${label}`);
    expect(new Set(steps).size).toBe(steps.length);
  });

  it('leaves a side without limit out', () => {
    const { limits, powerLimits } = deriveLimits({ ...point, tolerance: { relative: { above: 0.44 } } });
    expect(limits).toEqual({ upper: 0.6 });
    expect(powerLimits).toEqual({ upper: 180 });
  });

  it('rounds to nearest only by name', () => {
    const row = { power: 95, load: 100, tolerance: { relative: 0.2 }, resolution: 0.001 } as const;
    expect(deriveLimits(row).limits).toEqual({ lower: 0.872, upper: 1.067 });
    expect(deriveLimits({ ...row, rounding: 'nearest' }).limits).toEqual({ lower: 0.872, upper: 1.068 });
  });

  it('wants a floor by name where a tolerance reaches below 0', () => {
    const low: LimitInput = { power: 3, load: 500, tolerance: { absolute: 5 } };
    expect(faultOf(() => deriveLimits(low))).toMatchObject({
      code: 'limit-negative',
      path: 'tolerance',
      received: '-2',
    });
    expect(deriveLimits({ ...low, tolerance: { absolute: 5, floor: 0 } }).limits.lower).toBe(0);
    expect(faultOf(() => deriveLimits({ ...low, tolerance: { absolute: 5, floor: -9 } })).code).toBe('limit-negative');
    const inCurrent: LimitInput = { ...low, tolerance: { absolute: 1 }, toleranceIn: 'current', reads: 'power' };
    expect(faultOf(() => deriveLimits(inCurrent)).code).toBe('limit-negative');
  });

  it.each<[string, object, string, string]>([
    ['a power of 0', { power: 0 }, 'not-positive', 'power'],
    ['a negative power', { power: -5 }, 'not-positive', 'power'],
    ['an infinite power', { power: Number.POSITIVE_INFINITY }, 'not-a-number', 'power'],
    ['a load of 0', { load: 0 }, 'not-positive', 'load'],
    ['a load that is no number', { load: Number.NaN }, 'not-a-number', 'load'],
    ['an unknown quantity', { reads: 'energy' }, 'unknown-choice', 'reads'],
    ['an unknown quantity of the tolerance', { toleranceIn: 'energy' }, 'unknown-choice', 'toleranceIn'],
    ['a percentage', { tolerance: { relative: 20 } }, 'not-a-fraction', 'tolerance.relative'],
    ['a resolution of 0', { resolution: 0 }, 'not-positive', 'resolution'],
    ['a resolution that leaves nothing', { resolution: 5 }, 'band-empty', 'resolution'],
    ['an unknown direction', { resolution: 0.1, rounding: 'outward' }, 'unknown-choice', 'direction'],
  ])('refuses %s', (_, change, code, path) => {
    expect(faultOf(() => deriveLimits({ ...point, ...change } as LimitInput))).toMatchObject({ code, path });
  });
});

describe('deriveLimitsColumns', () => {
  const power = Float64Array.of(95, 40, 15);
  const load = Float64Array.of(100, 100, 500);
  const tolerance = { relative: 0.2 };

  it('writes into given columns and gives them back', () => {
    const out = { expected: new Float64Array(3), lower: new Float64Array(3), upper: new Float64Array(3) };
    const columns = deriveLimitsColumns({ power, load, tolerance }, out);
    expect(columns.expected).toBe(out.expected);
    expect(columns.lower).toBe(out.lower);
    expect(columns.upper).toBe(out.upper);
    expect([...power]).toEqual([95, 40, 15]);
  });

  it('takes columns side by side in one buffer', () => {
    const buffer = new Float64Array(15);
    const part = (k: number): Float64Array => buffer.subarray(3 * k, 3 * k + 3);
    part(0).set(power);
    part(1).set(load);
    const input = { power: part(0), load: part(1), tolerance };
    const columns = deriveLimitsColumns(input, { expected: part(2), lower: part(3), upper: part(4) });
    expect(columns).toEqual(deriveLimitsColumns({ power, load, tolerance }));
  });

  it('has no column for a side without limit, and none for no rows', () => {
    expect(deriveLimitsColumns({ power, load, tolerance: { relative: { above: 0 } } })).not.toHaveProperty('lower');
    expect(deriveLimitsColumns({ power, load, tolerance: { relative: { below: 0 } } })).not.toHaveProperty('upper');
    const none = new Float64Array();
    expect(deriveLimitsColumns({ power: none, load: none, tolerance }).expected).toHaveLength(0);
  });

  it.each([
    ['power', 0, 'not-positive'],
    ['power', -1, 'not-positive'],
    ['power', Number.NaN, 'not-a-number'],
    ['power', Number.POSITIVE_INFINITY, 'not-a-number'],
    ['load', 0, 'not-positive'],
    ['load', Number.NaN, 'not-a-number'],
    ['power', 1e-151, 'out-of-range'],
    ['power', 1e151, 'out-of-range'],
  ] as const)('names the first bad row: %s %d', (column, value, code) => {
    for (const reads of ['power', 'current', 'voltage'] as const) {
      const columns = { power: power.slice(), load: load.slice() };
      columns[column][1] = value;
      columns[column][2] = Number.NaN;
      expect(faultOf(() => deriveLimitsColumns({ ...columns, tolerance, reads }))).toMatchObject({
        code,
        path: `${column}[1]`,
      });
    }
  });

  it('names the row that a tolerance or a rounding makes impossible', () => {
    const absolute = { absolute: 20 };
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance: absolute }))).toMatchObject({
      code: 'limit-negative',
      path: 'power[2]',
    });
    const floored = deriveLimitsColumns({ power, load, tolerance: { ...absolute, floor: 0 } });
    expect(floored.lower?.[2]).toBe(0);
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance: { ...absolute, floor: 20 } }))).toMatchObject({
      code: 'out-of-range',
      path: 'power[2]',
    });
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance, resolution: 0.1 }))).toMatchObject({
      code: 'band-empty',
      path: 'power[2]',
    });
  });

  it('refuses columns that do not fit', () => {
    const short = new Float64Array(2);
    expect(faultOf(() => deriveLimitsColumns({ power, load: short, tolerance }))).toMatchObject({
      code: 'wrong-count',
      path: 'load',
    });
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance }, { lower: short }))).toMatchObject({
      code: 'wrong-count',
      path: 'out.lower',
    });
    const plain = [95, 40, 15] as unknown as Float64Array;
    expect(faultOf(() => deriveLimitsColumns({ power: plain, load, tolerance }))).toMatchObject({
      code: 'wrong-type',
      path: 'power',
    });
    const shared = new Float64Array(3);
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance }, { expected: power }))).toMatchObject({
      code: 'out-of-range',
      path: 'out.expected',
    });
    expect(
      faultOf(() => deriveLimitsColumns({ power, load, tolerance }, { lower: shared, upper: shared })),
    ).toMatchObject({ path: 'out.upper' });
  });

  it('refuses a wrong rule', () => {
    const odd = 'energy' as 'power';
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance, reads: odd })).path).toBe('reads');
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance, toleranceIn: odd })).path).toBe('toleranceIn');
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance: {} })).path).toBe('tolerance');
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance, resolution: 0 })).path).toBe('resolution');
    const outward = 'outward' as 'inward';
    expect(faultOf(() => deriveLimitsColumns({ power, load, tolerance, rounding: outward })).path).toBe('rounding');
  });
});
