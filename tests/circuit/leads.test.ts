import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coaxialLine,
  explainCoaxialLine,
  explainLoadThroughLeads,
  explainRoundWireResistance,
  explainSkinDepth,
  explainSolenoidInductance,
  explainStraightWireInductance,
  explainTwoWireLine,
  type LoadThroughLeads,
  loadImpedance,
  loadThroughLeads,
  roundWireResistance,
  skinDepth,
  solenoidInductance,
  straightWireInductance,
  twoWireLine,
} from '../../src/circuit/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import { faultOf } from '../band/fault-of.js';
import { frequency, load, valueBetween } from '../generators.js';

const ratios = ['impedance', 'voltageRatio', 'currentRatio', 'bypassRatio'] as const;
const fixture = JSON.parse(readFileSync(new URL('./fixtures/leads.json', import.meta.url), 'utf8')) as {
  wire: { radiusInSkinDepths: number; ratio: string }[];
  coil: { lengthOverDiameter: number; nagaoka: string }[];
  leads: ({ question: LoadThroughLeads } & Record<(typeof ratios)[number], string>)[];
};

describe('wires and lines', () => {
  it.each(fixture.wire)('a wire of $radiusInSkinDepths skin depths has the resistance of Bessel functions', (row) => {
    const conductor = { resistivity: 1.68e-8, frequency: 1e6 };
    const diameter = 2 * row.radiusInSkinDepths * skinDepth(conductor);
    const { ratio } = roundWireResistance({ ...conductor, diameter, length: 1 });
    expect(Math.abs(ratio / Number(row.ratio) - 1)).toBeLessThan(1e-13);
  });

  it.each(fixture.coil)('a coil of $lengthOverDiameter diameters has the inductance of elliptic integrals', (row) => {
    const diameter = 0.01;
    const length = row.lengthOverDiameter * diameter;
    const endless = (4e-7 * Math.PI * Math.PI * (diameter / 2) ** 2 * 100 ** 2) / length;
    const L = solenoidInductance({ diameter, length, turns: 100 });
    expect(Math.abs(L / endless / Number(row.nagaoka) - 1)).toBeLessThan(1e-13);
  });

  it('a wire for direct current has ρl/A, and never less at radio frequency', () => {
    fc.assert(
      fc.property(valueBetween(1e-5, 0.01), valueBetween(1, 5e6), (diameter, f) => {
        const wire = roundWireResistance({ resistivity: 1.68e-8, frequency: f, diameter, length: 2 });
        expect(wire.directCurrentResistance).toBeCloseTo((1.68e-8 * 2) / (Math.PI * (diameter / 2) ** 2), 12);
        expect(wire.ratio).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('a line carries waves at the speed of light in its material', () => {
    fc.assert(
      fc.property(valueBetween(1.001, 1000), valueBetween(1, 10), (ratio, relativePermittivity) => {
        for (const line of [
          twoWireLine({ spacing: ratio * 1e-3, diameter: 1e-3, relativePermittivity }),
          coaxialLine({ innerDiameter: 1e-3, outerDiameter: ratio * 1e-3, relativePermittivity }),
        ]) {
          expect(Math.abs((line.velocity * Math.sqrt(relativePermittivity)) / 299_792_458 - 1)).toBeLessThan(1e-9);
          expect(Math.abs(line.characteristicImpedance * line.capacitance * line.velocity - 1)).toBeLessThan(1e-13);
        }
      }),
    );
  });

  it('a line, a cable and a wire carry the steps of their constants', () => {
    fc.assert(
      fc.property(valueBetween(1.0001, 1000), valueBetween(1, 10), (ratio, relativePermittivity) => {
        const wires = { spacing: ratio * 1e-3, diameter: 1e-3, relativePermittivity };
        const cable = { innerDiameter: 1e-3, outerDiameter: ratio * 1e-3, relativePermittivity };
        for (const [explained, plain] of [
          [explainTwoWireLine(wires), twoWireLine(wires)],
          [explainCoaxialLine(cable), coaxialLine(cable)],
        ] as const) {
          const { working, ...constants } = explained;
          expect(constants).toEqual(plain);
          expect(working.map(({ value }) => value)).toEqual(Object.values(plain));
          expectRecomputes(working);
        }
        for (const current of ['surface', 'uniform'] as const) {
          const wire = { length: ratio, diameter: 1e-3, current };
          const { working, inductance } = explainStraightWireInductance(wire);
          expect(inductance).toBe(straightWireInductance(wire));
          expect(working.map(({ value }) => value)).toEqual([inductance]);
          expectRecomputes(working);
        }
      }),
    );
  });

  it('a conductor, a round wire and a coil carry the steps of their figures', () => {
    const rows = fc.record({
      resistivity: valueBetween(1e-8, 1e-6),
      frequency: frequency(),
      relativePermeability: valueBetween(1, 100),
      diameter: valueBetween(1e-5, 0.01),
      length: valueBetween(1e-5, 1),
      turns: valueBetween(1, 1000),
    });
    fc.assert(
      fc.property(rows, (all) => {
        const depth = explainSkinDepth(all);
        expect(depth.value).toBe(skinDepth(all));
        const { working: ofWire, ...wire } = explainRoundWireResistance(all);
        expect(wire).toEqual(roundWireResistance(all));
        const { directCurrentResistance, ratio, resistance } = wire;
        expect(ofWire.map(({ value }) => value)).toEqual([depth.value, directCurrentResistance, ratio, resistance]);
        const { working: ofCoil, inductance } = explainSolenoidInductance(all);
        expect(inductance).toBe(solenoidInductance(all));
        expect(ofCoil.map(({ value }) => value)).toEqual([inductance]);
        expectRecomputes([...depth.working, ...ofWire, ...ofCoil]);
      }),
    );
    expect(explainSkinDepth({ resistivity: 1.68e-8, frequency: 1e6 }).working[0]?.inputs['mu_r']).toBe(1);
  });

  it('two wires that nearly touch keep their digits: acosh(1 + δ) is √(2δ)·(1 − δ/12)', () => {
    const d = 2 ** -10;
    for (const share of [2 ** -20, 2 ** -30, 2 ** -40]) {
      const { inductance } = twoWireLine({ spacing: d * (1 + share), diameter: d });
      expect(inductance / (4e-7 * Math.sqrt(2 * share) * (1 - share / 12))).toBeCloseTo(1, 12);
    }
  });

  it('two parallel wires have the inductance of two straight ones less twice the mutual, far from their ends', () => {
    // Mutual inductance of two parallel filaments: (μ0/2π)·[l·asinh(l/D) − √(l² + D²) + D].
    const [l, D] = [1000, 0.02];
    const mutual = 2e-7 * (l * Math.asinh(l / D) - Math.hypot(l, D) + D);
    const pair = 2 * straightWireInductance({ length: l, diameter: 1e-3 }) - 2 * mutual;
    expect(pair / l / twoWireLine({ spacing: D, diameter: 1e-3 }).inductance).toBeCloseTo(1, 3);
  });
});

const line = { inductance: 1.4753e-6, capacitance: 7.542e-12 };
const impedance = Math.sqrt(line.inductance / line.capacitance);
const velocity = 1 / Math.sqrt(line.inductance * line.capacitance);

/** Every step evaluates to its value, and every number of a result is the value of a step or of what was given. */
function expectRecomputes(working: readonly Step[]): void {
  for (const made of working) {
    const again = recompute(made);
    expect(Math.abs(again - made.value), made.formula).toBeLessThanOrEqual(1e-12 * Math.abs(made.value));
  }
}

describe('a load through leads', () => {
  /** Nothing at all, or what no longer lacks digits: a number below 1e-308 has fewer than others. */
  const upTo = (most: number) => fc.oneof(fc.constant(0), valueBetween(1e-30, most));
  const question = fc.record({
    load: fc.record({
      resistance: load(),
      seriesInductance: upTo(1e-6),
      parallelCapacitance: upTo(2e-11),
    }),
    leads: fc.record({
      length: valueBetween(0.1, 5),
      inductance: upTo(2e-6),
      capacitance: upTo(1e-10),
    }),
    frequency: frequency(),
    form: fc.constantFrom('line' as const, 'lumped' as const),
  });

  // The bound is the stated accuracy, from what was measured: it is not to be loosened.
  it.each(ratios)('has the %s of the line equations at 40 digits', (name) => {
    expect(fixture.leads.length).toBe(40);
    const off = fixture.leads.map((row) => Math.abs(loadThroughLeads(row.question)[name] / Number(row[name]) - 1));
    expect(Math.max(...off)).toBeLessThan(1e-14);
  });

  it('carries the step of every number, each of which evaluates to its value', () => {
    fc.assert(
      fc.property(
        question,
        upTo(5),
        fc.boolean(),
        fc.constantFrom('voltage' as const, 'current' as const),
        (asked, resistance, lossy, given) => {
          const whole = { ...asked, leads: { ...asked.leads, ...(lossy ? { resistance } : {}) }, [given]: 1.5 };
          const { working, ends, ...seen } = explainLoadThroughLeads(whole);
          expect({ ...seen, ends }).toEqual(loadThroughLeads(whole));
          expectRecomputes(working);
          const values = new Set([1.5, ...working.map(({ value }) => value)]);
          for (const value of [...Object.values(seen), ...Object.values(ends!)]) expect(values).toContain(value);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('leads from input to result without a gap: each input is given or the value of an earlier step', () => {
    const asked: LoadThroughLeads = {
      load: { resistance: 2000, seriesInductance: 2e-6, parallelCapacitance: 1e-11 },
      leads: { ...line, length: 2, resistance: 0.3 },
      frequency: 5e5,
      voltage: 100,
    };
    for (const form of ['line', 'lumped'] as const) {
      const known = new Set([2000, 2e-6, 1e-11, 2, line.inductance, line.capacitance, 0.3, 5e5, 100]);
      // A lumped pair counts whole in series: its share is 1, without an imaginary part.
      if (form === 'lumped') for (const value of [0, 1]) known.add(value);
      for (const { inputs, value } of explainLoadThroughLeads({ ...asked, form }).working) {
        for (const input of Object.values(inputs)) expect(known).toContain(input);
        known.add(value);
      }
    }
  });

  it('has small errors of the reckoned power to all digits, where strays and leads nearly do nothing', () => {
    // (ωRC)² of a capacitance alone, far below the last digit of 1.
    const seen = loadThroughLeads({
      load: { resistance: 50, parallelCapacitance: 1e-18 },
      leads: { length: 1, inductance: 0, capacitance: 0 },
      frequency: 5e5,
    });
    expect(seen.powerErrorFromCurrent / (2 * Math.PI * 5e5 * 50 * 1e-18) ** 2).toBeCloseTo(1, 12);
    expect(seen.powerErrorFromVoltage).toBe(0);
  });

  it('is the load where the leads have nothing', () => {
    const seen = loadThroughLeads({
      load: { resistance: 500 },
      leads: { length: 2, inductance: 0, capacitance: 0 },
      frequency: 1e6,
      voltage: 100,
    });
    expect(seen).toMatchObject({ resistance: 500, reactance: 0, voltageRatio: 1, currentRatio: 1, bypassRatio: 0 });
    expect(seen.ends).toMatchObject({
      nearVoltage: 100,
      loadVoltage: 100,
      loadCurrent: 0.2,
      loadPower: 20,
    });
  });

  it('of a quarter wave is Z₀²/R, of a half wave the load again', () => {
    const quarter = (length: number) =>
      loadThroughLeads({ load: { resistance: 50 }, leads: { ...line, length }, frequency: 5e6 });
    const wave = velocity / 5e6;
    expect(quarter(wave / 4).resistance).toBeCloseTo(impedance ** 2 / 50, 7);
    expect(quarter(wave / 2).resistance).toBeCloseTo(50, 10);
    expect(quarter(wave / 4).voltageRatio).toBeCloseTo(50 / impedance, 12);
  });

  it('of its own characteristic impedance is that at any length', () => {
    fc.assert(
      fc.property(valueBetween(0.01, 100), frequency(), (length, f) => {
        const seen = loadThroughLeads({ load: { resistance: impedance }, leads: { ...line, length }, frequency: f });
        expect(seen.impedance / impedance).toBeCloseTo(1, 11);
        expect(seen.currentRatio).toBeCloseTo(1, 11);
      }),
    );
  });

  it('gets all the power that goes into leads without resistance', () => {
    fc.assert(
      fc.property(question, (asked) => {
        const { ends, resistance } = loadThroughLeads({ ...asked, current: 0.7 });
        expect((0.7 ** 2 * resistance) / ends!.loadPower).toBeCloseTo(1, 9);
      }),
    );
  });

  it('has errors of the reckoned power that the values at the near end show', () => {
    fc.assert(
      fc.property(question, (asked) => {
        const R = asked.load.resistance;
        const { ends, powerErrorFromCurrent, powerErrorFromVoltage } = loadThroughLeads({ ...asked, voltage: 120 });
        expect((ends!.nearCurrent ** 2 * R) / ends!.loadPower / (1 + powerErrorFromCurrent)).toBeCloseTo(1, 11);
        expect(120 ** 2 / R / ends!.loadPower / (1 + powerErrorFromVoltage)).toBeCloseTo(1, 11);
      }),
    );
  });

  it('is the same by both forms for leads that are short beside a wave', () => {
    const asked: LoadThroughLeads = { load: { resistance: 2000 }, leads: { ...line, length: 2 }, frequency: 5e5 };
    const [byLine, lumped] = [loadThroughLeads(asked), loadThroughLeads({ ...asked, form: 'lumped' })];
    expect(lumped.impedance / byLine.impedance).toBeCloseTo(1, 5);
    expect(lumped.bypassRatio / byLine.bypassRatio).toBeCloseTo(1, 3);
  });

  it('loses in the resistance of the leads what it does not get', () => {
    const seen = loadThroughLeads({
      load: { resistance: 50 },
      leads: { length: 2, inductance: 0, capacitance: 0, resistance: 0.5 },
      frequency: 5e5,
      current: 1,
    });
    expect(seen.resistance).toBeCloseTo(51, 12);
    expect(seen.ends?.nearVoltage).toBeCloseTo(51, 12);
    expect(seen.ends?.loadPower).toBeCloseTo(50, 12);
  });

  it('without leads to speak of shows the strays of the load', () => {
    const stray = { resistance: 500, seriesInductance: 1e-6, parallelCapacitance: 1e-11 };
    const seen = loadThroughLeads({ load: stray, leads: { ...line, length: 1e-9 }, frequency: 2e6 });
    const direct = loadImpedance({ ...stray, frequency: 2e6 });
    expect(seen.resistance).toBeCloseTo(direct.resistance, 5);
    expect(seen.reactance).toBeCloseTo(direct.reactance, 5);
  });
});

describe('bad input', () => {
  const asked: LoadThroughLeads = { load: { resistance: 50 }, leads: { ...line, length: 2 }, frequency: 5e5 };
  it.each<[string, () => unknown, string, string]>([
    [
      'voltage and current both',
      () => loadThroughLeads({ ...asked, voltage: 1, current: 1 }),
      'wrong-count',
      'voltage',
    ],
    ['a voltage of 0', () => loadThroughLeads({ ...asked, voltage: 0 }), 'not-positive', 'voltage'],
    ['no length', () => loadThroughLeads({ ...asked, leads: { ...line, length: 0 } }), 'not-positive', 'leads.length'],
    [
      'leads through which nothing comes',
      () => loadThroughLeads({ ...asked, leads: { ...line, length: 1e6, resistance: 10 } }),
      'result-out-of-range',
      'impedance',
    ],
    [
      'a load that its strays leave nothing of',
      () => loadThroughLeads({ ...asked, load: { resistance: 1e200, parallelCapacitance: 1 } }),
      'result-out-of-range',
      'resistance',
    ],
    ['another form', () => loadThroughLeads({ ...asked, form: 'pi' as 'line' }), 'unknown-choice', 'form'],
    ['wires that touch', () => twoWireLine({ spacing: 1e-3, diameter: 1e-3 }), 'out-of-range', 'spacing'],
    [
      'a tube inside its core',
      () => coaxialLine({ innerDiameter: 2, outerDiameter: 1 }),
      'out-of-range',
      'outerDiameter',
    ],
    [
      'a permittivity below that of vacuum',
      () => twoWireLine({ spacing: 2, diameter: 1, relativePermittivity: 0.5 }),
      'out-of-range',
      'relativePermittivity',
    ],
    ['no wire', () => straightWireInductance({ length: 1, diameter: 0 }), 'not-positive', 'diameter'],
    ['no frequency', () => skinDepth({ resistivity: 1e-8, frequency: 0 }), 'not-positive', 'frequency'],
    ['no turns', () => solenoidInductance({ diameter: 1, length: 1, turns: 0 }), 'not-positive', 'turns'],
  ])('%s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });
});
