import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AlarmChallenge,
  challengesFor,
  type Monitor,
  monitorStates,
  type ResistanceBox,
  type SweepChallenge,
} from '../../src/monitor/index.js';
import { valueBetween } from '../generators.js';
import { faultOf } from './fault-of.js';

const quality: Monitor = {
  kind: 'contact-quality',
  lower: { resistance: 5, tolerance: { absolute: 1 }, hysteresis: 2 },
  upper: { resistance: 135, tolerance: { absolute: 5 }, hysteresis: 10 },
  rise: { fraction: 0.4, tolerance: 0.05, baseline: 'lowest', hysteresis: 0.05 },
  alarmDelay: 0.5,
  series: { resistance: 0.3, limits: 0.1 },
  display: { resolution: 1, maximum: 999, open: 'over-range', tolerance: { absolute: 7 } },
};
const decade: ResistanceBox = { step: 1, maximum: 999, accuracy: { relative: 0.005, absolute: 0.05 } };
const isAlarm = (challenge: { kind: string }): challenge is AlarmChallenge => challenge.kind.startsWith('must');
const isSweep = (challenge: { kind: string }): challenge is SweepChallenge => challenge.kind === 'sweep';

describe('challengesFor', () => {
  it('chooses values by arithmetic that can be done by hand', () => {
    const { thresholds } = challengesFor(quality, decade);
    const [lower, upper] = thresholds;
    // Upper: (130 − 0.3 − 0.15)/1.005 = 128.9 and (140 − 0.3 + 0.15)/0.995 = 140.6.
    expect(upper).toMatchObject({ mustNotAlarm: 128, mustAlarm: 141, status: 'verifiable' });
    expect(upper?.undecided.lower).toBeCloseTo(128.9055, 4);
    expect(upper?.undecided.upper).toBeCloseTo(140.5528, 4);
    // Lower: (6 − 0.3 + 0.15)/0.995 = 5.88 and (4 − 0.3 − 0.15)/1.005 = 3.53.
    expect(lower).toMatchObject({ mustNotAlarm: 6, mustAlarm: 3 });
    expect(lower?.working).toHaveLength(2);
  });

  it('has short, open, both sides of every limit, sweeps both ways, three baselines and readings', () => {
    const { challenges, thresholds, readings } = challengesFor(quality, decade);
    const alarms = challenges.filter(isAlarm).map(({ kind, limit, set }) => `${kind} ${limit} ${set}`);
    expect(alarms.slice(0, 6)).toEqual([
      'must-alarm lower 0',
      'must-not-alarm lower 6',
      'must-alarm lower 3',
      'must-not-alarm upper 128',
      'must-alarm upper 141',
      'must-alarm upper open',
    ]);
    expect(thresholds.filter(({ limit }) => limit === 'rise').map(({ baseline }) => baseline)).toHaveLength(3);
    const sweeps = challenges.filter(isSweep).map(({ limit, direction }) => `${limit} ${direction}`);
    expect(sweeps.slice(0, 4)).toEqual(['lower down', 'lower up', 'upper up', 'upper down']);
    expect(readings.map(({ set }) => set)).toEqual(
      [...readings.map(({ set }) => set)].sort((a, b) => Number(a) - Number(b)),
    );
    expect(challenges.filter(({ kind }) => kind === 'reading')).toHaveLength(readings.length);
    for (const { reason } of challenges) expect(reason).toMatch(/^[A-Z].*\.$/);
    expect(JSON.parse(JSON.stringify(challenges))).toEqual(challenges);
  });

  it('a sweep begins silent, ends beyond, and passes the hysteresis on its way back', () => {
    const [up, down] = challengesFor(quality, decade)
      .challenges.filter(isSweep)
      .filter(({ limit }) => limit === 'upper');
    expect(up?.values[0]).toBeLessThanOrEqual(118);
    expect(up?.values.at(-1)).toBe(141);
    expect(down?.values).toEqual([...(up?.values ?? [])].reverse());
  });

  it('leaves no sweep where the baseline follows, and says to go at once', () => {
    const rise = { fraction: 0.4, baseline: 'tracked', timeConstant: 30 } as const;
    const { challenges } = challengesFor({ ...quality, rise }, decade);
    expect(challenges.filter(isSweep).some(({ limit }) => limit === 'rise')).toBe(false);
    const rises = challenges.filter(isAlarm).filter(({ limit }) => limit === 'rise');
    expect(rises.length).toBeGreaterThanOrEqual(6);
    for (const { reason } of rises) expect(reason).toContain('in one step');
  });

  it('says which threshold a coarse box cannot verify, and what box would do', () => {
    const box: ResistanceBox = { values: [10, 20, 50, 75, 100, 120, 150, 200], accuracy: { relative: 0.01 } };
    const { thresholds, warnings } = challengesFor(quality, box);
    expect(thresholds.slice(0, 2).map(({ limit, status }) => [limit, status])).toEqual([
      ['lower', 'not-verifiable'],
      ['upper', 'roughly'],
    ]);
    expect(thresholds[0]?.needed?.reach).toBeCloseTo((4 - 0.3 - 0.1) / 1.01, 12);
    const better = { step: thresholds[1]?.needed?.step as number, maximum: 200, accuracy: box.accuracy };
    expect(challengesFor(quality, better).thresholds[1]?.status).toBe('verifiable');
    const messages = warnings.filter(({ code }) => code === 'threshold-not-verifiable').map(({ message }) => message);
    expect(messages[0]).toContain('lower limit cannot be verified');
    expect(messages[1]).toContain('steps of');
    expect(warnings.map(({ code }) => code)).toContain('sweep-left-out');
  });

  it('says when a box is too inaccurate, and what would do', () => {
    const { thresholds } = challengesFor(quality, { ...decade, accuracy: { absolute: 6 } });
    const upper = thresholds.find(({ limit }) => limit === 'upper');
    expect(upper).toMatchObject({ status: 'roughly', needed: { offBy: 2.5, step: 2.5 } });
    expect(upper?.reason).toContain('may be off by 6.1 ohm');
  });

  it('a monitor that is silent at short or open is warned of', () => {
    const codes = (monitor: Monitor) => challengesFor(monitor, decade).warnings.map(({ code }) => code);
    expect(codes({ kind: 'contact-quality', upper: { resistance: 135 } })).toEqual([
      'tolerance-missing',
      'short-not-detected',
    ]);
    expect(codes({ kind: 'continuity', lower: { resistance: 5 } })).toContain('open-not-detected');
    expect(codes(quality)).not.toContain('short-not-detected');
  });

  it('a short is accepted where no lower limit is stated', () => {
    const { challenges } = challengesFor({ kind: 'continuity', upper: { resistance: 20 } }, decade);
    expect(challenges[0]).toMatchObject({ kind: 'must-not-alarm', set: 0, limit: 'any' });
  });

  it('a side that the maker leaves open is not challenged', () => {
    const upper = { resistance: 135, tolerance: { absolute: { above: 5 } } };
    const [plan] = challengesFor({ kind: 'continuity', upper }, decade).thresholds;
    expect(plan).toMatchObject({ mustNotAlarm: null, mustAlarm: 141, status: 'verifiable', proven: null });
  });

  it('fewer than three baselines are warned of', () => {
    const box: ResistanceBox = { values: [50, 60, 80], accuracy: { relative: 0.001 } };
    const rise = { fraction: 0.4, baseline: 'at-start' } as const;
    const { warnings } = challengesFor({ kind: 'contact-quality', rise }, box);
    expect(warnings.map(({ code }) => code)).toContain('few-baselines');
  });

  it.each<[string, unknown, string, string]>([
    ['without an accuracy', { step: 1, maximum: 10 }, 'missing-member', 'box.accuracy.relative'],
    ['without values', { values: [], accuracy: { relative: 0.01 } }, 'wrong-count', 'box.values'],
    ['with values out of order', { values: [2, 1], accuracy: { relative: 0.01 } }, 'not-ascending', 'box.values[1]'],
    ['with a negative value', { values: [-2, 1], accuracy: { relative: 0.01 } }, 'negative', 'box.values[0]'],
    ['without steps', { step: 0, maximum: 10, accuracy: { relative: 0.01 } }, 'not-positive', 'box.step'],
    [
      'that ends before it begins',
      { step: 1, minimum: 11, maximum: 10, accuracy: { relative: 0 } },
      'band-reversed',
      'box.minimum',
    ],
    [
      'with a step that leaves no value',
      { step: 20, minimum: 1, maximum: 10, accuracy: { relative: 0 } },
      'wrong-count',
      'box.step',
    ],
    ['of no accuracy', { step: 1, maximum: 10, accuracy: {} }, 'missing-member', 'box.accuracy.relative'],
    [
      'with an accuracy of 100 %',
      { step: 1, maximum: 10, accuracy: { relative: 1 } },
      'out-of-range',
      'box.accuracy.relative',
    ],
  ])('refuses a box %s', (_, box, code, path) => {
    expect(faultOf(() => challengesFor(quality, box as ResistanceBox))).toEqual([code, path]);
  });
});

