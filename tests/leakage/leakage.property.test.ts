import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assessLeakage,
  type LeakageMeasurement,
  leadCapacitance,
  leakageAtNominal,
  leakageFromStray,
  leakageHint,
  leakageLimit,
  strayFromLeakage,
} from '../../src/leakage/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import { current, frequency, load, power, quantity, valueBetween, voltage } from '../generators.js';

function expectRecomputes(working: readonly Step[]): void {
  for (const step of working) {
    expect(Math.abs(recompute(step) - step.value)).toBeLessThanOrEqual(1e-12 * Math.abs(step.value));
  }
}

const path = fc.record({ resistance: valueBetween(0, 1e4), reactance: valueBetween(-1e5, 1e3) });
const source = fc.oneof(
  fc.constant({ kind: 'constant-current' } as const),
  fc.constant({ kind: 'unknown' } as const),
  path.map((impedance) => ({ kind: 'impedance', ...impedance }) as const),
  fc
    .record({ capacitance: valueBetween(1e-12, 1e-8), frequency: frequency() })
    .map((stray) => ({ kind: 'capacitance', ...stray }) as const),
);

describe('a leakage at the nominal resistance', () => {
  it('lies between a constant current and a constant voltage, whatever the path', () => {
    fc.assert(
      fc.property(source, current(), load(), load(), (through, I, R, R_N) => {
        const conversion = { current: I, measuringResistance: R, nominalResistance: R_N };
        const unknown = leakageAtNominal(conversion);
        const known = leakageAtNominal({ ...conversion, source: through });
        expect(known.current).toBeGreaterThanOrEqual(unknown.range.lower * (1 - 1e-14));
        expect(known.current).toBeLessThanOrEqual(unknown.range.upper * (1 + 1e-14));
        expect(unknown.current).toBe(unknown.range.upper);
        expectRecomputes([...known.working, ...unknown.working]);
      }),
    );
  });

  it('comes back when it is referred to the resistance where it was read', () => {
    fc.assert(
      fc.property(path, current(), load(), load(), (impedance, I, R, R_N) => {
        const through = { kind: 'impedance', ...impedance } as const;
        const there = leakageAtNominal({ current: I, measuringResistance: R, nominalResistance: R_N, source: through });
        const back = leakageAtNominal({
          current: there.current,
          measuringResistance: R_N,
          nominalResistance: R,
          source: through,
        });
        expect(Math.abs(back.current / I - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  it('is what the same source drives through the nominal resistance', () => {
    fc.assert(
      fc.property(voltage(), valueBetween(1e-12, 1e-8), frequency(), load(), load(), (V, capacitance, f, R, R_N) => {
        const stray = { voltage: V, capacitance, frequency: f };
        const read = leakageFromStray({ ...stray, measuringResistance: R }).current;
        const referred = leakageAtNominal({
          current: read,
          measuringResistance: R,
          nominalResistance: R_N,
          source: { kind: 'capacitance', capacitance, frequency: f },
        });
        const direct = leakageFromStray({ ...stray, measuringResistance: R_N }).current;
        expect(Math.abs(referred.current / direct - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  it('follows the resistance with its exponent', () => {
    fc.assert(
      fc.property(source, load(), load(), (through, R, R_N) => {
        fc.pre(through.kind !== 'unknown');
        const at = (resistance: number) =>
          leakageAtNominal({ current: 1, measuringResistance: resistance, nominalResistance: R_N, source: through });
        const h = 1e-5;
        const slope = Math.log(at(R * (1 + h)).current / at(R * (1 - h)).current) / Math.log((1 + h) / (1 - h));
        const { exponent } = at(R);
        expect(exponent).toBeGreaterThanOrEqual(0);
        expect(exponent).toBeLessThanOrEqual(1);
        expect(Math.abs(slope - (exponent as number))).toBeLessThan(1e-8);
      }),
    );
  });
});

describe('stray capacitance', () => {
  it('and leakage are each other\u2019s inverse', () => {
    fc.assert(
      fc.property(voltage(), valueBetween(1e-12, 1e-8), frequency(), load(), (V, capacitance, f, R) => {
        const stray = { voltage: V, frequency: f, measuringResistance: R };
        const leak = leakageFromStray({ ...stray, capacitance });
        // Where the resistor alone all but fixes the current, the current fixes no capacitance.
        fc.pre(2 * Math.PI * f * capacitance * R < 100);
        const back = strayFromLeakage({ ...stray, current: leak.current });
        expect(Math.abs(back.capacitance / capacitance - 1)).toBeLessThan(1e-11);
        expectRecomputes([...leak.working, ...back.working]);
      }),
    );
  });

  it('gives more leakage the larger it is, and never more than the resistor alone lets through', () => {
    fc.assert(
      fc.property(voltage(), valueBetween(1e-12, 1e-8), frequency(), load(), (V, capacitance, f, R) => {
        const at = (C: number) =>
          leakageFromStray({ voltage: V, capacitance: C, frequency: f, measuringResistance: R }).current;
        expect(at(capacitance * 1.01)).toBeGreaterThanOrEqual(at(capacitance));
        expect(at(capacitance)).toBeLessThanOrEqual(V / R);
      }),
    );
  });

  it('of a lead has its bounds in order, and falls with the distance', () => {
    fc.assert(
      fc.property(
        valueBetween(0.1, 10),
        valueBetween(1.1, 5),
        valueBetween(1, 5),
        (length, ratio, relativePermittivity) => {
          const lead = { length, conductorDiameter: 1e-3, insulationDiameter: ratio * 1e-3, relativePermittivity };
          const lying = leadCapacitance(lead);
          const lifted = leadCapacitance({ ...lead, gap: 0.05 });
          expect(lying.lower).toBeLessThanOrEqual(lying.upper);
          expect(lifted.upper).toBeLessThan(lying.upper);
          expectRecomputes(lying.working);
        },
      ),
    );
  });
});

const limited = { current: 0.15, statedIn: 'test' };
const instrument = fc
  .record({ ofReading: valueBetween(0, 0.1), floor: valueBetween(0, 0.01), resolution: valueBetween(1e-4, 1e-2) })
  .map(({ ofReading, floor, resolution }) => ({ accuracy: { ofReading, floor }, range: { maximum: 1, resolution } }));

const measurement: fc.Arbitrary<LeakageMeasurement> = fc
  .record({ reading: valueBetween(1e-3, 5), quantity: quantity(), measuringResistance: valueBetween(150, 250), source })
  .map((read) => ({ arrangement: 'isolated', measuredAt: 'leads', limit: limited, ...read }) as const);

describe('a leakage beside its limit', () => {
  it('carries the caution that a pass is hazardous to touch, and steps that recompute', () => {
    fc.assert(
      fc.property(measurement, (read) => {
        const finding = assessLeakage(read);
        expect(finding.cautions.map(({ id }) => id)).toContain('pass-is-hazardous');
        expect(finding.decidable.value).toBe(finding.current);
        expect(Math.abs(finding.margin * finding.limit.current - finding.current)).toBeLessThan(
          1e-14 * finding.current,
        );
        expectRecomputes(finding.working);
      }),
    );
  });

  it('has the uncertainty that moving reading and resistance gives', () => {
    fc.assert(
      fc.property(measurement, instrument, valueBetween(0, 0.05), (read, stated, tolerance) => {
        fc.pre(read.source?.kind !== 'unknown');
        const { reading, measuringResistance: R = 200 } = read;
        const { budget, decidable } = assessLeakage({ ...read, instrument: stated, resistor: { tolerance } });
        const at = (shown: number, resistance: number) =>
          assessLeakage({ ...read, reading: shown, measuringResistance: resistance }).current;
        const h = 1e-5;
        const byReading = (at(reading * (1 + h), R) - at(reading * (1 - h), R)) / (2 * h * reading);
        const byResistance = (at(reading, R * (1 + h)) - at(reading, R * (1 - h))) / (2 * h);
        const accuracy = stated.accuracy.ofReading * reading + stated.accuracy.floor;
        const parts = [
          (byReading * accuracy) / Math.sqrt(3),
          (byReading * stated.range.resolution) / Math.sqrt(12),
          (byResistance * tolerance) / Math.sqrt(3),
        ];
        const u = Math.hypot(...parts);
        expect(Math.abs((decidable.standardUncertainty as number) / u - 1)).toBeLessThan(1e-7);
        expect(budget?.value).toBe(decidable.value);
      }),
    );
  });

  it('is never less uncertain, nor lower, where the path is unknown', () => {
    fc.assert(
      fc.property(measurement, instrument, (read, stated) => {
        const known = assessLeakage({ ...read, instrument: stated, resistor: { tolerance: 0.02 } });
        const { source: _, ...rest } = read;
        const unknown = assessLeakage({ ...rest, instrument: stated, resistor: { tolerance: 0.02 } });
        expect(unknown.current).toBeGreaterThanOrEqual(known.current * (1 - 1e-14));
        const u = ({ decidable }: typeof known) => decidable.standardUncertainty as number;
        expect(u(unknown)).toBeGreaterThanOrEqual(u(known) * (1 - 1e-12));
      }),
    );
  });

  it('has a bipolar limit that puts the stated share of the rated power in the resistor', () => {
    fc.assert(
      fc.property(power(), (ratedPower) => {
        const limit = leakageLimit({ arrangement: 'bipolar', measuredAt: 'leads', ratedPower });
        expect(Math.abs(limit.power / (0.01 * ratedPower) - 1)).toBeLessThan(1e-14);
        expectRecomputes(limit.working);
      }),
    );
  });
});

describe('a hint', () => {
  it('follows from the capacitances, and has steps that recompute', () => {
    const lead = fc.record({
      length: valueBetween(0.01, 10),
      conductorDiameter: fc.constant(1e-3),
      insulationDiameter: valueBetween(2e-3, 6e-3),
      relativePermittivity: valueBetween(1, 5),
    });
    fc.assert(
      fc.property(valueBetween(0.001, 1), valueBetween(10, 3000), frequency(), lead, (I, V, f, wire) => {
        const found = leakageHint({ current: I, limit: 0.15, voltage: V, frequency: f, lead: wire });
        expectRecomputes(found.working);
        const highest = leakageFromStray({
          voltage: V,
          capacitance: found.leadCapacitance!.upper,
          frequency: f,
        }).current;
        // The other way round: a lead explains a leakage when its highest capacitance gives as much.
        fc.pre(Math.abs(highest / I - 1) > 1e-9);
        expect(found.hint).toBe(I <= 0.15 ? 'within-limit' : highest > I ? 'lift-and-repeat' : 'look-for-fault');
      }),
    );
  });
});
