import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explainAcceptanceBand, priorFromReliability } from '../../src/decision/index.js';
import type { Monitor } from '../../src/monitor/index.js';
import {
  assessReadings,
  type Bench,
  type ChallengeReading,
  makeRecord,
  type Plan,
  type PlanDecisionRule,
  planVerification,
  type Readings,
  recomputeRecord,
} from '../../src/procedure/index.js';
import {
  recordCsv,
  recordHtml,
  recordMarkdown,
  recordText,
  worksheetCsv,
  worksheetText,
} from '../../src/report/index.js';
import {
  parseBench,
  parseFindings,
  parsePlan,
  parseReadings,
  parseSpecification,
  readReadingsCsv,
} from '../../src/schema/index.js';
import { bench as plainBench, ratedOutput, readingsOf, specificationOf } from './documents.js';

const model: Monitor = {
  kind: 'contact-quality',
  lower: { resistance: 10, tolerance: { absolute: 3 }, hysteresis: 2 },
  upper: { resistance: 150, tolerance: { absolute: 8 }, hysteresis: 10 },
  alarmDelay: 2,
};
const bench: Bench = {
  ...plainBench,
  resistanceBox: { name: 'Decade', step: 1, maximum: 999, accuracy: { relative: 0.005, absolute: 0.1 } },
};
const specification = {
  ...specificationOf({ ...ratedOutput, points: [{ setting: 200, load: 400 }] }),
  monitor: { connection: 'Box between the contacts', model },
};
const plan = planVerification(specification, bench);
const challenges = plan.monitorThresholds?.challenges ?? [];
const numberOf = (test: (challenge: (typeof challenges)[number]) => boolean): number =>
  challenges.find(test)?.number as number;

/** What a monitor that trips at these values, after this time, does at every challenge of the plan. */
function played(lower: number, upper: number, responseTime?: number, from: Plan = plan): ChallengeReading[] {
  const alarms = (set: number): boolean => set < lower || set > upper;
  const at = (challenge: number, set: number, alarm: boolean, isSweep: boolean): ChallengeReading => ({
    challenge,
    ...(isSweep ? { set } : {}),
    alarm,
    ...(alarm && responseTime !== undefined ? { responseTime } : {}),
    phase: 'as-found',
  });
  return (from.monitorThresholds?.challenges ?? []).flatMap((challenge) => {
    if (challenge.kind === 'sweep') return challenge.values.map((set) => at(challenge.number, set, alarms(set), true));
    const set = challenge.set === 'open' ? Number.MAX_VALUE : challenge.set;
    return [at(challenge.number, set, alarms(set), false)];
  });
}

const readingsWith = (monitorChallenges: readonly ChallengeReading[]): Readings => ({
  ...readingsOf({ point: '1', value: 0.7 }),
  monitorChallenges,
});

describe('a plan with the thresholds of a monitor', () => {
  it('has what must and what must not alarm, sweeps both ways, and their working', () => {
    expect(challenges.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['must-alarm', 'must-not-alarm', 'sweep']),
    );
    expect(challenges.map(({ number }) => number)).toEqual(challenges.map((_, i) => i + 1));
    expect(challenges.find((c) => c.kind === 'must-not-alarm' && c.limit === 'upper')).toMatchObject({
      set: 141,
      instruction: 'Set 141 Ω. It must not alarm. Wait 2 s.',
    });
    expect(plan.monitorThresholds?.thresholds.every(({ working }) => working.length > 0)).toBe(true);
  });

  it('says so where the bench has no box, and is silent where the sheet has no thresholds', () => {
    const without = planVerification(specification, plainBench);
    expect(without.monitorThresholds).toBeUndefined();
    expect(without.warnings.map(({ code }) => code)).toContain('box-not-on-bench');
    expect(planVerification(specificationOf(ratedOutput), bench).monitorThresholds).toBeUndefined();
  });

  it('counts lead and fixture in', () => {
    const fixed = planVerification(specification, { ...bench, fixture: { resistance: 5 } });
    const upper = fixed.monitorThresholds?.challenges.find((c) => c.kind === 'must-not-alarm' && c.limit === 'upper');
    expect(upper).toMatchObject({ set: 136 });
  });

  it('reads rows of the display from its tolerance, after those of the sheet', () => {
    const display = { resolution: 1, maximum: 999, open: 'over-range', tolerance: { absolute: 7 } } as const;
    const sheet = {
      ...specification,
      monitor: { connection: 'x', rows: [{ set: 100, lower: 93, upper: 107 }], model: { ...model, display } },
    };
    const rows = planVerification(sheet, bench).monitor;
    expect(rows[0]).toMatchObject({ number: 1, set: 100, lower: 93 });
    expect(rows.length).toBeGreaterThan(1);
    expect(rows.slice(1).every((row) => row.upper !== undefined)).toBe(true);
  });
});

