import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import {
  assessReadings,
  type Bench,
  type LeakageTest,
  makeRecord,
  type PlanDecisionRule,
  type PlanLeakage,
  planVerification,
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
import { parseFindings, parsePlan, parseSpecification, readReadingsCsv } from '../../src/schema/index.js';
import { bench as plainBench, ratedOutput, readingsOf, specificationOf } from './documents.js';

const output = {
  ...ratedOutput,
  points: [{ setting: 200, load: 400 }],
  carrierFrequency: 500e3,
  maximumPeakVoltage: 480,
};
const test: LeakageTest = {
  id: 'cut',
  output: 'cut',
  setting: 200,
  arrangement: 'isolated',
  measuredAt: 'leads',
  connection: 'Resistor from the electrode to earth, leads hung clear',
};
const specification = { ...specificationOf(output), leakage: [test] };
/** 2 % of reading as limits; the measuring resistor is exact. */
const bench: Bench = {
  ...plainBench,
  instrument: {
    ...plainBench.instrument,
    reads: [{ quantity: 'current', ranges: [{ maximum: 1, resolution: 0.001 }], accuracy: { ofReading: 0.02 } }],
  },
};
const guarded: PlanDecisionRule = { kind: 'guarded-acceptance', ratio: 1 };

/** One of the four measurements that the test asks for. */
const at = 'leakage/cut/neutral/rated-load';
const places = ['active/rated-load', 'active/unloaded', 'neutral/rated-load', 'neutral/unloaded'].map(
  (place) => `leakage/cut/${place}`,
);

const planOf = (given: Partial<LeakageTest> = {}, onBench = bench, decisionRule?: PlanDecisionRule) =>
  planVerification({ ...specification, leakage: [{ ...test, ...given }] }, onBench, decisionRule && { decisionRule });
const rowOf = (value: number, decisionRule?: PlanDecisionRule, onBench = bench) =>
  assessReadings(planOf({}, onBench, decisionRule), readingsOf({ point: at, value })).leakage.find(
    ({ point }) => point === at,
  );

describe('a planned leakage measurement', () => {
  it('has the limit of its arrangement, with standing, and the highest reading', () => {
    const [planned] = planOf().leakage;
    expect(planned).toMatchObject({
      id: 'leakage/cut/active/rated-load',
      test: 'cut',
      measuredFrom: 'active electrode',
      loading: 'rated-load',
      number: 1,
      resistor: { id: 'L200', resistance: 200 },
      reads: 'current',
      limit: { current: 0.15, measuringResistance: 200, basis: { standing: 'from memory', isStated: false } },
      highestReading: 0.15,
      highestAccepted: 0.15,
      acceptance: { upper: 0.15 },
    });
    // U = k·√((0.02·0.15/√3)² + (0.001/√12)²)
    expect(planned?.atLimit).toBeCloseTo(
      1.959963984540054 * Math.hypot(0.003 / Math.sqrt(3), 0.001 / Math.sqrt(12)),
      12,
    );
    expect(planned?.warnings.map(({ code }) => code)).toEqual(['limit-from-memory']);
  });

  it('is one for each electrode and each state of the output', () => {
    const { leakage } = planOf();
    expect(leakage.map(({ id }) => id)).toEqual(places);
    expect(leakage.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
    expect(leakage.map(({ instruction }) => instruction)).toEqual([
      'Read the leakage from the active electrode through the measuring resistor to earth, with the rated load of 400 Ω (L400, 400 Ω) between active and neutral electrode.',
      'Read the leakage from the active electrode through the measuring resistor to earth, with nothing between active and neutral electrode: the voltage is highest there, so activate briefly.',
      'Read the leakage from the neutral electrode through the measuring resistor to earth, with the rated load of 400 Ω (L400, 400 Ω) between active and neutral electrode.',
      'Read the leakage from the neutral electrode through the measuring resistor to earth, with nothing between active and neutral electrode: the voltage is highest there, so activate briefly.',
    ]);
  });

  it('is of each electrode also where the sheet asks for one state of the output only', () => {
    const ids = (loading: LeakageTest['loading']) =>
      planOf({ loading } as Partial<LeakageTest>).leakage.map(({ id }) => id);
    expect(ids(['rated-load'])).toEqual([places[0], places[2]]);
    expect(ids(['unloaded', 'rated-load'])).toEqual([places[1], places[0], places[3], places[2]]);
  });

  it('is one alone where the neutral electrode is referenced to earth', () => {
    const [planned, ...others] = planOf({ arrangement: 'earth-referenced-load-to-earth' }).leakage;
    expect(others).toEqual([]);
    expect(planned).toMatchObject({ id: 'leakage/cut', measuredFrom: 'neutral electrode' });
    expect(planned).not.toHaveProperty('loading');
    const read = assessReadings(
      planOf({ arrangement: 'earth-referenced-load-to-earth' }),
      readingsOf({ point: 'leakage/cut', value: 0.05 }),
    );
    expect(read.leakage).toMatchObject([{ point: 'leakage/cut', verdict: 'pass' }]);
  });

  it('needs a load between the electrodes besides the measuring resistor', () => {
    const without = (load: string): Bench => ({ ...bench, loads: bench.loads.filter(({ id }) => id !== load) });
    const codes = (onBench: Bench, ratedLoad: number) =>
      planVerification({ ...specification, outputs: [{ ...output, ratedLoad }] }, onBench).leakage.map(({ warnings }) =>
        warnings.map(({ code }) => code),
      );
    const [missing, fine] = [['limit-from-memory', 'load-not-on-bench'], ['limit-from-memory']];
    expect(codes(bench, 400)).toEqual([fine, fine, fine, fine]);
    expect(codes(without('L400'), 400)).toEqual([missing, fine, missing, fine]);
    // The only 200 ohm of the bench cannot be both.
    expect(codes(bench, 200)).toEqual([missing, fine, missing, fine]);
  });

  it('counts a connection for each electrode, and changes of load between', () => {
    const parts = planOf().benchTime.parts.filter(({ what }) => what.includes('leakage'));
    expect(parts.map(({ what, count }) => [what, count])).toEqual([
      ['leakage connections', 2],
      ['changes of load for leakage', 2],
      ['leakage readings', 4],
    ]);
  });

  it('brings its cautions, once each', () => {
    const ids = planOf().cautions.map(({ id }) => id);
    expect(ids).toContain('pass-is-hazardous');
    expect(new Set(ids).size).toBe(ids.length);
    expect(planVerification(specificationOf(output), bench).cautions.map(({ id }) => id)).not.toContain(
      'pass-is-hazardous',
    );
  });

  it('takes a stated limit in place of the known one', () => {
    const limit = { current: 0.1, statedIn: "the maker's manual, page 40" };
    const [planned] = planOf({ limit }).leakage;
    expect(planned?.limit).toMatchObject({
      current: 0.1,
      basis: { statedIn: "the maker's manual, page 40", isStated: true },
    });
  });

  it('follows rated power with a bipolar output: √(0.01·P/200)', () => {
    const bipolar = { ...output, id: 'bi', circuit: 'bipolar', ratedPower: 72 } as const;
    const sheet = {
      ...specificationOf(bipolar),
      leakage: [{ ...test, output: 'bi', arrangement: 'bipolar' } as const],
    };
    const { leakage } = planVerification(
      { ...sheet, outputs: [{ ...bipolar, points: [{ setting: 70, load: 400 }] }] },
      bench,
    );
    expect(leakage.map(({ id }) => id)).toEqual(
      ['pole-1/rated-load', 'pole-1/unloaded', 'pole-2/rated-load', 'pole-2/unloaded'].map(
        (place) => `leakage/cut/${place}`,
      ),
    );
    const [planned] = leakage;
    expect(planned?.limit.current).toBeCloseTo(0.06, 15);
    expect(planned?.highestReading).toBe(0.06);
  });

  it('reads voltage across another resistor: at least the leakage that any path gives', () => {
    const volts: Bench = {
      ...bench,
      instrument: {
        name: 'HF voltmeter',
        reads: [{ quantity: 'voltage', ranges: [{ maximum: 100, resolution: 0.1 }] }],
      },
      loads: [
        { id: 'L210', resistance: 210, powerRating: 50 },
        ...bench.loads.filter(({ resistance }) => resistance !== 200),
      ],
    };
    const [planned] = planOf({}, volts).leakage;
    // A constant voltage drives 210/200 as much through 200 ohm: I = V/210·210/200, so 30 V is the limit.
    expect(planned).toMatchObject({ reads: 'voltage', resistor: { id: 'L210' }, highestReading: 30 });
    const reading = readingsOf({ point: at, quantity: 'voltage', value: 30 });
    expect(assessReadings(planOf({}, volts), reading).leakage[2]).toMatchObject({ verdict: 'pass', value: 0.15 });
  });

  it('says so where the bench has no resistor or no range', () => {
    const without = { ...bench, loads: bench.loads.filter(({ resistance }) => resistance !== 200) };
    const [planned] = planOf({}, without).leakage;
    expect(planned?.resistor).toBeUndefined();
    expect(planned?.warnings.map(({ code }) => code)).toContain('load-not-on-bench');
    expect(rowOf(0.1, undefined, without)).toMatchObject({ verdict: 'not judged', reason: 'nothing-to-compare' });
    const coarse: Bench = {
      ...bench,
      instrument: { name: 'm', reads: [{ quantity: 'current', ranges: [{ maximum: 0.1, resolution: 0.001 }] }] },
    };
    expect(planOf({}, coarse).leakage[0]?.warnings.map(({ code }) => code)).toContain('not-feasible');
  });
});

describe('a leakage that was read', () => {
  it('passes, and is still over the guidance for contact', () => {
    expect(rowOf(0.096)).toMatchObject({
      verdict: 'pass',
      reason: 'inside',
      value: 0.096,
      overContactGuidance: 0.096 / 0.04,
    });
    expect(rowOf(0.096)?.margin).toBeCloseTo(0.64, 12);
    expect(rowOf(0.15)).toMatchObject({ verdict: 'pass', reason: 'close-to-limit' });
  });

  it('fails with a hint at what to look for', () => {
    const row = rowOf(0.18);
    expect(row).toMatchObject({ verdict: 'fail', reason: 'above-upper' });
    expect(row?.message).toMatch(/^180\.0 mA against ≤ 150 mA: above the upper limit\. .*pF/);
  });

  it('is decided by the rule of the plan', () => {
    expect(rowOf(0.148)).toMatchObject({ verdict: 'pass' });
    expect(rowOf(0.148, guarded)).toMatchObject({ verdict: 'fail', reason: 'in-guard-band', simpleVerdict: 'pass' });
    expect(rowOf(0.14, guarded)).toMatchObject({ verdict: 'pass' });
    expect(rowOf(0.148)?.conformance?.conforming).toBeGreaterThan(0.8);
    const silent = { ...bench, instrument: { ...bench.instrument, reads: plainBench.instrument.reads } };
    expect(rowOf(0.1, guarded, silent)).toMatchObject({ verdict: 'not judged', reason: 'no-decision' });
  });

  it('counts in the summary, as found and as left', () => {
    const readings = readingsOf(
      { point: '1', value: 0.7 },
      ...places.map((point) => ({ point, value: point === at ? 0.2 : 0.1 })),
      { point: at, value: 0.1, phase: 'as-left' },
    );
    const { asFound, final, extra } = assessReadings(planOf(), readings);
    expect(extra).toEqual([]);
    expect(asFound).toMatchObject({ verdict: 'fail', fail: 1, pass: 4 });
    expect(final).toMatchObject({ verdict: 'pass', fail: 0, pass: 5 });
  });

  it.each(places)('of one electrode in one state of the output says nothing of the others: %s', (point) => {
    const others = places.filter((place) => place !== point);
    const { leakage, final } = assessReadings(
      planOf(),
      readingsOf({ point: '1', value: 0.7 }, ...others.map((place) => ({ point: place, value: 0.05 }))),
    );
    expect(leakage.filter(({ verdict }) => verdict === 'pass').map((row) => row.point)).toEqual(others);
    expect(leakage.find((row) => row.point === point)).toMatchObject({ verdict: 'not judged', reason: 'no-reading' });
    expect(final).toMatchObject({ verdict: 'incomplete', notJudged: 1 });
  });

  it('that does not say of which electrode judges nothing, and the findings say what to write', () => {
    const { leakage, extra, final, warnings } = assessReadings(
      planOf(),
      readingsOf({ point: 'leakage/cut', value: 0.05 }),
    );
    expect(leakage.map(({ verdict }) => verdict)).toEqual(places.map(() => 'not judged'));
    expect(extra).toHaveLength(1);
    expect(final.verdict).toBe('incomplete');
    expect(warnings.map(({ message }) => message)).toContain(
      `A reading names point leakage/cut, which the plan does not have. It is one of these, and must say which: ${places.join(', ')}.`,
    );
  });

  it('that is missing leaves the verification incomplete', () => {
    const { final, leakage } = assessReadings(planOf(), readingsOf({ point: '1', value: 0.7 }));
    expect(leakage[0]).toMatchObject({ verdict: 'not judged', reason: 'no-reading' });
    expect(final.verdict).toBe('incomplete');
  });
});

describe('documents with leakage', () => {
  const plan = planOf({}, bench, guarded);
  const record = makeRecord(plan, readingsOf({ point: '1', value: 0.7 }, { point: at, value: 0.096 }));

  it('read back, and recompute to the same', () => {
    expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
    expect(parseFindings(JSON.parse(JSON.stringify(record.findings)))).toEqual(record.findings);
    expect(recomputeRecord(record)).toEqual({ same: true, differences: [] });
  });

  it('of before electrodes were planned one by one are still read and judged', () => {
    const { test: _, measuredFrom: __, loading: ___, ...row } = plan.leakage[0] as PlanLeakage;
    const older = { ...plan, leakage: [{ ...row, id: 'leakage/cut', number: 1 }] };
    const kept = parsePlan(JSON.parse(JSON.stringify(older)));
    expect(kept).toEqual(older);
    const { leakage, final } = assessReadings(
      kept,
      readingsOf({ point: '1', value: 0.7 }, { point: 'leakage/cut', value: 0.096 }),
    );
    expect(leakage).toMatchObject([{ point: 'leakage/cut', verdict: 'pass', value: 0.096 }]);
    expect(final.verdict).toBe('pass');
    expect(recordText(makeRecord(kept, readingsOf({ point: 'leakage/cut', value: 0.096 })))).toContain('HF leakage');
  });

  it('say in every form which electrode was read, with what between them', () => {
    for (const text of [worksheetText(plan), recordText(record), recordMarkdown(record), recordHtml(record)]) {
      const flat = text.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
      for (const state of ['rated load', 'unloaded']) {
        for (const electrode of ['active', 'neutral']) expect(flat).toContain(`, ${electrode} electrode, ${state}`);
      }
    }
    // On narrow paper no word is cut.
    for (const text of [worksheetText(plan), recordText(record)]) {
      expect(text).toMatch(/^ +\d +neutral electrode, rated load /m);
      expect(text).toContain('- Monopolar cut, 200 W; measuring resistor L200: 200 Ω');
    }
    expect(worksheetCsv(plan)).toContain('"neutral electrode, rated load"');
    expect(recordCsv(record)).toContain('"neutral electrode, rated load"');
  });

  it('print limit, source, what is accepted, and the caution', () => {
    const sheet = worksheetText(plan).replace(/\s+/g, ' ');
    expect(sheet).toContain(
      'Limit 150 mA rms in 200 Ω, IEC 60601-2-2 (201.8.7.3.101, editions 2009 and 2017, from memory).',
    );
    expect(sheet).toMatch(/Accept to 14\d mA/);
    const text = recordText(record).replace(/\s+/g, ' ');
    expect(text).toContain('A pass, and still 2.4 times the guidance for contact: do not touch.');
    expect(text).toContain('A leakage that passes is still hazardous to touch.');
    expect(recordCsv(record)).toContain(at);
  });

  it('take a filled-in worksheet back', () => {
    const filled = worksheetCsv(plan).replace(
      /(leakage\/cut\/neutral\/rated-load,.*?),,,,,,as-found/,
      '$1,0.096 A,,,,,as-found',
    );
    const { readings } = readReadingsCsv(filled);
    expect(readings).toEqual([{ point: at, phase: 'as-found', quantity: 'current', value: 0.096 }]);
  });
});

describe('a leakage measurement that cannot be', () => {
  it.each([
    [{ output: 'cutt' }, 'unknown-choice', 'leakage[0].output'],
    [{ setting: 900 }, 'setting-outside-scale', 'leakage[0].setting'],
    [{ arrangement: 'bipolar' }, 'contradiction', 'leakage[0].arrangement'],
    [{ limit: { statedIn: 'x' } }, 'wrong-count', 'leakage[0].limit'],
    [{ loading: [] }, 'wrong-count', 'leakage[0].loading'],
    [{ loading: ['short'] }, 'unknown-choice', 'leakage[0].loading[0]'],
    [{ loading: ['unloaded', 'unloaded'] }, 'duplicate', 'leakage[0].loading[1]'],
    [{ loading: ['unloaded'], arrangement: 'earth-referenced-load-to-earth' }, 'contradiction', 'leakage[0].loading'],
  ] as const)('%j is refused by the plan', (given, code, path) => {
    expect(() => planOf(given as Partial<LeakageTest>)).toThrow(expect.objectContaining({ code, path }));
  });

  it.each([
    [{ output: 'cutt' }, 'unknown-choice', 'leakage[0].output'],
    [{ setting: '900 W' }, 'setting-outside-scale', 'leakage[0].setting'],
    [{ arrangement: 'bipolar' }, 'contradiction', 'leakage[0].arrangement'],
    [{ loading: [] }, 'wrong-count', 'leakage[0].loading'],
    [{ loading: ['short'] }, 'unknown-choice', 'leakage[0].loading[0]'],
    [{ loading: ['unloaded', 'unloaded'] }, 'duplicate', 'leakage[0].loading[1]'],
    [{ loading: ['unloaded'], arrangement: 'earth-referenced-load-to-earth' }, 'contradiction', 'leakage[0].loading'],
    [{ measuredAt: 'trolley' }, 'unknown-choice', 'leakage[0].measuredAt'],
    [{ limit: { current: '-5 mA', statedIn: 'x' } }, 'not-positive', 'leakage[0].limit.current'],
  ])('%j is refused by the schema', (given, code, path) => {
    const sheet = JSON.parse(JSON.stringify({ ...specification, leakage: [{ ...test, ...given }] }));
    expect(() => parseSpecification(sheet)).toThrow(CalculationError);
    expect(() => parseSpecification(sheet)).toThrow(expect.objectContaining({ code, path }));
  });

  it('has an identifier of its own', () => {
    const twice = { ...specification, leakage: [test, test] };
    expect(() => planVerification(twice, bench)).toThrow(
      expect.objectContaining({ code: 'duplicate', path: 'leakage[1].id' }),
    );
    expect(() => parseSpecification(JSON.parse(JSON.stringify(twice)))).toThrow(
      expect.objectContaining({ code: 'duplicate' }),
    );
  });
});
