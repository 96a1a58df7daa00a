import { describe, expect, it } from 'vitest';
import type { CalculationErrorCode } from '../../src/checks/index.js';
import { decide } from '../../src/decision/index.js';
import {
  assessContact,
  contactAfterLoss,
  contactImpedance,
  contactLimits,
  currentDensity,
  electrodeCautions,
  electrodeHeating,
  type FoilContact,
  foilCurrents,
  heatingFigures,
  thermalTest,
  thermalTests,
} from '../../src/electrode/index.js';
import { sources } from '../../src/working/index.js';
import { faultOf } from '../band/fault-of.js';

describe('thermal test', () => {
  it.each([
    [0.8, 0.35],
    [4.999, 0.35],
    [5, 0.5],
    [15, 0.5],
    [15.001, 0.7],
    [70, 0.7],
  ])('of an electrode marked for %d kg is with %d A', (weight, current) => {
    expect(thermalTest(weight).current).toBe(current);
  });

  it('warns where its figures are from memory, and only there', () => {
    expect(thermalTest(4).warnings.map(({ code }) => code)).toEqual(['limit-from-memory']);
    expect(thermalTest(70).warnings).toEqual([]);
  });

  it('names a source of its own standing', () => {
    for (const { source, standing } of Object.values(thermalTests)) expect(sources[source].standing).toBe(standing);
    for (const { source, standing } of Object.values(heatingFigures)) {
      if (source !== undefined) expect(sources[source].standing).toBe(standing);
    }
  });

  it('says that it is not for a patient', () => {
    expect(thermalTest(70).cautions[0]).toMatchObject({ id: 'not-for-a-patient' });
  });

  it('refuses a weight of 0', () => {
    expect(faultOf(() => thermalTest(0))).toMatchObject({ code: 'not-positive', path: 'markedWeight' });
    expect(faultOf(() => thermalTest(Number.NaN))).toMatchObject({ code: 'not-a-number', path: 'markedWeight' });
  });
});

describe('heating of an electrode', () => {
  const twice = [
    { current: 0.5, duration: 60 },
    { current: 0.5, duration: 60 },
  ];

  it('adds up, and leaves nothing beyond the figure', () => {
    const { heatingFactor, share, remaining, remainingDuration } = electrodeHeating({
      activations: twice,
      figure: 15,
      nextCurrent: 0.5,
    });
    expect([heatingFactor, share, remaining, remainingDuration]).toEqual([30, 2, 0, 0]);
  });

  it('has no duration without a next current', () => {
    expect(electrodeHeating({ activations: twice, figure: 60 })).not.toHaveProperty('remainingDuration');
  });

  it('has its cautions and says what it takes for granted', () => {
    const { cautions, assumptions } = electrodeHeating({ activations: twice, figure: 60 });
    expect(cautions).toEqual(electrodeCautions);
    expect(assumptions).toEqual(['No cooling between the activations is counted.']);
  });

  it('names the activation that is wrong', () => {
    const wrong = [twice[0]!, { current: 0.5, duration: -1 }];
    const fault = faultOf(() => electrodeHeating({ activations: wrong, figure: 30 }));
    expect(fault).toMatchObject({ code: 'negative', path: 'activations[1].duration' });
  });

  it('refuses what it cannot use', () => {
    expect(faultOf(() => electrodeHeating({ activations: [], figure: 30 })).code).toBe('wrong-count');
    expect(faultOf(() => electrodeHeating({ activations: twice, figure: 0 })).path).toBe('figure');
    expect(faultOf(() => electrodeHeating({ activations: twice, figure: 60, nextCurrent: 0 })).path).toBe(
      'nextCurrent',
    );
    const huge = [
      { current: 1e154, duration: 1 },
      { current: 1e154, duration: 1 },
    ];
    expect(faultOf(() => electrodeHeating({ activations: huge, figure: 1e-300 })).code).toBe('result-out-of-range');
  });
});