describe('challenges that were made', () => {
  it('pass with a monitor inside its tolerance, wherever it trips', () => {
    const inside = fc.record({
      lower: fc.double({ min: 7.5, max: 12.5, noNaN: true }),
      upper: fc.double({ min: 143, max: 157, noNaN: true }),
    });
    fc.assert(
      fc.property(inside, ({ lower, upper }) => {
        const { final, monitorChallenges } = assessReadings(plan, readingsWith(played(lower, upper)));
        expect(monitorChallenges.map(({ verdict }) => verdict)).toEqual(monitorChallenges.map(() => 'pass'));
        expect(final.fail).toBe(0);
      }),
      { numRuns: 30 },
    );
  });

  it('fail with one that trips too high, and tell by how much', () => {
    const { monitorChallenges, monitorTrips, final } = assessReadings(plan, readingsWith(played(10, 170)));
    const silent = monitorChallenges.find(({ limit, mustAlarm }) => limit === 'upper' && mustAlarm);
    expect(silent).toMatchObject({ verdict: 'fail', alarm: false });
    expect(silent?.message).toMatch(/no alarm, and it must alarm/);
    const never = monitorTrips[0]?.rows.find(({ what }) => what === 'trip of the upper limit');
    expect(never).toMatchObject({ verdict: 'fail', isStated: true });
    expect(never?.message).toMatch(/No alarm up to 159/);
    expect(final.verdict).toBe('fail');
  });

  it('find trip points with their uncertainty', () => {
    const { monitorTrips } = assessReadings(plan, readingsWith(played(10, 150)));
    const upper = monitorTrips[0]?.rows.find(({ what }) => what === 'trip of the upper limit');
    expect(Math.abs((upper?.value ?? 0) - 150)).toBeLessThanOrEqual(upper?.expanded?.expandedUncertainty ?? 0);
    expect(upper).toMatchObject({ verdict: 'pass', limits: { lower: 142, upper: 158 } });
  });

  it('fail with an alarm that comes late', () => {
    const late = assessReadings(plan, readingsWith(played(10, 150, 3.4)));
    const number = numberOf((c) => c.kind === 'must-alarm' && c.limit === 'upper');
    expect(late.monitorChallenges.find((row) => row.number === number)).toMatchObject({
      verdict: 'fail',
      responseTime: 3.4,
    });
    expect(late.monitorTrips[0]?.rows.find(({ unit }) => unit === 's')).toMatchObject({
      verdict: 'fail',
      value: 3.4,
      limits: { upper: 2 },
      message: '3.4 s, permitted are 2 s: above the upper limit. The alarm trips late.',
    });
    const soon = assessReadings(plan, readingsWith(played(10, 150, 1.9)));
    expect(soon.final.fail).toBe(0);
  });

  it('that are missing leave the verification incomplete; sweeps may be left out', () => {
    expect(assessReadings(plan, readingsWith([])).final.verdict).toBe('incomplete');
    const singles = played(10, 150).filter(({ set }) => set === undefined);
    expect(assessReadings(plan, readingsWith(singles)).final.verdict).toBe('pass');
  });

  it('count as left where they were repeated', () => {
    const repeated = played(10, 150, 1).map((row) => ({ ...row, phase: 'as-left' as const }));
    const { asFound, final } = assessReadings(plan, readingsWith([...played(10, 150, 3.4), ...repeated]));
    expect(asFound?.verdict).toBe('fail');
    expect(final.verdict).toBe('pass');
  });

  it('may be swept several times: each run counts, and a step against the direction is said', () => {
    const twice = [...played(10, 150), ...played(10, 149).filter(({ set }) => set !== undefined)];
    const { monitorTrips } = assessReadings(plan, readingsWith(twice));
    const sweeps = challenges.filter(({ kind }) => kind === 'sweep').length;
    expect(monitorTrips[0]?.sweeps).toHaveLength(2 * sweeps);
    expect(monitorTrips[0]?.rows.some(({ what }) => what.startsWith('hysteresis of the upper limit'))).toBe(true);
    const up = numberOf((c) => c.kind === 'sweep' && c.direction === 'up' && c.limit === 'upper');
    const slip: ChallengeReading = { challenge: up, set: 100, alarm: false, phase: 'as-found' };
    const { warnings } = assessReadings(plan, readingsWith([...played(10, 150), slip])).monitorTrips[0] ?? {
      warnings: [],
    };
    expect(warnings.map(({ code }) => code)).toEqual(['sweep-step-alone']);
  });

  it('leave open what the box cannot verify', () => {
    const coarse = planVerification(specification, {
      ...bench,
      resistanceBox: { values: [0, 20, 50, 100], accuracy: { relative: 0.01 } },
    });
    const missing = coarse.monitorThresholds?.thresholds.filter(({ status }) => status === 'not-verifiable') ?? [];
    expect(missing.length).toBeGreaterThan(0);
    const { final } = assessReadings(
      coarse,
      readingsWith(played(10, 150, undefined, coarse).filter(({ set }) => set === undefined)),
    );
    expect(final).toMatchObject({ verdict: 'incomplete', fail: 0, notJudged: missing.length });
  });

  it('of another plan are listed', () => {
    const { extraChallenges, warnings } = assessReadings(
      plan,
      readingsWith([{ challenge: 99, alarm: true, phase: 'as-found' }]),
    );
    expect(extraChallenges).toHaveLength(1);
    expect(warnings.map(({ code }) => code)).toContain('reading-extra');
    const sweep = numberOf((c) => c.kind === 'sweep');
    const bare = readingsWith([{ challenge: sweep, alarm: true, phase: 'as-found' }]);
    expect(assessReadings(plan, bare).extraChallenges).toHaveLength(1);
  });
});

