import { describe, expect, it } from 'vitest';
import { type Bench, type Output, type PlanPoint, planVerification } from '../../src/procedure/index.js';
import { bench, curvedOutput, ratedOutput, specificationOf } from './documents.js';

function pointAt(points: readonly PlanPoint[], id: string): PlanPoint {
  const point = points.find((candidate) => candidate.id === id);
  if (point === undefined) throw new Error(`no point ${id} among ${points.map((p) => p.id).join(', ')}`);
  return point;
}

describe('points that are chosen', () => {
  it('takes only the rated load when nothing but the rating is published', () => {
    const plan = planVerification(specificationOf(ratedOutput), bench);
    expect(plan.points.map((point) => point.id)).toEqual(['cut/40W/400ohm', 'cut/100W/400ohm', 'cut/200W/400ohm']);
    expect(plan.points[2]?.expected).toMatchObject({ power: 200, from: 'rating' });
  });

  it('takes the rated load and the usual test loads inside the curve, at maximum, half and one low setting', () => {
    const plan = planVerification(specificationOf(curvedOutput), bench);
    expect(new Set(plan.points.map((point) => point.wantedLoad))).toEqual(new Set([100, 200, 400, 500, 1000, 2000]));
    expect(new Set(plan.points.map((point) => point.setting))).toEqual(new Set([40, 100, 200]));
    expect(plan.points).toHaveLength(18);
  });

  it('leaves out chosen loads that the bench lacks, and says so', () => {
    const small: Bench = { ...bench, loads: bench.loads.filter((load) => load.resistance !== 100) };
    const plan = planVerification(specificationOf(curvedOutput), small);
    expect(plan.points.some((point) => point.wantedLoad === 100)).toBe(false);
    expect(plan.warnings.map((w) => w.code)).toContain('load-not-on-bench');
  });

  it('keeps points that the sheet asks for, even when the bench lacks the load', () => {
    const asked: Output = { ...curvedOutput, points: [{ setting: 200, load: 50 }] };
    const [point] = planVerification(specificationOf(asked), bench).points;
    expect(point).toMatchObject({ id: 'cut/200W/50ohm', feasible: false, limits: {} });
    expect(point?.warnings[0]?.code).toBe('load-not-on-bench');
  });

  it('adjusts settings and loads as asked', () => {
    const asked: Output = { ...curvedOutput, settings: [60, 200], loads: [200, 500] };
    const plan = planVerification(specificationOf(asked), bench);
    expect(plan.points.map((p) => p.id)).toEqual([
      'cut/60W/200ohm',
      'cut/200W/200ohm',
      'cut/60W/500ohm',
      'cut/200W/500ohm',
    ]);
  });

  it('refuses to guess at a setting without a curve unless the sheet says how other settings follow', () => {
    const { otherSettings: _, ...strict } = curvedOutput;
    const plan = planVerification(specificationOf(strict), bench);
    expect(new Set(plan.points.map((point) => point.setting))).toEqual(new Set([200]));
    expect(plan.warnings.filter((w) => w.code === 'setting-without-power')).toHaveLength(2);
  });

  it('follows the limits of the regulation where the sheet gives these and no curve', () => {
    const regimes: Output = { ...ratedOutput, regimes: { currentLimit: 1, voltageLimit: 400 } };
    const plan = planVerification(specificationOf(regimes), bench);
    expect(pointAt(plan.points, 'cut/200W/100ohm').expected).toMatchObject({ power: 100, current: 1, from: 'regimes' });
    expect(pointAt(plan.points, 'cut/100W/100ohm').expected?.power).toBe(100);
    expect(pointAt(plan.points, 'cut/200W/2000ohm').expected?.power).toBeCloseTo(80, 12);
  });
});

