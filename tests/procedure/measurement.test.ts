import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { conformanceProbability, explainAcceptanceBand } from '../../src/decision/index.js';
import {
  assessReadings,
  type Bench,
  decisionRuleText,
  type PlanDecisionRule,
  type PlanOptions,
  type PlanPoint,
  type PointFinding,
  planVerification,
  probabilityText,
} from '../../src/procedure/index.js';
import { parseFindings, parsePlan } from '../../src/schema/index.js';
import { curvedOutput, bench as plainBench, ratedOutput, readingsOf, specificationOf } from './documents.js';

/** 1 % of reading, as limits: u = 0.01·x/√3; the loads are exact. */
const bench: Bench = {
  ...plainBench,
  instrument: {
    ...plainBench.instrument,
    reads: plainBench.instrument.reads.map((f) =>
      f.quantity === 'current' ? { ...f, accuracy: { ofReading: 0.01 } } : f,
    ),
  },
};
const output = { ...curvedOutput, points: [{ setting: 200, load: 400 }] };
const guarded: PlanDecisionRule = { kind: 'guarded-acceptance', ratio: 1 };

function pointWith(options: PlanOptions = {}, given: Bench = bench): PlanPoint {
  return planVerification(specificationOf(output), given, options).points[0] as PlanPoint;
}

function findingOf(value: number, options: PlanOptions = {}, given: Bench = bench): PointFinding {
  const plan = planVerification(specificationOf(output), given, options);
  return assessReadings(plan, readingsOf({ point: '1', value })).points[0] as PointFinding;
}

/** What a resolution of 1 mA adds: u² = (q/√12)². */
const uAt = (reading: number): number => Math.hypot((0.01 * reading) / Math.sqrt(3), 0.001 / Math.sqrt(12));
const k = 1.959963984540054;

describe('the measurement of a point', () => {
  it('is absent where the bench states no accuracy', () => {
    expect(pointWith({}, plainBench).measurement).toBeUndefined();
    expect(findingOf(0.7, {}, plainBench).conformance).toBeUndefined();
  });

  it('has U at the nominal and at each limit, and the test uncertainty ratio', () => {
    const { measurement, nominal, limits } = pointWith();
    expect(nominal).toBeCloseTo(Math.sqrt(0.5), 14);
    expect(measurement?.expanded.expandedUncertainty).toBeCloseTo(k * uAt(Math.sqrt(0.5)), 12);
    expect(measurement?.atLower).toBeCloseTo(k * uAt(limits.lower as number), 12);
    expect(measurement?.atUpper).toBeCloseTo(k * uAt(limits.upper as number), 12);
    const span = (limits.upper as number) - (limits.lower as number);
    expect(measurement?.testUncertaintyRatio).toBeCloseTo(span / (2 * k * uAt(Math.sqrt(0.5))), 10);
    expect(measurement?.slope).toBeCloseTo(0, 12);
  });

  it('accepts the limits themselves by simple acceptance', () => {
    const { measurement, limits } = pointWith();
    expect(measurement?.acceptance).toEqual(limits);
  });

  it('guards each limit by the uncertainty of a reading there, rounded inward', () => {
    const { measurement, limits } = pointWith({ decisionRule: guarded });
    const { lower = 0, upper = 0 } = limits;
    expect(measurement?.acceptance?.lower).toBe(Math.ceil((lower + k * uAt(lower)) * 1000 - 1e-9) / 1000);
    expect(measurement?.acceptance?.upper).toBe(Math.floor((upper - k * uAt(upper)) * 1000 + 1e-9) / 1000);
    expect(measurement?.assumptions.length).toBeGreaterThan(0);
  });

  it('carries the steps of the acceptance limits', () => {
    const { working } = pointWith({ decisionRule: guarded });
    expect(working.map((step) => step.formula)).toEqual(
      expect.arrayContaining(['acceptance-lower', 'acceptance-upper']),
    );
  });

  it('takes the larger uncertainty where a rule looks at both limits at once', () => {
    const rule: PlanDecisionRule = { kind: 'specific-consumer-risk', risk: 0.02 };
    const { measurement, limits } = pointWith({ decisionRule: rule });
    const { acceptance } = explainAcceptanceBand(
      limits,
      rule,
      { standardUncertainty: uAt(limits.upper as number) },
      { resolution: 0.001 },
    );
    expect(measurement?.acceptance).toEqual(acceptance);
  });

  it('takes the prior of a global risk from the reliability', () => {
    const rule: PlanDecisionRule = { kind: 'global-consumer-risk', risk: 1e-4, reliability: 0.9 };
    const { measurement, limits } = pointWith({ decisionRule: rule });
    expect(measurement?.acceptance?.lower).toBeGreaterThan(limits.lower as number);
    expect(measurement?.acceptance?.upper).toBeLessThan(limits.upper as number);
    const loose = pointWith({ decisionRule: { ...rule, risk: 0.02 } });
    expect(loose.measurement?.acceptance).toEqual(limits);
  });

  it('says so where the guard bands leave nothing', () => {
    const poor: Bench = {
      ...bench,
      instrument: {
        ...bench.instrument,
        reads: [{ ...(bench.instrument.reads[0] as Bench['instrument']['reads'][0]), accuracy: { ofReading: 0.2 } }],
      },
    };
    const point = pointWith({ decisionRule: guarded }, poor);
    expect(point.measurement?.acceptance).toBeNull();
    expect(point.warnings.map(({ code }) => code)).toContain('acceptance-empty');
    const finding = findingOf(0.705, { decisionRule: guarded }, poor);
    expect(finding).toMatchObject({ verdict: 'fail', reason: 'in-guard-band', simpleVerdict: 'pass' });
    expect(finding.message).toContain('no reading is accepted');
  });

  it('is taken from the bench, and from the options before it', () => {
    const withRule: Bench = { ...bench, decisionRule: guarded };
    const plan = planVerification(specificationOf(output), withRule);
    expect(plan.options.decisionRule).toEqual(guarded);
    const options = { decisionRule: { kind: 'simple-acceptance' } } as const;
    expect(planVerification(specificationOf(output), withRule, options).options.decisionRule).toEqual({
      kind: 'simple-acceptance',
    });
  });
});