describe('trip points under the decision rule of the plan', () => {
  const under = (decisionRule: PlanDecisionRule, change: Partial<Bench> = {}): Plan =>
    planVerification(specification, { ...bench, ...change, decisionRule });
  const tripOf = (made: Plan, upper: number, what = 'trip of the upper limit') =>
    assessReadings(made, readingsWith(played(10, upper, undefined, made))).monitorTrips[0]?.rows.find(
      (row) => row.what === what,
    );
  const guarded = under({ kind: 'guarded-acceptance', ratio: 1 });

  it('are accepted inside the limits by U, and not otherwise', () => {
    const good = tripOf(guarded, 150);
    const U = good?.expanded?.expandedUncertainty as number;
    // Step of 2 ohm, box of 0.5 % and 0.1 ohm, at 95 %.
    expect(U).toBeCloseTo(1.959963985 * Math.hypot(2 / Math.sqrt(12), (0.005 * 150 + 0.1) / Math.sqrt(3)), 1);
    expect(good).toMatchObject({ verdict: 'pass', reason: 'inside', limits: { lower: 142, upper: 158 } });
    expect(good?.acceptance?.lower).toBeCloseTo(142 + U, 0);
    expect(good?.acceptance?.lower).toBeGreaterThanOrEqual(142 + U);
    expect(good?.acceptance?.upper).toBeLessThanOrEqual(158 - U);
    expect(good?.conformance?.conforming).toBeGreaterThan(0.999);
    const near = tripOf(guarded, 157.5);
    expect(near).toMatchObject({ verdict: 'fail', reason: 'in-guard-band', simpleVerdict: 'pass' });
    expect(near?.message).toMatch(/too close for the uncertainty: 143\.\d Ω to 156\.\d Ω is accepted; probability/);
  });

  it('have the acceptance limits of the same rule for any point', () => {
    const rules: readonly PlanDecisionRule[] = [
      { kind: 'guarded-rejection', ratio: 1 },
      { kind: 'specific-consumer-risk', risk: 0.05 },
      { kind: 'specific-producer-risk', risk: 0.05 },
      { kind: 'test-uncertainty-ratio', method: 'root-sum-square' },
      { kind: 'global-consumer-risk', risk: 0.02, reliability: 0.9 },
    ];
    for (const rule of rules) {
      const trip = tripOf(under(rule), 150);
      const { acceptance } = explainAcceptanceBand(
        { lower: 142, upper: 158 },
        rule.kind === 'global-consumer-risk'
          ? {
              kind: rule.kind,
              risk: rule.risk,
              prior: priorFromReliability({ lower: 142, upper: 158 }, rule.reliability),
            }
          : rule,
        trip?.expanded ?? {},
      );
      expect(trip?.verdict, rule.kind).toBe('pass');
      // Rounded inward to the last place of U.
      expect((trip?.acceptance?.lower ?? 0) - (acceptance?.lower ?? 0), rule.kind).toBeGreaterThanOrEqual(-1e-9);
      expect((trip?.acceptance?.lower ?? 0) - (acceptance?.lower ?? 0), rule.kind).toBeLessThan(0.1 + 1e-9);
    }
  });

  it('are stated in four ways by the non-binary rule', () => {
    const rule = under({ kind: 'non-binary', ratio: 1 });
    const up = challenges.find((c) => c.kind === 'sweep' && c.direction === 'up' && c.limit === 'upper');
    const found = (upper: number) => {
      const rows = Array.from({ length: 40 }, (_, i) => 131 + i).map((set) => {
        return { challenge: up?.number ?? 0, set, alarm: set > upper, phase: 'as-found' } as const;
      });
      return assessReadings(rule, readingsWith(rows)).monitorTrips[0]?.rows[0];
    };
    const statements = [150, 157, 158, 160].map((upper) => {
      const { value, verdict, reason } = found(upper) ?? {};
      return [value, verdict, reason];
    });
    expect(statements).toEqual([
      [150.5, 'pass', 'inside'],
      [157.5, 'pass', 'conditional-pass'],
      [158.5, 'fail', 'conditional-fail'],
      [160.5, 'fail', 'above-upper'],
    ]);
    expect(tripOf(rule, 150)?.failing?.upper).toBeGreaterThan(158);
  });

  it('are planned with what a sweep can tell, and warned of where it can tell nothing', () => {
    const sweeps = guarded.monitorThresholds?.challenges.filter((c) => c.kind === 'sweep') ?? [];
    const finding = sweeps.filter(({ finds }) => finds !== undefined);
    expect(finding.map(({ limit, direction }) => [limit, direction])).toEqual([
      ['lower', 'down'],
      ['upper', 'up'],
    ]);
    // What is planned is what is found, but for the part of the box that goes with the value.
    const found = tripOf(guarded, 150);
    const planned = finding[1]?.finds;
    expect(planned?.limits).toEqual({ lower: 142, upper: 158 });
    expect(planned?.expandedUncertainty).toBeCloseTo(found?.expanded?.expandedUncertainty as number, 1);
    expect(planned?.acceptance).toEqual(found?.acceptance);
    expect(worksheetText(guarded).replace(/\s+/g, ' ')).toMatch(
      /It finds the point with U 1\.\d Ω: accepted from 143\.\d Ω to 156\.\d Ω\./,
    );
    expect(guarded.monitorThresholds?.warnings.map(({ code }) => code)).toEqual(['rule-not-applicable']);
    const poor = under(
      { kind: 'guarded-acceptance', ratio: 1 },
      {
        resistanceBox: { step: 1, maximum: 999, accuracy: { relative: 0.06 } },
        timing: { limits: 0.3 },
      },
    );
    const { challenges: made = [], warnings = [] } = poor.monitorThresholds ?? {};
    expect(made.some((c) => c.kind === 'sweep' && c.finds?.acceptance === null)).toBe(true);
    expect(warnings.map(({ code }) => code)).toContain('acceptance-empty');
    expect(worksheetText(poor).replace(/\s+/g, ' ')).toContain('none is accepted');
    for (const made of [guarded, poor]) expect(parsePlan(JSON.parse(JSON.stringify(made)))).toEqual(made);
  });

  it('close to a limit are called so, and counted', () => {
    const plain = under({ kind: 'simple-acceptance' });
    expect(tripOf(plain, 157)).toMatchObject({ verdict: 'pass', reason: 'close-to-limit' });
    expect(assessReadings(plain, readingsWith(played(10, 157, undefined, plain))).final.closeToLimit).toBe(1);
  });

  it('that are not reached fail only where none beyond could be accepted', () => {
    const up = challenges.find((c) => c.kind === 'sweep' && c.direction === 'up' && c.limit === 'upper');
    const silentTo = (made: Plan, last: number) => {
      const sets = up?.kind === 'sweep' ? up.values.filter((set) => set <= last) : [];
      const rows = sets.map((set) => ({ challenge: up?.number ?? 0, set, alarm: false, phase: 'as-found' as const }));
      return assessReadings(made, readingsWith(rows)).monitorTrips[0]?.rows[0];
    };
    expect(silentTo(guarded, 155)).toMatchObject({
      verdict: 'not judged',
      reason: 'nothing-to-compare',
      isStated: true,
    });
    expect(silentTo(guarded, 158)).toMatchObject({ verdict: 'fail', reason: 'in-guard-band' });
    expect(silentTo(under({ kind: 'simple-acceptance' }), 157)?.verdict).toBe('not judged');
    expect(silentTo(under({ kind: 'simple-acceptance' }), 159)).toMatchObject({
      verdict: 'fail',
      reason: 'above-upper',
    });
  });

  it('of a release and a hysteresis are told with U, and leave nothing open', () => {
    const release = tripOf(guarded, 150, 'release of the upper limit');
    expect(release).toMatchObject({ verdict: 'not judged', reason: 'no-limits', isStated: false });
    expect(release?.expanded?.coverageProbability).toBe(0.95);
  });

  it('several sweeps widen U by the degrees of freedom', () => {
    const read = [...played(10, 150, undefined, guarded), ...played(10, 146, undefined, guarded)];
    const twice = assessReadings(guarded, readingsWith(read)).monitorTrips[0]?.rows.find(
      ({ what }) => what === 'trip of the upper limit',
    );
    expect(twice?.expanded?.degreesOfFreedom).not.toBe('infinite');
    expect(twice?.expanded?.coverageFactor).toBeGreaterThan(2);
  });

  it('a time is judged with the limits of the watch, and without them only by simple acceptance', () => {
    const timeOf = (made: Plan, time: number) => {
      const { monitorTrips, monitorChallenges } = assessReadings(made, readingsWith(played(10, 150, time, made)));
      return [monitorTrips[0]?.rows.find(({ unit }) => unit === 's'), monitorChallenges[0]] as const;
    };
    const [open, single] = timeOf(guarded, 1);
    expect(open).toMatchObject({ verdict: 'not judged', reason: 'no-decision', isStated: true });
    expect(single).toMatchObject({ verdict: 'not judged', response: { reason: 'no-decision' } });
    const timed = under({ kind: 'guarded-acceptance', ratio: 1 }, { timing: { limits: 0.3 } });
    const [good, goodSingle] = timeOf(timed, 1.5);
    expect(good).toMatchObject({ verdict: 'pass', limits: { upper: 2 } });
    // 1.96 · 0.3/√3 = 0.339; the limit is rounded inward to its last place.
    expect(good?.expanded?.expandedUncertainty).toBeCloseTo(0.33948, 4);
    expect(good?.acceptance?.upper).toBeCloseTo(1.66, 10);
    expect(goodSingle).toMatchObject({ verdict: 'pass', response: { verdict: 'pass' } });
    const [near, nearSingle] = timeOf(timed, 1.8);
    expect(near).toMatchObject({ verdict: 'fail', reason: 'in-guard-band', simpleVerdict: 'pass' });
    expect(nearSingle).toMatchObject({ verdict: 'fail', response: { reason: 'in-guard-band' } });
    expect(timeOf(timed, 3.4)[0]).toMatchObject({ verdict: 'fail', reason: 'above-upper' });
  });

  it('stand in every form of the record, read back and recompute', () => {
    const timed = under({ kind: 'guarded-acceptance', ratio: 1 }, { timing: { limits: 0.3 } });
    const record = makeRecord(timed, readingsWith(played(10, 157.5, 1.5, timed)));
    expect(parseFindings(JSON.parse(JSON.stringify(record.findings)))).toEqual(record.findings);
    expect(parsePlan(JSON.parse(JSON.stringify(record.plan)))).toEqual(record.plan);
    expect(recomputeRecord(record)).toEqual({ same: true, differences: [] });
    const flat = (text: string): string => text.replace(/\s+/g, ' ');
    for (const text of [recordText(record), recordMarkdown(record), recordHtml(record)]) {
      expect(flat(text)).toMatch(/Decision rule for trip points and times: guarded acceptance/);
      expect(flat(text)).toMatch(/too close for the uncertainty/);
      expect(flat(text)).toMatch(/143\.\d/);
    }
    const [head = '', ...lines] = recordCsv(record).split('\r\n');
    const row = lines.find((line) => line.includes('trip of the upper limit'))?.split(',') ?? [];
    const cell = (name: string): string | undefined => row[head.split(',').indexOf(name)];
    expect(cell('reason')).toBe('in-guard-band');
    expect(cell('verdict without guard band')).toBe('pass');
    expect(Number(cell('accept from'))).toBeGreaterThan(143);
    expect(Number(cell('probability of conforming [%]'))).toBeLessThan(97.5);
    expect(() => planVerification(specification, { ...bench, timing: { limits: -1 } })).toThrow(
      expect.objectContaining({ code: 'negative', path: 'bench.timing.limits' }),
    );
    expect(() =>
      parseFindings({ ...record.findings, monitorTrips: [{ ...record.findings.monitorTrips[0], rows: [{}] }] }),
    ).toThrow(expect.objectContaining({ path: expect.stringContaining('monitorTrips[0].rows[0]') }));
  });
});

