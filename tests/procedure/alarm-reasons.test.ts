import { describe, expect, it } from 'vitest';
import { type Monitor, monitorStates } from '../../src/monitor/index.js';
import {
  assessReadings,
  type ChallengeReading,
  type MonitorTrace,
  makeRecord,
  type Plan,
  type Readings,
  recomputeRecord,
} from '../../src/procedure/index.js';
import { recordCsv, recordHtml, recordMarkdown, recordText, worksheetCsv } from '../../src/report/index.js';
import {
  parseFindings,
  parseReadings,
  parseRecord,
  readReadingsCsv,
  safeParseReadings,
  safeReadReadingsCsv,
} from '../../src/schema/index.js';
import { monitorWithLimits, planWithMonitor, readingsOf } from './documents.js';

const models: readonly Monitor[] = [
  monitorWithLimits,
  { ...monitorWithLimits, rise: { fraction: 0.4, tolerance: 0.05, baseline: 'lowest' } },
  { kind: 'contact-quality', rise: { fraction: 0.4, tolerance: 0.05, baseline: 'at-start' }, alarmDelay: 1 },
  { kind: 'continuity', upper: { resistance: 20, tolerance: { absolute: 4 } }, alarmDelay: 1 },
];
const plan = planWithMonitor(monitorWithLimits);
const challenges = plan.monitorThresholds?.challenges ?? [];
const numberOf = (kind: string, limit: string): number =>
  challenges.find((challenge) => challenge.kind === kind && challenge.limit === limit)?.number as number;
const readingsWith = (given: Partial<Readings>): Readings => ({
  ...readingsOf({ point: '1', value: 0.7 }),
  ...given,
});
const seen = (challenge: number, alarm: boolean, more: Partial<ChallengeReading> = {}): ChallengeReading => ({
  challenge,
  alarm,
  phase: 'as-found',
  ...more,
});
const findingOf = (reading: ChallengeReading) =>
  assessReadings(plan, readingsWith({ monitorChallenges: [reading] })).monitorChallenges.find(
    ({ number }) => number === reading.challenge,
  );

describe('the reason of an alarm at a challenge', () => {
  it.each(models)('to be expected is what the model gives at that resistance: %j', (model) => {
    const made = planWithMonitor(model);
    const found = assessReadings(made, readingsWith({})).monitorChallenges;
    expect(found.some(({ mustAlarm }) => mustAlarm)).toBe(true);
    for (const { set, baseline, mustAlarm, expectedReason } of found) {
      const steps = [
        ...(baseline === undefined ? [] : [{ time: 0, resistance: baseline }]),
        { time: 10, resistance: set },
      ];
      const reasons = monitorStates(model, { steps, end: 30 }).alarms.map(({ reason }) => reason);
      expect(mustAlarm ? [expectedReason] : []).toEqual(reasons);
      if (!mustAlarm) expect(expectedReason).toBeUndefined();
    }
  });

  it('is kept beside the verdict where it is the expected one', () => {
    const finding = findingOf(seen(numberOf('must-alarm', 'lower'), true, { alarmReason: 'below-lower' }));
    expect(finding).toMatchObject({ verdict: 'pass', alarmReason: 'below-lower', expectedReason: 'below-lower' });
    expect(finding).not.toHaveProperty('warnings');
  });

  it('is a warning, and no verdict, where it is another', () => {
    const number = numberOf('must-alarm', 'lower');
    const finding = findingOf(seen(number, true, { alarmReason: 'above-upper' }));
    expect(finding).toMatchObject({
      verdict: 'pass',
      warnings: [
        {
          code: 'alarm-reason-differs',
          message: `Challenge ${number}, short circuit: the reason that the monitor gave is "above the upper limit", that of the stated monitor is "below the lower limit". It changes no verdict: find out which of its limits the monitor applied.`,
        },
      ],
    });
  });

  it('of an alarm that must not come is kept, and compared with nothing', () => {
    const finding = findingOf(seen(numberOf('must-not-alarm', 'upper'), true, { alarmReason: 'rise' }));
    expect(finding).toMatchObject({ verdict: 'fail', alarmReason: 'rise' });
    expect(finding).not.toHaveProperty('expectedReason');
    expect(finding).not.toHaveProperty('warnings');
  });

  it('of the steps of a sweep is compared too, each other reason once', () => {
    const up = challenges.find(({ kind, limit }) => kind === 'sweep' && limit === 'upper');
    if (up?.kind !== 'sweep') throw new Error('the plan has no sweep');
    const reasons = ['rise', 'rise', 'above-upper'] as const;
    const warningsOf = (values: readonly number[]) =>
      assessReadings(
        plan,
        readingsWith({
          monitorChallenges: values.map((set, i) => {
            const alarmReason = set > 150 ? reasons[i % 3] : undefined;
            return seen(up.number, set > 150, { set, ...(alarmReason === undefined ? {} : { alarmReason }) });
          }),
        }),
      ).monitorTrips[0]?.warnings.filter(({ code }) => code === 'alarm-reason-differs');
    expect(warningsOf([141, 146, 152, 154, 156, 158])?.map(({ message }) => message)).toEqual([
      `Challenge ${up.number}, at 154 Ω, 156 Ω: the reason that the monitor gave is "rise over the baseline", that of the stated monitor is "above the upper limit". It changes no verdict: find out which of its limits the monitor applied.`,
    ]);
    const down = challenges.find((entry) => entry.kind === 'sweep' && entry.limit === 'upper' && entry !== up);
    const started = [158, 154, 139, 137].map((set, i) =>
      seen(down?.number as number, set > 140, { set, ...(i < 2 ? { alarmReason: 'not-yet-accepted' as const } : {}) }),
    );
    const trips = assessReadings(plan, readingsWith({ monitorChallenges: started })).monitorTrips[0];
    expect(trips?.warnings.map(({ code }) => code)).not.toContain('alarm-reason-differs');
  });

  it('without an alarm, or of no known kind, is refused by name', () => {
    const path = 'monitorChallenges[0].alarmReason';
    expect(() => findingOf(seen(1, false, { alarmReason: 'rise' }))).toThrow(
      expect.objectContaining({ code: 'contradiction', path }),
    );
    expect(() => findingOf(seen(1, true, { alarmReason: 'loose' as 'rise' }))).toThrow(
      expect.objectContaining({ code: 'unknown-choice', path }),
    );
    const codes = (reading: object) => {
      const result = safeParseReadings(readingsWith({ monitorChallenges: [reading as ChallengeReading] }));
      return result.ok ? [] : result.faults.map(({ code, path: at }) => `${code} at ${at}`);
    };
    expect(codes(seen(1, false, { alarmReason: 'rise' }))).toEqual([`contradiction at ${path}`]);
    expect(codes({ ...seen(1, true), alarmReason: 'loose' })).toEqual([`unknown-choice at ${path}`]);
    expect(codes(seen(1, true, { alarmReason: 'rise' }))).toEqual([]);
  });
});