describe('order of work', () => {
  it('changes connections least, then loads, then goes from low to high settings, and numbers the points', () => {
    const second: Output = { ...curvedOutput, id: 'second', name: 'Second mode' };
    const bipolar: Output = {
      ...curvedOutput,
      id: 'bi',
      name: 'Bipolar',
      circuit: 'bipolar',
      connection: 'Both poles',
    };
    const plan = planVerification(specificationOf(curvedOutput, bipolar, second), bench);
    const keys = plan.points.map((point) => `${point.connection}|${point.load?.id}|${point.output}`);
    const changes = (list: readonly string[]): number => list.filter((key, i) => key !== list[i - 1]).length;
    expect(changes(plan.points.map((point) => point.connection))).toBe(2);
    expect(changes(plan.points.map((point) => `${point.connection}${point.load?.id}`))).toBe(6 + 4);
    expect(new Set(keys).size).toBe(changes(keys));
    expect(plan.points.map((point) => point.number)).toEqual(plan.points.map((_, i) => i + 1));
    const first = plan.points.filter((point) => point.output === 'cut' && point.load?.id === 'L400');
    expect(first.map((point) => point.setting)).toEqual([40, 100, 200]);
  });
});

describe('limits', () => {
  it('gives ±20 % of power as current, rounded inward to the range of the instrument', () => {
    const plan = planVerification(specificationOf(ratedOutput), bench);
    const point = pointAt(plan.points, 'cut/200W/400ohm');
    // √(160/400) = 0.63246, √(240/400) = 0.77460
    expect(point.limits).toEqual({ lower: 0.633, upper: 0.774 });
    expect(point.range).toEqual({ maximum: 1, resolution: 0.001 });
    expect(point.nominal).toBe(Math.sqrt(0.5));
    expect(point.limitsFrom).toBe('tolerance');
  });

  it('rounds to nearest by name', () => {
    const plan = planVerification(specificationOf(ratedOutput), bench, { rounding: 'nearest' });
    expect(pointAt(plan.points, 'cut/200W/400ohm').limits).toEqual({ lower: 0.632, upper: 0.775 });
  });

  it('rounds to the range that is needed', () => {
    const wide: Output = {
      ...curvedOutput,
      settings: [200],
      loads: [200],
      tolerance: { in: 'current', relative: 0.1 },
    };
    const [point] = planVerification(specificationOf(wide), bench).points;
    expect(point?.range?.resolution).toBe(0.01);
    expect(point?.limits).toEqual({ lower: 0.9, upper: 1.1 });
  });

  it('gives limits in power where the bench wants power', () => {
    const plan = planVerification(specificationOf(ratedOutput), { ...bench, reads: 'power' });
    expect(pointAt(plan.points, 'cut/200W/400ohm').limits).toEqual({ lower: 160, upper: 240 });
  });

  it('keeps the digits of a published row at its own load', () => {
    const rows: Output = {
      ...ratedOutput,
      rows: [{ setting: 95, load: 100, quantity: 'current', power: 95, lower: 0.843, upper: 0.999 }],
    };
    const { tolerance: _, ...bare } = rows;
    const [point] = planVerification(specificationOf(bare), bench).points;
    expect(point).toMatchObject({ limits: { lower: 0.843, upper: 0.999 }, limitsFrom: 'published row' });
    expect(point?.expected).toMatchObject({ power: 95, from: 'published row' });
  });

  it('shows both limits and warns where a row and the tolerance disagree; the row governs unless asked', () => {
    const rows: Output = {
      ...ratedOutput,
      rows: [{ setting: 100, load: 400, quantity: 'power', power: 100, lower: 85, upper: 130 }],
    };
    const options = [{}, { govern: 'derived' }, { govern: 'tighter' }] as const;
    const points = options.map(
      (option) => planVerification(specificationOf(rows), { ...bench, reads: 'power' }, option).points[0],
    );
    expect(points.map((point) => point?.limits)).toEqual([
      { lower: 85, upper: 130 },
      { lower: 80, upper: 120 },
      { lower: 85, upper: 120 },
    ]);
    expect(points[0]).toMatchObject({
      publishedLimits: { lower: 85, upper: 130 },
      derivedLimits: { lower: 80, upper: 120 },
    });
    for (const point of points) expect(point?.warnings.map((w) => w.code)).toContain('limits-differ');
  });

  it('applies the accuracy rule of the standard above 10 % of rated power and no limit below', () => {
    const { tolerance: _, ...bare } = { ...curvedOutput, settings: [10, 200], loads: [400] };
    const specification = { ...specificationOf(bare), rules: [{ rule: 'output-accuracy' as const }] };
    const plan = planVerification(specification, { ...bench, reads: 'power' });
    expect(pointAt(plan.points, 'cut/200W/400ohm')).toMatchObject({
      limits: { lower: 160, upper: 240 },
      limitsFrom: 'standard',
    });
    const low = pointAt(plan.points, 'cut/10W/400ohm');
    expect(low).toMatchObject({ limits: {}, limitsFrom: 'none' });
    expect(low.warnings.map((w) => w.code)).toContain('no-limits');
    // Exactly 10 % is not above 10 %.
    const edge = planVerification(
      { ...specification, outputs: [{ ...bare, settings: [20] }] },
      { ...bench, reads: 'power' },
    );
    expect(edge.points[0]?.limitsFrom).toBe('none');
  });

  it('takes other parameters of a rule from the user', () => {
    const { tolerance: _, ...bare } = { ...curvedOutput, settings: [200], loads: [400] };
    const rules = [{ rule: 'output-accuracy' as const, parameters: { above: 0.1 } }];
    const plan = planVerification({ ...specificationOf(bare), rules }, { ...bench, reads: 'power' });
    expect(plan.points[0]?.limits).toEqual({ lower: 160, upper: 220 });
  });

  it('takes numbered levels without wattage from their rows', () => {
    const levels: Output = {
      ...ratedOutput,
      scale: { kind: 'level', levels: ['1', '2'] },
      rows: [
        { setting: '2', load: 500, quantity: 'current', lower: 0.54, upper: 0.66 },
        { setting: '1', load: 500, quantity: 'current', lower: 0.3, upper: 0.4 },
      ],
    };
    const { tolerance: _, ...bare } = levels;
    const plan = planVerification(specificationOf(bare), bench);
    expect(plan.points.map((point) => point.settingText)).toEqual(['1', '2']);
    const point = pointAt(plan.points, 'cut/2/500ohm');
    expect(point.expected?.from).toBe('middle of the published row');
    expect(point.nominal).toBeCloseTo(0.6, 12);
    expect(point.warnings.map((w) => w.code)).toContain('nominal-from-limits');
  });
});