describe('contact impedance', () => {
  it('of a conductive contact is its resistance', () => {
    expect(contactImpedance({ resistance: 30 }, 5e5)).toMatchObject({
      resistance: 30,
      reactance: 0,
      impedance: 30,
      phase: 0,
    });
  });

  it('of a capacitive contact is its reactance', () => {
    const { resistance, impedance, phase } = contactImpedance({ capacitance: 4e-9 }, 5e5);
    expect(resistance).toBe(0);
    expect(impedance).toBeCloseTo(79.57747, 5);
    expect(phase).toBe(-Math.PI / 2);
  });

  it.each<[string, FoilContact, number, CalculationErrorCode, string]>([
    ['neither resistance nor capacitance', {}, 5e5, 'missing-member', 'resistance'],
    ['a resistance of 0', { resistance: 0 }, 5e5, 'not-positive', 'resistance'],
    ['a capacitance of 0', { resistance: 1, capacitance: 0 }, 5e5, 'not-positive', 'capacitance'],
    ['a negative series resistance', { resistance: 1, seriesResistance: -1 }, 5e5, 'negative', 'seriesResistance'],
    ['a frequency of 0', { resistance: 1 }, 0, 'not-positive', 'frequency'],
    ['a reactance beyond numbers', { capacitance: 1e-320 }, 1e-9, 'result-out-of-range', 'reactance'],
  ])('refuses %s', (_, contact, frequency, code, path) => {
    expect(faultOf(() => contactImpedance(contact, frequency))).toMatchObject({ code, path });
  });

  it('after a loss of area has more resistance and less capacitance', () => {
    const contact = { resistance: 30, capacitance: 8e-9, seriesResistance: 40 };
    expect(contactAfterLoss(contact, 0.75)).toEqual({ resistance: 120, capacitance: 2e-9, seriesResistance: 40 });
    expect(contactAfterLoss({ resistance: 30 }, 0)).toEqual({ resistance: 30 });
    expect(contactAfterLoss({ capacitance: 8e-9 }, 0.5)).toEqual({ capacitance: 4e-9 });
  });

  it('refuses the loss of all, and a percentage', () => {
    expect(faultOf(() => contactAfterLoss({ resistance: 30 }, 1))).toMatchObject({
      code: 'out-of-range',
      path: 'lostArea',
    });
    expect(faultOf(() => contactAfterLoss({ resistance: 30 }, 40)).hint).toBe('If 40 % is meant, give 0.4.');
  });
});

describe('contact impedance beside its limit', () => {
  const conductive = { kind: 'conductive', impedance: 45, frequency: 5e5 } as const;

  it('says that the limit is from memory, and where it does not hold', () => {
    const codes = (frequency: number) => assessContact({ ...conductive, frequency }).warnings.map(({ code }) => code);
    expect(codes(50e3)).toEqual(['limit-from-memory']);
    expect(codes(5e6)).toEqual(['limit-from-memory']);
    expect(codes(49e3)).toEqual(['limit-from-memory', 'frequency-outside']);
    expect(codes(5.1e6)).toEqual(['limit-from-memory', 'frequency-outside']);
  });

  it('takes other limits', () => {
    const limits = { ...contactLimits, conductiveImpedance: 40, standing: 'published' } as const;
    const { margin, warnings, standing } = assessContact({ ...conductive, limits });
    expect([margin, standing]).toEqual([1.125, 'published']);
    expect(warnings).toEqual([]);
  });

  it('is ready for a decision rule', () => {
    const { decidable, cautions } = assessContact({ ...conductive, standardUncertainty: 2 });
    expect(decide({ ...decidable, rule: { kind: 'simple-acceptance' } }).decision).toBe('accept');
    const guarded = { kind: 'guarded-acceptance', ratio: 1 } as const;
    expect(decide({ ...decidable, coverageFactor: 3, rule: guarded }).decision).toBe('reject');
    expect(cautions).toEqual(electrodeCautions);
  });

  it('refuses what it cannot use', () => {
    expect(faultOf(() => assessContact({ ...conductive, kind: 'wet' as 'conductive' })).path).toBe('kind');
    expect(faultOf(() => assessContact({ ...conductive, impedance: -1 })).path).toBe('impedance');
    expect(faultOf(() => assessContact({ ...conductive, frequency: 0 })).path).toBe('frequency');
    expect(faultOf(() => assessContact({ ...conductive, standardUncertainty: -1 })).path).toBe('standardUncertainty');
    const none = { ...contactLimits, conductiveImpedance: 0 };
    expect(faultOf(() => assessContact({ ...conductive, limits: none })).path).toBe('limits.conductiveImpedance');
    const empty = { ...contactLimits, capacitance: 0 };
    expect(faultOf(() => assessContact({ ...conductive, kind: 'capacitive', limits: empty })).path).toBe(
      'limits.capacitance',
    );
    const reversed = { ...contactLimits, to: 1e3 };
    expect(faultOf(() => assessContact({ ...conductive, limits: reversed }))).toMatchObject({
      code: 'not-ascending',
      path: 'limits.to',
    });
  });
});

