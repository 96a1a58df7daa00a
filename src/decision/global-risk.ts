import { type Band, checkBand } from '../band/index.js';
import { requireNonNegative } from '../checks/index.js';
import { jointProbability } from './joint-probability.js';
import type { Prior } from './prior.js';
import { priorShape } from './prior-shape.js';
import { rangeOf } from './range.js';

/** What the risk of a decision depends on, before any reading is taken. */
export interface GlobalRiskInput {
  /** Tolerance limits. */
  readonly band: Band;
  /** Acceptance limits; `null` where no reading is accepted. */
  readonly acceptance: Band | null;
  /** What is known of the quantity before it is measured. */
  readonly prior: Prior;
  /** Standard uncertainty of the measurement, in the unit of the band, 0 or more; 0 is an exact measurement. */
  readonly standardUncertainty: number;
}

/** Risks of a decision rule over all items that may come, and the shares that they are parts of. */
export interface GlobalRisk {
  /** Probability that an item does not conform and is accepted. */
  readonly consumerRisk: number;
  /** Probability that an item conforms and is rejected. */
  readonly producerRisk: number;
  /** Probability that an item conforms. */
  readonly inToleranceProbability: number;
  /** Probability that an item does not conform. */
  readonly outOfToleranceProbability: number;
  /** Probability that an item is accepted, rightly or not. */
  readonly acceptanceProbability: number;
}

/**
 * Global consumer's and producer's risk of a pair of tolerance and acceptance limits.
 *
 * The reading is normal about the quantity. Both risks are joint probabilities, as in JCGM 106; divided by the
 * acceptance probability the consumer's risk is that of an accepted item.
 *
 * @param input Tolerance limits, acceptance limits, prior, standard uncertainty, all in one unit
 * @returns Probabilities, as fractions
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `band-reversed`, `unknown-choice`
 * @source JCGM 106:2012, 9.5, equations (18) and (20)
 * @accuracy Held to 12 digits against recomputed published cases, and to 1e-9 against an adaptive quadrature over random
 * cases
 * @example
 * ```ts
 * import { globalRisk } from 'esu-limits';
 * const prior = { kind: 'normal', mean: 300, standardDeviation: 20 } as const;
 * const band = { lower: 240, upper: 360 };
 * const risk = globalRisk({ band, acceptance: band, prior, standardUncertainty: 5 });
 * risk.consumerRisk.toPrecision(3); // → "0.000583"
 * ```
 */
export function globalRisk({ band, acceptance, prior, standardUncertainty }: GlobalRiskInput): GlobalRisk {
  const tolerance = rangeOf(checkBand(band));
  const shape = priorShape(prior);
  requireNonNegative(standardUncertainty, 'standardUncertainty');
  const joint = (from: number, to: number, low: number, high: number) =>
    jointProbability(shape, { from, to }, { from: low, to: high }, standardUncertainty);
  const { from, to } = tolerance;
  const infinity = Number.POSITIVE_INFINITY;
  const inToleranceProbability = joint(from, to, -infinity, infinity);
  const outOfToleranceProbability = Math.min(
    1,
    joint(-infinity, from, -infinity, infinity) + joint(to, infinity, -infinity, infinity),
  );
  const shares = { inToleranceProbability, outOfToleranceProbability };
  if (acceptance === null) {
    return { consumerRisk: 0, producerRisk: inToleranceProbability, ...shares, acceptanceProbability: 0 };
  }
  const { from: low, to: high } = rangeOf(checkBand(acceptance, 'acceptance'));
  const consumerRisk = joint(-infinity, from, low, high) + joint(to, infinity, low, high);
  const producerRisk = joint(from, to, -infinity, low) + joint(from, to, high, infinity);
  const acceptanceProbability = Math.min(1, joint(from, to, low, high) + consumerRisk);
  return { consumerRisk, producerRisk, ...shares, acceptanceProbability };
}