describe('the reason of an alarm on a trace', () => {
  const trace = (alarms: MonitorTrace['alarms'], change: Partial<MonitorTrace> = {}): MonitorTrace => ({
    phase: 'as-found',
    of: 'set',
    time: [0, 10, 20],
    resistance: [60, 170, 60],
    end: 30,
    alarms,
    ...change,
  });
  const found = (given: MonitorTrace, from: Plan = plan) =>
    assessReadings(from, readingsWith({ monitorTraces: [given] })).monitorTraces[0];

  it('agrees, differs or is not noted', () => {
    const agrees = found(trace([{ from: 11, to: 20, reason: 'above-upper' }]));
    expect(agrees?.rows).toMatchObject([
      { verdict: 'pass', alarmReason: 'above-upper', expectedReason: 'above-upper' },
    ]);
    expect(agrees?.warnings).toEqual([]);
    const differs = found(trace([{ from: 11, to: 20, reason: 'below-lower' }]));
    expect(differs?.rows).toMatchObject([{ verdict: 'pass', alarmReason: 'below-lower' }]);
    expect(differs?.warnings).toMatchObject([
      {
        code: 'alarm-reason-differs',
        message:
          'Alarm noted at 11 s: the reason that the monitor gave is "below the lower limit", that of the stated monitor is "above the upper limit". It changes no verdict: find out which of its limits the monitor applied.',
      },
    ]);
    expect(found(trace([{ from: 11, to: 20 }]))?.rows[0]).not.toHaveProperty('alarmReason');
  });

  it('says so where the resistance was beyond both limits', () => {
    const both = found(trace([{ from: 11, to: 20, reason: 'rise' }]), planWithMonitor(models[1] as Monitor));
    expect(both?.warnings[0]?.message).toContain('is "above the upper limit".');
    expect(both?.warnings[0]?.message).toContain('The resistance was beyond both limits.');
  });

  it('is compared with nothing where the bench leaves the limit open, the trace begins in alarm, or the alarm is false', () => {
    const doubtful = trace([{ from: 13, to: 20, reason: 'rise' }], { resistance: [60, 155, 60] });
    const began = trace([{ from: 0, to: 12, reason: 'above-upper' }], {
      startsIn: 'alarm',
      resistance: [170, 60, 60],
    });
    const untrue = trace([{ from: 25, to: 28, reason: 'rise' }], { resistance: [60, 60, 60] });
    for (const given of [doubtful, began, untrue]) {
      expect(found(given)?.warnings).toEqual([]);
      expect(found(given)?.rows[0]?.alarmReason).toBe(given.alarms[0]?.reason);
      expect(found(given)?.rows[0]).not.toHaveProperty('expectedReason');
    }
  });

  it('of no known kind is refused by name', () => {
    expect(() => found(trace([{ from: 11, reason: 'loose' as 'rise' }]))).toThrow(
      expect.objectContaining({ code: 'unknown-choice', path: 'monitorTraces[0].alarms[0].reason' }),
    );
  });

  it('stands with those of the challenges in documents and in every form of the record', () => {
    const number = numberOf('must-alarm', 'lower');
    const readings = readingsWith({
      monitorChallenges: [seen(number, true, { alarmReason: 'above-upper' })],
      monitorTraces: [trace([{ from: 11, to: 20, reason: 'below-lower' }])],
    });
    expect(parseReadings(JSON.parse(JSON.stringify(readings)))).toEqual(readings);
    const record = makeRecord(plan, readings);
    const copy = JSON.parse(JSON.stringify(record));
    expect(parseFindings(copy.findings)).toEqual(record.findings);
    expect(parseRecord(copy)).toEqual(record);
    expect(recomputeRecord(copy)).toEqual({ same: true, differences: [] });
    for (const form of [recordText, recordMarkdown, recordHtml]) {
      const flat = form(record).replace(/\s+/g, ' ');
      expect(flat).toContain('Reason');
      expect(flat).toMatch(new RegExp(`Challenge ${number}, short circuit: the reason that the monitor gave is`));
      expect(flat).toContain('Alarm noted at 11 s: the reason that the monitor gave is');
    }
    const [header = '', ...rows] = recordCsv(record).split('\r\n');
    const column = header.split(',').indexOf('alarm reason');
    expect(header.split(',')[column + 1]).toBe('expected alarm reason');
    expect(rows.find((row) => row.startsWith('monitor challenge'))).toContain('above-upper,below-lower,');
    expect(rows.find((row) => row.startsWith('monitor trace'))).toContain('below-lower,above-upper,');
    const silent = recordText(makeRecord(plan, readingsWith({ monitorChallenges: [seen(number, true)] })));
    expect(silent).not.toMatch(/Reason it gave|Reason {2}/);
  });
});

