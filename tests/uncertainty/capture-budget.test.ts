import { describe, expect, it } from 'vitest';
import { createRandom, nextNormal, nextUniform } from '../../src/numeric/index.js';
import {
  type CaptureBudgetInput,
  type CaptureFigure,
  type ChannelAccuracy,
  captureBudget,
  powerBudget,
} from '../../src/uncertainty/index.js';
import { analyseCapture, type Capture, type CaptureAnalysis } from '../../src/waveform/index.js';
import { faultOf } from '../band/fault-of.js';

const twoPi = 2 * Math.PI;
const sampleInterval = 40e-9;

type Course = (t: number) => number;

const u = (input: CaptureBudgetInput, figure: CaptureFigure): number =>
  captureBudget(input).figures[figure]?.standardUncertainty ?? Number.NaN;

/** What a channel with given errors makes of a course. */
function recorded(
  course: Course,
  count: number,
  accuracy: ChannelAccuracy,
  errors: () => number,
  noise: () => number,
  delay = 0,
) {
  const { step, scale = 0, probe = 0, offset = 0, noise: sigma = 0 } = accuracy;
  const gain = (1 + scale * errors()) * (1 + probe * errors());
  const zero = offset * errors();
  return Float64Array.from({ length: count }, (_, k) => {
    const value = gain * course(k * sampleInterval + delay) + zero + sigma * noise();
    return step * Math.round(value / step);
  });
}

const shownBy: Partial<Record<CaptureFigure, (analysis: CaptureAnalysis) => number | undefined>> = {
  voltageRms: ({ voltage }) => voltage?.rms,
  voltagePeak: ({ voltage }) => voltage?.peak,
  voltageCrestFactor: ({ voltage }) => voltage?.crestFactor,
  currentRms: ({ current }) => current?.rms,
  activePower: ({ activePower }) => activePower,
  apparentPower: ({ apparentPower }) => apparentPower,
  powerFactor: ({ powerFactor }) => powerFactor,
  phase: ({ phase }) => phase,
};

