import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { Band } from '../../src/band/index.js';
import {
  acceptanceBand,
  conformanceProbability,
  explainAcceptanceBand,
  globalRisk,
  type Prior,
} from '../../src/decision/index.js';
import {
  anyBand,
  degreesOfFreedom,
  expandedOf,
  guardedRule,
  mirrored,
  oneSidedBand,
  real,
  relativeUncertainty,
  rule,
  twoSidedBand,
  widthOf,
} from './generators.js';

const within = (inner: Band, outer: Band): boolean =>
  (outer.lower === undefined || (inner.lower as number) >= outer.lower) &&
  (outer.upper === undefined || (inner.upper as number) <= outer.upper);

/** Limits where a band has them, with the sides' names. */
const limitsOf = ({ lower, upper }: Band): number[] => [lower, upper].filter((limit) => limit !== undefined);

describe('acceptance limits', () => {
  it('lie inside the tolerance by a rule that guards the consumer', () => {
    fc.assert(
      fc.property(anyBand(), guardedRule(), relativeUncertainty(), (band, chosen, ratio) => {
        const { acceptance } = explainAcceptanceBand(band, chosen, expandedOf(band, ratio));
        if (acceptance !== null) expect(within(acceptance, band)).toBe(true);
      }),
    );
  });

  it('with a resolution lie on its steps, inside those without', () => {
    fc.assert(
      fc.property(anyBand(), rule(), relativeUncertainty(), (band, chosen, ratio) => {
        const resolution = 0.5;
        const exact = explainAcceptanceBand(band, chosen, expandedOf(band, ratio)).acceptance;
        const rounded = explainAcceptanceBand(band, chosen, expandedOf(band, ratio), { resolution }).acceptance;
        if (rounded === null) return;
        for (const limit of limitsOf(rounded)) expect(limit / resolution).toBe(Math.round(limit / resolution));
        // A limit that is on a step but for rounding counts as on it.
        const slack = 1e-11;
        expect(exact).not.toBeNull();
        const { lower, upper } = exact as Band;
        if (lower !== undefined) expect(rounded.lower).toBeGreaterThanOrEqual(lower * (1 - slack));
        if (upper !== undefined) expect(rounded.upper).toBeLessThanOrEqual(upper * (1 + slack));
      }),
    );
  });

  it('are the same under a mirror', () => {
    fc.assert(
      fc.property(anyBand(), rule(), relativeUncertainty(), (band, chosen, ratio) => {
        const here = explainAcceptanceBand(band, chosen, expandedOf(band, ratio)).acceptance;
        const there = explainAcceptanceBand(mirrored(band), chosen, expandedOf(band, ratio)).acceptance;
        expect(there).toEqual(here === null ? null : mirrored(here));
      }),
    );
  });

  it('with one limit are those of two whose other limit is far', () => {
    fc.assert(
      fc.property(oneSidedBand(), rule(), relativeUncertainty(), (band, chosen, ratio) => {
        const far = 1e6;
        const both = band.lower === undefined ? { ...band, lower: -far } : { ...band, upper: far };
        const measured = expandedOf(band, ratio);
        const single = acceptanceBand(band, chosen, measured);
        expect(acceptanceBand(both, chosen, measured)).toMatchObject(single);
      }),
    );
  });

  it('move inward, or outward for the producer, as the uncertainty grows', () => {
    fc.assert(
      fc.property(twoSidedBand(), rule(), relativeUncertainty(), real(1, 2), (band, chosen, anyRatio, factor) => {
        // For the producer the other limit must be far: ten standard uncertainties.
        const ratio = chosen.kind === 'specific-producer-risk' ? anyRatio / 4 : anyRatio;
        const less = explainAcceptanceBand(band, chosen, expandedOf(band, ratio)).acceptance;
        const more = explainAcceptanceBand(band, chosen, expandedOf(band, ratio * factor)).acceptance;
        if (more === null || less === null) return;
        const isOutward = chosen.kind === 'guarded-rejection' || chosen.kind === 'specific-producer-risk';
        // To the rounding of a limit, and of the root that holds two tails together.
        const slackAt = (limit: number) => 1e-12 * widthOf(band) + 2 * Number.EPSILON * Math.abs(limit);
        const [inner, outer] = isOutward ? [less, more] : [more, less];
        const { lower, upper } = outer as Required<Band>;
        expect(inner.lower).toBeGreaterThanOrEqual(lower - slackAt(lower));
        expect(inner.upper).toBeLessThanOrEqual(upper + slackAt(upper));
      }),
    );
  });

  it('come back inward for the producer where the other limit is so near that it counts', () => {
    const band = { lower: -2.5, upper: 2.5 };
    const rule = { kind: 'specific-producer-risk', risk: 0.49 } as const;
    const [near, far] = [0.5, 2.5].map((standardUncertainty) => {
      const { lower } = acceptanceBand(band, rule, { standardUncertainty }) as Required<Band>;
      expect(conformanceProbability(band, lower, standardUncertainty).conforming).toBeCloseTo(0.49, 11);
      return lower;
    });
    expect(near).toBeLessThan(-2.5);
    expect(far).toBeGreaterThan(-2.5);
  });

  it('of a relative uncertainty approach those of an absolute one as the tolerance narrows', () => {
    fc.assert(
      fc.property(guardedRule(), real(0.01, 0.1), (chosen, ratio) => {
        const band = { lower: 1 - 1e-6, upper: 1 + 1e-6 };
        const u = ratio * 2e-6;
        const absolute = explainAcceptanceBand(band, chosen, { standardUncertainty: u, coverageFactor: 2 }).acceptance;
        const relative = explainAcceptanceBand(band, chosen, {
          relativeStandardUncertainty: u,
          coverageFactor: 2,
        }).acceptance;
        expect(relative === null).toBe(absolute === null);
        if (relative === null || absolute === null) return;
        expect(relative.lower).toBeCloseTo(absolute.lower as number, 10);
        expect(relative.upper).toBeCloseTo(absolute.upper as number, 10);
      }),
    );
  });
});

