import fc from 'fast-check';
import { expect } from 'vitest';
import {
  areaAtResistance,
  type BoxAccuracy,
  challengesFor,
  displayFit,
  explainAlarm,
  type Monitor,
  type MonitorSweep,
  monitorStates,
  padImpedance,
  type SplitPad,
  tripPoints,
} from '../../../src/monitor/index.js';
import { degreesOf, tripUncertainty } from '../../../src/monitor/trip-uncertainty.js';
import type { Step } from '../../../src/working/index.js';
import { valueBetween } from '../../generators.js';
import type { Twins } from './twin.js';

function stepValue(working: readonly Step[], formula: string): number {
  const found = working.find((step) => step.formula === formula);
  if (found === undefined) throw new Error(`No step ${formula} in the working.`);
  return found.value;
}

/** The step of the first alarm when a resistance follows another. */
function alarmStep(formula: string, monitor: Monitor, first: number, second: number, time = 1): number {
  const { alarms } = monitorStates(monitor, { time: [0, time], resistance: [first, second], end: time + 1e6 });
  return stepValue(explainAlarm(monitor, alarms[0]!), formula);
}

/** What the display showed in the rows after the first. */
const rest = [90, 170] as const;

const fitOf = (sets: readonly number[], shown: readonly number[]) =>
  displayFit({ rows: sets.map((set, i) => ({ set, displayed: shown[i] as number })), resolution: 1 });

const box = (absolute: number, relative: number) => ({ step: 1, maximum: 999, accuracy: { absolute, relative } });
const bench = { T: valueBetween(20, 200), R_s: valueBetween(0, 5), a: valueBetween(0, 3), q: valueBetween(0, 0.1) };
const baselines = fc.record({ R: fc.integer({ min: 20, max: 200 }), R_s: bench.R_s, a: bench.a, q: bench.q });

/** A step of the plan of a rise whose only possible baseline is a given one. */
function baselineStep(formula: string, { R, R_s, a, q }: Readonly<Record<string, number>>): number {
  const rise = { fraction: 0.9, baseline: 'at-start' } as const;
  const values = { values: [R!, 10 * R!], accuracy: { absolute: a!, relative: q! } };
  const monitor: Monitor = { kind: 'contact-quality', rise, series: { resistance: R_s! } };
  return stepValue(challengesFor(monitor, values).thresholds[0]!.working, formula);
}

/** A sweep up or down that changes between its two values. */
const sweep = (before: number, after: number): MonitorSweep => ({
  steps: [
    { set: before, alarm: after < before },
    { set: after, alarm: after > before },
  ],
});

/** A trip on the way up and a release on the way down, each the middle of a step. */
const bothWays = (trip: number, release: number, tripStep = 2, releaseStep = 2) => [
  sweep(trip - tripStep / 2, trip + tripStep / 2),
  sweep(release + releaseStep / 2, release - releaseStep / 2),
];

const sweepBench = ({ absolute = 0, relative = 0 }: BoxAccuracy, series = 0) => ({
  monitor: { kind: 'contact-quality', upper: { resistance: 135 }, series: { resistance: series } } as const,
  accuracy: { absolute, relative },
});

const tripStep = (formula: string, accuracy: BoxAccuracy) =>
  stepValue(tripPoints([sweep(100, 101)], sweepBench(accuracy)).working, formula);

const padReading = { frequency: 80e3, reads: 'magnitude' } as const;
const reactance = valueBetween(-20, -0.01);

/** A contact that shows a resistance and a reactance in series. */
const contactOf = (R: number, X: number) => ({
  resistance: (R * R + X * X) / R,
  capacitance: -X / (R * R + X * X) / (2 * Math.PI * padReading.frequency) + 0,
});

const padOf = (first: readonly [number, number], second: readonly [number, number], tissue: number): SplitPad => ({
  contacts: [contactOf(...first), contactOf(...second)],
  tissue,
});

const small = valueBetween(0.01, 5);
const noBlur = { stepWidth: 1, boxLimits: 0, seriesLimits: 0, baselineLimits: 0, ofMean: 0 };

const ohms = valueBetween(1, 200);
const rise = valueBetween(0.05, 0.9);
const baseline = { b: ohms, f: ohms, r: rise };
const rising = (r: number, f: number) => ({ fraction: r, baseline: 'at-start', floor: f }) as const;

