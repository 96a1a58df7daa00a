import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import {
  assessReadings,
  type Bench,
  type Output,
  planVerification,
  type Specification,
} from '../../src/procedure/index.js';
import { bench, curvedOutput, ratedOutput, readingsOf, specificationOf } from './documents.js';

function faultsOf(work: () => unknown): { code: string; path: string }[] {
  try {
    work();
  } catch (error) {
    expect(error).toBeInstanceOf(CalculationError);
    return (error as CalculationError).faults.map(({ code, path }) => ({ code, path }));
  }
  return [];
}

const withOutput = (change: Partial<Output>, b: Bench = bench): { code: string; path: string }[] =>
  faultsOf(() => planVerification(specificationOf({ ...curvedOutput, ...change }), b));

describe('a specification that is wrong', () => {
  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a rated power of %s, with its path', (ratedPower) => {
    const code = Number.isFinite(ratedPower) ? 'not-positive' : 'not-a-number';
    expect(withOutput({ ratedPower })).toEqual([{ code, path: 'outputs[0].ratedPower' }]);
    expect(withOutput({ ratedLoad: ratedPower })).toEqual([{ code, path: 'outputs[0].ratedLoad' }]);
  });

  it.each([
    [
      'unsorted',
      [
        { load: 200, power: 1 },
        { load: 100, power: 1 },
      ],
      'outputs[0].curves[0].points[1].load',
    ],
    [
      'repeated',
      [
        { load: 100, power: 1 },
        { load: 100, power: 1 },
      ],
      'outputs[0].curves[0].points[1].load',
    ],
    ['single', [{ load: 100, power: 1 }], 'outputs[0].curves[0].points'],
    [
      'negative',
      [
        { load: 100, power: 1 },
        { load: 200, power: -1 },
      ],
      'outputs[0].curves[0].points[1].power',
    ],
  ])('refuses a curve that is %s', (_, points, path) => {
    expect(withOutput({ curves: [{ setting: 200, points }] }).map((fault) => fault.path)).toEqual([path]);
  });

  it('refuses a tolerance that makes the lower limit negative in power', () => {
    const [fault] = withOutput({ tolerance: { in: 'power', absolute: 250 }, points: [{ setting: 200, load: 400 }] });
    expect(fault?.code).toBe('limit-negative');
    expect(fault?.path).toContain('outputs[0]');
  });

  it('refuses a row whose lower limit lies above its upper limit', () => {
    const rows = [{ setting: 200, load: 400, quantity: 'current' as const, lower: 0.8, upper: 0.7 }];
    expect(withOutput({ rows })[0]?.code).toBe('band-reversed');
  });

  it('refuses settings outside the scale and levels that do not exist, all at once', () => {
    const faults = withOutput({
      points: [
        { setting: 300, load: 400 },
        { setting: 'high', load: 400 },
      ],
    });
    expect(faults).toEqual([
      { code: 'setting-outside-scale', path: 'outputs[0].points[0].setting' },
      { code: 'not-a-number', path: 'outputs[0].points[1].setting' },
    ]);
    const scale = { kind: 'level' as const, levels: ['1', '2'] };
    const { curves: _, ...levels } = { ...curvedOutput, scale, points: [{ setting: '3', load: 400 }] };
    expect(faultsOf(() => planVerification(specificationOf(levels), bench))[0]).toEqual({
      code: 'level-unknown',
      path: 'outputs[0].points[0].setting',
    });
  });

  it('refuses identifiers and rows that repeat', () => {
    const faults = faultsOf(() => planVerification(specificationOf(ratedOutput, ratedOutput), bench));
    expect(faults).toEqual([{ code: 'duplicate', path: 'outputs[1].id' }]);
  });

  it('refuses rules and parameters that do not exist', () => {
    const specification = {
      ...specificationOf(ratedOutput),
      rules: [{ rule: 'no-such-rule' }, { rule: 'output-accuracy', parameters: { wide: 0.5, above: 20 } }],
    } as unknown as Specification;
    expect(faultsOf(() => planVerification(specification, bench))).toEqual([
      { code: 'unknown-choice', path: 'rules[0].rule' },
      { code: 'unknown-choice', path: 'rules[1].parameters.wide' },
      { code: 'not-a-fraction', path: 'rules[1].parameters.above' },
    ]);
  });

  it('refuses a crest factor below 1', () => {
    expect(withOutput({ crestFactor: 0.9 })).toEqual([{ code: 'out-of-range', path: 'outputs[0].crestFactor' }]);
  });
});

describe('a bench that is wrong', () => {
  it('names loads, ranges and quantities, all at once', () => {
    const wrong: Bench = {
      ...bench,
      reads: 'voltage',
      instrument: { name: 'm', reads: [{ quantity: 'current', ranges: [] }] },
      loads: [],
    };
    expect(withOutput({}, wrong).map((fault) => fault.path)).toEqual(['loads', 'instrument.reads[0].ranges', 'reads']);
  });

  it.each([0, -5, Number.NaN])('refuses a load of %s ohm', (resistance) => {
    const wrong: Bench = { ...bench, loads: [{ id: 'L', resistance, powerRating: 1 }] };
    expect(withOutput({}, wrong)[0]?.path).toBe('loads[0].resistance');
  });
});

describe('readings that are wrong', () => {
  const plan = planVerification(specificationOf(ratedOutput), bench);
  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY, 1e200])('refuses a value of %s', (value) => {
    const readings = readingsOf({ point: '1', value: 0.3 }, { point: '2', value });
    expect(faultsOf(() => assessReadings(plan, readings)).map((fault) => fault.path)).toEqual(['readings[1].value']);
  });

  it('refuses a phase that does not exist', () => {
    const readings = readingsOf({ point: '1', value: 0.3, phase: 'later' as 'as-left' });
    expect(faultsOf(() => assessReadings(plan, readings))).toEqual([
      { code: 'unknown-choice', path: 'readings[0].phase' },
    ]);
  });
});
