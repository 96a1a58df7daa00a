import { describe, expect, it } from 'vitest';
import {
  assessReadings,
  type Findings,
  type Output,
  type PointFinding,
  planVerification,
  type Readings,
  type Specification,
} from '../../src/procedure/index.js';
import { bench, curvedOutput, ratedOutput, readingsOf, specificationOf } from './documents.js';

const plan = planVerification(
  specificationOf({ ...ratedOutput, displayTolerance: { in: 'power', relative: 0.1 } }),
  bench,
);
// cut/200W/400ohm: 707 mA nominal, 633 to 774 mA
const point = 'cut/200W/400ohm';

function rowOf(findings: Findings, id = point, phase = 'as-found'): PointFinding {
  return findings.points.find((row) => row.point === id && row.phase === phase) as PointFinding;
}

function assess(...readings: Parameters<typeof readingsOf>): Findings {
  return assessReadings(plan, readingsOf(...readings));
}

describe('verdicts of points', () => {
  it.each([
    [0.7, 'pass', 'inside'],
    [0.633, 'pass', 'close-to-limit'],
    [0.774, 'pass', 'close-to-limit'],
    [0.632, 'fail', 'below-lower'],
    [0.775, 'fail', 'above-upper'],
    [0, 'fail', 'below-lower'],
  ])('%s A: %s, %s', (value, verdict, reason) => {
    expect(rowOf(assess({ point, value }))).toMatchObject({ verdict, reason });
  });

  it('gives the margin with its step', () => {
    const row = rowOf(assess({ point, value: 0.67 }));
    const nominal = Math.sqrt(0.5);
    expect(row.margin).toBeCloseTo((0.67 - nominal) / (nominal - 0.633), 12);
    expect(row.working.at(-1)).toMatchObject({ formula: 'margin-below-nominal', value: row.margin });
    expect(row.power).toBeCloseTo(0.67 ** 2 * 400, 10);
  });

  it('has a row for each point without a reading', () => {
    const findings = assess({ point, value: 0.7 });
    expect(findings.points).toHaveLength(3);
    expect(rowOf(findings, 'cut/40W/400ohm')).toMatchObject({ verdict: 'not judged', reason: 'no-reading' });
    expect(findings.final).toMatchObject({ verdict: 'incomplete', pass: 1, fail: 0, notJudged: 2 });
  });

  it('takes the number of a point for its identifier', () => {
    expect(rowOf(assess({ point: '3', value: 0.7 })).verdict).toBe('pass');
  });

  it('judges every one of several readings', () => {
    const findings = assess({ point, value: 0.7 }, { point, value: 0.9 });
    expect(findings.points.filter((row) => row.point === point).map((row) => row.verdict)).toEqual(['pass', 'fail']);
    expect(findings.final.verdict).toBe('fail');
  });

  it('keeps readings that belong to no point', () => {
    const findings = assess({ point: 'cut/55W/400ohm', value: 0.7 }, { point: '99', value: 0.7 });
    expect(findings.extra.map((reading) => reading.point)).toEqual(['cut/55W/400ohm', '99']);
    expect(findings.warnings.map((w) => w.code)).toEqual(['reading-extra', 'reading-extra']);
  });

  it('converts a reading in another quantity and says so', () => {
    const row = rowOf(assess({ point, value: 250, quantity: 'voltage' }));
    expect(row.value).toBeCloseTo(0.625, 14);
    expect(row.verdict).toBe('fail');
    expect(row.warnings[0]?.code).toBe('reading-converted');
  });

  it('warns when a reading is beyond the range that was planned', () => {
    const row = rowOf(assess({ point, value: 1.2 }));
    expect(row.warnings.map((w) => w.code)).toContain('reading-beyond-range');
  });
});

describe('readings that cannot be right', () => {
  it('calls ten times the setting a keying error and judges nothing from it', () => {
    // √10 times the current is ten times the power.
    const row = rowOf(
      assess({ point, value: Math.sqrt(0.5) * Math.sqrt(10) * 1.0001, display: { quantity: 'power', value: 200 } }),
    );
    expect(row).toMatchObject({ verdict: 'not judged', reason: 'not-plausible' });
    expect(row.message).toContain('10 times the setting');
    expect(row.display).toBeUndefined();
    expect(row.margin).toBeUndefined();
  });

  it('judges what lies below ten times: a generator that runs away is a failure, not a slip', () => {
    const row = rowOf(assess({ point, value: Math.sqrt(0.5) * Math.sqrt(10) * 0.9999 }));
    expect(row).toMatchObject({ verdict: 'fail', reason: 'above-upper' });
  });

  it('never lets the whole pass with such a reading', () => {
    const findings = assess({ point: '1', value: 0.316 }, { point: '2', value: 0.5 }, { point, value: 707 });
    expect(findings.final).toMatchObject({ verdict: 'incomplete', pass: 2, fail: 0, notJudged: 1 });
  });

  it('hints at a slip of the decimal point, and still fails a low reading', () => {
    const row = rowOf(assess({ point, value: 0.0707 }));
    expect(row.verdict).toBe('fail');
    expect(row.warnings.map((w) => w.code)).toContain('keying-suspected');
  });
});

