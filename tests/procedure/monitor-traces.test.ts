import { describe, expect, it } from 'vitest';
import {
  assessReadings,
  type MonitorTrace,
  makeRecord,
  type Plan,
  planVerification,
  type Readings,
  recomputeRecord,
} from '../../src/procedure/index.js';
import { recordCsv, recordHtml, recordMarkdown, recordText } from '../../src/report/index.js';
import { parseFindings, parseReadings, safeParseReadings } from '../../src/schema/index.js';
import { monitorWithLimits, planWithMonitor, ratedOutput, readingsOf, specificationOf } from './documents.js';

const plan = planWithMonitor(monitorWithLimits);
const steps = (alarms: MonitorTrace['alarms'], change: Partial<MonitorTrace> = {}): MonitorTrace => ({
  phase: 'as-found',
  of: 'set',
  time: [0, 10, 20, 30, 40],
  resistance: [60, 170, 60, 5, 60],
  end: 50,
  alarms,
  ...change,
});
const readingsWith = (...monitorTraces: readonly MonitorTrace[]): Readings => ({
  ...readingsOf({ point: '1', value: 0.7 }),
  monitorTraces,
});
const rowsOf = (trace: MonitorTrace, from: Plan = plan) =>
  assessReadings(from, readingsWith(trace)).monitorTraces[0]?.rows ?? [];

