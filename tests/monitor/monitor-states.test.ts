import { describe, expect, it } from 'vitest';
import { checkMonitor, explainAlarm, type Monitor, monitorStates } from '../../src/monitor/index.js';
import { faultOf } from './fault-of.js';

const continuity: Monitor = { kind: 'continuity', upper: { resistance: 20 } };
const quality: Monitor = {
  kind: 'contact-quality',
  lower: { resistance: 5, hysteresis: 3 },
  upper: { resistance: 135, hysteresis: 10 },
  rise: { fraction: 0.4, baseline: 'lowest', hysteresis: 0.05 },
  alarmDelay: 0.5,
  releaseDelay: 1,
};
const brief = ({ alarms }: ReturnType<typeof monitorStates>) =>
  alarms.map(({ reason, from, to }) => [reason, from, to]);

describe('monitorStates', () => {
  it('accepts the limits themselves', () => {
    const monitor: Monitor = { kind: 'contact-quality', lower: { resistance: 5 }, upper: { resistance: 135 } };
    const trace = { interval: 1, resistance: [5, 135, 5, 4.999, 5, 135.001, 135] };
    expect(brief(monitorStates(monitor, trace))).toEqual([
      ['below-lower', 3, 4],
      ['above-upper', 5, 6],
    ]);
  });

  it('counts a sum of binary fractions that should be on the limit as on it', () => {
    const monitor: Monitor = { ...continuity, upper: { resistance: 0.3 }, series: { resistance: 0.2 } };
    expect(0.1 + 0.2 > 0.3).toBe(true);
    expect(monitorStates(monitor, { interval: 1, resistance: [0.1, 0.1] }).alarms).toEqual([]);
  });

  it('counts a time of binary fractions that should be the delay as the delay', () => {
    const monitor: Monitor = { ...continuity, alarmDelay: 0.3 };
    // In binary the ninth sample comes before the sixth and the delay, and the seventh after the fourth and the delay.
    expect(9 * 0.1).toBeLessThan(6 * 0.1 + 0.3);
    expect(7 * 0.1).toBeGreaterThan(4 * 0.1 + 0.3);
    for (const first of [4, 6]) {
      const resistance = Array.from({ length: 12 }, (_, i) => (i >= first && i < first + 3 ? 30 : 1));
      const { alarms } = monitorStates(monitor, { interval: 0.1, resistance });
      expect(alarms).toHaveLength(1);
      expect(alarms[0]?.from).toBeCloseTo((first + 3) * 0.1, 12);
    }
  });

  it('needs a passage without a break for the whole delay', () => {
    const monitor: Monitor = { ...continuity, alarmDelay: 3 };
    const trace = { interval: 1, resistance: [1, 30, 30, 1, 30, 30, 30, 30, 1] };
    expect(brief(monitorStates(monitor, trace))).toEqual([['above-upper', 7, 8]]);
  });

  it('releases by hysteresis and release delay, at times between the samples', () => {
    const steps = [
      { time: 0, resistance: 50 },
      { time: 10, resistance: 140 },
      { time: 20, resistance: 130 },
      { time: 30, resistance: 60 },
    ];
    const { alarms, states } = monitorStates(quality, { steps, end: 40 });
    expect(alarms).toEqual([
      {
        reason: 'above-upper',
        since: 10,
        from: 10.5,
        to: 31,
        resistance: 140,
        seen: 140,
        limit: 135,
        baseline: 50,
      },
    ]);
    expect(states.map(({ from, to, outputPermitted }) => [from, to, outputPermitted])).toEqual([
      [0, 10.5, true],
      [10.5, 31, false],
      [31, 40, true],
    ]);
  });

  it('an open circuit is no baseline, and alarms where any upper limit applies', () => {
    const rise: Monitor = { kind: 'contact-quality', rise: { fraction: 0.4, baseline: 'at-start' } };
    const open = monitorStates(rise, { time: [0, 1, 2], resistance: ['open', 50, 'open'] });
    expect(open.alarms).toMatchObject([
      { reason: 'rise', since: 2, seen: 'open', resistance: 'open', baseline: 50, limit: 70 },
    ]);
    expect(monitorStates(continuity, { time: [0], resistance: ['open'] }).alarms).toHaveLength(1);
  });

  it('a slow rise escapes a tracked baseline and not the lowest one', () => {
    const resistance = Float64Array.from({ length: 2000 }, (_, i) => 50 * 1.0005 ** i);
    const rise = { fraction: 0.4, baseline: 'lowest' } as const;
    const lowest = monitorStates({ kind: 'contact-quality', rise }, { interval: 1, resistance });
    const trackedRise = { fraction: 0.4, baseline: 'tracked', timeConstant: 60 } as const;
    const tracked = monitorStates({ kind: 'contact-quality', rise: trackedRise }, { interval: 1, resistance });
    // 1.0005^i passes 1.4 at i = ln 1.4 / ln 1.0005 = 673.1.
    expect(lowest.alarms[0]?.from).toBe(674);
    expect(tracked.alarms).toEqual([]);
    // A baseline of an exponential rise lags by the factor of its time constant.
    const k = Math.log(1.0005);
    const settled = (resistance[1999] as number) * (Math.expm1(1 / 60) / Math.expm1(1 / 60 + k));
    expect(tracked.baseline).toBeCloseTo(settled, 6);
  });

  it('a short does not lower the baseline', () => {
    const { baseline } = monitorStates(quality, { interval: 1, resistance: [50, 0, 0, 50, 50, 50] });
    expect(baseline).toBe(50);
  });

  it('starts in alarm when asked, until the resistance is accepted', () => {
    const trace = { time: [0, 4], resistance: ['open', 50] as const, end: 9 };
    const { alarms, states } = monitorStates(quality, trace, { startsIn: 'alarm' });
    expect(brief({ alarms } as ReturnType<typeof monitorStates>)).toEqual([['not-yet-accepted', 0, 5]]);
    expect(states[0]).toEqual({ state: 'alarm', from: 0, to: 5, outputPermitted: false });
  });

  it('says what it took for granted, and what is pending at the end', () => {
    const bare = monitorStates(continuity, { interval: 1, resistance: [1] });
    expect(bare.assumptions).toHaveLength(3);
    const full = monitorStates(quality, { interval: 0.1, resistance: [50, 200, 200] });
    expect(full.assumptions).toEqual([]);
    expect(full.pendingSince).toBe(0.1);
    expect(full.alarms).toEqual([]);
  });

  it('takes JSON in and gives JSON out', () => {
    const monitor = JSON.parse(JSON.stringify(quality)) as Monitor;
    const trace = JSON.parse(JSON.stringify({ interval: 1, resistance: [50, 'open', 50, 50] }));
    const result = monitorStates(monitor, trace);
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it('keeps nothing of ten million samples but the alarms', () => {
    const resistance = new Float64Array(10_000_000).fill(50);
    resistance.fill(200, 4_000_000, 4_000_100);
    const { alarms, states } = monitorStates(quality, { interval: 0.01, resistance });
    expect(alarms).toHaveLength(1);
    expect(alarms[0]?.from).toBeCloseTo(40_000.5, 6);
    expect(states).toHaveLength(3);
  });
});

describe('explainAlarm', () => {
  it('refuses a monitor that contradicts itself, and numbers that are none', () => {
    const [alarm] = monitorStates(quality, { time: [0, 1], resistance: [50, 900], end: 9 }).alarms;
    if (alarm === undefined) throw new Error('The monitor did not alarm.');
    expect(faultOf(() => explainAlarm({ ...quality, alarmDelay: Number.NaN }, alarm))).toEqual([
      'not-a-number',
      'monitor.alarmDelay',
    ]);
    expect(faultOf(() => explainAlarm(quality, { ...alarm, since: Number.NaN }))?.[0]).toBe('result-out-of-range');
  });

  it('leaves out what an open circuit does not have', () => {
    const { alarms } = monitorStates(quality, { time: [0, 1], resistance: [50, 'open'], end: 9 });
    const steps = alarms.flatMap((alarm) => explainAlarm(quality, alarm));
    expect(steps.map(({ formula }) => formula)).toEqual(['monitor-alarm-time', 'monitor-upper-release']);
  });

  it('has what was seen, and no more, of a trace that starts in alarm', () => {
    const { alarms } = monitorStates(quality, { interval: 1, resistance: [50, 50] }, { startsIn: 'alarm' });
    const steps = alarms.flatMap((alarm) => explainAlarm(quality, alarm));
    expect(steps.map(({ formula, value }) => [formula, value])).toEqual([['monitor-seen', 50]]);
  });
});

describe('bad monitors and traces', () => {
  const rise = { fraction: 0.4, baseline: 'lowest' } as const;

  it.each<[string, unknown, string, string]>([
    ['no limits', { kind: 'continuity' }, 'no-limits', 'monitor'],
    ['an unknown kind', { ...continuity, kind: 'magic' }, 'unknown-choice', 'monitor.kind'],
    ['thresholds reversed', { ...continuity, lower: { resistance: 30 } }, 'band-reversed', 'monitor.lower.resistance'],
    [
      'thresholds that leave nothing',
      { ...continuity, lower: { resistance: 20 } },
      'band-reversed',
      'monitor.lower.resistance',
    ],
    [
      'a negative threshold',
      { kind: 'continuity', upper: { resistance: -20 } },
      'not-positive',
      'monitor.upper.resistance',
    ],
    [
      'a threshold that is text',
      { kind: 'continuity', upper: { resistance: '20' } },
      'not-a-number',
      'monitor.upper.resistance',
    ],
    [
      'a hysteresis wider than the window',
      { ...quality, upper: { resistance: 135, hysteresis: 131 } },
      'hysteresis-too-wide',
      'monitor.upper.hysteresis',
    ],
    [
      'a lower hysteresis wider than the window',
      { ...quality, upper: { resistance: 135 }, lower: { resistance: 5, hysteresis: 131 } },
      'hysteresis-too-wide',
      'monitor.lower.hysteresis',
    ],
    [
      'a negative hysteresis',
      { ...continuity, upper: { resistance: 20, hysteresis: -1 } },
      'negative',
      'monitor.upper.hysteresis',
    ],
    ['a rise of 0', { ...quality, rise: { ...rise, fraction: 0 } }, 'not-positive', 'monitor.rise.fraction'],
    ['a rise in percent', { ...quality, rise: { ...rise, fraction: 40 } }, 'not-a-fraction', 'monitor.rise.fraction'],
    [
      'a rise that never ends',
      { ...quality, rise: { ...rise, hysteresis: 0.4 } },
      'hysteresis-too-wide',
      'monitor.rise.hysteresis',
    ],
    [
      'a rise whose tolerance swallows it',
      { ...quality, rise: { ...rise, tolerance: 0.4 } },
      'out-of-range',
      'monitor.rise.tolerance',
    ],
    ['a rise without contact', { ...continuity, rise }, 'contradiction', 'monitor.rise'],
    [
      'an unknown baseline',
      { ...quality, rise: { ...rise, baseline: 'mean' } },
      'unknown-choice',
      'monitor.rise.baseline',
    ],
    [
      'a tracked baseline without its time',
      { ...quality, rise: { ...rise, baseline: 'tracked' } },
      'missing-member',
      'monitor.rise.timeConstant',
    ],
    [
      'a time constant without its use',
      { ...quality, rise: { ...rise, timeConstant: 3 } },
      'contradiction',
      'monitor.rise.timeConstant',
    ],
    ['a negative floor', { ...quality, rise: { ...rise, floor: -3 } }, 'negative', 'monitor.rise.floor'],
    ['a negative delay', { ...quality, alarmDelay: -1 }, 'negative', 'monitor.alarmDelay'],
    [
      'a release delay that is no number',
      { ...quality, releaseDelay: Number.NaN },
      'not-a-number',
      'monitor.releaseDelay',
    ],
    ['a negative lead', { ...quality, series: { resistance: -1 } }, 'negative', 'monitor.series.resistance'],
    [
      'a tolerance without parts',
      { kind: 'continuity', upper: { resistance: 20, tolerance: {} } },
      'wrong-count',
      'monitor.upper.tolerance',
    ],
    [
      'a display without steps',
      { ...quality, display: { resolution: 0, maximum: 999, open: 'over-range' } },
      'not-positive',
      'monitor.display.resolution',
    ],
  ])('%s', (_, monitor, code, path) => {
    expect(faultOf(() => checkMonitor(monitor as Monitor))).toEqual([code, path]);
  });

  it.each<[string, unknown, string, string]>([
    ['nothing in it', { interval: 1, resistance: [] }, 'wrong-count', 'trace'],
    ['a negative resistance', { interval: 1, resistance: [1, -1] }, 'negative', 'trace.resistance[1]'],
    ['a negative resistance in alarm', { interval: 1, resistance: [1, 30, -1] }, 'negative', 'trace.resistance[2]'],
    [
      'a resistance that is no number',
      { interval: 1, resistance: [1, Number.NaN] },
      'not-a-number',
      'trace.resistance[1]',
    ],
    [
      'a step that is no number',
      { steps: [{ time: 0, resistance: Number.NaN }] },
      'not-a-number',
      'trace.steps[0].resistance',
    ],
    ['no form that is known', { resistance: [1] }, 'missing-member', 'trace.time'],
    ['no interval', { interval: 0, resistance: [1] }, 'not-positive', 'trace.interval'],
    ['time that runs backwards', { time: [0, 2, 1], resistance: [1, 1, 1] }, 'not-ascending', 'trace.time[2]'],
    [
      'steps that run backwards',
      {
        steps: [
          { time: 1, resistance: 1 },
          { time: 0, resistance: 1 },
        ],
      },
      'not-ascending',
      'trace.steps[1].time',
    ],
    ['a time that is no number', { time: [0, Number.NaN], resistance: [1, 1] }, 'not-a-number', 'trace.time[1]'],
    ['fewer times than resistances', { time: [0], resistance: [1, 1] }, 'wrong-count', 'trace.time'],
    ['an end before the last', { time: [0, 2], resistance: [1, 1], end: 1 }, 'out-of-range', 'trace.end'],
  ])('a trace with %s', (_, trace, code, path) => {
    expect(faultOf(() => monitorStates(continuity, trace as { interval: number; resistance: number[] }))).toEqual([
      code,
      path,
    ]);
  });
});
