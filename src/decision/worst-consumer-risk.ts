import { type Band, checkBand } from '../band/index.js';
import { fail, requirePositive } from '../checks/index.js';
import { minimise } from '../numeric/index.js';
import { riskOf } from './global-risk.js';
import type { NormalPrior } from './prior.js';
import { priorShape } from './prior-shape.js';
import { type Range, rangeOf } from './range.js';

/** A tolerance and how it is judged, without anything that is known of the items. */
export interface WorstRiskInput {
  /** Tolerance limits, both. */
  readonly band: Band;
  /** Acceptance limits, both; the tolerance limits unless stated. */
  readonly acceptance?: Band;
  /** Standard uncertainty of the measurement, in the unit of the band, greater than 0. */
  readonly standardUncertainty: number;
}

/** The worst global consumer's risk, and the items that bring it. */
export interface WorstRisk {
  /** Probability that an item does not conform and is accepted: at most this, whatever the spread of the items. */
  readonly consumerRisk: number;
  /** The spread of the items at which it is reached. */
  readonly prior: NormalPrior;
  /** Probability that such an item conforms. */
  readonly inToleranceProbability: number;
}

/**
 * Largest global consumer's risk over all normal distributions of the items about the middle of the tolerance.
 *
 * For whoever knows nothing of the items: items that all conform bring no risk, and items that hardly ever do are rarely
 * accepted; in between lies the worst.
 *
 * @param input Tolerance limits, acceptance limits, standard uncertainty, all in one unit
 * @returns The risk and the prior at which it is reached
 * @throws CalculationError `not-a-number`, `not-positive`, `band-reversed`, `missing-member` (a single limit: there is no
 * middle, and with a single acceptance limit no spread is the worst)
 * @accuracy Risk within 1e-12 relative, spread within 1e-6
 * @source JCGM 106:2012, clause 9, for the risk
 * @example
 * ```ts
 * import { worstConsumerRisk } from 'esu-limits/decision';
 * // A test uncertainty ratio of 4, no guard band: 2.24 % at worst.
 * const worst = worstConsumerRisk({ band: { lower: 240, upper: 360 }, standardUncertainty: 7.5 });
 * worst.consumerRisk.toFixed(4); // → "0.0224"
 * worst.inToleranceProbability.toFixed(3); // → "0.647"
 * ```
 */
export function worstConsumerRisk({ band, acceptance = band, standardUncertainty }: WorstRiskInput): WorstRisk {
  const u = requirePositive(standardUncertainty, 'standardUncertainty');
  const { from: lower, to: upper } = bothOf(band, 'band', 'must be given: a single limit has no middle');
  const readings = bothOf(acceptance, 'acceptance', 'must be given: with a single limit no spread is the worst');
  const half = requirePositive(upper - lower, 'band: its span') / 2;
  const question = { tolerance: rangeOf(band), readings, u };
  const at = (logarithm: number) => {
    const prior: NormalPrior = { kind: 'normal', mean: lower + half, standardDeviation: Math.exp(logarithm) };
    return { prior, risk: riskOf({ ...question, prior, shape: priorShape(prior) }) };
  };
  // Narrower items nearly always conform, wider ones are nearly always rejected.
  const reach = Math.max(half, readings.to - lower - half, lower + half - readings.from);
  const widest = Math.log(20 * (reach + u));
  const { place } = minimise((logarithm) => -at(logarithm).risk.consumerRisk, Math.log(half / 20), widest);
  const { prior, risk } = at(place);
  const { consumerRisk, inToleranceProbability } = risk;
  return { consumerRisk, prior, inToleranceProbability };
}

function bothOf(band: Band, path: string, requirement: string): Range {
  const { lower, upper } = checkBand(band, path);
  if (lower === undefined) fail('missing-member', `${path}.lower`, lower, requirement);
  if (upper === undefined) fail('missing-member', `${path}.upper`, upper, requirement);
  return { from: lower, to: upper };
}