describe('the budget of a capture against simulated captures', () => {
  const sine: { v: Course; i: Course } = {
    v: (t) => 12 + 300 * Math.sin(twoPi * 433e3 * t),
    i: (t) => 0.05 + 0.6 * Math.sin(twoPi * 433e3 * t - 0.6),
  };
  const burst = (t: number, height: number, phase: number) => {
    const since = t - Math.floor(t * 25e3) / 25e3;
    return since < 20e-6 ? height * Math.sin(twoPi * 500e3 * since + phase) : 0;
  };
  const gated: { v: Course; i: Course } = { v: (t) => burst(t, 900, 0), i: (t) => burst(t, 1.8, 0) };
  const figures = Object.keys(shownBy) as CaptureFigure[];

  it.each<
    [
      string,
      { v: Course; i: Course },
      Omit<CaptureBudgetInput, 'analysis' | 'sampleInterval'>,
      readonly CaptureFigure[],
    ]
  >([
    [
      'scale, probe, offset and delay of a continuous output with a phase',
      sine,
      {
        voltage: { step: 0.01, scale: 0.02, probe: 0.01, offset: 4 },
        current: { step: 1e-5, scale: 0.015, probe: 0.02, offset: 0.01 },
        skew: 20e-9,
      },
      // The crest between two samples is not an error of this simulation: every capture has the same samples.
      figures.filter((figure) => figure !== 'voltagePeak' && figure !== 'voltageCrestFactor'),
    ],
    [
      'scale and probe of bursts',
      gated,
      { voltage: { step: 1e-3, scale: 0.03, probe: 0.02 }, current: { step: 1e-6, scale: 0.02, probe: 0.03 } },
      ['voltageRms', 'currentRms', 'activePower', 'apparentPower'],
    ],
    [
      'noise and steps alone, far above what an instrument has',
      sine,
      { voltage: { step: 20, noise: 30 }, current: { step: 0.04, noise: 0.06 } },
      ['activePower'],
    ],
  ])('%s', (_, { v, i }, accuracy, compared) => {
    const random = createRandom(2026);
    const errors = () => 2 * nextUniform(random) - 1;
    const noise = () => nextNormal(random);
    const trials = 1000;
    const count = 1500;
    const analyse = (voltage: Float64Array, current: Float64Array) =>
      analyseCapture({ voltage, current, sampleInterval });
    const sums = new Map(compared.map((figure) => [figure, { sum: 0, squares: 0 }]));
    const none: ChannelAccuracy = { step: 1e-9 };
    const analysis = analyse(recorded(v, count, none, errors, noise), recorded(i, count, none, errors, noise));
    const at = new Map(compared.map((figure) => [figure, shownBy[figure]?.(analysis) ?? 0]));
    for (let k = 0; k < trials; k++) {
      const delay = (accuracy.skew ?? 0) * errors();
      const shown = analyse(
        recorded(v, count, accuracy.voltage as ChannelAccuracy, errors, noise, delay),
        recorded(i, count, accuracy.current as ChannelAccuracy, errors, noise),
      );
      for (const [figure, total] of sums) {
        const error = (shownBy[figure]?.(shown) ?? Number.NaN) - (at.get(figure) ?? 0);
        total.sum += error;
        total.squares += error * error;
      }
    }
    for (const [figure, { sum, squares }] of sums) {
      const deviation = Math.sqrt(squares / trials - (sum / trials) ** 2);
      const ratio = u({ analysis, sampleInterval, ...accuracy }, figure) / deviation;
      // Four standard errors of a standard deviation of 1000 trials.
      expect(Math.abs(ratio - 1), `${figure}: ${ratio}`).toBeLessThan(4 / Math.sqrt(2 * trials));
    }
  });

  it('covers the rise of the rms value by noise and steps, and the peak that noise makes', () => {
    const random = createRandom(9);
    const voltage: ChannelAccuracy = { step: 10, noise: 12 };
    const clean = analyseCapture({
      voltage: recorded(
        sine.v,
        5000,
        { step: 1e-9 },
        () => 0,
        () => 0,
      ),
      sampleInterval,
    });
    const shown = analyseCapture({
      voltage: recorded(
        sine.v,
        5000,
        voltage,
        () => 0,
        () => nextNormal(random),
      ),
      sampleInterval,
    });
    const input = { analysis: shown, sampleInterval, voltage };
    const rise = (shown.voltage?.rms ?? 0) - (clean.voltage?.rms ?? 0);
    expect(rise).toBeGreaterThan(0);
    expect(rise).toBeLessThan(2 * u(input, 'voltageRms'));
    expect((shown.voltage?.peak ?? 0) - (clean.voltage?.peak ?? 0)).toBeLessThan(3.5 * u(input, 'voltagePeak'));
  });
});