describe('two foils', () => {
  it('share as their resistances say', () => {
    const { foils, phaseBetween, concentration } = foilCurrents({
      current: 4.5,
      frequency: 5e5,
      foils: [{ resistance: 1 }, { resistance: 2 }],
    });
    expect(foils.map(({ current }) => current)).toEqual([3, 1.5]);
    expect(foils.map(({ power }) => power)).toEqual([9, 4.5]);
    expect(phaseBetween).toBe(0);
    expect(concentration).toBeCloseTo(4 / 3, 15);
  });

  it('have rms currents that add to more than the whole where they differ in phase', () => {
    const reactive = 1 / (2 * Math.PI * 5e5 * 50);
    const { foils, phaseBetween } = foilCurrents({
      current: 1,
      frequency: 5e5,
      foils: [{ resistance: 50 }, { capacitance: reactive }],
    });
    expect(foils[0].share).toBeCloseTo(Math.SQRT1_2, 14);
    expect(foils[1].share).toBeCloseTo(Math.SQRT1_2, 14);
    expect(foils[1].power).toBe(0);
    expect(phaseBetween).toBe(-Math.PI / 2);
  });

  it('have a density only where an area is stated', () => {
    const { foils } = foilCurrents({
      current: 1,
      frequency: 5e5,
      foils: [{ resistance: 50, area: 0.01 }, { resistance: 50 }],
    });
    expect(foils[0].density).toBe(50);
    expect(foils[1]).not.toHaveProperty('density');
  });

  it('name the foil that is wrong', () => {
    const input = { current: 1, frequency: 5e5 };
    const fault = faultOf(() => foilCurrents({ ...input, foils: [{ resistance: 50 }, {}] }));
    expect(fault).toMatchObject({ code: 'missing-member', path: 'foils[1].resistance' });
    const single = [{ resistance: 50 }] as unknown as Parameters<typeof foilCurrents>[0]['foils'];
    expect(faultOf(() => foilCurrents({ ...input, foils: single }))).toMatchObject({
      code: 'wrong-count',
      path: 'foils',
    });
    const area = faultOf(() => foilCurrents({ ...input, foils: [{ resistance: 50, area: 0 }, { resistance: 50 }] }));
    expect(area).toMatchObject({ code: 'not-positive', path: 'foils[0].area' });
    const foils = [{ resistance: 50 }, { resistance: 50 }] as const;
    expect(faultOf(() => foilCurrents({ ...input, current: 0, foils })).path).toBe('current');
    expect(faultOf(() => foilCurrents({ ...input, frequency: 0, foils })).path).toBe('frequency');
  });

  it('are plain data', () => {
    const answer = foilCurrents({
      current: 1,
      frequency: 5e5,
      foils: [{ resistance: 50, area: 0.01 }, { capacitance: 4e-9 }],
    });
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
});

describe('current density', () => {
  it('refuses an area of 0 and a result beyond numbers', () => {
    expect(faultOf(() => currentDensity({ current: 1, area: 0 })).path).toBe('area');
    expect(faultOf(() => currentDensity({ current: -1, area: 1 })).path).toBe('current');
    expect(faultOf(() => currentDensity({ current: 1e300, area: 1e-300 })).code).toBe('result-out-of-range');
  });
});