describe('a specific risk', () => {
  const risks = () => real(1e-6, 0.5);

  it('of a value at either acceptance limit is the stated one', () => {
    fc.assert(
      fc.property(anyBand(), risks(), relativeUncertainty(), degreesOfFreedom(), (band, risk, ratio, degrees) => {
        const u = ratio * widthOf(band);
        const measured = { standardUncertainty: u, degreesOfFreedom: degrees };
        for (const whose of ['consumer', 'producer'] as const) {
          const chosen = { kind: `specific-${whose}-risk` as const, risk };
          const { acceptance } = explainAcceptanceBand(band, chosen, measured);
          if (acceptance === null) continue;
          for (const limit of limitsOf(acceptance)) {
            const { conforming, nonconforming } = conformanceProbability(band, limit, u, { degreesOfFreedom: degrees });
            // What rounding the limit itself makes of the risk: u is 1/200 of the limit or more.
            expect((whose === 'consumer' ? nonconforming : conforming) / risk).toBeCloseTo(1, 9);
          }
        }
      }),
    );
  });

  it('of a relative uncertainty is the stated one with the uncertainty of the limit itself', () => {
    fc.assert(
      fc.property(anyBand(), risks(), real(0.001, 0.05), (band, risk, relativeStandardUncertainty) => {
        for (const whose of ['consumer', 'producer'] as const) {
          const chosen = { kind: `specific-${whose}-risk` as const, risk };
          const { acceptance } = explainAcceptanceBand(band, chosen, { relativeStandardUncertainty });
          if (acceptance === null) continue;
          for (const limit of limitsOf(acceptance)) {
            const found = conformanceProbability(band, limit, relativeStandardUncertainty * limit);
            expect((whose === 'consumer' ? found.nonconforming : found.conforming) / risk).toBeCloseTo(1, 9);
          }
        }
      }),
    );
  });
});

describe('a global risk', () => {
  const priors = (lower: number, upper: number): fc.Arbitrary<Prior> => {
    const span = upper - lower;
    const mean = real(lower, upper);
    return fc.oneof<fc.Arbitrary<Prior>[]>(
      fc.record({ mean, standardDeviation: real(0.05 * span, span) }).map((p) => ({ kind: 'normal', ...p })),
      fc.record({ mean, standardDeviation: real(0.05 * span, span) }).map((p) => ({ kind: 'gamma', ...p })),
      fc
        .record({ from: real(0.1, 1), to: real(0.1, 1) })
        .map(({ from, to }) => ({ kind: 'rectangular', lower: lower - from * span, upper: upper + to * span })),
    );
  };

  it('at the guard band is the stated one, or less where there is none', () => {
    fc.assert(
      fc.property(
        twoSidedBand().chain((band) => fc.record({ band: fc.constant(band), prior: priors(band.lower, band.upper) })),
        relativeUncertainty(),
        real(1e-6, 0.05),
        ({ band, prior }, ratio, risk) => {
          const standardUncertainty = ratio * widthOf(band);
          const chosen = { kind: 'global-consumer-risk', risk, prior } as const;
          const { acceptance, guardBand } = explainAcceptanceBand(band, chosen, { standardUncertainty });
          const { consumerRisk } = globalRisk({ band, acceptance, prior, standardUncertainty });
          if (acceptance === null || guardBand?.lower === 0) expect(consumerRisk).toBeLessThanOrEqual(risk);
          // Rounding the limits moves the risk by up to 1e-13 of the limit over u, which is 1e-3 of the span or more.
          else expect(consumerRisk / risk).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the working of acceptance limits', () => {
  it('evaluates to what it shows', () => {
    fc.assert(
      fc.property(anyBand(), rule(), relativeUncertainty(), (band, chosen, ratio) => {
        const { working } = explainAcceptanceBand(band, chosen, expandedOf(band, ratio), { resolution: 0.1 });
        for (const { expression, inputs, value } of working) {
          const again = evaluate(expression, { ...inputs }) as number;
          expect(Math.abs(again - value), expression).toBeLessThanOrEqual(1e-12 * Math.abs(value));
        }
      }),
      { numRuns: 50 },
    );
  });
});
