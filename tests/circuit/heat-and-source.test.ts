import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  accessoryRating,
  accessoryVoltageRule,
  dutyHeating,
  equivalentSource,
  explainHeatingFactor,
  explainPauseFromRating,
  explainResistanceAtTemperature,
  heatingFactor,
  loadHeating,
  pauseFromRating,
  peakRatingRule,
  peakRatings,
  permittedActivation,
  powerTransfer,
  requiredPause,
  resistanceAtTemperature,
} from '../../src/circuit/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import { faultOf } from '../band/fault-of.js';
import { load, power, valueBetween, voltage } from '../generators.js';

function expectRecomputes(working: readonly Step[]): void {
  for (const step of working) {
    expect(Math.abs(recompute(step) - step.value)).toBeLessThanOrEqual(1e-12 * Math.abs(step.value));
  }
}

it('a heating factor, a pause and a warm resistance carry their step', () => {
  const any = valueBetween(0.1, 1000);
  fc.assert(
    // Powers apart: the evaluation takes a difference below 1e-15 of a watt for none.
    fc.property(any, any, fc.constantFrom(0.5, 1.5, 7), valueBetween(-0.0009, 0.005), (a, b, ratio, coefficient) => {
      const activation = { current: a, duration: b };
      const question = { power: a * ratio, ratedPower: a, duration: b };
      const drift = { resistance: a, coefficient, rise: b };
      for (const [{ value, working }, plain] of [
        [explainHeatingFactor(activation), heatingFactor(activation)],
        [explainPauseFromRating(question), pauseFromRating(question)],
        [explainResistanceAtTemperature(drift), resistanceAtTemperature(drift)],
      ] as const) {
        expect(value).toBe(plain);
        expect(working.map((step) => step.value)).toEqual([plain]);
        expectRecomputes(working);
      }
    }),
  );
});

const thermal = fc.record({ thermalResistance: valueBetween(0.1, 20), timeConstant: valueBetween(1, 1000) });

