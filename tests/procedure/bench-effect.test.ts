import { describe, expect, it } from 'vitest';
import { loadImpedance, loadThroughLeads, twoWireLine } from '../../src/circuit/index.js';
import { recompute } from '../../src/model/index.js';
import {
  assessReadings,
  type Bench,
  type BenchLoad,
  idealLimits,
  idealValue,
  makeRecord,
  type Output,
  type PlanPoint,
  planVerification,
  recomputeRecord,
} from '../../src/procedure/index.js';
import { worksheetText } from '../../src/report/index.js';
import { parseBench, parsePlan, parseSpecification } from '../../src/schema/index.js';
import { dampedSine } from '../../src/waveform/index.js';
import { curvedOutput, bench as plainBench, readingsOf, specificationOf } from './documents.js';

// Constant power from 200 ohm to 800 ohm, constant current below, constant voltage beyond.
const output: Output = { ...curvedOutput, carrierFrequency: 500e3, points: [{ setting: 200, load: 400 }] };
const at = (load: number): Output => ({ ...output, points: [{ setting: 200, load }] });

function benchWith(strays: Partial<BenchLoad>, more: Partial<Bench> = {}): Bench {
  return { ...plainBench, loads: plainBench.loads.map((load) => ({ ...load, ...strays })), ...more };
}

function pointOf(given: Output, bench: Bench, options = {}): PlanPoint {
  return planVerification(specificationOf(given), bench, options).points[0] as PlanPoint;
}

const capacitive = { parallelCapacitance: 300e-12 };