describe('another load than the wanted one', () => {
  const substituted: Bench = { ...bench, loads: [{ id: 'L470', resistance: 470, powerRating: 300 }] };

  it('reads the curve at the load of the bench and says what it costs', () => {
    const asked: Output = {
      ...curvedOutput,
      curves: [
        {
          setting: 200,
          points: [
            { load: 100, power: 200 },
            { load: 1000, power: 20 },
          ],
        },
      ],
      points: [{ setting: 200, load: 500 }],
    };
    const [point] = planVerification(specificationOf(asked), substituted).points;
    // P = 20000/R: 40 W at 500 Ω, 42.553 W at 470 Ω.
    expect(point?.expected?.power).toBeCloseTo(20000 / 470, 10);
    expect(point?.load?.powerChange).toBeCloseTo(500 / 470 - 1, 10);
    expect(point?.load?.difference).toBeCloseTo(-0.06, 12);
    expect(point?.warnings.map((w) => w.code)).toContain('load-substituted');
  });

  it('carries the limits of a row along the curve, keeping their ratio to it', () => {
    const asked: Output = {
      ...curvedOutput,
      curves: [
        {
          setting: 200,
          points: [
            { load: 100, power: 200 },
            { load: 1000, power: 20 },
          ],
        },
      ],
      rows: [{ setting: 200, load: 500, quantity: 'power', power: 40, lower: 32, upper: 48 }],
    };
    const fine: Bench = {
      ...substituted,
      instrument: { name: 'W', reads: [{ quantity: 'power', ranges: [{ maximum: 500, resolution: 0.001 }] }] },
    };
    const [point] = planVerification(specificationOf(asked), fine).points;
    // 0.8 and 1.2 of 20000/470 W, rounded inward.
    expect(point?.limits).toEqual({ lower: 34.043, upper: 51.063 });
  });

  it('refuses where no curve says what the load changes', () => {
    const asked: Output = { ...ratedOutput, points: [{ setting: 200, load: 500, power: 200 }] };
    const [point] = planVerification(specificationOf(asked), substituted).points;
    expect(point).toMatchObject({ feasible: false });
    expect(point?.warnings[0]?.message).toContain('470 ohm cannot stand in for 500 ohm');
  });

  it('takes the power as unchanged within the negligible difference, and says so', () => {
    const near: Bench = { ...bench, loads: [{ id: 'L', resistance: 402, powerRating: 300 }] };
    const [point] = planVerification(specificationOf({ ...ratedOutput, settings: [200] }), near).points;
    expect(point?.expected?.power).toBe(200);
    expect(point?.expected?.current).toBeCloseTo(Math.sqrt(200 / 402), 14);
    expect(point?.warnings.map((w) => w.code)).toContain('power-assumed-unchanged');
  });

  it('prefers among equal loads one that takes the power', () => {
    const two: Bench = {
      ...bench,
      loads: [
        { id: 'small', resistance: 400, powerRating: 50 },
        { id: 'large', resistance: 400, powerRating: 300 },
      ],
    };
    const plan = planVerification(specificationOf(ratedOutput), two);
    expect(pointAt(plan.points, 'cut/200W/400ohm').load?.id).toBe('large');
  });
});

