import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Monitor, monitorStates } from '../../src/monitor/index.js';
import { valueBetween } from '../generators.js';
import { slowMonitor } from './slow-monitor.js';

const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined, freq: 3 });

const limitsOf = fc
  .record({
    low: valueBetween(2, 20),
    width: valueBetween(20, 150),
    backLow: maybe(valueBetween(0, 8)),
    backHigh: maybe(valueBetween(0, 8)),
    sides: fc.constantFrom('both', 'lower', 'upper', 'none'),
  })
  .map(({ low, width, backLow, backHigh, sides }) => {
    const limit = (resistance: number, hysteresis: number | undefined) =>
      hysteresis === undefined ? { resistance } : { resistance, hysteresis };
    return {
      ...(sides === 'both' || sides === 'lower' ? { lower: limit(low, backLow) } : {}),
      ...(sides === 'both' || sides === 'upper' ? { upper: limit(low + width, backHigh) } : {}),
    };
  });

const riseOf = fc
  .record({
    fraction: valueBetween(0.1, 0.8),
    back: maybe(valueBetween(0, 0.09)),
    baseline: fc.constantFrom('at-start' as const, 'lowest' as const, 'tracked' as const),
    timeConstant: valueBetween(0.5, 40),
    floor: maybe(valueBetween(1, 60)),
  })
  .map(({ fraction, back, baseline, timeConstant, floor }) => ({
    fraction,
    baseline,
    ...(back === undefined ? {} : { hysteresis: back }),
    ...(baseline === 'tracked' ? { timeConstant } : {}),
    ...(floor === undefined ? {} : { floor }),
  }));

const delays = maybe(fc.integer({ min: 0, max: 6 }));

const monitors: fc.Arbitrary<Monitor> = fc
  .record({ limits: limitsOf, rise: maybe(riseOf), alarm: delays, release: delays, series: maybe(valueBetween(0, 3)) })
  .filter(({ limits, rise }) => limits.lower !== undefined || limits.upper !== undefined || rise !== undefined)
  .map(({ limits, rise, alarm, release, series }) => ({
    kind: 'contact-quality',
    ...limits,
    ...(rise === undefined ? {} : { rise }),
    ...(alarm === undefined ? {} : { alarmDelay: alarm }),
    ...(release === undefined ? {} : { releaseDelay: release }),
    ...(series === undefined ? {} : { series: { resistance: series } }),
  }));

/** Runs of a resistance: most near the limits, some short, some open. */
const runs = fc.array(
  fc.record({
    ohms: fc.oneof(
      { weight: 8, arbitrary: valueBetween(1, 200) },
      { weight: 4, arbitrary: fc.integer({ min: 0, max: 180 }) },
      { weight: 1, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
    ),
    ticks: fc.integer({ min: 1, max: 9 }),
  }),
  { minLength: 1, maxLength: 25 },
);

const settings = { numRuns: 3000 };

describe('monitorStates against the slow reference', () => {
  it('samples at equal intervals, over random monitors and traces', () => {
    fc.assert(
      fc.property(monitors, runs, fc.boolean(), (monitor, list, startsInAlarm) => {
        const ohms = list.flatMap(({ ohms, ticks }) => Array<number>(ticks).fill(ohms));
        const slow = slowMonitor(monitor, ohms, startsInAlarm);
        const trace = { interval: 1, resistance: Float64Array.from(ohms) };
        const fast = monitorStates(monitor, trace, { startsIn: startsInAlarm ? 'alarm' : 'accepted' });
        expect(fast.alarms.map(({ reason, since, from, to }) => ({ reason, since, from, to }))).toEqual(slow.alarms);
        expect(fast.pendingSince).toBe(slow.pendingSince);
      }),
      settings,
    );
  });

  it('steps and timed samples give what equal intervals give', () => {
    fc.assert(
      fc.property(monitors, runs, (monitor, list) => {
        const ohms = list.flatMap(({ ohms, ticks }) => Array<number>(ticks).fill(ohms));
        let tick = 0;
        const steps = list.map(({ ohms: resistance, ticks }) => {
          const time = tick;
          tick += ticks;
          return { time, resistance: resistance === Number.POSITIVE_INFINITY ? ('open' as const) : resistance };
        });
        const end = ohms.length - 1;
        const byInterval = monitorStates(monitor, { interval: 1, resistance: Float64Array.from(ohms) });
        const byTime = monitorStates(monitor, {
          time: ohms.map((_, i) => i),
          resistance: Float64Array.from(ohms),
          end,
        });
        const bySteps = monitorStates(monitor, { steps, end });
        const plain = ({ alarms }: typeof bySteps) =>
          alarms.map(({ reason, since, from, to }) => [reason, since, from, to]);
        expect(byTime).toEqual(byInterval);
        expect(plain(bySteps)).toEqual(plain(byInterval));
        expect(bySteps.pendingSince).toBe(byInterval.pendingSince);
        const near = bySteps.baseline === null ? null : expect.closeTo(bySteps.baseline, 9);
        expect(byInterval.baseline).toEqual(near);
      }),
      settings,
    );
  });

  it('states fill the trace without a gap and take turns', () => {
    fc.assert(
      fc.property(monitors, runs, (monitor, list) => {
        const time = list.map((_, i) => i * 1.7);
        const resistance = Float64Array.from(list, ({ ohms }) => ohms);
        const { states, alarms, start, end, timeInAlarm } = monitorStates(monitor, { time, resistance, end: 1e3 });
        let at = start;
        let stopped = 0;
        for (const { from, to, state, outputPermitted } of states) {
          expect(from).toBe(at);
          expect(to).toBeGreaterThan(from);
          expect(outputPermitted).toBe(state === 'accepted');
          if (state === 'alarm') stopped += to - from;
          at = to;
        }
        expect(at).toBe(end);
        expect(timeInAlarm).toBeCloseTo(stopped, 9);
        expect(JSON.parse(JSON.stringify(alarms))).toEqual(alarms);
      }),
    );
  });
});
