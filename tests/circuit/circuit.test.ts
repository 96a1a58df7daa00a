import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import {
  complexLoadPower,
  convertQuantity,
  crestFactor,
  currentFromPower,
  currentFromPowerAndVoltage,
  currentFromVoltage,
  explainConversion,
  loadFromCurrentAndVoltage,
  loadFromPowerAndCurrent,
  loadFromPowerAndVoltage,
  peakCurrent,
  peakFromRms,
  peakVoltage,
  powerFromCurrent,
  powerFromCurrentAndVoltage,
  powerFromVoltage,
  type Quantity,
  rmsFromPeak,
  solveOhmic,
  voltageFromCurrent,
  voltageFromPower,
  voltageFromPowerAndCurrent,
} from '../../src/circuit/index.js';

function faultOf(work: () => unknown): { code: string; path: string; received: string } {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return { code: error.code, path: error.path, received: error.received };
    throw error;
  }
  throw new Error('no error was thrown');
}

type Pairwise = (first: number, second: number) => number;

describe('bad input', () => {
  const bad = [
    [Number.NaN, 'not-a-number'],
    [Number.POSITIVE_INFINITY, 'not-a-number'],
    [Number.NEGATIVE_INFINITY, 'not-a-number'],
    ['120' as unknown as number, 'not-a-number'],
    [undefined as unknown as number, 'not-a-number'],
    [null as unknown as number, 'not-a-number'],
  ] as const;
  const functions: readonly [string, Pairwise, readonly [string, boolean], readonly [string, boolean]][] = [
    ['currentFromPower', currentFromPower, ['power', false], ['load', false]],
    ['voltageFromPower', voltageFromPower, ['power', false], ['load', false]],
    ['powerFromCurrent', powerFromCurrent, ['current', true], ['load', false]],
    ['powerFromVoltage', powerFromVoltage, ['voltage', true], ['load', false]],
    ['currentFromVoltage', currentFromVoltage, ['voltage', true], ['load', false]],
    ['voltageFromCurrent', voltageFromCurrent, ['current', true], ['load', false]],
    ['powerFromCurrentAndVoltage', powerFromCurrentAndVoltage, ['current', true], ['voltage', true]],
    ['voltageFromPowerAndCurrent', voltageFromPowerAndCurrent, ['power', false], ['current', false]],
    ['currentFromPowerAndVoltage', currentFromPowerAndVoltage, ['power', false], ['voltage', false]],
    ['loadFromPowerAndCurrent', loadFromPowerAndCurrent, ['power', false], ['current', false]],
    ['loadFromPowerAndVoltage', loadFromPowerAndVoltage, ['power', false], ['voltage', false]],
    ['loadFromCurrentAndVoltage', loadFromCurrentAndVoltage, ['current', false], ['voltage', false]],
  ];

  it.each(functions)('is named by %s', (_name, work, [firstPath, firstZero], [secondPath, secondZero]) => {
    for (const [value, code] of bad) {
      expect(faultOf(() => work(value, 2))).toMatchObject({ code, path: firstPath });
      expect(faultOf(() => work(2, value))).toMatchObject({ code, path: secondPath });
    }
    for (const [position, path, zero] of [
      [0, firstPath, firstZero],
      [1, secondPath, secondZero],
    ] as const) {
      const call = (value: number): number => (position === 0 ? work(value, 2) : work(2, value));
      expect(faultOf(() => call(-1))).toMatchObject({ code: zero ? 'negative' : 'not-positive', path, received: '-1' });
      if (zero) {
        expect(call(0)).toBe(0);
        expect(call(-0)).toBe(0);
      } else {
        expect(faultOf(() => call(0))).toMatchObject({ code: 'not-positive', path });
      }
    }
  });
});