it('the CSV of a record has no challenge, sweep or trip as left that nobody made', () => {
  const number = numberOf('must-alarm', 'lower');
  const sweep = challenges.find(({ kind, limit }) => kind === 'sweep' && limit === 'upper')?.number as number;
  const steps = [141, 152].map((set) => seen(sweep, set > 150, { set }));
  const rowsOf = (again: readonly ChallengeReading[]) => {
    const readings = readingsWith({
      readings: [
        { point: '1', phase: 'as-found', quantity: 'current', value: 0.7 },
        { point: '1', phase: 'as-left', quantity: 'current', value: 0.7 },
      ],
      monitorChallenges: [seen(number, true), ...steps, ...again],
    });
    return recordCsv(makeRecord(plan, readings))
      .split('\r\n')
      .filter((row) => /^monitor (challenge|trip),.*,as-left,/.test(row))
      .map((row) => row.split(',').slice(0, 2).join(' '));
  };
  expect(rowsOf([])).toEqual([]);
  expect(rowsOf([seen(number, true, { phase: 'as-left' })])).toContain(`monitor challenge ${number}`);
});

describe('the column of reasons in a sheet of readings', () => {
  const read = (cell: string, reading = 'alarm') =>
    readReadingsCsv(`point,reading,alarm reason\nmonitor/1,${reading},${cell}`).monitorChallenges;
  const faultOf = (row: string) => {
    const result = safeReadReadingsCsv(`point,reading,alarm reason\n${row}`);
    return result.ok ? [] : result.faults.map(({ code, path, hint }) => [code, path, ...(hint ? [hint] : [])]);
  };
  const place = 'line 2, column 3 (alarm reason)';

  it('is on the worksheet, and read', () => {
    expect(worksheetCsv(plan).split('\r\n')[0]).toContain(',alarm reason,');
    expect(read('above-upper')).toMatchObject([{ alarm: true, alarmReason: 'above-upper' }]);
    expect(read('Not yet accepted')).toMatchObject([{ alarmReason: 'not-yet-accepted' }]);
    expect(read('')?.[0]).not.toHaveProperty('alarmReason');
  });

  it('takes no other words, and says which are meant', () => {
    expect(faultOf('monitor/1,alarm,too high')).toEqual([['unknown-choice', place, 'Did you mean "above-upper"?']]);
    expect(faultOf('monitor/1,alarm,too low')).toEqual([['unknown-choice', place, 'Did you mean "below-lower"?']]);
    expect(faultOf('monitor/1,alarm,rise over baseline')).toEqual([['unknown-choice', place, 'Did you mean "rise"?']]);
    expect(faultOf('monitor/1,alarm,constructor')).toEqual([['unknown-choice', place]]);
  });

  it('is empty where there was no alarm, or no challenge', () => {
    expect(faultOf('monitor/1,no alarm,rise')).toEqual([['contradiction', place]]);
    expect(faultOf('1,1 A,rise')).toEqual([['contradiction', place]]);
  });
});