describe('as found and as left', () => {
  it('judges both and takes the as-left reading for the final state', () => {
    const readings = readingsOf(
      { point: '1', value: 0.316 },
      { point: '2', value: 0.5 },
      { point: '3', value: 0.6 },
      { point: '3', value: 0.7, phase: 'as-left' },
    );
    const findings = assessReadings(plan, readings);
    expect(rowOf(findings).verdict).toBe('fail');
    expect(rowOf(findings, point, 'as-left').verdict).toBe('pass');
    expect(findings.asFound).toMatchObject({ verdict: 'fail', pass: 2, fail: 1 });
    expect(findings.final).toMatchObject({ verdict: 'pass', pass: 3, fail: 0 });
  });

  it('has no as-found summary when nothing was read as found', () => {
    const findings = assess({ point, value: 0.7, phase: 'as-left' });
    expect(findings.asFound).toBeUndefined();
    expect(rowOf(findings, 'cut/40W/400ohm', 'as-left').reason).toBe('no-reading');
  });

  it('counts a point that was read only as left as missing in the as-found state', () => {
    const findings = assess({ point: '1', value: 0.316 }, { point, value: 0.7, phase: 'as-left' });
    expect(findings.asFound).toMatchObject({ verdict: 'incomplete', pass: 1, notJudged: 2 });
  });
});

describe('the generator\u2019s display', () => {
  it('gives difference, relative difference, limits and verdict', () => {
    const row = rowOf(assess({ point, value: 0.7, display: { quantity: 'power', value: 200 } }));
    // 0.7² × 400 = 196 W
    expect(row.display?.measured).toBeCloseTo(196, 10);
    expect(row.display?.difference).toBeCloseTo(4, 10);
    expect(row.display?.relative).toBeCloseTo(4 / 196, 12);
    expect(row.display?.limits?.upper).toBeCloseTo(215.6, 10);
    expect(row.display?.verdict).toBe('pass');
  });

  it('fails the whole when the display is outside its tolerance', () => {
    const findings = assess(
      { point: '1', value: 0.316 },
      { point: '2', value: 0.5 },
      { point, value: 0.7, display: { quantity: 'power', value: 216 } },
    );
    expect(rowOf(findings)).toMatchObject({ verdict: 'pass', display: { verdict: 'fail' } });
    expect(findings.final.verdict).toBe('fail');
  });

  it('is compared but not judged when the sheet states no tolerance', () => {
    const bare = planVerification(specificationOf(ratedOutput), bench);
    const findings = assessReadings(
      bare,
      readingsOf({ point, value: 0.7, display: { quantity: 'current', value: 0.71 } }),
    );
    expect(rowOf(findings).display).toMatchObject({ verdict: 'not judged', quantity: 'current' });
  });

  it('has nothing to compare with when the instrument reads zero', () => {
    const row = rowOf(assess({ point, value: 0, display: { quantity: 'power', value: 200 } }));
    expect(row.display).toMatchObject({ verdict: 'not judged' });
    expect(row.display?.relative).toBeUndefined();
  });
});