describe('values at the ends of the range of numbers', () => {
  it('keeps a result whose intermediate value overflows or fades', () => {
    expect(currentFromPower(1e300, 1e-300)).toBeCloseTo(1e300, -290);
    expect(currentFromPower(1e-300, 1e300) / 1e-300).toBeCloseTo(1, 14);
    expect(voltageFromPower(1e300, 1e300) / 1e300).toBeCloseTo(1, 14);
    expect(voltageFromPower(1e-300, 1e-300) / 1e-300).toBeCloseTo(1, 14);
    expect(powerFromCurrent(1e200, 1e-300) / 1e100).toBeCloseTo(1, 14);
    expect(powerFromCurrent(1e-200, 1e300) / 1e-100).toBeCloseTo(1, 14);
    expect(powerFromVoltage(1e200, 1e300) / 1e100).toBeCloseTo(1, 14);
    expect(loadFromPowerAndCurrent(1e300, 1e200) / 1e-100).toBeCloseTo(1, 14);
    expect(loadFromPowerAndVoltage(1e300, 1e200) / 1e100).toBeCloseTo(1, 14);
    expect(peakVoltage({ power: 1e300, load: 1e300, crestFactor: 2 }) / 2e300).toBeCloseTo(1, 14);
    expect(complexLoadPower({ resistance: 1e200, reactance: 1e200, current: 1e-200 }).activePower / 1e-200).toBeCloseTo(
      1,
      14,
    );
  });

  it('refuses a result that overflows, fades to 0 or loses digits', () => {
    expect(faultOf(() => powerFromCurrent(1e200, 1e200))).toMatchObject({ code: 'result-out-of-range', path: 'power' });
    expect(faultOf(() => powerFromCurrent(1e-200, 1e-200))).toMatchObject({ code: 'result-out-of-range' });
    expect(faultOf(() => powerFromCurrent(1e-160, 1))).toMatchObject({ code: 'result-out-of-range' });
    expect(faultOf(() => currentFromPower(Number.MAX_VALUE, Number.MIN_VALUE)).code).toBe('result-out-of-range');
    expect(faultOf(() => peakFromRms(1e308, 10)).code).toBe('result-out-of-range');
    expect(faultOf(() => crestFactor({ peak: 1e308, rms: 1e-10 })).code).toBe('result-out-of-range');
    expect(faultOf(() => complexLoadPower({ resistance: 1e-200, reactance: 1, current: 1e-200 }))).toMatchObject({
      code: 'result-out-of-range',
    });
  });
});

describe('convertQuantity', () => {
  it('converts each pair', () => {
    const values: Record<Quantity, number> = { power: 125, current: 0.5, voltage: 250 };
    for (const from of Object.keys(values) as Quantity[]) {
      for (const to of Object.keys(values) as Quantity[]) {
        expect(convertQuantity(values[from], { from, to, load: 500 })).toBe(values[to]);
        expect(convertQuantity(0, { from, to, load: 500 })).toBe(0);
      }
    }
  });

  it('names what is wrong', () => {
    const conversion = { from: 'power', to: 'current', load: 500 } as const;
    expect(faultOf(() => convertQuantity(-1, conversion))).toMatchObject({ code: 'negative', path: 'value' });
    expect(faultOf(() => convertQuantity(1, { ...conversion, load: 0 }))).toMatchObject({ path: 'load' });
    const odd = 'toString' as Quantity;
    expect(faultOf(() => convertQuantity(1, { ...conversion, from: odd })).code).toBe('unknown-choice');
    expect(faultOf(() => convertQuantity(1, { ...conversion, to: odd }))).toMatchObject({ path: 'to' });
    expect(faultOf(() => convertQuantity(0, { ...conversion, load: -5 }))).toMatchObject({ path: 'load' });
  });

  const words: readonly Quantity[] = ['power', 'current', 'voltage'];
  const pairs = words.flatMap((from) => words.map((to) => ({ from, to, load: 500 })));

  it.each(pairs)('refuses any other than a good number: $from to $to', (conversion) => {
    const valueFault = (value: unknown) => faultOf(() => convertQuantity(value as number, conversion));
    const loadFault = (load: unknown) => faultOf(() => convertQuantity(2, { ...conversion, load: load as number }));
    for (const odd of [Number.NaN, Number.POSITIVE_INFINITY, '2', null, undefined, [2], true]) {
      expect(valueFault(odd)).toMatchObject({ code: 'not-a-number', path: 'value' });
      expect(loadFault(odd)).toMatchObject({ code: 'not-a-number', path: 'load' });
    }
    expect(valueFault(-2)).toMatchObject({ code: 'negative', path: 'value' });
    for (const odd of [0, -0, -500]) expect(loadFault(odd)).toMatchObject({ code: 'not-positive', path: 'load' });
    for (const odd of ['energy', 'valueOf', '', null]) {
      expect(faultOf(() => convertQuantity(2, { ...conversion, to: odd as Quantity }))).toMatchObject({ path: 'to' });
      expect(faultOf(() => convertQuantity(2, { ...conversion, from: odd as Quantity }))).toMatchObject({
        path: 'from',
      });
    }
  });

  it('explains itself with one step, or none where nothing is converted', () => {
    const { value, working } = explainConversion(
      96,
      { from: 'power', to: 'current', load: 500 },
      { subscript: 'lower', label: 'lower limit of current' },
    );
    expect(working).toEqual([
      {
        symbol: 'I_lower',
        label: 'lower limit of current',
        formula: 'current-from-power',
        expression: 'sqrt(P / R)',
        inputs: { P: 96, R: 500 },
        value,
        unit: 'A',
        source: 'ohm-joule',
      },
    ]);
    expect(explainConversion(96, { from: 'power', to: 'power', load: 500 })).toEqual({ value: 96, working: [] });
  });
});

