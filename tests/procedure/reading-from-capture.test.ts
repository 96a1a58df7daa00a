import { describe, expect, it } from 'vitest';
import {
  assessReadings,
  type PlanDecisionRule,
  planVerification,
  readingFromCapture,
} from '../../src/procedure/index.js';
import { parseReadings } from '../../src/schema/index.js';
import { captureBudget } from '../../src/uncertainty/index.js';
import { analyseCapture } from '../../src/waveform/index.js';
import { bench, curvedOutput, readingsOf, specificationOf } from './documents.js';

// 200 W in 400 ohm: 400 V peak, 1 A peak, at 500 kHz, 50 samples a cycle.
const sampleInterval = 40e-9;
const voltage = Float64Array.from({ length: 5000 }, (_, k) => 400 * Math.sin((2 * Math.PI * k) / 50));
const current = voltage.map((value) => value / 400);
const analysis = analyseCapture({ voltage, current, sampleInterval });
const budget = captureBudget({
  analysis,
  sampleInterval,
  voltage: { step: 4, scale: 0.02, probe: 0.01 },
  current: { step: 0.01, scale: 0.02, probe: 0.01 },
});
const common = { point: '1', phase: 'as-found', analysis } as const;
const output = { ...curvedOutput, points: [{ setting: 200, load: 400 }] };

describe('a capture in place of a typed reading', () => {
  it('gives rms values, power and the true peak', () => {
    expect(readingFromCapture({ ...common, quantity: 'current' }).value).toBeCloseTo(Math.SQRT1_2, 6);
    expect(readingFromCapture({ ...common, quantity: 'voltage' }).value).toBeCloseTo(400 * Math.SQRT1_2, 3);
    const power = readingFromCapture({ ...common, quantity: 'power', note: 'channel 2 is the current' });
    expect(power.value).toBeCloseTo(200, 3);
    // No sample lies on the crest: cos(2π/200) of it is reached.
    expect(power.peakVoltage).toBeCloseTo(400 * Math.cos(Math.PI / 50), 9);
    expect(power.note).toContain('channel 2 is the current');
  });

  it('brings its own uncertainty, and the verdict stands on it', () => {
    const rule: PlanDecisionRule = { kind: 'guarded-acceptance', ratio: 1 };
    const plan = planVerification(specificationOf(output), bench, { decisionRule: rule });
    const reading = readingFromCapture({ ...common, quantity: 'power', budget });
    const [row] = assessReadings(plan, readingsOf(reading)).points;
    expect(row).toMatchObject({ verdict: 'pass', reason: 'inside' });
    // The plan reads current: u(I)/I is half of u(P)/P.
    const u = budget.figures.activePower?.standardUncertainty as number;
    const expanded = row?.expanded;
    expect((expanded?.expandedUncertainty ?? 0) / (expanded?.coverageFactor ?? 1)).toBeCloseTo(
      (0.5 * u * Math.SQRT1_2) / 200,
      6,
    );
    // Without it, nothing is known of the uncertainty at this bench.
    const bare = readingFromCapture({ ...common, quantity: 'power' });
    expect(assessReadings(plan, readingsOf(bare)).points[0]).toMatchObject({
      verdict: 'not judged',
      reason: 'no-decision',
    });
  });

  it('carries its doubts as a note', () => {
    const short = analyseCapture({ current: current.subarray(0, 70), sampleInterval });
    expect(short.warnings.length).toBeGreaterThan(0);
    const { note } = readingFromCapture({ ...common, analysis: short, quantity: 'current' });
    expect(note).toContain(short.warnings[0]?.message);
  });

  it('that lacks the channel is refused', () => {
    const one = analyseCapture({ current, sampleInterval });
    for (const quantity of ['power', 'voltage'] as const) {
      expect(() => readingFromCapture({ ...common, analysis: one, quantity })).toThrow(
        expect.objectContaining({ code: 'missing-member', path: 'analysis' }),
      );
    }
  });

  it('is kept by the schema of readings', () => {
    const readings = readingsOf(readingFromCapture({ ...common, quantity: 'current', budget }));
    expect(parseReadings(JSON.parse(JSON.stringify(readings)))).toEqual(readings);
    const wrong = JSON.parse(JSON.stringify(readings));
    wrong.readings[0].uncertainty.standardUncertainty = -1;
    expect(() => parseReadings(wrong)).toThrow(
      expect.objectContaining({ path: 'readings[0].uncertainty.standardUncertainty' }),
    );
  });
});
