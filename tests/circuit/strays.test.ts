import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  complexLoadPower,
  explainFrequencyOfPhase,
  explainLoadsWithinPhase,
  explainStraysAtPhase,
  frequencyOfPhase,
  loadImpedance,
  loadsWithinPhase,
  powerErrorFromStrays,
  powerFromCurrent,
  powerFromVoltage,
  straysAtPhase,
  testLoadPhase,
} from '../../src/circuit/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import { faultOf } from '../band/fault-of.js';
import { frequency, load, valueBetween } from '../generators.js';

const inductance = valueBetween(1e-9, 1e-5);
const capacitance = valueBetween(1e-13, 1e-10);
const strayLoad = fc.record({
  resistance: load(),
  seriesInductance: inductance,
  parallelCapacitance: capacitance,
  frequency: frequency(),
});
const limit = testLoadPhase.phase;

describe('impedance of a load with strays', () => {
  it('is its resistance where there are none', () => {
    expect(loadImpedance({ resistance: 500, frequency: 1e6 })).toMatchObject({
      resistance: 500,
      reactance: 0,
      impedance: 500,
      phase: 0,
      powerFactor: 1,
    });
  });

  it('agrees with admittances added in parallel, and every step recomputes', () => {
    fc.assert(
      fc.property(strayLoad, (stray) => {
        const z = loadImpedance(stray);
        const omega = 2 * Math.PI * stray.frequency;
        // Y of R beside C, inverted; then L in series.
        const conductance = 1 / stray.resistance;
        const susceptance = omega * stray.parallelCapacitance;
        const size = conductance ** 2 + susceptance ** 2;
        const real = conductance / size;
        const imaginary = omega * stray.seriesInductance - susceptance / size;
        expect(Math.abs(z.resistance / real - 1)).toBeLessThan(1e-14);
        expect(Math.abs(z.reactance - imaginary)).toBeLessThan(
          1e-14 * (Math.abs(susceptance / size) + Math.abs(imaginary) + real),
        );
        expect(Math.abs(Math.cos(z.phase) - z.powerFactor)).toBeLessThan(1e-14);
        for (const step of z.working) {
          expect(Math.abs(recompute(step) - step.value)).toBeLessThanOrEqual(1e-12 * Math.abs(step.value));
        }
      }),
    );
  });
});

describe('power reckoned in spite of strays', () => {
  it('differs from the true power by the stated error', () => {
    fc.assert(
      fc.property(strayLoad, (stray) => {
        const z = loadImpedance(stray);
        const truth = complexLoadPower({ resistance: z.resistance, reactance: z.reactance, current: 2 });
        const error = powerErrorFromStrays(stray);
        const off = (reckoned: number, stated: number) => Math.abs(reckoned / truth.activePower / (1 + stated) - 1);
        expect(off(powerFromCurrent(2, stray.resistance), error.fromCurrent)).toBeLessThan(1e-12);
        expect(off(powerFromVoltage(truth.voltage, stray.resistance), error.fromVoltage)).toBeLessThan(1e-12);
        expect(off(truth.apparentPower, error.fromProduct)).toBeLessThan(1e-12);
        for (const step of error.working) {
          expect(Math.abs(recompute(step) - step.value)).toBeLessThanOrEqual(1e-12 * Math.abs(step.value));
        }
      }),
    );
  });

  it('is exact by the current with an inductance alone, and by the voltage with a capacitance alone', () => {
    const inductive = powerErrorFromStrays({ resistance: 50, seriesInductance: 1e-6, frequency: 1e6 });
    expect(inductive.fromCurrent).toBe(0);
    expect(inductive.fromVoltage).toBeCloseTo(((2 * Math.PI) / 50) ** 2, 15);
    const capacitive = powerErrorFromStrays({ resistance: 2000, parallelCapacitance: 1e-11, frequency: 1e6 });
    expect(capacitive.fromVoltage).toBe(0);
    expect(capacitive.fromCurrent).toBeCloseTo((2 * Math.PI * 0.02) ** 2, 15);
  });
});