describe('a trace of the monitor', () => {
  it('has the alarms of the stated monitor, and each noted one in time passes', () => {
    const trace = steps([
      { from: 11.5, to: 20.4 },
      { from: 31, to: 40.2 },
    ]);
    const [found] = assessReadings(plan, readingsWith(trace)).monitorTraces;
    expect(found?.expected.alarms).toMatchObject([
      { reason: 'above-upper', since: 10, from: 12, to: 20 },
      { reason: 'below-lower', since: 30, from: 32, to: 40 },
    ]);
    expect(found?.rows).toMatchObject([
      { what: 'alarm above the upper limit since 10 s', value: 1.5, limits: { upper: 2 }, verdict: 'pass' },
      { what: 'alarm below the lower limit since 30 s', value: 1, verdict: 'pass' },
    ]);
    expect(found?.working.map(({ formula }) => formula)).toContain('monitor-alarm-time');
  });

  it('an alarm that comes late fails, by the rule of the plan', () => {
    const late = steps([
      { from: 13.4, to: 20.4 },
      { from: 31, to: 40.2 },
    ]);
    expect(rowsOf(late)[0]).toMatchObject({ value: expect.closeTo(3.4, 12), verdict: 'fail', reason: 'above-upper' });
    expect(rowsOf(late)[0]?.message).toBe(
      'Alarm noted at 13.4 s, 3.4 s after the limit was passed, permitted are 2 s: above the upper limit. The alarm trips late.',
    );
    expect(assessReadings(plan, readingsWith(late)).final.verdict).toBe('fail');
    const near = steps([
      { from: 11.8, to: 20.4 },
      { from: 31, to: 40.2 },
    ]);
    expect(rowsOf(near)[0]?.verdict).toBe('pass');
    const guarded = planWithMonitor(monitorWithLimits, { decisionRule: { kind: 'guarded-acceptance', ratio: 1 } });
    expect(rowsOf(near, guarded)[0]).toMatchObject({ verdict: 'fail', reason: 'in-guard-band', simpleVerdict: 'pass' });
    const { timing: _, ...untimed } = guarded.bench;
    const unknown = planVerification(guarded.specification, untimed, guarded.options);
    expect(rowsOf(near, unknown)[0]).toMatchObject({ verdict: 'not judged', reason: 'no-decision', isStated: true });
  });

  it('an alarm that never comes fails where it stayed away long enough', () => {
    const silent = steps([{ from: 11, to: 20.4 }]);
    expect(rowsOf(silent)[1]).toMatchObject({ verdict: 'fail', isStated: true });
    expect(rowsOf(silent)[1]?.message).toBe(
      'No alarm in 10 s beyond the limit, permitted are 2 s: an alarm after that is above the upper limit.',
    );
    // Exactly as long as the delay: the model alarms when the time is over, the real one may be about to.
    const short = steps([], { time: [0, 10, 12], resistance: [60, 170, 60], end: 20 });
    expect(rowsOf(short)[0]).toMatchObject({ verdict: 'not judged', reason: 'nothing-to-compare', isStated: true });
  });

  it('an alarm while everything is inside is a false one; one near a limit says nothing', () => {
    const at = (resistance: number) =>
      rowsOf(steps([{ from: 5, to: 6 }], { time: [0], resistance: [resistance], end: 10 }))[0];
    expect(at(60)).toMatchObject({ verdict: 'fail', reason: 'false-alarm', isStated: true });
    expect(at(60)?.message).toBe('The resistance was inside every limit: a false alarm.');
    expect(at(145)).toMatchObject({ verdict: 'not judged', isStated: false });
    // Beyond the limit for less than the delay, which is the longest permitted, not the shortest.
    const brief = steps([{ from: 11, to: 12 }], { time: [0, 10, 10.9], resistance: [60, 170, 60], end: 20 });
    expect(rowsOf(brief)).toMatchObject([{ verdict: 'not judged', isStated: false }]);
  });

  it('an excursion inside the tolerance is told and leaves nothing open', () => {
    const trace = steps([], { time: [0, 10, 20], resistance: [60, 155, 60], end: 30 });
    expect(rowsOf(trace)).toMatchObject([{ verdict: 'not judged', isStated: false }]);
    expect(assessReadings(plan, readingsWith(trace)).final.fail).toBe(0);
    // Surely beyond begins where tolerance and box end, on the way of a ramp: 158 / 0.995 + 0.1 is about 158.9.
    const ramp = steps([{ from: 21, to: 25 }], {
      time: [0, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 25],
      resistance: [60, 150, 151, 152, 153, 154, 155, 156, 157, 158, 159, 160, 161, 162, 60],
      end: 30,
    });
    expect(rowsOf(ramp)[0]).toMatchObject({ value: 2, verdict: 'pass' });
  });

  it('an alarm that ends while the limit is still passed fails', () => {
    const early = steps([
      { from: 11, to: 15 },
      { from: 31, to: 40.2 },
    ]);
    expect(rowsOf(early)[0]).toMatchObject({ verdict: 'fail', reason: 'early-release' });
    expect(rowsOf(early)[0]?.message).toBe(
      'The alarm noted at 11 s ended at 15 s, while the resistance was beyond the limit until 20 s.',
    );
  });

  it('a time that is on the limit in decimals is on it', () => {
    const trace = steps([{ from: 4.4 }], { time: [0, 2.4], resistance: [60, 170], end: 20 });
    expect(4.4 - 2.4).toBeGreaterThan(2);
    expect(rowsOf(trace)[0]).toMatchObject({ value: 2, verdict: 'pass', reason: 'close-to-limit' });
  });

  it('an alarm may be both late and too short', () => {
    const both = steps([
      { from: 14, to: 15 },
      { from: 31, to: 40.2 },
    ]);
    expect(rowsOf(both)[0]?.message).toBe(
      'The alarm noted at 14 s ended at 15 s, while the resistance was beyond the limit until 20 s. The alarm trips late.',
    );
  });

  it('one that still stands when the next is due says nothing of the next', () => {
    const rows = rowsOf(steps([{ from: 11 }]));
    expect(rows[1]?.message).toBe('The alarm before it still stood: nothing is told of this one.');
  });

  it('a rise is compared at its baseline, blurred by the box', () => {
    const rise = { fraction: 0.4, tolerance: 0.05, baseline: 'at-start' } as const;
    const rising = planWithMonitor({ kind: 'contact-quality', rise, alarmDelay: 2 });
    const at = (resistance: number, alarms: MonitorTrace['alarms']) =>
      rowsOf(steps(alarms, { time: [0, 10], resistance: [50, resistance], end: 20 }), rising)[0];
    expect(at(75, [{ from: 11 }])).toMatchObject({ what: 'alarm by rise above 70 Ω since 10 s', verdict: 'pass' });
    // 50 · 1.45 = 72.5, and box and baseline are off by 0.35 and 0.46 each.
    expect(at(73, [{ from: 11 }])).toMatchObject({ verdict: 'not judged', isStated: false });
    expect(at(60, [{ from: 15, to: 16 }])).toMatchObject({ verdict: 'fail', reason: 'false-alarm' });
    expect(at(67.3, [{ from: 15, to: 16 }])).toMatchObject({ verdict: 'not judged', isStated: false });
  });

  it('of displayed resistances counts the display, not lead and fixture', () => {
    const display = { resolution: 1, maximum: 999, open: 'over-range', tolerance: { absolute: 4 } } as const;
    const shown = planWithMonitor({ ...monitorWithLimits, display }, { fixture: { resistance: 20 } });
    const at = (resistance: number | 'open', of: 'set' | 'displayed') =>
      rowsOf(steps([{ from: 11 }], { of, time: [0, 10], resistance: [60, resistance], end: 20 }), shown)[0];
    expect(at(163, 'displayed')).toMatchObject({ verdict: 'pass' });
    expect(at(162, 'displayed')).toMatchObject({ isStated: false });
    expect(at(163 - 20, 'set')).toMatchObject({ verdict: 'pass' });
    expect(at('open', 'displayed')).toMatchObject({ what: 'alarm of an open circuit since 10 s', verdict: 'pass' });
    const bare = planWithMonitor({
      ...monitorWithLimits,
      display: { resolution: 1, maximum: 999, open: 'over-range' },
    });
    const [found] = assessReadings(bare, readingsWith(steps([], { of: 'displayed' }))).monitorTraces;
    expect(found?.warnings.map(({ code }) => code)).toEqual(['tolerance-missing']);
  });

  it('without a stated delay an alarm that comes passes, and one that does not leaves it open', () => {
    const { alarmDelay: _, ...prompt } = monitorWithLimits;
    const rows = rowsOf(steps([{ from: 15, to: 20.2 }]), planWithMonitor(prompt));
    expect(rows).toMatchObject([
      { verdict: 'pass', value: 5 },
      { verdict: 'not judged', isStated: true },
    ]);
  });

  it('that begins in alarm is told of', () => {
    const trace = steps([{ from: 0, to: 5.5 }], { startsIn: 'alarm', time: [0, 5], resistance: ['open', 60], end: 9 });
    expect(rowsOf(trace)).toMatchObject([{ what: 'alarm not yet accepted since 0 s', isStated: false }]);
  });

  it('without box, display or thresholds is not judged, and says so', () => {
    const { resistanceBox: _, ...boxless } = plan.bench;
    const codes = (made: Plan, of: 'set' | 'displayed') => {
      const { monitorTraces, warnings } = assessReadings(made, readingsWith(steps([], { of })));
      expect(monitorTraces).toEqual([]);
      return warnings.map(({ code }) => code);
    };
    expect(codes(planVerification(plan.specification, boxless), 'set')).toContain('box-not-on-bench');
    expect(codes(plan, 'displayed')).toContain('missing-member');
    expect(codes(planVerification(specificationOf(ratedOutput), plan.bench), 'set')).toContain('reading-extra');
  });

  it('counts as left where one was recorded again', () => {
    const late = steps([
      { from: 13.4, to: 20.4 },
      { from: 31, to: 40.2 },
    ]);
    const good = steps(
      [
        { from: 11, to: 20.4 },
        { from: 31, to: 40.2 },
      ],
      { phase: 'as-left' },
    );
    const { asFound, final } = assessReadings(plan, readingsWith(late, good));
    expect([asFound?.fail, final.fail]).toEqual([1, 0]);
    expect(assessReadings(plan, readingsWith(late)).final.fail).toBe(1);
  });

  it.each<[string, Partial<MonitorTrace>, string, string]>([
    ['time that runs backwards', { time: [0, 10, 5, 30, 40] }, 'not-ascending', 'time[2]'],
    ['columns of two lengths', { resistance: [60, 170] }, 'wrong-count', 'resistance'],
    ['no sample', { time: [], resistance: [] }, 'wrong-count', 'time'],
    ['a negative resistance', { resistance: [60, -1, 60, 5, 60] }, 'negative', 'resistance[1]'],
    ['an end before the last time', { end: 39 }, 'out-of-range', 'end'],
    ['an alarm beyond the end', { alarms: [{ from: 51 }] }, 'out-of-range', 'alarms[0].from'],
    ['a release beyond the end', { alarms: [{ from: 1, to: 51 }] }, 'out-of-range', 'alarms[0].to'],
    ['a release before its alarm', { alarms: [{ from: 5, to: 4 }] }, 'not-ascending', 'alarms[0].to'],
    [
      'alarms out of order',
      {
        alarms: [
          { from: 5, to: 8 },
          { from: 7, to: 9 },
        ],
      },
      'not-ascending',
      'alarms[1].from',
    ],
    ['an alarm without end before another', { alarms: [{ from: 5 }, { from: 7 }] }, 'missing-member', 'alarms[0].to'],
    ['a time that is none', { time: [0, Number.NaN, 20, 30, 40] }, 'not-a-number', 'time[1]'],
    ['another kind of resistances', { of: 'guessed' as 'set' }, 'unknown-choice', 'of'],
  ])('refuses %s', (_, change, code, path) => {
    expect(() => assessReadings(plan, readingsWith(steps([], change)))).toThrow(
      expect.objectContaining({ code, path: `monitorTraces[0].${path}` }),
    );
  });
});

