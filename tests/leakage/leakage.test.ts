import { describe, expect, it } from 'vitest';
import type { CalculationErrorCode } from '../../src/checks/index.js';
import { decide } from '../../src/decision/index.js';
import {
  assessLeakage,
  type LeakageArrangementId,
  type LeakageLimitQuestion,
  type LeakageSource,
  leadCapacitance,
  leakageArrangements,
  leakageAtNominal,
  leakageCautions,
  leakageConditions,
  leakageFromStray,
  leakageHint,
  leakageLimit,
  strayFromLeakage,
} from '../../src/leakage/index.js';
import { sources } from '../../src/working/index.js';
import { faultOf } from '../band/fault-of.js';

const isolated = { arrangement: 'isolated', measuredAt: 'leads' } as const;
const meter = { accuracy: { ofReading: 0.05 }, range: { maximum: 0.5, resolution: 0.001 } };

describe('arrangements', () => {
  it('name source, clause, edition and standing of every limit', () => {
    for (const arrangement of Object.values(leakageArrangements)) {
      expect(arrangement.limits.leads).toBeDefined();
      expect(sources[arrangement.resistorsSource].standing).toBe(arrangement.resistorsStanding);
      for (const limit of Object.values(arrangement.limits)) {
        expect(limit.clause).toMatch(/\d/);
        expect(limit.edition).toMatch(/\d/);
        expect(sources[limit.source].standing).toBe(limit.standing);
      }
    }
  });

  it('are plain data', () => {
    expect(JSON.parse(JSON.stringify(leakageArrangements))).toEqual(leakageArrangements);
  });
});