describe('where the phase leaves a limit', () => {
  it('at the strays that are stated for it', () => {
    fc.assert(
      fc.property(load(), frequency(), valueBetween(0.01, 1.5), (resistance, f, phase) => {
        const { seriesInductance, parallelCapacitance } = straysAtPhase({ resistance, frequency: f, phase });
        const phaseOf = (stray: object) => loadImpedance({ resistance, frequency: f, ...stray }).phase;
        expect(phaseOf({ seriesInductance })).toBeCloseTo(phase, 12);
        expect(phaseOf({ parallelCapacitance })).toBeCloseTo(-phase, 12);
      }),
    );
  });

  it('at both ends of the range of loads, and inside it nowhere', () => {
    fc.assert(
      fc.property(
        inductance,
        capacitance,
        frequency(),
        valueBetween(0, 1),
        (seriesInductance, parallelCapacitance, f, share) => {
          const strays = { seriesInductance, parallelCapacitance, frequency: f };
          const { possible, lower = 0, upper = 1e9 } = loadsWithinPhase(strays);
          const phaseOf = (resistance: number) => Math.abs(loadImpedance({ ...strays, resistance }).phase);
          if (!possible) {
            expect(phaseOf(lower + 10 ** (1 + 4 * share))).toBeGreaterThan(limit);
            return;
          }
          expect(phaseOf(lower)).toBeCloseTo(limit, 9);
          expect(phaseOf(upper)).toBeCloseTo(limit, 9);
          expect(phaseOf(lower + (upper - lower) * share)).toBeLessThanOrEqual(limit + 1e-9);
          expect(phaseOf(lower * 0.99)).toBeGreaterThan(limit);
          expect(phaseOf(upper * 1.01)).toBeGreaterThan(limit);
        },
      ),
    );
  });

  it('with one stray alone, at one end alone', () => {
    expect(loadsWithinPhase({ frequency: 1e6 })).toEqual({ possible: true });
    expect(Object.keys(loadsWithinPhase({ seriesInductance: 1e-6, frequency: 1e6 }))).toEqual(['possible', 'lower']);
    expect(Object.keys(loadsWithinPhase({ parallelCapacitance: 1e-11, frequency: 1e6 }))).toEqual([
      'possible',
      'upper',
    ]);
  });

  it('nowhere beyond the resonance of large strays', () => {
    expect(loadsWithinPhase({ seriesInductance: 1e-4, parallelCapacitance: 1e-9, frequency: 5e6 })).toEqual({
      possible: false,
    });
  });

  it('at the frequency that is stated, and at none below', () => {
    fc.assert(
      fc.property(load(), inductance, capacitance, valueBetween(0, 0.999), (resistance, L, C, share) => {
        const stray = { resistance, seriesInductance: L, parallelCapacitance: C };
        const { frequency: f = 0 } = frequencyOfPhase(stray);
        const phaseAt = (frequency: number) => Math.abs(loadImpedance({ ...stray, frequency }).phase);
        expect(phaseAt(f)).toBeCloseTo(limit, 9);
        if (share > 0.001) expect(phaseAt(f * share)).toBeLessThan(limit);
      }),
    );
  });

  it('at the frequency where it only just reaches the limit before it turns back, and not where it does not', () => {
    // Capacitive by half of the limit at most: then it goes on to the inductive side.
    const R = 50;
    const w = (L: number, C: number) => {
      const [p, q] = [L / R - R * C, L * R * C * C];
      return (-2 * p * Math.sqrt(Math.max(-p, 0) / (3 * q))) / 3;
    };
    const C = 1e-9;
    const at = (share: number) => {
      // L by halving: the deepest capacitive tangent is that share of the limit.
      let [low, high] = [1e-12, R * R * C];
      for (let k = 0; k < 200; k++) {
        const L = (low + high) / 2;
        if (w(L, C) > share * Math.tan(limit)) low = L;
        else high = L;
      }
      return frequencyOfPhase({ resistance: R, seriesInductance: low, parallelCapacitance: C }).frequency ?? 0;
    };
    expect(at(0.999)).toBeGreaterThan(1.5 * at(1.001));
  });

  it('at no frequency without strays; with one stray where the closed form says', () => {
    expect(frequencyOfPhase({ resistance: 50 })).toEqual({});
    const { frequency: f } = frequencyOfPhase({ resistance: 50, seriesInductance: 1e-6 });
    expect(f).toBeCloseTo((Math.tan(limit) * 50) / 1e-6 / (2 * Math.PI), 6);
    const { frequency: g } = frequencyOfPhase({ resistance: 50, parallelCapacitance: 1e-9 });
    expect(g).toBeCloseTo(Math.tan(limit) / 50 / 1e-9 / (2 * Math.PI), 6);
  });
});