describe('the display of a monitor', () => {
  it('that is off by a constant is hinted at, and not judged by it', () => {
    const display = { resolution: 1, maximum: 999, open: 'over-range' } as const;
    const rows = [0, 50, 100].map((set) => ({ set, upper: set + 10 }));
    const sheet = { ...specification, monitor: { connection: 'x', rows, model: { ...model, display } } };
    const monitor = [0, 50, 100].map((set) => ({ set, displayed: set + 3, phase: 'as-found' }) as const);
    const { monitorDisplay } = assessReadings(planVerification(sheet, bench), { ...readingsWith([]), monitor });
    expect(monitorDisplay).toMatchObject([{ phase: 'as-found', gain: 1, offset: 3, fault: 'constant' }]);
  });
});

describe('the display of a monitor under the decision rule of the plan', () => {
  const rows = [
    { set: 100, lower: 93, upper: 107 },
    { set: 0, upper: 4 },
    { set: 'open', lower: 1000 },
  ] as const;
  const made = (decisionRule: PlanDecisionRule, change: Partial<Bench> = {}): Plan => {
    const sheet = { ...specificationOf(ratedOutput), monitor: { connection: 'x', rows } };
    return planVerification(sheet, { ...bench, ...change, decisionRule });
  };
  const rowsOf = (from: Plan, ...shown: readonly (number | 'over-range')[]) =>
    assessReadings(from, {
      ...readingsOf({ point: '1', value: 0.7 }),
      monitor: shown.map((displayed, i) => ({ set: rows[i]?.set ?? 0, displayed, phase: 'as-found' })),
    }).monitor;
  const guarded = made({ kind: 'guarded-acceptance', ratio: 1 });

  it('counts what box, lead and fixture may be off by', () => {
    // (0.005 · 100 + 0.1)/√3 at 95 %: 0.679, rounded inward to its last place.
    const [at100, at0, open] = rowsOf(guarded, 106, 2, 'over-range');
    expect(at100).toMatchObject({ verdict: 'pass', acceptance: { lower: 93.68, upper: 106.32 } });
    expect(at100?.expanded?.expandedUncertainty).toBeCloseTo((1.959963985 * 0.6) / Math.sqrt(3), 6);
    expect(at0).toMatchObject({ verdict: 'pass', margin: 0.5 });
    expect(open).toMatchObject({ verdict: 'pass', reason: 'inside' });
    const [near] = rowsOf(guarded, 107);
    expect(near).toMatchObject({ verdict: 'fail', reason: 'in-guard-band', simpleVerdict: 'pass' });
    const [worse] = rowsOf(
      made({ kind: 'guarded-acceptance', ratio: 1 }, { fixture: { resistance: 1, limits: 3 } }),
      106,
    );
    expect(worse).toMatchObject({ verdict: 'fail', reason: 'in-guard-band' });
    const [, , shorted] = rowsOf(guarded, 100, 0, 900);
    expect(shorted).toMatchObject({ verdict: 'fail', reason: 'below-lower' });
  });

  it('judges nothing without a box, but by simple acceptance', () => {
    const { resistanceBox: _, ...boxless } = bench;
    const without = (decisionRule: PlanDecisionRule) =>
      planVerification(guarded.specification, { ...boxless, decisionRule });
    expect(rowsOf(without({ kind: 'guarded-acceptance', ratio: 1 }), 100)[0]).toMatchObject({
      verdict: 'not judged',
      reason: 'no-decision',
    });
    expect(rowsOf(without({ kind: 'simple-acceptance' }), 107)[0]).toMatchObject({
      verdict: 'pass',
      reason: 'close-to-limit',
    });
  });

  it('stands in the record, which reads back and recomputes', () => {
    const monitor = [{ set: 100, displayed: 107, phase: 'as-found' } as const];
    const record = makeRecord(guarded, { ...readingsOf({ point: '1', value: 0.7 }), monitor });
    expect(parseFindings(JSON.parse(JSON.stringify(record.findings)))).toEqual(record.findings);
    expect(recomputeRecord(record).same).toBe(true);
    expect(recordText(record).replace(/\s+/g, ' ')).toContain(
      'too close for the uncertainty: 93.68 Ω to 106.32 Ω is accepted',
    );
    expect(recordCsv(record)).toContain('in-guard-band');
  });
});