export const twins: Twins = {
  'monitor-seen': {
    fast: ({ R, R_s }) => {
      const series = { resistance: R_s! };
      return alarmStep('monitor-seen', { kind: 'continuity', upper: { resistance: 0.5 }, series }, R!, R!);
    },
    symbols: { R: ohms, R_s: valueBetween(0, 5) },
  },
  'monitor-rise-limit': {
    fast: ({ b, f, r }) => alarmStep('monitor-rise-limit', { kind: 'contact-quality', rise: rising(r!, f!) }, b!, 1e4),
    symbols: baseline,
  },
  'monitor-rise-release': {
    fast: ({ b, f, r, h }) => {
      const rule = { ...rising(r!, f!), hysteresis: h! };
      return alarmStep('monitor-rise-release', { kind: 'contact-quality', rise: rule }, b!, 1e4);
    },
    symbols: { ...baseline, h: valueBetween(0, 0.049) },
  },
  'monitor-upper-release': {
    fast: ({ T, h }) => {
      const upper = { resistance: T!, hysteresis: h! };
      return alarmStep('monitor-upper-release', { kind: 'continuity', upper }, 1, 1e4);
    },
    symbols: { T: ohms, h: valueBetween(0, 0.9) },
  },
  'monitor-lower-release': {
    fast: ({ T, h }) => {
      const lower = { resistance: T!, hysteresis: h! };
      return alarmStep('monitor-lower-release', { kind: 'continuity', lower }, 1e4, 0.1);
    },
    symbols: { T: ohms, h: ohms },
  },
  'monitor-alarm-time': {
    fast: ({ t, d }) => {
      const monitor: Monitor = { kind: 'continuity', upper: { resistance: 20 }, alarmDelay: d! };
      return alarmStep('monitor-alarm-time', monitor, 1, 30, t!);
    },
    symbols: { t: valueBetween(0.1, 100), d: valueBetween(0, 100) },
  },
  'monitor-tracked-baseline': {
    fast: ({ R_seen, b_0, t, tau }) => {
      const rule = { fraction: 1, baseline: 'tracked', timeConstant: tau! } as const;
      // The first value is so short that the baseline has it when the second begins.
      const trace = { time: [0, 1], resistance: [b_0!, R_seen!], end: 1 + t! };
      return monitorStates({ kind: 'contact-quality', rise: rule }, trace).baseline!;
    },
    inputs: fc
      .record({ b_0: ohms, ratio: valueBetween(0.2, 1.9), t: fc.constantFrom(0.25, 1, 7), tau: valueBetween(1, 50) })
      .map(({ b_0, ratio, t, tau }) => ({ R_seen: b_0 * ratio, b_0, t, tau })),
  },
  'monitor-display-error': {
    fast: ({ y, x }) => stepValue(fitOf([x!, x! + 50], [y!, 100]).working, 'monitor-display-error'),
    symbols: { y: ohms, x: ohms },
  },
  'monitor-display-residual': {
    // Offset and gain are the fit's own: the twin is fed with what the fit found.
    fast: ({ y, a, g, x }) => {
      const first = fitOf([x!, x! + 50, x! + 90], [y!, ...rest]).working;
      const found = first.find((step) => step.formula === 'monitor-display-residual')!;
      expect(found.inputs).toEqual({ y, a, g, x });
      return found.value;
    },
    inputs: fc.record({ y: ohms, x: ohms }).map(({ y, x }) => {
      const { offset, gain } = fitOf([x, x + 50, x + 90], [y, ...rest]);
      return { y, a: offset, g: gain, x };
    }),
  },
  'monitor-set-below': {
    fast: ({ T, R_s, a, q }) => {
      const upper = { resistance: T! };
      const { working } = challengesFor({ kind: 'continuity', upper, series: { resistance: R_s! } }, box(a!, q!))
        .thresholds[0]!;
      return stepValue(working, 'monitor-set-below');
    },
    symbols: bench,
  },
  'monitor-set-above': {
    fast: ({ T, R_s, a, q }) => {
      const lower = { resistance: T! };
      const { working } = challengesFor({ kind: 'continuity', lower, series: { resistance: R_s! } }, box(a!, q!))
        .thresholds[0]!;
      return stepValue(working, 'monitor-set-above');
    },
    symbols: bench,
  },
  'monitor-seen-least': { fast: (inputs) => baselineStep('monitor-seen-least', inputs), inputs: baselines },
  'monitor-seen-most': { fast: (inputs) => baselineStep('monitor-seen-most', inputs), inputs: baselines },
  'monitor-trip': {
    fast: ({ R_1, R_2, R_s }) => tripPoints([sweep(R_1!, R_2!)], sweepBench({}, R_s)).points[0]!.value,
    inputs: fc
      .record({ R_1: ohms, width: valueBetween(0.1, 20), R_s: valueBetween(0, 5) })
      .map(({ R_1, width, R_s }) => ({ R_1, R_2: R_1 + width, R_s })),
  },
  'monitor-trip-mean': {
    fast: ({ S, n }) =>
      tripPoints(
        Array.from({ length: n! }, () => sweep(S! / n! - 1, S! / n! + 1)),
        sweepBench({}),
      ).points[0]!.value,
    symbols: { S: valueBetween(20, 500), n: fc.integer({ min: 2, max: 6 }) },
  },
  'monitor-step-uncertainty': {
    // In eighths, so that the width is exact.
    fast: ({ d }) => tripPoints([sweep(64, 64 + d!)], sweepBench({})).points[0]!.standardUncertainty,
    symbols: { d: fc.integer({ min: 1, max: 100 }).map((eighths) => eighths / 8) },
  },
  'monitor-half-width-uncertainty': {
    fast: ({ a }) => tripStep('monitor-half-width-uncertainty', { absolute: a! }),
    symbols: { a: valueBetween(0.01, 5) },
  },
  'monitor-trip-uncertainty': {
    fast: ({ u_d, u_b, u_s, u_0, u_m }) =>
      tripUncertainty(
        {
          stepWidth: u_d! * Math.sqrt(12),
          boxLimits: u_b! * Math.sqrt(3),
          seriesLimits: u_s! * Math.sqrt(3),
          baselineLimits: u_0! * Math.sqrt(3),
          ofMean: u_m!,
        },
        1,
        2,
        'trip',
      ).standardUncertainty,
    symbols: { u_d: small, u_b: small, u_s: small, u_0: small, u_m: small },
  },
  'monitor-trip-degrees': {
    fast: ({ n, u, u_m }) => degreesOf(n!, u!, u_m!) as number,
    inputs: fc
      .record({ n: fc.integer({ min: 2, max: 9 }), u_m: small, more: valueBetween(1, 20) })
      .map(({ n, u_m, more }) => ({ n, u: more * u_m, u_m })),
  },
  'monitor-trip-expanded': {
    fast: ({ k, u }) =>
      tripUncertainty({ ...noBlur, ofMean: u!, stepWidth: 1e-9 * u! }, 1, k!, 'trip').expandedUncertainty,
    symbols: { k: valueBetween(1, 3), u: small },
  },
  'monitor-hysteresis': {
    fast: ({ R_1, R_2 }) => tripPoints(bothWays(R_1!, R_2!), sweepBench({})).hysteresis[0]!.value,
    inputs: fc
      .record({ R_2: fc.integer({ min: 10, max: 90 }), width: fc.integer({ min: 1, max: 50 }) })
      .map(({ R_2, width }) => ({ R_1: R_2 + width, R_2 })),
  },
  'monitor-hysteresis-uncertainty': {
    fast: ({ u_1, u_2, u_b }) => {
      const [found] = tripPoints(bothWays(150, 100, u_1! * Math.sqrt(12), u_2! * Math.sqrt(12)), {
        ...sweepBench({ relative: (u_b! * Math.sqrt(3)) / 50 }),
      }).hysteresis;
      return found!.standardUncertainty;
    },
    symbols: { u_1: small, u_2: small, u_b: valueBetween(0.01, 2) },
  },
  'monitor-contact-resistance': {
    fast: ({ R, a }) => {
      const contacts = [{ resistance: R!, area: a! }, { resistance: 1 }] as const;
      return padImpedance({ contacts, tissue: 1 }, padReading).contacts[0].resistance;
    },
    symbols: { R: ohms, a: valueBetween(0.05, 1) },
  },
  'monitor-contact-capacitance': {
    fast: ({ C, a }) => {
      const contacts = [{ resistance: 1, capacitance: C!, area: a! }, { resistance: 1 }] as const;
      return stepValue(padImpedance({ contacts, tissue: 1 }, padReading).working, 'monitor-contact-capacitance');
    },
    symbols: { a: valueBetween(0.05, 1) },
  },
  'monitor-pad-resistance': {
    fast: ({ R_1, R_2, R_t }) => padImpedance(padOf([R_1!, 0], [R_2!, 0], R_t!), padReading).resistance,
  },
  'monitor-pad-reactance': {
    fast: ({ X_1, X_2 }) => padImpedance(padOf([10, X_1!], [10, X_2!], 5), padReading).reactance,
    symbols: { X_1: reactance, X_2: reactance },
  },
  'monitor-area-factor': {
    fast: ({ T, R_a, X_a, R_b, X_b }) => {
      const pad = padOf([R_b!, X_b!], [R_a! / 2, X_a!], R_a! / 2);
      return 1 / areaAtResistance(pad, { ...padReading, foil: 'first', seen: T! }).remaining;
    },
    inputs: fc
      .record({ R_a: ohms, X_a: reactance, R_b: ohms, X_b: reactance, over: valueBetween(1.1, 4) })
      .map(({ over, ...parts }) => ({ T: over * Math.hypot(parts.R_a, parts.X_a), ...parts })),
  },
  'monitor-remaining-area': {
    fast: ({ q }) => {
      const pad = padOf([64, 0], [16, 0], 16);
      return areaAtResistance(pad, { ...padReading, foil: 'first', seen: 32 + 64 * q! }).remaining;
    },
    symbols: { q: fc.integer({ min: 1, max: 400 }).map((eighths) => eighths / 8) },
  },
};