describe('rules of the standard', () => {
  const output: Output = { ...curvedOutput, settings: [100, 200], loads: [400], maximumPeakVoltage: 900 };
  const specification: Specification = {
    ...specificationOf(output),
    rules: [
      { rule: 'output-accuracy' },
      { rule: 'output-monotone' },
      { rule: 'peak-voltage' },
      { rule: 'supply-interruption' },
    ],
  };
  const ruled = planVerification(specification, bench);
  const verdicts = (readings: Readings): Record<string, string> =>
    Object.fromEntries(assessReadings(ruled, readings).rules.map((rule) => [rule.rule, rule.verdict]));
  const good = { point: 'cut/100W/400ohm', value: 0.5 };
  const full = { point, value: 0.7, peakVoltage: 880 };
  const after = { point, value: 0.72, afterInterruption: true, modeUnchanged: true };

  it('passes all four on good readings', () => {
    const findings = assessReadings(ruled, readingsOf(good, full, after));
    expect(findings.rules.map((rule) => rule.verdict)).toEqual(['pass', 'pass', 'pass', 'pass']);
    expect(findings.final.verdict).toBe('pass');
  });

  it('asks for the readings that it needs', () => {
    expect(verdicts(readingsOf(good))).toEqual({
      'output-accuracy': 'not judged',
      'output-monotone': 'not judged',
      'peak-voltage': 'not judged',
      'supply-interruption': 'not judged',
    });
  });

  it('fails accuracy beyond 20 % of power at ×1.0954 in current, and not before', () => {
    const at = (factor: number): string | undefined =>
      verdicts(readingsOf(good, { ...full, value: Math.sqrt(0.5) * factor }))['output-accuracy'];
    expect(at(1.0954)).toBe('pass');
    expect(at(1.0955)).toBe('fail');
    expect(at(0.8945)).toBe('pass');
    expect(at(0.8944)).toBe('fail');
  });

  it('fails an output that rises when the setting is lowered', () => {
    const rising = verdicts(readingsOf({ ...good, value: 0.75 }, full));
    expect(rising['output-monotone']).toBe('fail');
    const equal = verdicts(readingsOf({ ...good, value: 0.7 }, full));
    expect(equal['output-monotone']).toBe('pass');
  });

  it('fails a peak voltage above the stated value', () => {
    expect(verdicts(readingsOf(good, { ...full, peakVoltage: 901 }))['peak-voltage']).toBe('fail');
    expect(verdicts(readingsOf(good, { ...full, peakVoltage: 900 }))['peak-voltage']).toBe('pass');
  });

  it('fails a rise of more than 20 % of power after an interruption, or a changed mode', () => {
    const at = (change: Partial<typeof after>): string | undefined =>
      verdicts(readingsOf(good, full, { ...after, ...change }))['supply-interruption'];
    expect(at({ value: 0.7 * 1.0954 })).toBe('pass');
    expect(at({ value: 0.7 * 1.0955 })).toBe('fail');
    expect(at({ modeUnchanged: false })).toBe('fail');
    const { modeUnchanged: _, ...unstated } = after;
    expect(verdicts(readingsOf(good, full, unstated))['supply-interruption']).toBe('not judged');
  });

  it('keeps a reading that cannot be right out of every rule', () => {
    expect(verdicts(readingsOf({ ...good, value: 500 }, full))['output-monotone']).toBe('not judged');
  });

  it('judges the rules on the final state too', () => {
    const findings = assessReadings(
      ruled,
      readingsOf({ ...good, value: 0.75 }, { ...good, phase: 'as-left' }, full, after),
    );
    const monotone = findings.rules.filter((rule) => rule.rule === 'output-monotone');
    expect(monotone.map((rule) => [rule.phase, rule.verdict])).toEqual([
      ['as-found', 'fail'],
      ['as-left', 'pass'],
    ]);
  });

  it('says that a reading after an interruption was not asked for', () => {
    const findings = assessReadings(plan, readingsOf({ point, value: 0.7, afterInterruption: true }));
    expect(findings.warnings.map((w) => w.code)).toContain('reading-extra');
  });
});

describe('resistance readings of the monitor', () => {
  const monitored = planVerification(
    {
      ...specificationOf(ratedOutput),
      monitor: {
        connection: 'Box between the contacts',
        rows: [
          { set: 0, upper: 4 },
          { set: 100, lower: 93, upper: 107 },
          { set: 'open', lower: 500 },
        ],
      },
    },
    bench,
  );
  const withMonitor = (...monitor: NonNullable<Readings['monitor']>): Findings =>
    assessReadings(monitored, { ...readingsOf(), monitor });

  it.each([
    [100, 93, 'pass'],
    [100, 92.9, 'fail'],
    [100, 107.1, 'fail'],
    [0, 4, 'pass'],
    [0, 'over-range', 'fail'],
    ['open', 'over-range', 'pass'],
    ['open', 499, 'fail'],
    ['open', 500, 'pass'],
  ] as const)('set %s, displayed %s: %s', (set, displayed, verdict) => {
    const findings = withMonitor({ set, displayed, phase: 'as-found' });
    expect(findings.monitor.find((row) => row.set === set)?.verdict).toBe(verdict);
  });

  it('has a row for each resistance that was not set, and keeps extra readings', () => {
    const findings = withMonitor({ set: 75, displayed: 75, phase: 'as-found' });
    expect(findings.monitor.map((row) => row.verdict)).toEqual(['not judged', 'not judged', 'not judged']);
    expect(findings.extraMonitor).toHaveLength(1);
    expect(findings.warnings.map((w) => w.code)).toEqual(['reading-extra']);
  });
});