describe('documents with challenges', () => {
  const readings = readingsWith(played(10, 150, 3.4));
  const record = makeRecord(plan, readings);

  it('read back, and recompute to the same', () => {
    expect(parseSpecification(JSON.parse(JSON.stringify(specification)))).toEqual(specification);
    expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
    expect(parseReadings(JSON.parse(JSON.stringify(readings)))).toEqual(readings);
    expect(parseFindings(JSON.parse(JSON.stringify(record.findings)))).toEqual(record.findings);
    expect(recomputeRecord(record)).toEqual({ same: true, differences: [] });
  });

  it('print what to set, what it did, and a picture of each sweep', () => {
    expect(worksheetText(plan).replace(/\s+/g, ' ')).toContain('Set 141 Ω. It must not alarm. Wait 2 s.');
    const text = recordText(record).replace(/\s+/g, ' ');
    expect(text).toContain('The alarm trips late');
    expect(text).toContain('says nothing of an electrode on a patient');
    const html = recordHtml(record);
    expect(html.match(/may trip here/g)?.length).toBe(challenges.filter(({ kind }) => kind === 'sweep').length);
    expect(recordCsv(record)).toContain('monitor trip');
  });

  it('take a filled-in worksheet back', () => {
    const queue = played(10, 150).map(({ alarm }) => (alarm ? 'alarm' : 'no alarm'));
    const [head = '', ...lines] = worksheetCsv(plan).split('\r\n');
    const column = head.split(',').findIndex((title) => title.startsWith('reading'));
    const filled = lines.map((line) => {
      if (!/^\d+,monitor\//.test(line)) return line;
      const cells = line.match(/("([^"]|"")*"|[^,]*)(,|$)/g)?.map((cell) => cell.replace(/,$/, '')) ?? [];
      cells[column] = queue.shift() as string;
      return cells.slice(0, head.split(',').length).join(',');
    });
    const back = readReadingsCsv([head, ...filled].join('\r\n'));
    const bare = played(10, 150);
    expect(back.monitorChallenges?.map(({ challenge, alarm }) => [challenge, alarm])).toEqual(
      bare.map(({ challenge, alarm }) => [challenge, alarm]),
    );
    const again = assessReadings(plan, { ...readingsWith([]), monitorChallenges: back.monitorChallenges ?? [] });
    expect(again.monitorTrips[0]?.rows).toEqual(assessReadings(plan, readingsWith(bare)).monitorTrips[0]?.rows);
  });

  it('refuse what cannot be', () => {
    const wrong = (monitor: object) => () =>
      parseSpecification(JSON.parse(JSON.stringify({ ...specification, monitor })));
    expect(wrong({ connection: 'x' })).toThrow(
      expect.objectContaining({ code: 'missing-member', path: 'monitor.rows' }),
    );
    expect(() => planVerification({ ...specification, monitor: { connection: 'x' } }, bench)).toThrow(
      expect.objectContaining({ code: 'missing-member', path: 'monitor.rows' }),
    );
    const ofModel = (change: object) => wrong({ connection: 'x', model: { ...model, ...change } });
    const rise = { fraction: '40 %', baseline: 'at-start' };
    expect(ofModel({ rise })()).toMatchObject({ monitor: { model: { rise: { fraction: 0.4 } } } });
    for (const [change, code, path] of [
      [{ lower: { resistance: 200 } }, 'band-reversed', 'lower.resistance'],
      [{ upper: { resistance: 150, hysteresis: 149 } }, 'hysteresis-too-wide', 'upper.hysteresis'],
      [{ rise: { ...rise, fraction: 0 } }, 'not-positive', 'rise.fraction'],
      [{ rise: { ...rise, fraction: 40 } }, 'not-a-fraction', 'rise.fraction'],
      [{ rise: { ...rise, baseline: 'tracked' } }, 'missing-member', 'rise.timeConstant'],
      [{ kind: 'continuity', rise }, 'contradiction', 'rise'],
      [{ upper: { resistance: '-150 ohm' } }, 'negative', 'upper.resistance'],
    ] as const) {
      expect(ofModel(change)).toThrow(expect.objectContaining({ code, path: `monitor.model.${path}` }));
    }
    for (const [resistanceBox, code, path] of [
      [{ values: [0, 50, 20], accuracy: { relative: 0.01 } }, 'not-ascending', 'resistanceBox.values[2]'],
      [{ values: [], accuracy: { relative: 0.01 } }, 'wrong-count', 'resistanceBox.values'],
    ] as const) {
      expect(() => parseBench(JSON.parse(JSON.stringify({ ...bench, resistanceBox })))).toThrow(
        expect.objectContaining({ code, path }),
      );
    }
    const reversed = { ...model, lower: { resistance: 200 } };
    expect(() => planVerification({ ...specification, monitor: { connection: 'x', model: reversed } }, bench)).toThrow(
      expect.objectContaining({ path: expect.stringContaining('monitor.model') }),
    );
    expect(() => readReadingsCsv('point,reading\nmonitor/1,perhaps')).toThrow(
      expect.objectContaining({ code: 'unknown-choice', path: 'line 2, column 2 (reading)' }),
    );
    expect(() => readReadingsCsv('point,reading,response time\n1,0.5 A,3 s')).toThrow(
      expect.objectContaining({ code: 'contradiction' }),
    );
    const late = readingsWith([{ challenge: 1, alarm: true, responseTime: -1, phase: 'as-found' }]);
    expect(() => assessReadings(plan, late)).toThrow(
      expect.objectContaining({ code: 'negative', path: 'monitorChallenges[0].responseTime' }),
    );
  });
});