describe('the effect of strays at a point', () => {
  it('is absent where nothing is stated of strays, or no carrier', () => {
    expect(pointOf(output, plainBench).effect).toBeUndefined();
    const { carrierFrequency: _, ...silent } = output;
    expect(pointOf(silent, benchWith(capacitive)).effect).toBeUndefined();
  });

  it('keeps the power of a constant-power stretch: I = √(P/(|Z| cos φ))', () => {
    const { impedance, phase } = loadImpedance({ resistance: 400, ...capacitive, frequency: 500e3 });
    const { effect } = pointOf(output, benchWith(capacitive));
    expect(effect?.impedance).toBe(impedance);
    const current = Math.sqrt(200 / (impedance * Math.cos(phase)));
    expect(effect?.ratios.current).toBeCloseTo(current / Math.sqrt(200 / 400), 12);
    expect(effect?.ratios.voltage).toBeCloseTo((current * impedance) / Math.sqrt(200 * 400), 12);
    expect(effect?.ratios.power).toBeCloseTo(1, 12);
  });

  it('keeps the current of a constant-current stretch', () => {
    const { effect } = pointOf(at(100), benchWith(capacitive));
    expect(effect?.ratios.current).toBeCloseTo(1, 12);
  });

  it('keeps the voltage of a constant-voltage stretch', () => {
    const { effect } = pointOf(at(1000), benchWith(capacitive));
    expect(effect?.ratios.voltage).toBeCloseTo(1, 12);
    const { impedance } = loadImpedance({ resistance: 1000, ...capacitive, frequency: 500e3 });
    expect(effect?.ratios.current).toBeCloseTo(1000 / impedance, 12);
  });

  it('takes the leads with their length and build, at either end', () => {
    const geometry = { kind: 'two-wire', spacing: 20e-3, diameter: 1e-3 } as const;
    const leads = [{ id: 'm', name: 'Leads', circuits: ['monopolar'], length: 2, geometry }] as const;
    const seen = loadThroughLeads({
      load: { resistance: 2000 },
      leads: { length: 2, ...twoWireLine(geometry) },
      frequency: 500e3,
    });
    const nearEnd = { ...plainBench, leads, instrument: { ...plainBench.instrument, readsAt: 'generator' } } as const;
    const near = pointOf(at(2000), nearEnd).effect;
    const far = pointOf(at(2000), { ...plainBench, leads }).effect;
    expect(near?.impedance).toBe(seen.impedance);
    expect((far?.ratios.current ?? 0) / (near?.ratios.current ?? 1)).toBeCloseTo(seen.currentRatio, 12);
    expect((far?.ratios.voltage ?? 0) / (near?.ratios.voltage ?? 1)).toBeCloseTo(seen.voltageRatio, 12);
    // What I²·R at the near end overstates is what the two ends differ by.
    expect((near?.ratios.current ?? 0) ** 2 / (far?.ratios.power ?? 1) - 1).toBeCloseTo(seen.powerErrorFromCurrent, 10);
  });

  it('leads from the build of the leads to the reading without a gap, each step as it recomputes', () => {
    const geometry = { kind: 'two-wire', spacing: 20e-3, diameter: 1e-3 } as const;
    const leads = [{ id: 'm', name: 'Leads', circuits: ['monopolar'], length: 2, geometry }] as const;
    for (const readsAt of ['load', 'generator'] as const) {
      const bench = { ...plainBench, leads, instrument: { ...plainBench.instrument, readsAt } };
      const { working, effect } = pointOf(at(2000), bench);
      const first = working.findIndex(({ formula }) => formula === 'two-wire-inductance');
      const last = working.findIndex(({ formula }) => formula === 'reading-ratio-voltage');
      const steps = working.slice(first, last + 1);
      // What is stated: build, length, carrier and load; no strays. Then the slope of the curve, and what is read where.
      const known = new Set([20e-3, 1e-3, 1, 2, 500e3, 2000, 0]);
      for (const step of steps) {
        expect(Math.abs(recompute(step) - step.value), step.formula).toBeLessThanOrEqual(1e-12 * Math.abs(step.value));
        for (const [symbol, input] of Object.entries(step.inputs)) {
          if (symbol !== 's') expect(known, `${symbol} of ${step.formula}`).toContain(input);
        }
        known.add(step.value);
      }
      expect(steps.map(({ formula }) => formula)).toContain('bypass-ratio-of-leads');
      for (const ratio of Object.values(effect?.ratios ?? {})) expect(known).toContain(ratio);
    }
  });

  it('is left where it is small beside the limits, and then in the budget', () => {
    const accurate = (strays: Partial<BenchLoad>): Bench => ({
      ...benchWith(strays),
      instrument: {
        ...plainBench.instrument,
        reads: plainBench.instrument.reads.map((f) =>
          f.quantity === 'current' ? { ...f, accuracy: { ofReading: 0.01 } } : f,
        ),
      },
    });
    const small = { parallelCapacitance: 30e-12 };
    const point = pointOf(output, accurate(small));
    expect(point.effect?.applied).toBe(false);
    expect(point.limits).toEqual(pointOf(output, plainBench).limits);
    expect(point.effect?.statement).toMatch(/not corrected; a budget takes it in/);
    const strays = point.measurement?.budget.contributions.find(({ name }) => name === 'effect');
    // The whole of it, however the load enters: it is an error of the reading.
    const relative = Math.abs((point.effect?.ratios.current ?? 0) - 1);
    expect(strays?.contribution).toBeCloseTo((relative * (point.nominal as number)) / Math.sqrt(3), 12);
    const forced = pointOf(output, accurate(small), { negligibleEffect: 0 });
    expect(forced.effect?.applied).toBe(true);
    expect(forced.measurement?.budget.contributions.some(({ name }) => name === 'effect')).toBe(false);
  });

  it('corrects expected values and limits where it counts, inward still', () => {
    const ideal = pointOf(at(1000), plainBench);
    const point = pointOf(at(1000), benchWith(capacitive));
    const ratio = point.effect?.ratios.current as number;
    expect(point.effect?.applied).toBe(true);
    expect(ratio).toBeGreaterThan(1.2);
    expect(point.nominal).toBeCloseTo((ideal.nominal as number) * ratio, 12);
    expect(point.expected?.current).toBeCloseTo((ideal.expected?.current as number) * ratio, 12);
    expect(point.expected?.power).toBe(ideal.expected?.power);
    // Limits of ±20 % in power around 160 W at 1000 ohm.
    const lower = Math.sqrt(0.128) * ratio;
    const upper = Math.sqrt(0.192) * ratio;
    expect(point.limits.lower).toBe(Math.ceil(lower * 1000) / 1000);
    expect(point.limits.upper).toBe(Math.floor(upper * 1000) / 1000);
    expect(point.working.map((step) => step.formula)).toEqual(
      expect.arrayContaining(['source-current-ratio', 'reading-ratio-current', 'corrected-for-strays']),
    );
  });

  it('shows in the peaks, their steps and what the bench must stand', () => {
    const ideal = pointOf(output, plainBench);
    const point = pointOf(output, benchWith({ parallelCapacitance: 300e-12, seriesInductance: 60e-6 }));
    const ratio = point.effect?.ratios.voltage as number;
    expect(point.effect?.applied).toBe(true);
    expect(Math.abs(ratio - 1)).toBeGreaterThan(0.005);
    expect(point.expected?.peakVoltage).toBeCloseTo((ideal.expected?.peakVoltage as number) * ratio, 9);
    const last = point.working.find(({ label }) => label === 'expected peak voltage with the strays');
    expect(last?.value).toBe(point.expected?.peakVoltage);
    const peakOf = ({ feasibility }: PlanPoint) =>
      feasibility.find(({ check }) => check === 'instrument peak voltage')?.value;
    const atLimit = (1.6 * 400 * (point.limits.upper as number)) / (point.effect?.ratios.current as number);
    expect(peakOf(point)).toBeCloseTo(atLimit * ratio, 8);
  });

  it('is taken off again where a reading becomes a power, a display or another quantity', () => {
    const bench = benchWith(capacitive);
    const plan = planVerification(
      specificationOf({ ...at(1000), displayTolerance: { in: 'power', relative: 0.1 } }),
      bench,
    );
    const point = plan.points[0] as PlanPoint;
    const display = { quantity: 'power', value: 160 } as const;
    const reading = readingsOf({ point: '1', value: point.nominal as number, display });
    const [row] = assessReadings(plan, reading).points;
    expect(row?.power).toBeCloseTo(160, 10);
    expect(row?.display?.relative).toBeCloseTo(0, 10);
    expect(row?.margin).toBeCloseTo(0, 12);
    expect(idealValue(point, 'current', point.nominal as number)).toBeCloseTo(0.4, 12);
    expect(idealLimits(point).upper).toBeCloseTo(Math.sqrt(0.192), 2);
    const voltage = readingsOf({
      point: '1',
      quantity: 'voltage',
      value: 400 * (point.effect?.ratios.voltage as number),
    });
    expect(assessReadings(plan, voltage).points[0]?.value).toBeCloseTo(point.nominal as number, 12);
  });

  it('is said on the worksheet, reads back, and recomputes', () => {
    const plan = planVerification(specificationOf(at(1000)), benchWith(capacitive));
    expect(worksheetText(plan).replace(/\s+/g, ' ')).toContain('Expected value and limits are corrected for it.');
    expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
    expect(recomputeRecord(makeRecord(plan, readingsOf({ point: '1', value: 0.4 }))).same).toBe(true);
  });
});

