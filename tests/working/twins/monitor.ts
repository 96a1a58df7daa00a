import fc from 'fast-check';
import { expect } from 'vitest';
import { challengesFor, displayFit, explainAlarm, type Monitor, monitorStates } from '../../../src/monitor/index.js';
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
};
