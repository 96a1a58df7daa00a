import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type DecisionWord, decide } from '../../src/decision/index.js';
import {
  anyBand,
  degreesOfFreedom,
  expandedOf,
  mirrored,
  real,
  relativeUncertainty,
  rule,
  widthOf,
} from './generators.js';

const inputs = () =>
  fc
    .record({
      band: anyBand(),
      rule: rule(),
      ratio: relativeUncertainty(),
      at: real(-0.5, 1.5),
      degreesOfFreedom: degreesOfFreedom(),
    })
    .map(({ band, rule: chosen, ratio, at, degreesOfFreedom: degrees }) => ({
      band,
      rule: chosen,
      degreesOfFreedom: degrees,
      value: ((band.lower ?? band.upper) as number) + at * widthOf(band) * (band.lower === undefined ? -1 : 1),
      ...expandedOf(band, ratio),
    }));

describe('a decision', () => {
  it('has probabilities that add to 1, and one of them as its risk', () => {
    fc.assert(
      fc.property(inputs(), (input) => {
        const { conformance, specificRisk } = decide(input);
        expect(conformance.conforming + conformance.nonconforming).toBeCloseTo(1, 13);
        expect([conformance.conforming, conformance.nonconforming]).toContain(specificRisk);
      }),
    );
  });

  it('is the same under a mirror', () => {
    fc.assert(
      fc.property(inputs(), (input) => {
        const here = decide(input);
        const there = decide({ ...input, band: mirrored(input.band), value: -input.value });
        expect(there.decision).toBe(here.decision);
        expect(Math.abs(there.specificRisk - here.specificRisk)).toBeLessThanOrEqual(1e-14 * here.specificRisk);
      }),
    );
  });

  it('by a specific risk never bears more of it than stated', () => {
    fc.assert(
      fc.property(inputs(), real(1e-6, 0.5), (input, risk) => {
        const consumer = decide({ ...input, rule: { kind: 'specific-consumer-risk', risk } });
        if (consumer.decision === 'accept') expect(consumer.specificRisk).toBeLessThanOrEqual(risk * (1 + 1e-9));
        const producer = decide({ ...input, rule: { kind: 'specific-producer-risk', risk } });
        if (producer.decision === 'reject') expect(producer.specificRisk).toBeLessThanOrEqual(risk * (1 + 1e-9));
      }),
    );
  });

  it('shows a working that evaluates to its values', () => {
    fc.assert(
      fc.property(inputs(), (input) => {
        for (const { expression, inputs: symbols, value } of decide(input).working) {
          const again = evaluate(expression, { ...symbols }) as number;
          expect(Math.abs(again - value), expression).toBeLessThanOrEqual(1e-12 * Math.abs(value));
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe('four statements', () => {
  /** From outside to inside. */
  const order: readonly DecisionWord[] = ['fail', 'conditional-fail', 'conditional-pass', 'pass'];

  it('divide the line: they only get better towards the middle, and a pass has no risk above that of its limit', () => {
    fc.assert(
      fc.property(anyBand(), relativeUncertainty(), real(0, 1.5), real(0, 1), real(0, 1), (band, ratio, r, a, b) => {
        const chosen = { kind: 'non-binary', ratio: r } as const;
        const measured = expandedOf(band, ratio);
        const width = widthOf(band);
        const [outer, inner] = [Math.min(a, b), Math.max(a, b)];
        // From half a width outside to the middle, at the lower limit and at the upper one.
        const sides = [
          ...(band.lower === undefined ? [] : [(t: number) => (band.lower as number) + (t - 0.5) * width]),
          ...(band.upper === undefined ? [] : [(t: number) => (band.upper as number) - (t - 0.5) * width]),
        ];
        for (const at of sides) {
          const words = [outer, inner].map((t) => decide({ band, value: at(t), rule: chosen, ...measured }).decision);
          const ranks = words.map((word) => order.indexOf(word));
          expect(Math.min(...ranks)).toBeGreaterThanOrEqual(0);
          expect(ranks[1], `${words}`).toBeGreaterThanOrEqual(ranks[0] as number);
        }
      }),
    );
  });

  it('agree with simple acceptance, guarded acceptance and guarded rejection', () => {
    fc.assert(
      fc.property(inputs(), real(0, 1.5), (input, ratio) => {
        const { decision } = decide({ ...input, rule: { kind: 'non-binary', ratio } });
        const by = (kind: 'guarded-acceptance' | 'guarded-rejection') =>
          decide({ ...input, rule: { kind, ratio } }).decision === 'accept';
        const isInside = decide({ ...input, rule: { kind: 'simple-acceptance' } }).decision === 'accept';
        expect(decision === 'pass').toBe(by('guarded-acceptance'));
        expect(decision === 'fail').toBe(!by('guarded-rejection'));
        expect(decision === 'pass' || decision === 'conditional-pass').toBe(isInside);
      }),
    );
  });
});