describe('the waveform of an output', () => {
  const { crestFactor: _, ...silent } = output;

  it('gives the crest factor where none is stated, with its true peak', () => {
    const waveform = { kind: 'damped-sine', timeConstant: 2e-6, repetitionRate: 30e3 } as const;
    const figures = dampedSine({ timeConstant: 2e-6, repetitionRate: 30e3, frequency: 500e3 });
    const point = pointOf({ ...silent, waveform }, plainBench);
    expect(point.expected?.peakVoltage).toBeCloseTo(figures.crestFactor * Math.sqrt(200 * 400), 9);
    expect(point.working.map((step) => step.formula)).toEqual(
      expect.arrayContaining(figures.working.map((s) => s.formula)),
    );
    expect(pointOf({ ...silent, waveform: { kind: 'sine' } }, plainBench).expected?.peakVoltage).toBeCloseTo(400, 9);
    const gated = pointOf({ ...silent, waveform: { kind: 'gated-sine', dutyCycle: 0.06 } }, plainBench);
    expect((gated.expected?.peakVoltage ?? 0) / (gated.expected?.voltage ?? 1)).toBeCloseTo(5.7735026919, 9);
  });

  it('does not displace a stated crest factor, and needs its carrier', () => {
    const stated = pointOf({ ...output, waveform: { kind: 'sine' } }, plainBench);
    expect((stated.expected?.peakVoltage ?? 0) / (stated.expected?.voltage ?? 1)).toBeCloseTo(1.6, 12);
    const { carrierFrequency: __, ...without } = silent;
    const waveform = { kind: 'damped-sine', timeConstant: 2e-6, repetitionRate: 30e3 } as const;
    expect(() => pointOf({ ...without, waveform }, plainBench)).toThrow(
      expect.objectContaining({ code: 'missing-member', path: 'outputs[0].carrierFrequency' }),
    );
  });
});

describe('a load that warms', () => {
  const heat = { thermalResistance: 2, timeConstant: 120, maximumRise: 100 };

  it('shortens the activation and asks for a pause', () => {
    const { duty: _, ...free } = output;
    const { activation } = pointOf(free, benchWith({ heat }));
    // At 240 W (the upper limit) 480 K: half of 120 s·ln(480/380) is 14 s.
    expect(activation.longest).toBeCloseTo(60 * Math.log(480 / 380), 0);
    expect(activation.pause).toBeGreaterThan(10);
  });

  it('leaves a duty that is shorter, and a load that never becomes too warm', () => {
    expect(pointOf(output, benchWith({ heat })).activation.longest).toBe(10);
    expect(pointOf(output, benchWith({ heat: { ...heat, maximumRise: 1000 } })).activation).toEqual({
      longest: 10,
      pause: 30,
    });
  });
});

describe('documents', () => {
  it('state strays, leads and waveforms as text with units', () => {
    const bench = parseBench({
      ...plainBench,
      loads: [
        {
          id: 'L',
          resistance: '2 kohm',
          powerRating: '100 W',
          seriesInductance: '50 nH',
          parallelCapacitance: '20 pF',
        },
      ],
      leads: [
        {
          id: 'm',
          name: 'Leads',
          circuits: ['monopolar'],
          length: '2 m',
          geometry: { kind: 'two-wire', spacing: '20 mm', diameter: '1 mm' },
        },
      ],
    });
    expect(bench.loads[0]).toMatchObject({ seriesInductance: 50e-9, parallelCapacitance: 20e-12 });
    expect(bench.leads?.[0]).toMatchObject({ length: 2, geometry: { spacing: 0.02, diameter: 0.001 } });
    const sheet = specificationOf({
      ...output,
      waveform: { kind: 'damped-sine', timeConstant: 2e-6, repetitionRate: 3e4 },
    });
    expect(parseSpecification(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
    const wrong = JSON.parse(
      JSON.stringify(specificationOf({ ...output, waveform: { kind: 'gated-sine', dutyCycle: 1.5 } })),
    );
    expect(() => parseSpecification(wrong)).toThrow(
      expect.objectContaining({ code: 'not-a-fraction', path: 'outputs[0].waveform.dutyCycle' }),
    );
  });
});
