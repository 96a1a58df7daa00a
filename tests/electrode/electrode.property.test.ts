import fc from 'fast-check';
import { all, type Complex, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  contactAfterLoss,
  contactImpedance,
  electrodeHeating,
  type FoilContact,
  foilCurrents,
} from '../../src/electrode/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import { current, frequency, valueBetween } from '../generators.js';

const math = create(all ?? {});

function expectRecomputes(working: readonly Step[]): void {
  for (const step of working) {
    expect(Math.abs(recompute(step) - step.value)).toBeLessThanOrEqual(1e-12 * Math.abs(step.value));
  }
}

const resistance = valueBetween(1, 2000);
const capacitance = valueBetween(1e-10, 1e-7);
const contact: fc.Arbitrary<FoilContact> = fc.oneof(
  resistance.map((R) => ({ resistance: R })),
  capacitance.map((C) => ({ capacitance: C })),
  fc
    .record({ R: resistance, C: capacitance, R_t: valueBetween(0, 500) })
    .map(({ R, C, R_t }) => ({ resistance: R, capacitance: C, seriesResistance: R_t })),
);

/** The impedance from the admittances, in complex arithmetic of another library. */
function independent({ resistance: R, capacitance: C, seriesResistance = 0 }: FoilContact, f: number): Complex {
  const conductance = R === undefined ? 0 : 1 / R;
  const admittance = math.complex(conductance, 2 * Math.PI * f * (C ?? 0));
  return math.add(math.divide(1, admittance), seriesResistance) as Complex;
}

const size = (z: unknown): number => math.abs(z as Complex) as unknown as number;

describe('contacts', () => {
  it('have the impedance of complex arithmetic', () => {
    fc.assert(
      fc.property(contact, frequency(), (foil, f) => {
        const ours = contactImpedance(foil, f);
        const z = independent(foil, f);
        const distance = Math.hypot(ours.resistance - z.re, ours.reactance - z.im);
        expect(distance).toBeLessThan(1e-14 * ours.impedance);
        expectRecomputes(ours.working);
      }),
    );
  });

  it('have more impedance the more area is lost', () => {
    fc.assert(
      fc.property(contact, frequency(), valueBetween(0, 0.9), (foil, f, lost) => {
        const at = (part: number) => contactImpedance(contactAfterLoss(foil, part), f).impedance;
        expect(at(lost)).toBeGreaterThanOrEqual(at(0) * (1 - 1e-14));
      }),
    );
  });
});

describe('two foils', () => {
  it('share as the current divider in complex arithmetic says', () => {
    fc.assert(
      fc.property(contact, contact, current(), frequency(), (first, second, I, f) => {
        const { foils, phaseBetween, working } = foilCurrents({ current: I, frequency: f, foils: [first, second] });
        const z_1 = independent(first, f);
        const z_2 = independent(second, f);
        const both = math.add(z_1, z_2);
        const i_1 = math.multiply(I, math.divide(z_2, both) as Complex) as Complex;
        const i_2 = math.multiply(I, math.divide(z_1, both) as Complex) as Complex;
        expect(Math.abs(foils[0].current / size(i_1) - 1)).toBeLessThan(1e-13);
        expect(Math.abs(foils[1].current / size(i_2) - 1)).toBeLessThan(1e-13);
        const ahead = math.arg(i_1) - math.arg(i_2);
        expect(Math.abs(phaseBetween - ahead)).toBeLessThan(1e-13);
        expectRecomputes(working);
      }),
    );
  });

  it('turn into heat what both together do', () => {
    fc.assert(
      fc.property(contact, contact, current(), frequency(), (first, second, I, f) => {
        const { foils } = foilCurrents({ current: I, frequency: f, foils: [first, second] });
        const z_1 = independent(first, f);
        const z_2 = independent(second, f);
        const together = math.divide(math.multiply(z_1, z_2), math.add(z_1, z_2)) as Complex;
        const power = I * together.re * I;
        const scale = I * size(together) * I;
        expect(Math.abs(foils[0].power + foils[1].power - power)).toBeLessThan(1e-13 * scale);
      }),
    );
  });

  it('carry at most the whole each, and together at least the whole', () => {
    fc.assert(
      fc.property(contact, contact, current(), frequency(), (first, second, I, f) => {
        const { foils, concentration } = foilCurrents({ current: I, frequency: f, foils: [first, second] });
        for (const { share } of foils) expect(share).toBeLessThanOrEqual(1 + 1e-14);
        expect(foils[0].share + foils[1].share).toBeGreaterThanOrEqual(1 - 1e-14);
        expect(concentration).toBeGreaterThanOrEqual(1 - 1e-14);
        expect(concentration).toBeLessThanOrEqual(2 + 1e-14);
        const swapped = foilCurrents({ current: I, frequency: f, foils: [second, first] });
        expect(swapped.foils[0].current).toBe(foils[1].current);
        expect(swapped.phaseBetween).toBe(
          -foilCurrents({ current: I, frequency: f, foils: [first, second] }).phaseBetween || 0,
        );
      }),
    );
  });

  it('put more of the current on the whole foil the more the other comes off', () => {
    fc.assert(
      fc.property(resistance, resistance, valueBetween(0, 0.9), valueBetween(0, 0.09), (R_1, R_2, lost, more) => {
        const at = (part: number) =>
          foilCurrents({
            current: 1,
            frequency: 5e5,
            foils: [{ resistance: R_1 }, contactAfterLoss({ resistance: R_2 }, part)],
          }).foils[0].share;
        expect(at(lost + more)).toBeGreaterThanOrEqual(at(lost) * (1 - 1e-14));
      }),
    );
  });
});

describe('heating of an electrode', () => {
  const activation = fc.record({ current: current(), duration: fc.oneof(fc.constant(0), valueBetween(1e-3, 100)) });

  it('is the sum in any order, and reaches the figure after the duration that is left', () => {
    fc.assert(
      fc.property(
        fc.array(activation, { minLength: 1, maxLength: 8 }),
        valueBetween(0.1, 1000),
        current(),
        (activations, figure, nextCurrent) => {
          const heating = electrodeHeating({ activations, figure, nextCurrent });
          const reversed = electrodeHeating({ activations: [...activations].reverse(), figure });
          expect(Math.abs(heating.heatingFactor - reversed.heatingFactor)).toBeLessThanOrEqual(
            1e-14 * heating.heatingFactor,
          );
          const direct = activations.reduce((sum, { current: I, duration }) => sum + I ** 2 * duration, 0);
          expect(Math.abs(heating.heatingFactor - direct)).toBeLessThanOrEqual(1e-14 * direct);
          expectRecomputes(heating.working);
          if (heating.remaining === 0) return;
          const last = { current: nextCurrent, duration: heating.remainingDuration as number };
          const full = electrodeHeating({ activations: [...activations, last], figure });
          expect(Math.abs(full.share - 1)).toBeLessThan(1e-14);
        },
      ),
    );
  });
});