describe('feasibility', () => {
  const one = (output: Partial<Output>, b: Partial<Bench> = {}): PlanPoint => {
    const asked = { ...ratedOutput, settings: [200], ...output };
    return planVerification(specificationOf(asked), { ...bench, ...b }).points[0] as PlanPoint;
  };
  const failed = (point: PlanPoint): string[] => point.feasibility.filter((check) => !check.ok).map((c) => c.check);

  it('passes a point that everything can take', () => {
    const point = one({});
    expect(point.feasible).toBe(true);
    expect(point.feasibility.map((check) => check.check)).toEqual([
      'instrument range',
      'instrument peak voltage',
      'instrument crest factor',
      'load power',
      'load peak voltage',
      'lead peak voltage',
    ]);
  });

  it('checks the peak at the upper limit, not at the nominal', () => {
    // √(240 W × 400 Ω) × 6 = 1859 V at the upper limit, below 2000 V; 6.6 gives 2045 V.
    expect(failed(one({ crestFactor: 6 }))).toEqual([]);
    expect(failed(one({ crestFactor: 6.6 }))).toEqual(['instrument peak voltage']);
  });

  it('names crest factor, frequency, range and load', () => {
    expect(failed(one({ crestFactor: 11 }))).toContain('instrument crest factor');
    expect(failed(one({ carrierFrequency: 6e6 }))).toEqual(['instrument frequency']);
    const meter = {
      name: 'm',
      reads: [{ quantity: 'current' as const, ranges: [{ maximum: 0.7, resolution: 0.001 }] }],
    };
    const point = one({}, { instrument: meter });
    expect(failed(point)).toEqual(['instrument range']);
    expect(point.range).toBeUndefined();
    const loads = [{ id: 'L', resistance: 400, powerRating: 100, maximumPeakVoltage: 400 }];
    expect(failed(one({}, { loads }))).toEqual(['load power', 'load peak voltage']);
  });

  it('uses a short overload of the load, with its time and pause', () => {
    const loads = [{ id: 'L', resistance: 400, powerRating: 100, overload: { power: 300, on: 4, off: 90 } }];
    const point = one({}, { loads });
    expect(point.feasible).toBe(true);
    expect(point.activation).toEqual({ longest: 4, pause: 90 });
    expect(one({}).activation).toEqual({ longest: 10, pause: 30 });
  });

  it('warns when the sheet states no crest factor and the bench has a limit that needs it', () => {
    const { crestFactor: _, ...unknown } = { ...ratedOutput, settings: [200] };
    const [point] = planVerification(specificationOf(unknown), bench).points;
    expect(point?.warnings.map((w) => w.code)).toContain('crest-factor-missing');
    expect(point?.expected?.peakVoltage).toBeUndefined();
  });

  it('calls a point not feasible when no reading of the instrument lies between its limits', () => {
    const coarse = { name: 'm', reads: [{ quantity: 'power' as const, ranges: [{ maximum: 1000, resolution: 500 }] }] };
    const point = one({}, { instrument: coarse });
    expect(point.feasible).toBe(false);
    expect(point.warnings[0]?.code).toBe('band-empty');
  });

  it('warns when the expected peak contradicts the stated maximum', () => {
    expect(one({ maximumPeakVoltage: 300 }).warnings.map((w) => w.code)).toContain('peak-above-stated');
  });
});