describe('the working of where the phase leaves a limit', () => {
  const valueIn = (working: readonly Step[], formula: string) =>
    working.find((step) => step.formula === formula)?.value ?? Number.NaN;

  function expectRecomputes(working: readonly Step[]): void {
    for (const step of working) {
      expect(Math.abs(recompute(step) - step.value), step.formula).toBeLessThanOrEqual(1e-12 * Math.abs(step.value));
    }
  }

  it('of strays has a step for each', () => {
    fc.assert(
      fc.property(load(), frequency(), valueBetween(0.01, 1.5), (resistance, f, phase) => {
        const { working, ...strays } = explainStraysAtPhase({ resistance, frequency: f, phase });
        expect(strays).toEqual(straysAtPhase({ resistance, frequency: f, phase }));
        expect(working.map(({ value }) => value)).toEqual(Object.values(strays));
        expectRecomputes(working);
      }),
    );
    expect(explainStraysAtPhase({ resistance: 50, frequency: 1e6 }).working[0]?.inputs['phi']).toBe(limit);
  });

  it('of a frequency comes to the limit of the phase there, on the side on which it is reached', () => {
    fc.assert(
      fc.property(load(), inductance, capacitance, valueBetween(0.01, 1.5), (resistance, L, C, phase) => {
        const question = { resistance, seriesInductance: L, parallelCapacitance: C, phase };
        const { working, frequency: f } = explainFrequencyOfPhase(question);
        expect({ frequency: f }).toEqual(frequencyOfPhase(question));
        expect(working[0]?.inputs['f']).toBe(f);
        expect(Math.abs(Math.abs(valueIn(working, 'phase-of-load')) - phase)).toBeLessThan(1e-13);
        expectRecomputes(working);
      }),
    );
    const inductive = explainFrequencyOfPhase({ resistance: 50, seriesInductance: 1e-6 });
    expect(valueIn(inductive.working, 'phase-of-load')).toBeCloseTo(limit, 14);
    const capacitive = explainFrequencyOfPhase({ resistance: 5000, parallelCapacitance: 1e-11 });
    expect(valueIn(capacitive.working, 'phase-of-load')).toBeCloseTo(-limit, 14);
    expect(explainFrequencyOfPhase({ resistance: 50 })).toEqual({ working: [] });
  });

  it('of a range of loads has a step for each end that it has, and says by its discriminant that there is none', () => {
    const none = fc.constant(0);
    fc.assert(
      fc.property(
        fc.oneof(inductance, none),
        fc.oneof(capacitance, none),
        frequency(),
        (seriesInductance, parallelCapacitance, f) => {
          const question = { seriesInductance, parallelCapacitance, frequency: f };
          const { working, ...range } = explainLoadsWithinPhase(question);
          expect(range).toEqual(loadsWithinPhase(question));
          expect(valueIn(working, 'load-range-discriminant') >= 0).toBe(range.possible);
          const ends = [range.lower, range.upper].filter((end) => end !== undefined);
          expect(working.slice(2).map(({ value }) => value)).toEqual(ends);
          expectRecomputes(working);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('bad input', () => {
  it.each<[string, () => unknown, string, string]>([
    ['a frequency of 0', () => loadImpedance({ resistance: 1, frequency: 0 }), 'not-positive', 'frequency'],
    ['a resistance of 0', () => powerErrorFromStrays({ resistance: 0, frequency: 1 }), 'not-positive', 'resistance'],
    [
      'a negative stray',
      () => loadImpedance({ resistance: 1, frequency: 1, seriesInductance: -1 }),
      'negative',
      'seriesInductance',
    ],
    ['a phase of 0', () => straysAtPhase({ resistance: 1, frequency: 1, phase: 0 }), 'not-positive', 'phase'],
    ['a phase in degrees', () => frequencyOfPhase({ resistance: 1, phase: 8.5 }), 'out-of-range', 'phase'],
    ['no frequency', () => loadsWithinPhase({ frequency: Number.NaN }), 'not-a-number', 'frequency'],
    [
      'reactances beyond the numbers',
      () => loadsWithinPhase({ parallelCapacitance: 1, frequency: 1e308 }),
      'result-out-of-range',
      'resistance',
    ],
    [
      'a load beyond the numbers',
      () => loadsWithinPhase({ parallelCapacitance: 1e-300, frequency: 1e-20 }),
      'result-out-of-range',
      'upper',
    ],
    [
      'a load beyond them below',
      () => loadsWithinPhase({ seriesInductance: 1e-300, frequency: 1e-20 }),
      'result-out-of-range',
      'lower',
    ],
    [
      'strays that fade to nothing',
      () => frequencyOfPhase({ resistance: 1e10, seriesInductance: 5e-324 }),
      'result-out-of-range',
      'frequency',
    ],
  ])('%s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });

  it('says that a phase in degrees is meant in radians', () => {
    expect(faultOf(() => frequencyOfPhase({ resistance: 1, phase: 8.5 })).hint).toContain('radians');
  });
});