describe('the verdict by a decision rule', () => {
  // Limits 0.633 A to 0.774 A; U is about 7 mA at the lower and 9 mA at the upper limit.
  it('fails by guarded acceptance what passes by simple acceptance', () => {
    const reading = 0.77;
    expect(findingOf(reading)).toMatchObject({ verdict: 'pass', reason: 'close-to-limit' });
    const finding = findingOf(reading, { decisionRule: guarded });
    expect(finding).toMatchObject({ verdict: 'fail', reason: 'in-guard-band', simpleVerdict: 'pass' });
    expect(finding.message).toMatch(/^770 mA against 633 mA to 774 mA: inside the limits, but too close/);
    expect(finding.message).toMatch(/probability that it conforms: \d+ %/);
  });

  it('passes by guarded rejection what fails by simple acceptance', () => {
    expect(findingOf(0.778)).toMatchObject({ verdict: 'fail', reason: 'above-upper' });
    const rule: PlanDecisionRule = { kind: 'guarded-rejection', ratio: 1 };
    expect(findingOf(0.778, { decisionRule: rule })).toMatchObject({
      verdict: 'pass',
      reason: 'outside-in-guard-band',
      simpleVerdict: 'fail',
    });
    expect(findingOf(0.79, { decisionRule: rule })).toMatchObject({ verdict: 'fail', reason: 'above-upper' });
  });

  it('makes four statements by the non-binary rule', () => {
    const rule: PlanDecisionRule = { kind: 'non-binary', ratio: 1 };
    const reasonOf = (value: number): string => findingOf(value, { decisionRule: rule }).reason;
    expect(reasonOf(0.7)).toBe('inside');
    expect(reasonOf(0.77)).toBe('conditional-pass');
    expect(reasonOf(0.778)).toBe('conditional-fail');
    expect(reasonOf(0.79)).toBe('above-upper');
    expect(reasonOf(0.6)).toBe('below-lower');
  });

  it('gives the probability of conforming from the reading and its own uncertainty', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 900 }), (milliamperes) => {
        const value = milliamperes / 1000;
        const { conformance, expanded, limits } = findingOf(value);
        const { conforming, nonconforming } = conformanceProbability(limits, value, uAt(value));
        expect(conformance?.conforming).toBeCloseTo(conforming, 10);
        expect(conformance?.nonconforming).toBeCloseTo(nonconforming, 10);
        expect(expanded?.expandedUncertainty).toBeCloseTo(k * uAt(value), 12);
      }),
      { numRuns: 20 },
    );
  });

  it('judges nothing where the uncertainty is not known', () => {
    const plan = planVerification(specificationOf(output), plainBench, { decisionRule: guarded });
    expect(plan.points[0]?.warnings.map(({ code }) => code)).toContain('rule-not-applicable');
    const finding = findingOf(0.7, { decisionRule: guarded }, plainBench);
    expect(finding).toMatchObject({ verdict: 'not judged', reason: 'no-decision', simpleVerdict: 'pass' });
    // A power that was read is not the quantity whose uncertainty the plan knows.
    const given = planVerification(specificationOf(output), bench, { decisionRule: guarded });
    const converted = assessReadings(given, readingsOf({ point: '1', quantity: 'power', value: 200 })).points[0];
    expect(converted).toMatchObject({ verdict: 'not judged', reason: 'no-decision' });
    expect(converted?.expanded).toBeUndefined();
  });

  it('reads back as it was written', () => {
    for (const decisionRule of [guarded, { kind: 'non-binary', ratio: 0.5 }] as const) {
      const plan = planVerification(specificationOf(output), bench, { decisionRule });
      const findings = assessReadings(plan, readingsOf({ point: '1', value: 0.77 }));
      expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
      expect(parseFindings(JSON.parse(JSON.stringify(findings)))).toEqual(findings);
    }
  });
});

