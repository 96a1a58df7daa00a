import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  complexLoadPower,
  convertQuantity,
  explainConversion,
  peakFromRms,
  rmsFromPeak,
  solveOhmic,
} from '../../src/circuit/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import { crestFactor, load, power, quantity, reactance, valueBetween, voltage } from '../generators.js';

function expectClose(actual: number, expected: number, relative: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
}

function expectRecomputes(working: readonly Step[]): void {
  for (const step of working) expectClose(recompute(step), step.value, 1e-12);
}

describe('laws of the circuit', () => {
  it('a conversion there and back gives the value again', () => {
    fc.assert(
      fc.property(voltage(), quantity(), quantity(), load(), (value, from, to, ohms) => {
        const there = convertQuantity(value, { from, to, load: ohms });
        expectClose(convertQuantity(there, { from: to, to: from, load: ohms }), value, 1e-15);
      }),
    );
  });

  it('a conversion rises with its value', () => {
    fc.assert(
      fc.property(voltage(), voltage(), quantity(), quantity(), load(), (a, b, from, to, ohms) => {
        const conversion = { from, to, load: ohms };
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(convertQuantity(low, conversion)).toBeLessThanOrEqual(convertQuantity(high, conversion));
      }),
    );
  });

  it('any two of a solution give the solution again, and every step recomputes', () => {
    const names = ['power', 'current', 'voltage', 'load'] as const;
    fc.assert(
      fc.property(power(), load(), fc.shuffledSubarray([...names], { minLength: 2, maxLength: 2 }), (p, r, pair) => {
        const whole = solveOhmic({ power: p, load: r });
        const [a, b] = pair as [(typeof names)[number], (typeof names)[number]];
        const again = solveOhmic({ [a]: whole[a], [b]: whole[b] });
        for (const name of names) expectClose(again[name], whole[name], 2e-15);
        expectRecomputes([...whole.working, ...again.working]);
      }),
    );
  });

  it('every step of a conversion recomputes', () => {
    fc.assert(
      fc.property(fc.oneof(voltage(), fc.constant(0)), quantity(), quantity(), load(), (value, from, to, ohms) => {
        const explained = explainConversion(value, { from, to, load: ohms });
        expect(explained.value).toBe(convertQuantity(value, { from, to, load: ohms }));
        expectRecomputes(explained.working);
      }),
    );
  });

  it('peak and rms undo each other', () => {
    fc.assert(
      fc.property(voltage(), crestFactor(), (rms, factor) => {
        expect(peakFromRms(rms, factor)).toBeGreaterThanOrEqual(rms);
        expectClose(rmsFromPeak(peakFromRms(rms, factor), factor), rms, 1e-15);
      }),
    );
  });

  it('apparent power is the hypotenuse of active and reactive power, whichever of voltage and current is given', () => {
    fc.assert(
      fc.property(load(), reactance(), valueBetween(0.001, 5), (resistance, x, current) => {
        const byCurrent = complexLoadPower({ resistance, reactance: x, current });
        expectClose(Math.hypot(byCurrent.activePower, byCurrent.reactivePower), byCurrent.apparentPower, 4e-15);
        expectClose(byCurrent.powerFactor * byCurrent.apparentPower, byCurrent.activePower, 4e-15);
        expectClose(Math.cos(byCurrent.phase), byCurrent.powerFactor, 1e-12);
        const byVoltage = complexLoadPower({ resistance, reactance: x, voltage: byCurrent.voltage });
        expectClose(byVoltage.activePower, byCurrent.activePower, 4e-15);
        expectRecomputes([...byCurrent.working, ...byVoltage.working]);
      }),
    );
  });
});