describe('documents with traces', () => {
  const display = { resolution: 1, maximum: 999, open: 'over-range', tolerance: { absolute: 4 } } as const;
  const guarded = planWithMonitor(
    { ...monitorWithLimits, display },
    { decisionRule: { kind: 'guarded-acceptance', ratio: 1 } },
  );
  const readings = readingsWith(
    steps(
      [
        { from: 13.4, to: 20.4 },
        { from: 31, to: 40.2 },
      ],
      { name: 'Contact lost <b>' },
    ),
    steps([], { of: 'displayed', time: [0, 1], resistance: [60, 61], end: 2 }),
  );
  const record = makeRecord(guarded, readings);

  it('read back, and recompute to the same', () => {
    expect(parseReadings(JSON.parse(JSON.stringify(readings)))).toEqual(readings);
    expect(parseFindings(JSON.parse(JSON.stringify(record.findings)))).toEqual(record.findings);
    expect(recomputeRecord(JSON.parse(JSON.stringify(record)))).toEqual({ same: true, differences: [] });
  });

  it('take text with units, and refuse columns that do not fit', () => {
    const trace = {
      phase: 'as-found',
      of: 'set',
      time: ['0 s', '500 ms'],
      resistance: ['1.2 kohm', 'open'],
      alarms: [{ from: '0.4 s' }],
    };
    const document = (change: object) => ({ ...readings, monitorTraces: [{ ...trace, ...change }] });
    expect(parseReadings(document({})).monitorTraces?.[0]).toEqual({
      ...trace,
      time: [0, 0.5],
      resistance: [1200, 'open'],
      alarms: [{ from: 0.4 }],
    });
    const faultsOf = (change: object): unknown[] => {
      const result = safeParseReadings(document(change));
      return result.ok ? [] : result.faults.map(({ code, path }) => [code, path]);
    };
    expect(faultsOf({ time: ['0 s'] })).toEqual([['wrong-count', 'monitorTraces[0].resistance']]);
    expect(faultsOf({ time: ['1 s', '0.5 s'] })).toEqual([['not-ascending', 'monitorTraces[0].time[1]']]);
    expect(faultsOf({ time: [], resistance: [] })).toEqual([
      ['wrong-count', 'monitorTraces[0].time'],
      ['wrong-count', 'monitorTraces[0].resistance'],
    ]);
    expect(faultsOf({ resistance: ['-1 ohm', 'open'] })[0]).toEqual(['negative', 'monitorTraces[0].resistance[0]']);
  });

  it('show the trace with thresholds and alarms in the HTML, and the alarms in every form', () => {
    const html = recordHtml(record);
    const [picture = ''] = html.match(/<svg[^>]*aria-labelledby="monitor-traces[\s\S]*?<\/svg>/) ?? [];
    for (const text of [
      'upper limit',
      'lower limit',
      '150 Ω (142–158)',
      '1.4 s late',
      'alarm must stand',
      'alarm noted',
    ]) {
      expect(picture).toContain(text);
    }
    expect(picture).toContain('An alarm must stand from 12 s to 20 s: above upper.');
    expect(picture).toContain('Contact lost &lt;b&gt;');
    const flat = (text: string): string => text.replace(/\s+/g, ' ');
    for (const text of [html, recordText(record), recordMarkdown(record)]) {
      expect(flat(text)).toContain('The alarm trips late');
      expect(flat(text)).toContain('Trace 2: no alarm had to stand, and none was noted.');
    }
    expect(recordCsv(record)).toMatch(
      /monitor trace,1,alarm above the upper limit since 10 s,+as-found,time,s,+2,3\.4,/,
    );
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
