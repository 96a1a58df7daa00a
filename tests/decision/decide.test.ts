import { describe, expect, it } from 'vitest';
import { type DecisionInput, type DecisionRule, decide } from '../../src/decision/index.js';

const band = { lower: 240, upper: 360 };
const reading = { band, value: 352, expandedUncertainty: 12, coverageFactor: 2 };
const simple = { kind: 'simple-acceptance' } as const;
const guarded = { kind: 'guarded-acceptance', ratio: 1 } as const;
const prior = { kind: 'normal', mean: 300, standardDeviation: 20 } as const;

describe('a decision', () => {
  it.each([
    [227.9, 'fail'],
    [228, 'conditional-fail'],
    [239.9, 'conditional-fail'],
    [240, 'conditional-pass'],
    [251.9, 'conditional-pass'],
    [252, 'pass'],
    [300, 'pass'],
    [348, 'pass'],
    [348.1, 'conditional-pass'],
    [360, 'conditional-pass'],
    [360.1, 'conditional-fail'],
    [372, 'conditional-fail'],
    [372.1, 'fail'],
  ])('on %d by four statements is %s', (value, word) => {
    expect(decide({ ...reading, value, rule: { kind: 'non-binary', ratio: 1 } }).decision).toBe(word);
  });

  it('counts a reading on a limit as inside, binary fractions or not', () => {
    const tight = { upper: 0.3 };
    expect(decide({ band: tight, value: 0.1 + 0.2, standardUncertainty: 0.01, rule: simple }).decision).toBe('accept');
    expect(decide({ band: tight, value: 0.3000001, standardUncertainty: 0.01, rule: simple }).decision).toBe('reject');
  });

  it('on an exact reading that is on a limit but for rounding is sure', () => {
    const found = decide({ band: { upper: 0.3 }, value: 0.1 + 0.2, standardUncertainty: 0, rule: simple });
    expect(found).toMatchObject({ decision: 'accept', specificRisk: 0 });
    expect(found.working.map(({ symbol }) => symbol)).not.toContain('z_U');
  });

  it('bears the risk of what it says: of an acceptance that it does not conform, of a rejection that it does', () => {
    const accepted = decide({ ...reading, rule: simple });
    const rejected = decide({ ...reading, rule: guarded });
    expect(accepted.decision).toBe('accept');
    expect(rejected.decision).toBe('reject');
    expect(accepted.specificRisk).toBe(accepted.conformance.nonconforming);
    expect(rejected.specificRisk).toBe(rejected.conformance.conforming);
    const conditional = decide({ ...reading, value: 365, rule: { kind: 'non-binary', ratio: 1 } });
    expect(conditional.decision).toBe('conditional-fail');
    expect(conditional.specificRisk).toBe(conditional.conformance.conforming);
  });

  it('carries rule, limits, guard bands and what it takes for granted', () => {
    const found = decide({ ...reading, rule: guarded, degreesOfFreedom: 9 });
    expect(found).toMatchObject({
      rule: guarded,
      tolerance: band,
      acceptance: { lower: 252, upper: 348 },
      guardBand: { lower: 12, upper: 12 },
      standardUncertainty: 6,
      warnings: [],
    });
    expect(found.assumptions.join(' ')).toContain("Student's t with 9 degrees of freedom");
    expect(found).not.toHaveProperty('failing');
    expect(found).not.toHaveProperty('globalRisk');
  });

  it('by a specific risk states each assumption once', () => {
    const { assumptions } = decide({ ...reading, rule: { kind: 'specific-consumer-risk', risk: 0.025 } });
    expect(new Set(assumptions).size).toBe(assumptions.length);
  });

  it('has global risks where there is a prior, its own or that of the rule', () => {
    const own = decide({ ...reading, rule: guarded, prior });
    const ofRule = decide({ ...reading, rule: { kind: 'global-consumer-risk', risk: 1e-4, prior } });
    expect(own.globalRisk?.consumerRisk).toBeGreaterThan(0);
    expect(own.globalRisk?.consumerRisk).toBeLessThan(1e-4);
    expect((ofRule.globalRisk?.consumerRisk as number) / 1e-4).toBeCloseTo(1, 10);
    expect(own.assumptions.join(' ')).toContain('normal distribution, as stated');
  });

  it('rejects, with a warning and no certainty, where the guard bands leave nothing to accept', () => {
    const found = decide({ ...reading, value: 300, expandedUncertainty: 80, rule: guarded, prior });
    expect(found).toMatchObject({ decision: 'reject', acceptance: null, guardBand: null });
    expect(found.warnings.map(({ code }) => code)).toEqual(['acceptance-empty']);
    expect(found.specificRisk).toBe(found.conformance.conforming);
    expect(found.globalRisk).toMatchObject({ consumerRisk: 0, acceptanceProbability: 0 });
    const four = decide({ ...reading, value: 300, expandedUncertainty: 80, rule: { kind: 'non-binary', ratio: 1 } });
    expect(four.decision).toBe('conditional-pass');
  });

  it('takes a relative uncertainty of the value for its probability', () => {
    const { band: tolerance, value } = reading;
    const found = decide({
      band: tolerance,
      value,
      relativeStandardUncertainty: 0.02,
      coverageFactor: 2,
      rule: guarded,
    });
    expect(found.standardUncertainty).toBeCloseTo(7.04, 12);
    expect(found.acceptance?.upper).toBeCloseTo(360 / 1.04, 12);
    // The value passes its limit exactly where its own distance from the tolerance is w.
    const limit = found.acceptance?.upper as number;
    expect(360 - limit).toBeCloseTo(2 * 0.02 * limit, 11);
  });

  it('is plain data', () => {
    const found = decide({ ...reading, rule: { kind: 'non-binary', ratio: 1 }, prior, resolution: 1 });
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });

  it.each<readonly [string, string, Partial<DecisionInput>]>([
    ['not-a-number', 'value', { value: Number.NaN }],
    ['not-a-number', 'value', { value: Number.POSITIVE_INFINITY }],
    ['band-reversed', 'band.lower', { band: { lower: 3, upper: 1 } }],
    ['no-limits', 'band', { band: {} }],
    ['negative', 'expandedUncertainty', { expandedUncertainty: -1 }],
    ['not-positive', 'coverageFactor', { coverageFactor: 0 }],
    ['not-positive', 'degreesOfFreedom', { degreesOfFreedom: 0 }],
    ['not-positive', 'resolution', { resolution: -1 }],
    ['not-positive', 'prior.standardDeviation', { prior: { ...prior, standardDeviation: 0 } }],
    ['not-positive', 'prior: its width', { prior: { kind: 'rectangular', lower: 1, upper: 1 } }],
    ['unknown-choice', 'rule.kind', { rule: { kind: 'other' } as unknown as DecisionRule }],
    ['unknown-choice', 'prior.kind', { prior: { kind: 'other' } as never }],
    ['result-out-of-range', 'value', { expandedUncertainty: 1e-320 }],
  ])('is refused with %s at %s', (code, path, change) => {
    expect(() => decide({ ...reading, rule: guarded, ...change })).toThrow(expect.objectContaining({ code, path }));
  });
});