/** A place inside limits, from −1 to 1. */
const place = valueBetween(-1, 1);

const cases = fc.record({
  low: valueBetween(3, 15),
  width: valueBetween(60, 200),
  tolerance: valueBetween(0.5, 8),
  fraction: valueBetween(0.2, 0.6),
  spread: valueBetween(0, 0.1),
  series: valueBetween(0, 2),
  seriesLimits: valueBetween(0, 0.3),
  relative: valueBetween(0, 0.02),
  absolute: valueBetween(0, 0.3),
  box: fc.constantFrom<object>(
    { step: 1, maximum: 999 },
    { step: 0.1, maximum: 500 },
    { values: [0, 1, 2, 5, 8, 10, 15, 20, 30, 50, 80, 100, 120, 150, 200, 300] },
  ),
  atLow: place,
  atHigh: place,
  atRise: place,
  atSeries: place,
  baselineOff: place,
  valueOff: place,
});

/** The stated monitor with its box, and a real one with a real box inside their limits. */
function bench(c: Parameters<Parameters<typeof cases.map>[0]>[0]) {
  const lowTolerance = Math.min(c.tolerance, c.low / 2);
  const rise = { fraction: c.fraction, tolerance: Math.min(c.spread, c.fraction / 2), baseline: 'at-start' } as const;
  const stated: Monitor = {
    kind: 'contact-quality',
    lower: { resistance: c.low, tolerance: { absolute: lowTolerance } },
    upper: { resistance: c.low + c.width, tolerance: { absolute: c.tolerance } },
    rise,
    series: { resistance: c.series, limits: c.seriesLimits },
  };
  const box = { ...c.box, accuracy: { relative: c.relative, absolute: c.absolute } } as ResistanceBox;
  const real = {
    lower: c.low + c.atLow * lowTolerance,
    upper: c.low + c.width + c.atHigh * c.tolerance,
    fraction: c.fraction + c.atRise * rise.tolerance,
    series: Math.max(0, c.series + c.atSeries * c.seriesLimits),
  };
  const connected = (set: number | 'open', off: number) =>
    set === 'open' ? Number.POSITIVE_INFINITY : Math.max(0, set + off * (c.relative * set + c.absolute));
  /** Whether the real monitor alarms at a challenge, by its state machine. */
  const alarms = ({ baseline, set }: AlarmChallenge, at = real): boolean => {
    const monitor: Monitor = {
      kind: 'contact-quality',
      lower: { resistance: at.lower },
      upper: { resistance: at.upper },
      rise: { fraction: at.fraction, baseline: 'at-start' },
      series: { resistance: at.series },
    };
    // A link is used for a short: the box is not in the circuit.
    const value = set === 0 ? 0 : connected(set, c.valueOff);
    const resistance = Float64Array.from(
      baseline === undefined ? [value] : [connected(baseline, c.baselineOff), value],
    );
    return monitorStates(monitor, { interval: 1, resistance }).alarms.length > 0;
  };
  return { stated, box, real, alarms };
}