describe('the budget of a capture', () => {
  const course = (t: number) => 300 * Math.sin(twoPi * 502.5e3 * t);
  const voltage = Float64Array.from({ length: 5000 }, (_, k) => course(k * sampleInterval));
  const current = voltage.map((x) => x / 500);
  const capture: Capture = { voltage, current, sampleInterval };
  const analysis = analyseCapture(capture);
  const accuracy = {
    voltage: { step: 4, scale: 0.02, probe: 0.01 },
    current: { step: 0.01, scale: 0.02, probe: 0.01 },
  };
  const input: CaptureBudgetInput = { analysis, sampleInterval, ...accuracy };

  it('has a row for each error, and shares that add up', () => {
    const { figures } = captureBudget({ ...input, skew: 2e-9, timeBase: 1e-5 });
    expect(figures.activePower?.contributions.map(({ name }) => name)).toEqual([
      'voltage.scale',
      'voltage.probe',
      'current.scale',
      'current.probe',
      'voltage.offset',
      'current.offset',
      'skew',
      'scatter',
    ]);
    for (const budget of Object.values(figures)) {
      expect(budget.contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    }
    expect(figures.activePower?.value).toBeCloseTo(analysis.activePower ?? 0, 10);
    expect(figures.energy?.contributions.map(({ name }) => name)).toContain('timeBase');
    expect(figures.phase?.standardUncertainty).toBeCloseTo((twoPi * 502.5e3 * 2e-9) / Math.sqrt(3), 6);
  });

  it('does not count what cancels: the scale in crest factor and power factor', () => {
    const better = { ...input, voltage: { step: 4 }, current: { step: 0.01 } };
    for (const figure of ['voltageCrestFactor', 'powerFactor'] as const)
      expect(u(input, figure)).toBeCloseTo(u(better, figure), 12);
    expect(u(input, 'activePower')).toBeGreaterThan(10 * u(better, 'activePower'));
  });

  it('a difference in delay counts for a power with a phase, and little for one without', () => {
    const lagging = analyseCapture({
      ...capture,
      current: voltage.map((_, k) => 0.6 * Math.sin(twoPi * 502.5e3 * k * sampleInterval - 1)),
    });
    const with3ns = { ...input, skew: 3e-9 };
    expect(u({ ...with3ns, analysis: lagging }, 'activePower')).toBeGreaterThan(
      1.01 * u({ ...input, analysis: lagging }, 'activePower'),
    );
    expect(u(with3ns, 'activePower')).toBeCloseTo(u(input, 'activePower'), 4);
  });

  it('of one channel gives the power in a load as that of a reading does', () => {
    const alone = analyseCapture({ voltage, sampleInterval, load: 500 });
    const load = { resistance: 500, tolerance: 0.01 };
    const { figures, warnings } = captureBudget({
      analysis: alone,
      sampleInterval,
      voltage: { step: 1e-3, scale: 0.02 },
      load,
    });
    const reading = {
      reading: alone.voltage?.rms ?? 0,
      range: { maximum: 400, resolution: 1e-9 },
      accuracy: { ofReading: 0.02 },
    };
    const expected = powerBudget({ by: 'voltage', voltage: reading, load });
    expect(figures.activePower?.value).toBeCloseTo(expected.value, 10);
    expect(figures.activePower?.standardUncertainty).toBeCloseTo(expected.standardUncertainty, 5);
    expect(figures.energy?.value).toBeCloseTo(alone.energy ?? 0, 12);
    expect(figures.apparentPower).toBeUndefined();
    expect(warnings).toEqual([]);
    const byCurrent = captureBudget({
      analysis: analyseCapture({ current, sampleInterval }),
      sampleInterval,
      current: { step: 1e-6 },
      load,
    });
    expect(byCurrent.figures.activePower?.value).toBeCloseTo(90, 3);
    expect(byCurrent.figures.activePower?.standardUncertainty).toBeCloseTo((90 * 0.01) / Math.sqrt(3), 3);
  });

  it('passes the warnings of the analysis on', () => {
    const clipped = analyseCapture({ voltage: voltage.map((x) => Math.min(x, 200)), sampleInterval });
    const { warnings } = captureBudget({ analysis: clipped, sampleInterval, voltage: { step: 4 } });
    expect(warnings.map(({ code }) => code)).toEqual(['capture-clipped']);
  });

  const silent = analyseCapture({
    voltage: new Float64Array(50),
    current: new Float64Array(50).fill(1),
    sampleInterval,
  });
  const steady = analyseCapture({
    voltage: new Float64Array(50).fill(2),
    current: new Float64Array(50).fill(1),
    sampleInterval,
  });
  it.each<[string, CaptureBudgetInput, string, string]>([
    ['no accuracy', { analysis, sampleInterval, voltage: { step: 1 } }, 'missing-member', 'current'],
    ['no step', { ...input, voltage: { step: 0 } }, 'not-positive', 'voltage.step'],
    ['a scale in percent', { ...input, voltage: { step: 1, scale: 2 } }, 'not-a-fraction', 'voltage.scale'],
    ['a probe in percent', { ...input, current: { step: 1, probe: 3 } }, 'not-a-fraction', 'current.probe'],
    ['a negative offset', { ...input, voltage: { step: 1, offset: -1 } }, 'negative', 'voltage.offset'],
    ['a negative noise', { ...input, voltage: { step: 1, noise: -1 } }, 'negative', 'voltage.noise'],
    ['a negative skew', { ...input, skew: -1e-9 }, 'negative', 'skew'],
    ['a time base in percent', { ...input, timeBase: 2 }, 'not-a-fraction', 'timeBase'],
    ['no interval', { ...input, sampleInterval: 0 }, 'not-positive', 'sampleInterval'],
    ['a silent channel', { ...input, analysis: silent }, 'not-positive', 'analysis.voltage.rms'],
    ['a skew without a carrier', { ...input, analysis: steady, skew: 1e-9 }, 'missing-member', 'analysis.phase'],
  ])('refuses %s', (_, bad, code, path) => {
    expect(faultOf(() => captureBudget(bad))).toMatchObject({ code, path });
  });
});