describe('heat of a load', () => {
  it('warms as the equation of heat says, step by step', () => {
    const heating = { power: 100, thermalResistance: 2, timeConstant: 120, duration: 90, initialRise: 15 };
    let rise = 15;
    const steps = 100_000;
    const dt = 90 / steps;
    // Middle-point rule for dT/dt = (P·R − T)/τ.
    for (let k = 0; k < steps; k++) {
      const half = rise + ((200 - rise) / 120) * (dt / 2);
      rise += ((200 - half) / 120) * dt;
    }
    expect(loadHeating(heating).rise).toBeCloseTo(rise, 8);
  });

  it('is at the highest rise after the permitted activation', () => {
    fc.assert(
      fc.property(thermal, power(), valueBetween(1, 300), valueBetween(0, 0.99), (heat, watts, maximumRise, share) => {
        const initialRise = share * maximumRise;
        const { duration, finalRise, working } = permittedActivation({
          ...heat,
          power: watts,
          maximumRise,
          initialRise,
        });
        expectRecomputes(working);
        if (duration === undefined) {
          expect(finalRise).toBeLessThanOrEqual(maximumRise);
          return;
        }
        const heated = loadHeating({ ...heat, power: watts, duration, initialRise });
        // A rise that is all but the final one fixes no time: the time is as good as the rest of the way allows.
        expect(Math.abs(heated.rise / maximumRise - 1)).toBeLessThan(1e-9);
        expectRecomputes(heated.working);
      }),
    );
  });

  it('comes back to the highest rise at the end of every cycle of activation and pause', () => {
    const load = { power: 100, thermalResistance: 2, timeConstant: 120, duration: 30 };
    const { pause, startRise = 0, working } = requiredPause({ ...load, maximumRise: 100 });
    expectRecomputes(working);
    let rise = 0;
    for (let k = 0; k < 200; k++) {
      rise = loadHeating({ ...load, initialRise: rise }).rise;
      expect(rise).toBeLessThanOrEqual(100 + 1e-9);
      if (k < 199) rise *= Math.exp(-pause / 120);
    }
    expect(rise).toBeCloseTo(100, 9);
    expect(loadHeating({ ...load, initialRise: startRise }).rise).toBeCloseTo(100, 10);
  });

  it('on a duty reaches the rise to which activation after activation leads it, and that of the required pause', () => {
    fc.assert(
      fc.property(thermal, power(), valueBetween(0.05, 3), valueBetween(0.05, 3), (load, watts, onShare, offShare) => {
        const on = onShare * load.timeConstant;
        const off = offShare * load.timeConstant;
        const duty = dutyHeating({ ...load, power: watts, on, off });
        // A load that begins an activation as it is after a pause ends it as warm as it always does.
        const heated = loadHeating({ ...load, power: watts, duration: on, initialRise: duty.riseAfterPause });
        expect(Math.abs(heated.rise / duty.rise - 1)).toBeLessThan(1e-12);
        expect(duty.rise).toBeLessThanOrEqual(duty.finalRise);
        expectRecomputes(duty.working);
        // The pause that this rise requires is the pause of the duty.
        const { pause } = requiredPause({ ...load, power: watts, duration: on, maximumRise: duty.rise });
        expect(Math.abs(pause / off - 1)).toBeLessThan(1e-9);
      }),
    );
    const load = { thermalResistance: 2, timeConstant: 120, power: 100 };
    let rise = 0;
    for (let k = 0; k < 200; k++) {
      rise = loadHeating({ ...load, duration: 10, initialRise: rise }).rise;
      if (k < 199) rise *= Math.exp(-30 / 120);
    }
    expect(dutyHeating({ ...load, on: 10, off: 30 }).rise).toBeCloseTo(rise, 10);
    expect(dutyHeating({ ...load, on: 10, off: 0 }).rise).toBe(200);
  });

  it('needs no pause where it never becomes too warm', () => {
    const load = { power: 40, thermalResistance: 2, timeConstant: 120, duration: 30, maximumRise: 100 };
    expect(requiredPause(load)).toMatchObject({ pause: 0 });
    expect(requiredPause(load).startRise).toBeUndefined();
    expect(pauseFromRating({ power: 40, ratedPower: 50, duration: 10 })).toBe(0);
  });

  it('a rating is kept on the mean', () => {
    fc.assert(
      fc.property(power(), power(), valueBetween(0.1, 60), (watts, ratedPower, duration) => {
        const pause = pauseFromRating({ power: watts, ratedPower, duration });
        expect((watts * duration) / (duration + pause)).toBeLessThanOrEqual(Math.max(ratedPower * (1 + 1e-12), 0));
      }),
      { examples: [[10, 10, 1]] },
    );
  });

  it('a resistance rises and falls with temperature', () => {
    expect(resistanceAtTemperature({ resistance: 500, coefficient: -100e-6, rise: 100 })).toBeCloseTo(495, 12);
    expect(resistanceAtTemperature({ resistance: 500, coefficient: 4e-3, rise: 0 })).toBe(500);
  });

  it('a heating factor is that of the test current', () => {
    expect(heatingFactor({ current: 0.7, duration: 60 })).toBeCloseTo(29.4, 12);
  });
});