describe('a decision rule that cannot be', () => {
  it.each([
    [{ kind: 'guarded-acceptance', ratio: -1 }, 'negative', 'options.decisionRule.ratio'],
    [{ kind: 'guarded-acceptance', ratio: Number.NaN }, 'not-a-number', 'options.decisionRule.ratio'],
    [{ kind: 'specific-consumer-risk', risk: 95 }, 'not-a-fraction', 'options.decisionRule.risk'],
    [{ kind: 'specific-consumer-risk', risk: 0 }, 'out-of-range', 'options.decisionRule.risk'],
    [{ kind: 'global-consumer-risk', risk: 0.02, reliability: 1 }, 'out-of-range', 'options.decisionRule.reliability'],
    [{ kind: 'test-uncertainty-ratio', method: 'mine' }, 'unknown-choice', 'method'],
    [{ kind: 'hope' }, 'unknown-choice', 'options.decisionRule.kind'],
  ])('%j is refused with its path', (decisionRule, code, path) => {
    try {
      pointWith({ decisionRule: decisionRule as PlanDecisionRule });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(CalculationError);
      expect(error).toMatchObject({ code });
      expect((error as CalculationError).path).toContain(path);
    }
  });

  it('at one point only is a warning of that point', () => {
    const oneSided = {
      ...ratedOutput,
      tolerance: { in: 'power', relative: { above: 0.2 } },
      points: [{ setting: 200, load: 400 }],
    } as const;
    const rule: PlanDecisionRule = { kind: 'global-consumer-risk', risk: 0.001, reliability: 0.4 };
    const plan = planVerification(specificationOf(oneSided), bench, { decisionRule: rule });
    expect(plan.points[0]?.measurement?.acceptance).toBeUndefined();
    expect(plan.points[0]?.warnings.map(({ code }) => code)).toContain('rule-not-applicable');
  });
});

describe('words', () => {
  it('name every rule', () => {
    expect(decisionRuleText({ kind: 'simple-acceptance' })).toBe(
      'simple acceptance: the limits themselves decide, and the risk is shared',
    );
    expect(decisionRuleText(guarded)).toBe('guarded acceptance: accepted inside the limits by U or more');
    expect(decisionRuleText({ kind: 'guarded-rejection', ratio: 0.5 })).toContain('0.5 U');
    expect(decisionRuleText({ kind: 'specific-consumer-risk', risk: 0.025 })).toContain('2.5 %');
    expect(decisionRuleText({ kind: 'specific-producer-risk', risk: 0.001 })).toContain('0.1 %');
    expect(decisionRuleText({ kind: 'non-binary', ratio: 1 })).toContain('U on both sides');
    expect(decisionRuleText({ kind: 'test-uncertainty-ratio', method: 'managed-risk' })).toContain('managed-risk');
    expect(decisionRuleText({ kind: 'global-consumer-risk', risk: 0.02, reliability: 0.9 })).toContain('90 %');
  });

  it.each([
    [1, 0, '100 %'],
    [1 - 1e-9, 1e-9, 'above 99.99 %'],
    [0.997, 0.003, '99.70 %'],
    [0.75, 0.25, '75 %'],
    [0.051, 0.949, '5.1 %'],
    [1e-9, 1 - 1e-9, 'below 0.01 %'],
    [0, 1, '0 %'],
  ])('print a probability of %d', (conforming, nonconforming, text) => {
    expect(probabilityText({ conforming, nonconforming, below: 0, above: nonconforming })).toBe(text);
  });
});