describe('bench time', () => {
  it('adds connections, loads, settings, readings and the pauses beyond them', () => {
    const plan = planVerification(specificationOf(ratedOutput), {
      ...bench,
      times: { connect: 100, changeLoad: 20, changeSetting: 10, read: 5 },
    });
    // one connection, one load, three settings, three readings, three pauses of 30 s of which 10 s run with the setting
    expect(plan.benchTime.total).toBe(100 + 20 + 3 * 10 + 3 * 5 + 3 * 20);
  });
});

describe('what travels with a plan', () => {
  it('prints the maker\u2019s cautions first and the trade\u2019s after them', () => {
    const specification = { ...specificationOf(ratedOutput), cautions: ['Warm up first.'] };
    const plan = planVerification(specification, bench);
    expect(plan.cautions[0]).toMatchObject({ text: 'Warm up first.' });
    expect(plan.cautions.map((c) => c.id)).toContain('no-release');
    expect(plan.cautions.length).toBeGreaterThanOrEqual(8);
  });

  it('holds specification, bench and options whole', () => {
    const plan = planVerification(specificationOf(curvedOutput), bench);
    expect(plan.specification).toEqual(specificationOf(curvedOutput));
    expect(plan.bench).toEqual(bench);
    expect(plan.options).toEqual({
      rounding: 'inward',
      govern: 'published',
      lowSetting: 0.2,
      closeToLimit: 0.8,
      decisionRule: { kind: 'simple-acceptance' },
      negligibleEffect: 0.1,
    });
  });

  it('carries the clause and standing of every rule that is chosen, and none otherwise', () => {
    expect(planVerification(specificationOf(curvedOutput), bench).rules).toEqual([]);
    const rules = ['output-accuracy', 'output-monotone', 'peak-voltage', 'supply-interruption'] as const;
    const specification = {
      ...specificationOf({ ...curvedOutput, maximumPeakVoltage: 900 }),
      rules: rules.map((rule) => ({ rule })),
    };
    const plan = planVerification(specification, bench);
    expect(plan.rules.map((rule) => rule.definition.clause)).toEqual([
      '201.12.1.101',
      '201.12.1.102',
      '201.12.1.103',
      '201.11.8',
    ]);
    for (const rule of plan.rules) expect(rule.definition.standing).toBe('published');
    expect(plan.rules[2]?.points).toEqual(['cut/200W/2000ohm']);
    expect(plan.rules[3]?.points).toEqual(['cut/200W/400ohm']);
  });
});