describe('challenges against simulated monitors', () => {
  it('a monitor inside its tolerances meets every challenge, wherever it and the bench are inside their limits', () => {
    fc.assert(
      fc.property(cases, (c) => {
        const { stated, box, alarms } = bench(c);
        for (const challenge of challengesFor(stated, box).challenges.filter(isAlarm)) {
          expect(alarms(challenge), JSON.stringify(challenge)).toBe(challenge.kind === 'must-alarm');
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('a monitor whose upper trip point is outside what is proven fails a challenge', () => {
    fc.assert(
      fc.property(cases, valueBetween(0.01, 20), fc.boolean(), (c, beyond, isAbove) => {
        const { stated, box, real, alarms } = bench(c);
        const { thresholds, challenges } = challengesFor(stated, box);
        const proven = thresholds.find(({ limit }) => limit === 'upper')?.proven;
        if (!proven) return;
        const upper = isAbove ? (proven.upper as number) + beyond : (proven.lower as number) - beyond;
        if (upper <= real.lower) return;
        const faulty = { ...real, upper };
        const failed = challenges
          .filter(isAlarm)
          .filter(({ limit, baseline }) => limit === 'upper' && baseline === undefined)
          .filter((challenge) => alarms(challenge, faulty) !== (challenge.kind === 'must-alarm'));
        expect(failed.length).toBeGreaterThan(0);
      }),
      { numRuns: 1000 },
    );
  });
});