describe('an equivalent source', () => {
  it('is found again from any two of its loads', () => {
    fc.assert(
      fc.property(voltage(), load(), load(), valueBetween(1.1, 10), (E, R_s, first, factor) => {
        const second = first * factor;
        const at = (R: number) => ({ load: R, voltage: (E * R) / (R + R_s) });
        // Loads far above the source tell nothing of it.
        fc.pre(first < 100 * R_s && second > R_s / 100);
        const source = equivalentSource(at(first), at(second));
        expect(Math.abs(source.openCircuitVoltage / E - 1)).toBeLessThan(1e-10);
        expect(Math.abs(source.sourceResistance / R_s - 1)).toBeLessThan(1e-10);
        expectRecomputes(source.working);
      }),
    );
  });

  it('gives most to a load of its own resistance', () => {
    const source = { openCircuitVoltage: 200, sourceResistance: 300 };
    const best = powerTransfer({ ...source, load: 300 });
    expect(best.power).toBeCloseTo(best.availablePower, 12);
    expect(best.share).toBe(1);
    fc.assert(
      fc.property(load(), (R) => {
        const { power: watts, share, availablePower, working } = powerTransfer({ ...source, load: R });
        expect(watts).toBeLessThanOrEqual(best.power * (1 + 1e-15));
        expect(Math.abs(watts / availablePower / share - 1)).toBeLessThan(1e-14);
        expectRecomputes(working);
      }),
    );
  });
});

describe('loads far from a source', () => {
  it('get a share that is a number, however far', () => {
    const far = (sourceResistance: number, load: number) =>
      powerTransfer({ openCircuitVoltage: 1e5, sourceResistance, load }).share;
    expect(far(1e3, 1e200)).toBeCloseTo(4e-197, 205);
    expect(far(1e300, 1.7e308)).toBeCloseTo((4 * 1e300) / 1.7e308, 12);
    expect(far(3, 12)).toBeCloseTo(0.64, 15);
    expect(far(12, 3)).toBeCloseTo(0.64, 15);
  });
});

describe('the rating of an accessory', () => {
  const mode = (peakVoltage: number, rating: number, crestFactor: number) =>
    accessoryRating({ peakVoltage, accessoryRating: rating, crestFactor });

  it('decides alone up to the threshold', () => {
    expect(mode(1600, 1600, 1.4)).toEqual({ verdict: 'sufficient', standing: 'from memory', working: [] });
    expect(mode(1600, 1599, 9).verdict).toBe('insufficient');
  });

  it('needs a crest factor above it', () => {
    expect(mode(1601, 4000, 2.002).verdict).toBe('sufficient');
    expect(mode(1601, 4000, 2.001).verdict).toBe('not-shown');
    expect(mode(1601, 1600, 9).verdict).toBe('insufficient');
    expect(mode(4000, 4000, 6).leastCrestFactor).toBe(6);
    expect(mode(9000, 9000, 6).verdict).toBe('sufficient');
    expectRecomputes(mode(3000, 9000, 6).working);
  });

  it('takes another rule, with its standing', () => {
    const rule = { ...accessoryVoltageRule, threshold: 1000, standing: 'published' as const };
    const verdict = accessoryRating({ peakVoltage: 1500, accessoryRating: 2000, crestFactor: 1.5, rule });
    expect(verdict).toMatchObject({ verdict: 'not-shown', standing: 'published' });
  });
});

describe('the ratings of the bench', () => {
  it('hold for the peak itself, and for half as much again at the instrument', () => {
    const question = { peakVoltage: 1500, ratings: { instrument: 2250, load: 1500, leads: 1500, insulation: 1500 } };
    const fine = peakRatings(question);
    expect(fine).toMatchObject({
      sufficient: true,
      permittedPeakVoltage: 1500,
      weakest: 'instrument',
      standing: 'from memory',
    });
    expectRecomputes(fine.working);
    for (const part of ['instrument', 'load', 'leads', 'insulation'] as const) {
      const ratings = { ...question.ratings, [part]: question.ratings[part] - 1 };
      const { sufficient, weakest, parts } = peakRatings({ ...question, ratings });
      expect({ sufficient, weakest }).toEqual({ sufficient: false, weakest: part });
      expect(parts.filter((row) => !row.sufficient).map((row) => row.part)).toEqual([part]);
    }
  });

  it('say of the permitted peak that it is sufficient, and of more that it is not', () => {
    fc.assert(
      fc.property(valueBetween(100, 6000), valueBetween(100, 6000), (instrument, insulation) => {
        const ratings = { instrument, insulation };
        const { permittedPeakVoltage } = peakRatings({ peakVoltage: 1, ratings });
        expect(peakRatings({ peakVoltage: permittedPeakVoltage * (1 - 1e-12), ratings }).sufficient).toBe(true);
        expect(peakRatings({ peakVoltage: permittedPeakVoltage * (1 + 1e-12), ratings }).sufficient).toBe(false);
      }),
    );
  });

  it('take another rule, with its standing', () => {
    const rule = {
      ...peakRatingRule,
      factors: { ...peakRatingRule.factors, instrument: 1 },
      standing: 'published' as const,
    };
    const verdict = peakRatings({ peakVoltage: 1500, ratings: { instrument: 1500 }, rule });
    expect(verdict).toMatchObject({ sufficient: true, standing: 'published' });
  });
});