describe('measurements of an arrangement', () => {
  it('are one for each electrode, and for each state of the output where there are two', () => {
    for (const id of Object.keys(leakageArrangements) as LeakageArrangementId[]) {
      const { measuredFrom, alsoUnloaded } = leakageArrangements[id];
      const conditions = leakageConditions(id);
      expect(conditions).toHaveLength(measuredFrom.length * (alsoUnloaded ? 2 : 1));
      expect(new Set(conditions.map((condition) => JSON.stringify(condition))).size).toBe(conditions.length);
      expect(new Set(conditions.map((condition) => condition.measuredFrom))).toEqual(new Set(measuredFrom));
    }
    expect(leakageArrangements.isolated.measuredFrom).toHaveLength(2);
    expect(leakageArrangements.bipolar.measuredFrom).toHaveLength(2);
  });

  it('leave out no electrode, whatever states are asked for', () => {
    for (const loading of [['rated-load'], ['unloaded'], ['unloaded', 'rated-load']] as const) {
      const electrodes = leakageConditions('bipolar', loading).map(({ measuredFrom }) => measuredFrom);
      expect(new Set(electrodes)).toEqual(new Set(['pole 1', 'pole 2']));
    }
  });

  it.each<[string, () => unknown, CalculationErrorCode, string]>([
    ['an unknown arrangement', () => leakageConditions('toString' as 'isolated'), 'unknown-choice', 'arrangement'],
    ['no state', () => leakageConditions('isolated', []), 'wrong-count', 'loading'],
    ['an unknown state', () => leakageConditions('isolated', ['open' as 'unloaded']), 'unknown-choice', 'loading[0]'],
    ['a state twice', () => leakageConditions('isolated', ['unloaded', 'unloaded']), 'duplicate', 'loading[1]'],
    [
      'a state where the arrangement has its load',
      () => leakageConditions('earth-referenced-load-to-earth', ['rated-load']),
      'contradiction',
      'loading',
    ],
  ])('refuse %s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });
});

describe('limit', () => {
  it('says that it is from memory', () => {
    const { warnings, basis } = leakageLimit(isolated);
    expect(warnings.map(({ code }) => code)).toEqual(['limit-from-memory']);
    expect(basis).toEqual({
      statedIn: 'IEC 60601-2-2',
      clause: '201.8.7.3.101',
      edition: '2009 and 2017',
      standing: 'from memory',
      isStated: false,
    });
  });

  it('is the older one at the terminals', () => {
    const { current, basis } = leakageLimit({ ...isolated, measuredAt: 'terminals' });
    expect(current).toBe(0.1);
    expect(basis.edition).toBe('before 2009');
  });

  it('gives way to the one that the caller states, without a warning where that is stricter', () => {
    const limit = { current: 0.12, statedIn: 'service sheet, page 4', standing: 'published' } as const;
    const { current, warnings, basis } = leakageLimit({ ...isolated, limit });
    expect(current).toBe(0.12);
    expect(warnings).toEqual([]);
    expect(basis).toEqual({ statedIn: 'service sheet, page 4', standing: 'published', isStated: true });
  });

  it('warns of a stated limit that is looser, but uses it', () => {
    const { current, warnings } = leakageLimit({ ...isolated, limit: { current: 0.2, statedIn: 'x' } });
    expect(current).toBe(0.2);
    expect(warnings.map(({ code }) => code)).toEqual(['limit-looser']);
  });

  it('compares a stated current with the known share of a bipolar output', () => {
    const question = { arrangement: 'bipolar', measuredAt: 'leads', limit: { current: 0.06, statedIn: 'x' } } as const;
    expect(leakageLimit({ ...question, ratedPower: 70 }).warnings.map(({ code }) => code)).toEqual(['limit-looser']);
    expect(leakageLimit({ ...question, ratedPower: 80 }).warnings).toEqual([]);
    expect(leakageLimit(question).warnings).toEqual([]);
  });

  it('warns that a small generator may be exempt', () => {
    const at = (ratedPower: number) => leakageLimit({ ...isolated, ratedPower }).warnings.map(({ code }) => code);
    expect(at(50)).toContain('exemption-possible');
    expect(at(50.1)).not.toContain('exemption-possible');
  });

  it.each<[string, LeakageLimitQuestion, CalculationErrorCode, string]>([
    ['another arrangement', { ...isolated, arrangement: 'x' as 'bipolar' }, 'unknown-choice', 'arrangement'],
    ['a name of every object', { ...isolated, arrangement: 'toString' as 'bipolar' }, 'unknown-choice', 'arrangement'],
    ['another place', { ...isolated, measuredAt: 'plug' as 'leads' }, 'unknown-choice', 'measuredAt'],
    ['bipolar without rated power', { arrangement: 'bipolar', measuredAt: 'leads' }, 'missing-member', 'ratedPower'],
    [
      'bipolar at the terminals',
      { arrangement: 'bipolar', measuredAt: 'terminals', ratedPower: 70 },
      'no-limits',
      'measuredAt',
    ],
    ['a rated power of 0', { ...isolated, ratedPower: 0 }, 'not-positive', 'ratedPower'],
    ['neither current nor share', { ...isolated, limit: { statedIn: 'x' } }, 'wrong-count', 'limit'],
    ['both', { ...isolated, limit: { statedIn: 'x', current: 1, shareOfRatedPower: 0.01 } }, 'wrong-count', 'limit'],
    ['a limit of 0', { ...isolated, limit: { statedIn: 'x', current: 0 } }, 'not-positive', 'limit.current'],
    [
      'a share in percent',
      { ...isolated, ratedPower: 70, limit: { statedIn: 'x', shareOfRatedPower: 2 } },
      'not-a-fraction',
      'limit.shareOfRatedPower',
    ],
    [
      'a share of 0',
      { ...isolated, ratedPower: 70, limit: { statedIn: 'x', shareOfRatedPower: 0 } },
      'not-positive',
      'limit.shareOfRatedPower',
    ],
    [
      'a resistor of 0',
      { ...isolated, limit: { statedIn: 'x', current: 0.1, measuringResistance: 0 } },
      'not-positive',
      'limit.measuringResistance',
    ],
  ])('refuses %s', (_, question, code, path) => {
    expect(faultOf(() => leakageLimit(question))).toMatchObject({ code, path });
  });
});

describe('conversion to the nominal resistance', () => {
  it('leaves a constant current, and scales a constant voltage', () => {
    const read = { current: 0.1, measuringResistance: 250 };
    expect(leakageAtNominal({ ...read, source: { kind: 'constant-current' } }).current).toBe(0.1);
    const voltage = leakageAtNominal({ ...read, source: { kind: 'impedance', resistance: 0 } });
    expect(voltage.current).toBe(0.125);
    expect(voltage.exponent).toBe(1);
  });

  it('changes nothing at the nominal resistance, and needs no warning', () => {
    expect(leakageAtNominal({ current: 0.1, measuringResistance: 200 })).toEqual({
      current: 0.1,
      range: { lower: 0.1, upper: 0.1 },
      warnings: [],
      working: [],
    });
  });

  it('takes the highest where the path is unknown: above and below the nominal resistance', () => {
    expect(leakageAtNominal({ current: 0.1, measuringResistance: 204 }).current).toBeCloseTo(0.102, 15);
    const below = leakageAtNominal({ current: 0.1, measuringResistance: 196 });
    expect(below.current).toBe(0.1);
    expect(below.range.lower).toBeCloseTo(0.098, 15);
    expect(below.warnings.map(({ code }) => code)).toEqual(['source-unknown']);
  });

  it.each([
    [206, false],
    [194, false],
    [206.1, true],
    [193.9, true],
  ])('with %d ohm in place of 200 warns of the deviation: %s', (measuringResistance, warns) => {
    const { warnings } = leakageAtNominal({ current: 0.1, measuringResistance });
    expect(warnings.some(({ code }) => code === 'resistor-off-nominal')).toBe(warns);
  });

  it.each<[string, LeakageSource, CalculationErrorCode, string]>([
    ['another path', { kind: 'x' } as unknown as LeakageSource, 'unknown-choice', 'source.kind'],
    ['a negative resistance', { kind: 'impedance', resistance: -1 }, 'negative', 'source.resistance'],
    [
      'a reactance that is no number',
      { kind: 'impedance', resistance: 1, reactance: Number.NaN },
      'not-a-number',
      'source.reactance',
    ],
    [
      'a capacitance of 0',
      { kind: 'capacitance', capacitance: 0, frequency: 5e5 },
      'not-positive',
      'source.capacitance',
    ],
    ['a frequency of 0', { kind: 'capacitance', capacitance: 1e-10, frequency: 0 }, 'not-positive', 'source.frequency'],
    [
      'a capacitance beyond numbers',
      { kind: 'capacitance', capacitance: 1e-320, frequency: 1e-9 },
      'result-out-of-range',
      'source.capacitance',
    ],
  ])('refuses %s', (_, source, code, path) => {
    expect(faultOf(() => leakageAtNominal({ current: 0.1, measuringResistance: 210, source }))).toMatchObject({
      code,
      path,
    });
  });

  it('refuses a negative leakage and a resistor of 0', () => {
    expect(faultOf(() => leakageAtNominal({ current: -1, measuringResistance: 200 })).path).toBe('current');
    expect(faultOf(() => leakageAtNominal({ current: 1, measuringResistance: 0 })).path).toBe('measuringResistance');
    const nominal = { current: 1, measuringResistance: 200, nominalResistance: 0 };
    expect(faultOf(() => leakageAtNominal(nominal)).path).toBe('nominalResistance');
  });
});

describe('a leakage beside its limit', () => {
  it('reads voltage and power of the measuring resistor too', () => {
    expect(assessLeakage({ ...isolated, reading: 24, quantity: 'voltage' }).current).toBe(0.12);
    expect(assessLeakage({ ...isolated, reading: 2, quantity: 'power' }).current).toBe(0.1);
  });

  it('takes a reading of 0, with the uncertainty of the instrument', () => {
    const { margin, current, decidable } = assessLeakage({ ...isolated, reading: 0, instrument: meter });
    expect([margin, current]).toEqual([0, 0]);
    expect(decidable.standardUncertainty).toBeCloseTo(0.001 / Math.sqrt(12), 15);
    const volts = assessLeakage({ ...isolated, reading: 0, quantity: 'voltage', instrument: meter });
    expect(volts.decidable.standardUncertainty).toBeCloseTo(0.001 / Math.sqrt(12) / 200, 15);
  });

  it('has no uncertainty without an instrument', () => {
    const finding = assessLeakage({ ...isolated, reading: 0.1 });
    expect(finding.budget).toBeUndefined();
    expect(finding.decidable).toEqual({ band: { upper: 0.15 }, value: 0.1, unit: 'A' });
  });

  it('is ready for a decision rule', () => {
    const { decidable } = assessLeakage({ ...isolated, reading: 0.149, instrument: meter });
    expect(decide({ ...decidable, rule: { kind: 'simple-acceptance' } }).decision).toBe('accept');
    const guarded = { kind: 'guarded-acceptance', ratio: 1 } as const;
    expect(decide({ ...decidable, coverageFactor: 2, rule: guarded }).decision).toBe('reject');
    const off = assessLeakage({ ...isolated, reading: 0.151, instrument: meter }).decidable;
    expect(decide({ ...off, rule: { kind: 'simple-acceptance' } }).decision).toBe('reject');
  });

  it('says how far a pass is beyond the guidance for touching', () => {
    const { margin, contact } = assessLeakage({ ...isolated, reading: 0.08 });
    expect(margin).toBeLessThan(1);
    expect(contact).toEqual({ occupational: 2, public: 4 });
  });

  it('carries its cautions even where nothing leaks', () => {
    expect(assessLeakage({ ...isolated, reading: 0 }).cautions).toEqual(leakageCautions);
    expect(leakageCautions[0]?.text).toMatch(/passes is still hazardous to touch/);
  });

  it('is plain data', () => {
    const finding = assessLeakage({ ...isolated, reading: 0.1, measuringResistance: 207, instrument: meter });
    expect(JSON.parse(JSON.stringify(finding))).toEqual(finding);
    expect(finding.warnings.map(({ code }) => code)).toEqual([
      'limit-from-memory',
      'resistor-off-nominal',
      'source-unknown',
    ]);
  });

  it('refuses what it cannot use', () => {
    const read = { ...isolated, reading: 0.1 };
    expect(faultOf(() => assessLeakage({ ...read, reading: -0.1 }))).toMatchObject({
      code: 'negative',
      path: 'reading',
    });
    expect(faultOf(() => assessLeakage({ ...read, quantity: 'charge' as 'power' })).path).toBe('quantity');
    expect(faultOf(() => assessLeakage({ ...read, measuringResistance: 0 })).path).toBe('measuringResistance');
    const resistor = faultOf(() => assessLeakage({ ...read, resistor: { tolerance: 0.01 } }));
    expect(resistor).toMatchObject({ code: 'missing-member', path: 'instrument' });
    const range = { maximum: 0, resolution: 0.001 };
    expect(faultOf(() => assessLeakage({ ...read, instrument: { ...meter, range } })).path).toBe(
      'instrument.range.maximum',
    );
    const percent = faultOf(() => assessLeakage({ ...read, instrument: meter, resistor: { tolerance: 3 } }));
    expect(percent).toMatchObject({ code: 'not-a-fraction', path: 'resistor.tolerance' });
    const none = faultOf(() => assessLeakage({ ...isolated, reading: 0, quantity: 'power', instrument: meter }));
    expect(none).toMatchObject({ code: 'not-positive', path: 'reading' });
  });
});

describe('stray capacitance', () => {
  it('cannot give as much as the resistor alone lets through', () => {
    const question = { voltage: 30, frequency: 5e5 };
    expect(faultOf(() => strayFromLeakage({ ...question, current: 0.15 }))).toMatchObject({
      code: 'contradiction',
      path: 'current',
    });
    expect(strayFromLeakage({ ...question, current: 0.149 }).capacitance).toBeGreaterThan(1e-9);
  });

  it('refuses values without a meaning', () => {
    const path = { voltage: 300, capacitance: 1e-10, frequency: 5e5 };
    expect(faultOf(() => leakageFromStray({ ...path, voltage: 0 })).path).toBe('voltage');
    expect(faultOf(() => leakageFromStray({ ...path, capacitance: -1 })).path).toBe('capacitance');
    expect(faultOf(() => leakageFromStray({ ...path, frequency: Number.NaN })).path).toBe('frequency');
    expect(faultOf(() => leakageFromStray({ ...path, measuringResistance: 0 })).path).toBe('measuringResistance');
    expect(faultOf(() => strayFromLeakage({ ...path, current: 0 })).path).toBe('current');
  });

  it('of a lead refuses bare metal on metal and a permittivity below 1', () => {
    const lead = { length: 3, conductorDiameter: 1e-3, insulationDiameter: 3e-3, relativePermittivity: 3 };
    expect(faultOf(() => leadCapacitance({ ...lead, insulationDiameter: 1e-3 })).path).toBe('insulationDiameter');
    expect(faultOf(() => leadCapacitance({ ...lead, insulationDiameter: 0.9e-3 })).path).toBe('insulationDiameter');
    expect(faultOf(() => leadCapacitance({ ...lead, relativePermittivity: 0.5 })).path).toBe('relativePermittivity');
    expect(faultOf(() => leadCapacitance({ ...lead, gap: -1 })).path).toBe('gap');
    expect(faultOf(() => leadCapacitance({ ...lead, length: 0 })).path).toBe('length');
  });
});

describe('hint', () => {
  const found = { current: 0.18, limit: 0.15, voltage: 300, frequency: 5e5 };
  const lead = { length: 3, conductorDiameter: 1e-3, insulationDiameter: 3e-3, relativePermittivity: 3 };

  it.each([
    ['a leakage within its limit', { ...found, current: 0.15 }, 'within-limit'],
    ['no leakage', { ...found, current: 0 }, 'within-limit'],
    ['leads of which nothing is known', found, 'lift-and-repeat'],
    ['a lead that could give it', { ...found, lead }, 'lift-and-repeat'],
    ['a lead that is too short', { ...found, lead: { ...lead, length: 1 } }, 'look-for-fault'],
    ['a leakage that no capacitance gives', { ...found, voltage: 30, lead }, 'look-for-fault'],
    ['leads lifted, within the limit', { ...found, liftedCurrent: 0.15 }, 'lead'],
    ['leads lifted, still beyond', { ...found, liftedCurrent: 0.16 }, 'lead-and-fault'],
    ['leads lifted, nothing lower', { ...found, lead, liftedCurrent: 0.18 }, 'look-for-fault'],
  ])('for %s', (_, input, hint) => {
    const answer = leakageHint(input);
    expect(answer.hint).toBe(hint);
    expect(answer.cautions).toEqual(leakageCautions);
  });

  it('says it with its figures', () => {
    expect(leakageHint({ ...found, lead: { ...lead, length: 1 } }).text).toBe(
      'A stray capacitance of 192 pF would give 180 mA. A lead lying on metal as described has 31.6 pF to 94.7 pF: it does not explain the leakage. Look for a fault.',
    );
    expect(leakageHint({ ...found, current: 0.1 }).text).toBe(
      '100 mA is within the limit of 150 mA. It is still hazardous to touch.',
    );
  });

  it('leaves out a capacitance that there is not', () => {
    const answer = leakageHint({ ...found, voltage: 30 });
    expect(answer).not.toHaveProperty('strayCapacitance');
    expect(answer).not.toHaveProperty('strayAtLimit');
    expect(leakageHint({ ...found, current: 0 })).not.toHaveProperty('strayCapacitance');
  });

  it('refuses values without a meaning', () => {
    expect(faultOf(() => leakageHint({ ...found, lead: { ...lead, length: 0 } })).path).toBe('lead.length');
    expect(faultOf(() => leakageHint({ ...found, limit: 0 })).path).toBe('limit');
    expect(faultOf(() => leakageHint({ ...found, current: -1 })).path).toBe('current');
    expect(faultOf(() => leakageHint({ ...found, liftedCurrent: -1 })).path).toBe('liftedCurrent');
    expect(faultOf(() => leakageHint({ ...found, measuringResistance: 0 })).path).toBe('measuringResistance');
  });
});