describe('solveOhmic', () => {
  const all = { power: 125, current: 0.5, voltage: 250, load: 500 };
  const names = ['power', 'current', 'voltage', 'load'] as const;

  it('gives the same four values from any two', () => {
    for (const a of names) {
      for (const b of names) {
        if (a === b) continue;
        const { working, ...values } = solveOhmic({ [a]: all[a], [b]: all[b] });
        expect(values).toEqual(all);
        expect(working).toHaveLength(2);
      }
    }
  });

  it('wants exactly two, and an undefined one counts as absent', () => {
    expect(faultOf(() => solveOhmic({}))).toMatchObject({ code: 'wrong-count', received: '"none"' });
    expect(faultOf(() => solveOhmic({ load: 5 }))).toMatchObject({ code: 'wrong-count', received: '"load"' });
    expect(faultOf(() => solveOhmic(all)).code).toBe('wrong-count');
    const jsLike = { power: 125, load: 500, current: undefined } as unknown as { power: number; load: number };
    expect(solveOhmic(jsLike).voltage).toBe(250);
  });

  it('refuses zero and names the member', () => {
    expect(faultOf(() => solveOhmic({ current: 0, load: 5 }))).toMatchObject({ code: 'not-positive', path: 'current' });
    expect(faultOf(() => solveOhmic({ power: 5, load: Number.NaN }))).toMatchObject({ path: 'load' });
  });
});

describe('peak and rms', () => {
  it('relates them by the crest factor', () => {
    expect(peakFromRms(250, 7)).toBe(1750);
    expect(rmsFromPeak(1750, 7)).toBe(250);
    expect(peakFromRms(0, 1)).toBe(0);
    expect(rmsFromPeak(0, 1)).toBe(0);
    expect(peakVoltage({ power: 45, load: 500, crestFactor: 2 })).toBe(300);
    expect(peakCurrent({ power: 125, load: 500, crestFactor: 2 })).toBe(1);
  });

  it('has no crest factor below 1', () => {
    expect(crestFactor({ peak: 1, rms: 1 })).toBe(1);
    // 0.3 / (3 * 0.1) is 0.9999999999999999: the rounding of the inputs, not a peak below its rms value.
    expect(crestFactor({ peak: 0.3, rms: 3 * 0.1 })).toBe(1);
    expect(faultOf(() => crestFactor({ peak: 0.99, rms: 1 }))).toMatchObject({ code: 'out-of-range', path: 'peak' });
    expect(faultOf(() => crestFactor({ peak: 1, rms: 0 }))).toMatchObject({ code: 'not-positive', path: 'rms' });
    for (const work of [
      () => peakFromRms(1, 0.99),
      () => rmsFromPeak(1, 0.99),
      () => peakVoltage({ power: 1, load: 1, crestFactor: 0.99 }),
      () => peakCurrent({ power: 1, load: 1, crestFactor: 0.99 }),
    ]) {
      expect(faultOf(work)).toMatchObject({ code: 'out-of-range', path: 'crestFactor' });
    }
  });
});

describe('complexLoadPower', () => {
  it('tells inductive from capacitive by the sign', () => {
    const inductive = complexLoadPower({ resistance: 3, reactance: 4, voltage: 10 });
    expect(inductive).toMatchObject({ impedance: 5, current: 2, apparentPower: 20, activePower: 12, powerFactor: 0.6 });
    expect(inductive.reactivePower).toBe(16);
    expect(inductive.phase).toBeCloseTo(Math.atan2(4, 3), 15);
    const capacitive = complexLoadPower({ resistance: 3, reactance: -4, voltage: 10 });
    expect(capacitive.reactivePower).toBe(-16);
    expect(capacitive.phase).toBe(-inductive.phase);
    expect(capacitive.powerFactor).toBe(0.6);
  });

  it('takes a pure resistance and a pure reactance', () => {
    expect(complexLoadPower({ resistance: 50, reactance: 0, current: 2 })).toMatchObject({
      phase: 0,
      activePower: 200,
      reactivePower: 0,
      powerFactor: 1,
    });
    expect(complexLoadPower({ resistance: 0, reactance: -50, current: 2 })).toMatchObject({
      phase: -Math.PI / 2,
      activePower: 0,
      reactivePower: -200,
      powerFactor: 0,
    });
  });

  it('names what is wrong', () => {
    const load = { resistance: 3, reactance: 4 };
    expect(faultOf(() => complexLoadPower(load)).code).toBe('wrong-count');
    expect(faultOf(() => complexLoadPower({ ...load, voltage: 1, current: 1 })).code).toBe('wrong-count');
    expect(faultOf(() => complexLoadPower({ ...load, voltage: 0 }))).toMatchObject({ path: 'voltage' });
    expect(faultOf(() => complexLoadPower({ ...load, current: -1 }))).toMatchObject({ path: 'current' });
    expect(faultOf(() => complexLoadPower({ ...load, resistance: -3, current: 1 }))).toMatchObject({
      code: 'negative',
      path: 'resistance',
    });
    expect(faultOf(() => complexLoadPower({ resistance: 0, reactance: 0, current: 1 })).code).toBe('not-positive');
    expect(faultOf(() => complexLoadPower({ ...load, reactance: Number.NaN, current: 1 })).path).toBe('reactance');
  });
});