describe('bad input', () => {
  const heat = { power: 100, thermalResistance: 2, timeConstant: 120, maximumRise: 100 };
  it.each<[string, () => unknown, string, string]>([
    ['a duty without activation', () => dutyHeating({ ...heat, on: 0, off: 30 }), 'not-positive', 'on'],
    ['a negative pause', () => dutyHeating({ ...heat, on: 10, off: -1 }), 'negative', 'off'],
    ['a peak of 0', () => peakRatings({ peakVoltage: 0, ratings: { load: 1 } }), 'not-positive', 'peakVoltage'],
    ['a rating of 0', () => peakRatings({ peakVoltage: 1, ratings: { load: 0 } }), 'not-positive', 'ratings.load'],
    ['no rating', () => peakRatings({ peakVoltage: 1, ratings: {} }), 'missing-member', 'ratings'],
    [
      'another part',
      () => peakRatings({ peakVoltage: 1, ratings: { cable: 5 } as { load?: number } }),
      'unknown-choice',
      'ratings.cable',
    ],
    [
      'a factor below 1',
      () =>
        peakRatings({
          peakVoltage: 1,
          ratings: { load: 1 },
          rule: { ...peakRatingRule, factors: { ...peakRatingRule.factors, load: 0.5 } },
        }),
      'out-of-range',
      'rule.factors.load',
    ],
    [
      'a time constant of 0',
      () => loadHeating({ ...heat, timeConstant: 0, duration: 1 }),
      'not-positive',
      'timeConstant',
    ],
    ['too warm at once', () => permittedActivation({ ...heat, initialRise: 100 }), 'out-of-range', 'initialRise'],
    ['too long when cold', () => requiredPause({ ...heat, duration: 84 }), 'out-of-range', 'duration'],
    ['far too long when cold', () => requiredPause({ ...heat, duration: 1e6 }), 'out-of-range', 'duration'],
    ['a negative duration', () => heatingFactor({ current: 1, duration: -1 }), 'negative', 'duration'],
    ['no rating', () => pauseFromRating({ power: 1, ratedPower: 0, duration: 1 }), 'not-positive', 'ratedPower'],
    [
      'nothing left of a resistance',
      () => resistanceAtTemperature({ resistance: 1, coefficient: -0.01, rise: 100 }),
      'result-out-of-range',
      'resistance',
    ],
    [
      'the same load twice',
      () => equivalentSource({ load: 50, voltage: 1 }, { load: 50, voltage: 2 }),
      'duplicate',
      'second.load',
    ],
    [
      'a higher voltage at the lower load',
      () => equivalentSource({ load: 50, voltage: 3 }, { load: 100, voltage: 2 }),
      'contradiction',
      'second.voltage',
    ],
    [
      'the current of a current source',
      () => equivalentSource({ load: 50, voltage: 50 }, { load: 100, voltage: 100 }),
      'result-out-of-range',
      'sourceResistance',
    ],
    [
      'a crest factor of 0.5',
      () => accessoryRating({ peakVoltage: 1, accessoryRating: 1, crestFactor: 0.5 }),
      'out-of-range',
      'crestFactor',
    ],
  ])('%s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });
});
