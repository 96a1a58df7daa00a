import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Monitor, type MonitorSweep, monitorStates, type TripBench, tripPoints } from '../../src/monitor/index.js';
import { valueBetween } from '../generators.js';
import { faultOf } from './fault-of.js';

const monitor: Monitor = {
  kind: 'contact-quality',
  lower: { resistance: 5, tolerance: { absolute: 1 }, hysteresis: 2 },
  upper: { resistance: 135, tolerance: { absolute: 5 }, hysteresis: 10 },
  rise: { fraction: 0.4, tolerance: 0.05, baseline: 'at-start', hysteresis: 0.05 },
  alarmDelay: 1,
  series: { resistance: 0.3, limits: 0.1 },
};
const bench: TripBench = { monitor, accuracy: { relative: 0.005, absolute: 0.05 } };
const sweepOf = (
  from: readonly number[],
  alarmAt: (set: number) => boolean,
  rest: Partial<MonitorSweep> = {},
): MonitorSweep => ({
  ...rest,
  steps: from.map((set) => ({ set, alarm: alarmAt(set) })),
});
const up = [118, 122, 126, 130, 134, 138, 142];
const down = [...up].reverse();

describe('tripPoints', () => {
  it('finds trip and release by arithmetic that can be done by hand', () => {
    const sweeps = [sweepOf(up, (set) => set > 132), sweepOf(down, (set) => set > 124)];
    const { points, hysteresis } = tripPoints(sweeps, bench);
    const [trip, release] = points;
    // Between 130 and 134, and between 126 and 122, with 0.3 in series.
    expect(trip).toMatchObject({ event: 'trip', limit: 'upper', values: [132.3], repeatability: null });
    expect(release).toMatchObject({ event: 'release', limit: 'upper', value: 124.3, outcome: 'not-stated' });
    // Step 4/√12, box (0.005 · 132 + 0.05)/√3, fixture 0.1/√3.
    const u = Math.hypot(4 / Math.sqrt(12), 0.71 / Math.sqrt(3), 0.1 / Math.sqrt(3));
    expect(trip?.standardUncertainty).toBeCloseTo(u, 12);
    expect(trip).toMatchObject({ coverageFactor: 2, degreesOfFreedom: 'infinite', nominal: 135 });
    expect(release?.nominal).toBeNull();
    expect(trip?.tolerance).toEqual({ lower: 130, upper: 140 });
    // 132.3 ± 2.45 reaches below 130.
    expect(trip?.outcome).toBe('no-verdict');
    expect(trip?.withoutVerdict[0]).toEqual({ lower: 130 - 2 * u, upper: 130 + 2 * u });
    expect(hysteresis).toMatchObject([{ limit: 'upper', value: expect.closeTo(8, 12), stated: 10 }]);
    // Two steps, and the part of the value that is left of a difference of 8.
    expect(hysteresis[0]?.standardUncertainty).toBeCloseTo(
      Math.hypot(4 / Math.sqrt(6), (0.005 * 8) / Math.sqrt(3)),
      12,
    );
    expect(hysteresis[0]?.expandedUncertainty).toBe(2 * (hysteresis[0]?.standardUncertainty ?? 0));
  });

  it('tells inside from outside when the step is fine', () => {
    const fine = (at: number) => sweepOf([at - 0.1, at + 0.1], (set) => set > at);
    const outcome = (at: number) => tripPoints([fine(at)], bench).points[0]?.outcome;
    expect(outcome(135)).toBe('inside');
    expect(outcome(128)).toBe('outside');
    expect(outcome(142)).toBe('outside');
    expect(outcome(130)).toBe('no-verdict');
  });

  it('knows the lower limit by the direction, and both limits in one sweep', () => {
    const wide = [3, 4.5, 6, 8, 130, 134, 138];
    const { points } = tripPoints([sweepOf(wide, (set) => set < 7 || set > 133)], bench);
    expect(points.map(({ limit, event, values }) => [limit, event, values[0]])).toEqual([
      ['upper', 'trip', 132.3],
      ['lower', 'release', 7.3],
    ]);
    const falling = tripPoints([sweepOf([...wide].reverse(), (set) => set < 5)], bench);
    expect(falling.points).toMatchObject([{ limit: 'lower', event: 'trip', value: 5.25 + 0.3 }]);
  });

  it('repeatability over several sweeps, with the mean and its part of the uncertainty', () => {
    const at = (trip: number) => sweepOf([trip - 0.5, trip + 0.5], (set) => set > trip);
    const { points, working } = tripPoints([at(134), at(135), at(137)], bench);
    expect(points[0]?.value).toBeCloseTo(406 / 3 + 0.3, 12);
    expect(points[0]?.repeatability).toBeCloseTo(Math.sqrt(7 / 3), 12);
    const withMean = working.find(({ formula }) => formula === 'monitor-trip-uncertainty');
    expect(withMean?.inputs['u_m']).toBeCloseTo(Math.sqrt(7 / 9), 12);
    // Welch and Satterthwaite, G.2b: only the mean of three has a finite number, 2.
    const u = points[0]?.standardUncertainty as number;
    expect(points[0]?.degreesOfFreedom).toBeCloseTo((2 * u ** 4) / (7 / 9) ** 2, 10);
  });

  it('a coverage factor by the degrees of freedom, for points and hysteresis', () => {
    const coverageFactor = (degrees: number | 'infinite'): number => (degrees === 'infinite' ? 2 : 3);
    const at = (trip: number) => sweepOf([trip - 0.5, trip + 0.5], (set) => set > trip);
    const back = sweepOf([127, 126], (set) => set > 126.5);
    const { points, hysteresis } = tripPoints([at(134), at(135), back], { ...bench, coverageFactor });
    expect(points.map((point) => [point.event, point.coverageFactor])).toEqual([
      ['trip', 3],
      ['release', 2],
    ]);
    expect(points[0]?.expandedUncertainty).toBe(3 * (points[0]?.standardUncertainty ?? 0));
    expect(hysteresis[0]?.expandedUncertainty).toBe(3 * (hysteresis[0]?.standardUncertainty ?? 0));
    const bad = () => tripPoints([at(134)], { ...bench, coverageFactor: () => 0 });
    expect(faultOf(bad)).toEqual(['not-positive', 'coverageFactor']);
  });

  it('a rise is judged from its baseline, which blurs the limit', () => {
    const sweep = sweepOf([68, 69, 70, 71, 72], (set) => set > 70.5, { baseline: 50 });
    const back = sweepOf([71, 69, 67, 65], (set) => set > 66, { baseline: 50 });
    const { points, hysteresis } = tripPoints([sweep, back], { ...bench, coverageFactor: 1 });
    expect(points[0]).toMatchObject({ limit: 'rise', event: 'trip', baseline: 50, value: 70.8, outcome: 'inside' });
    expect(points[0]?.tolerance.lower).toBeCloseTo(50.3 * 1.35, 12);
    expect(points[0]?.tolerance.upper).toBeCloseTo(50.3 * 1.45, 12);
    // Baseline: (0.005 · 50 + 0.05 + 0.1) · 1.4.
    const parts = [1 / Math.sqrt(12), 0.4025 / Math.sqrt(3), 0.1 / Math.sqrt(3), 0.56 / Math.sqrt(3)];
    expect(points[0]?.standardUncertainty).toBeCloseTo(Math.hypot(...parts), 12);
    expect(hysteresis[0]?.stated).toBeCloseTo(0.05 * 50.3, 12);
  });

  it('a baseline that may lie above the floor blurs the limit, one that surely lies below does not', () => {
    const rise = { fraction: 0.4, tolerance: 0.05, baseline: 'at-start' } as const;
    const uncertainty = (floor: number) => {
      const sweep = sweepOf([68, 72], (set) => set > 70, { baseline: 50 });
      const { points } = tripPoints([sweep], { ...bench, monitor: { ...monitor, rise: { ...rise, floor } } });
      return points[0]?.standardUncertainty as number;
    };
    // The monitor sees 50.3 of the baseline, give or take 0.4.
    expect(uncertainty(50.6)).toBe(uncertainty(0));
    expect(uncertainty(50.8)).toBeLessThan(uncertainty(0));
  });

  it('the hysteresis of a lower limit counts upwards', () => {
    const sweeps = [sweepOf([8, 6, 4], (set) => set < 5), sweepOf([4, 6, 8], (set) => set < 7)];
    expect(tripPoints(sweeps, bench).hysteresis).toMatchObject([
      { limit: 'lower', value: expect.closeTo(2, 12), stated: 2 },
    ]);
  });

  it('response times against the delay, blurred by the watch', () => {
    const at = (responseTime: number) => sweepOf(up, (set) => set > 132, { responseTime });
    const outcome = (time: number, timeLimits: number) =>
      tripPoints([at(0.4), at(time)], { ...bench, timeLimits }).response;
    expect(outcome(0.6, 0.2)).toEqual({ shortest: 0.4, longest: 0.6, mean: 0.5, count: 2, outcome: 'inside' });
    expect(outcome(0.9, 0.2)?.outcome).toBe('no-verdict');
    expect(outcome(1.3, 0.2)?.outcome).toBe('outside');
    expect(tripPoints([sweepOf(up, (set) => set > 132)], bench).response).toBeNull();
  });

  it('a sweep that never trips is a finding, and a fault where it went far enough', () => {
    const silent = (values: readonly number[], rest = {}) =>
      tripPoints([sweepOf(values, () => false, rest)], bench).unchanged[0];
    expect(silent(up)).toEqual({
      sweep: 0,
      finding: 'never-trips',
      limit: 'upper',
      last: 142,
      seen: 142.3,
      standardUncertainty: expect.closeTo(Math.hypot(0.005 * 142 + 0.05, 0.1) / Math.sqrt(3), 12),
      nominal: 135,
      tolerance: { lower: 130, upper: 140 },
      outcome: 'outside',
    });
    expect(silent([130, 138])?.outcome).toBe('no-verdict');
    expect(silent([8, 2])).toMatchObject({ limit: 'lower', outcome: 'outside' });
    expect(silent([60, 80], { baseline: 50 })).toMatchObject({ limit: 'rise', outcome: 'outside', baseline: 50 });
    const stuck = tripPoints([sweepOf(down, () => true)], bench);
    expect(stuck.unchanged[0]).toMatchObject({ finding: 'never-releases', limit: 'upper', last: 118 });
    expect(stuck.points).toEqual([]);
  });

  it('a monitor that chatters is warned of, and its first trip counts', () => {
    const { points, warnings } = tripPoints([sweepOf(up, (set) => set === 130 || set > 135)], bench);
    expect(points[0]).toMatchObject({ event: 'trip', value: 128.3 });
    expect(warnings).toHaveLength(1);
    expect(warnings[0]?.code).toBe('sweep-chatters');
  });

  it('gives JSON', () => {
    const result = tripPoints([sweepOf(up, (set) => set > 132, { responseTime: 0.4 })], bench);
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it.each<[string, readonly MonitorSweep[], Partial<TripBench>, string, string]>([
    ['no sweep', [], {}, 'wrong-count', 'sweeps'],
    ['a sweep of one step', [sweepOf([1], () => true)], {}, 'wrong-count', 'sweeps[0].steps'],
    ['a sweep that turns', [sweepOf([1, 2, 1.5], () => true)], {}, 'sweep-turns', 'sweeps[0].steps[2].set'],
    ['a sweep that stands', [sweepOf([2, 2], () => true)], {}, 'sweep-turns', 'sweeps[0].steps[1].set'],
    ['a negative resistance', [sweepOf([-1, 2], () => true)], {}, 'negative', 'sweeps[0].steps[0].set'],
    ['a negative time', [sweepOf([1, 2], () => true, { responseTime: -1 })], {}, 'negative', 'sweeps[0].responseTime'],
    ['no accuracy', [sweepOf(up, () => true)], { accuracy: {} }, 'missing-member', 'accuracy.relative'],
    ['a coverage factor of 0', [sweepOf(up, () => true)], { coverageFactor: 0 }, 'not-positive', 'coverageFactor'],
    [
      'a baseline of a monitor that has none',
      [sweepOf(up, () => true, { baseline: 50 })],
      { monitor: { kind: 'continuity', upper: { resistance: 135 } } },
      'contradiction',
      'sweeps[0].baseline',
    ],
    [
      'an alarm that is a word',
      [
        {
          steps: [
            { set: 1, alarm: 'yes' as unknown as boolean },
            { set: 2, alarm: true },
          ],
        },
      ],
      {},
      'wrong-type',
      'sweeps[0].steps[0].alarm',
    ],
  ])('refuses %s', (_, sweeps, change, code, path) => {
    expect(faultOf(() => tripPoints(sweeps, { ...bench, ...change }))).toEqual([code, path]);
  });
});

describe('trip points of simulated monitors', () => {
  const cases = fc.record({
    trip: valueBetween(60, 180),
    hysteresis: valueBetween(0, 15),
    step: valueBetween(0.2, 5),
    offset: valueBetween(0, 1),
    series: valueBetween(0, 2),
    relative: valueBetween(0, 0.02),
    off: valueBetween(-1, 1),
  });

  it('the true point lies within step, box and fixture of what is found', () => {
    fc.assert(
      fc.property(cases, ({ trip, hysteresis, step, offset, series, relative, off }) => {
        const real: Monitor = {
          kind: 'continuity',
          upper: { resistance: trip, hysteresis },
          series: { resistance: series },
        };
        const start = (trip - hysteresis - series) * 0.97 - 6 * step + offset * step;
        const count = Math.ceil((hysteresis + trip * 0.06) / step) + 14;
        const values = Array.from({ length: count }, (_, i) => Math.max(start, 1) + i * step);
        // One trace up and down again, a second for each value: the alarm at each is what the sweeps write down.
        const trace = [...values, ...[...values].reverse()];
        const connected = Float64Array.from(trace, (set) => set * (1 + off * relative));
        const { alarms } = monitorStates(real, { interval: 1, resistance: connected });
        const isAlarm = trace.map((_, t) => alarms.some(({ from, to }) => t >= from && (to === null || t < to)));
        const rows = trace.map((set, t) => ({ set, alarm: isAlarm[t] as boolean }));
        const sweeps = [{ steps: rows.slice(0, count) }, { steps: rows.slice(count) }];
        const { points } = tripPoints(sweeps, { monitor: real, accuracy: { relative } });
        const widest = step / 2 + relative * 2 * trip + 1e-9;
        const [tripped, released] = ['trip', 'release'].map((event) => points.find((point) => point.event === event));
        expect(Math.abs((tripped?.value as number) - trip)).toBeLessThanOrEqual(widest);
        expect(Math.abs((released?.value as number) - (trip - hysteresis))).toBeLessThanOrEqual(widest);
      }),
      { numRuns: 500 },
    );
  });
});
