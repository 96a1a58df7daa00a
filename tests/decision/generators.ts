import fc from 'fast-check';
import type { Band } from '../../src/band/index.js';
import type { DecisionRule, MeasurementUncertainty } from '../../src/decision/index.js';
import type { DegreesOfFreedom } from '../../src/uncertainty/index.js';

export const real = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Degrees of freedom as a budget gives them. */
export const degreesOfFreedom = (): fc.Arbitrary<DegreesOfFreedom> =>
  fc.oneof(fc.constant('infinite' as const), real(1, 200));

/** Tolerance of a current in milliamperes: about a nominal of 50–1000, 5–40 % to each side, asymmetric. */
export const twoSidedBand = (): fc.Arbitrary<{ readonly lower: number; readonly upper: number }> =>
  fc
    .record({ nominal: real(50, 1000), below: real(0.05, 0.4), above: real(0.05, 0.4) })
    .map(({ nominal, below, above }) => ({ lower: nominal * (1 - below), upper: nominal * (1 + above) }));

export const oneSidedBand = (): fc.Arbitrary<Band> =>
  twoSidedBand().chain(({ lower, upper }) => fc.constantFrom<Band>({ lower }, { upper }));

export const anyBand = (): fc.Arbitrary<Band> => fc.oneof<fc.Arbitrary<Band>[]>(twoSidedBand(), oneSidedBand());

/** Standard uncertainty as a part of the span of a tolerance: test uncertainty ratios of about 1.2 to 250. */
export const relativeUncertainty = (): fc.Arbitrary<number> => real(0.001, 0.2);

/** Rules that move the limits by what the uncertainty alone says. */
export const rule = (): fc.Arbitrary<DecisionRule> =>
  fc.oneof<fc.Arbitrary<DecisionRule>[]>(
    fc.constant({ kind: 'simple-acceptance' }),
    real(0, 1.5).map((ratio) => ({ kind: 'guarded-acceptance', ratio })),
    real(0, 1.5).map((ratio) => ({ kind: 'guarded-rejection', ratio })),
    real(0, 1.5).map((ratio) => ({ kind: 'non-binary', ratio })),
    real(1e-4, 0.5).map((risk) => ({ kind: 'specific-consumer-risk', risk })),
    real(1e-4, 0.5).map((risk) => ({ kind: 'specific-producer-risk', risk })),
  );

/** A rule that never accepts a value outside the tolerance. */
export const guardedRule = (): fc.Arbitrary<DecisionRule> =>
  rule().filter(({ kind }) => kind !== 'guarded-rejection' && kind !== 'specific-producer-risk');

/** The mirror image of a band about 0. */
export function mirrored({ lower, upper }: Band): Band {
  return { ...(upper === undefined ? {} : { lower: -upper }), ...(lower === undefined ? {} : { upper: -lower }) };
}

/** The width that a budget is measured against: the span, or the limit where there is one. */
export function widthOf({ lower, upper }: Band): number {
  return lower !== undefined && upper !== undefined ? upper - lower : Math.abs((lower ?? upper) as number);
}

export function expandedOf(band: Band, relative: number): MeasurementUncertainty {
  return { standardUncertainty: relative * widthOf(band), coverageFactor: 2 };
}
