import type { Band } from '../band/index.js';
import { requireFraction } from '../checks/index.js';
import { globalRisk } from './global-risk.js';
import type { Prior } from './prior.js';
import { worstConsumerRisk } from './worst-consumer-risk.js';

/** What the rule is asked of. */
export interface TwoPercentQuestion {
  /** Tolerance limits; both where no prior is given. */
  readonly band: Band;
  /** Acceptance limits; the tolerance limits unless stated. */
  readonly acceptance?: Band;
  /** Standard uncertainty of the measurement, in the unit of the band; greater than 0 where no prior is given. */
  readonly standardUncertainty: number;
  /** What is known of the items; without it the worst normal distribution about the middle of the tolerance counts. */
  readonly prior?: Prior;
  /** Largest probability of a false accept; 0.02 unless stated. */
  readonly limit?: number;
}

/** Whether false accepts stay rare enough. */
export interface TwoPercentAnswer {
  readonly holds: boolean;
  /** Global consumer's risk: the probability of a false accept. */
  readonly consumerRisk: number;
  readonly limit: number;
  /** The distribution of the items that it was computed with: the stated or the worst. */
  readonly prior: Prior;
  readonly isWorstCase: boolean;
}

/**
 * The 2 % rule: whether the probability of a false accept is at most 2 %.
 *
 * The risk counts all items, not a single reading. Without knowledge of the items it is taken at its worst. A risk that
 * is at the limit but for rounding, 1e-11 of it, holds: so does that of limits which were derived to have it.
 *
 * @param question Tolerance limits, acceptance limits, standard uncertainty, prior
 * @returns The risk, and whether it stays below the limit
 * @throws CalculationError as `globalRisk` and `worstConsumerRisk`; `not-a-fraction`
 * @source ANSI/NCSL Z540.3-2006, 5.3 b), from memory: check your copy
 * @example
 * ```ts
 * import { twoPercentRule } from 'esu-limits/decision';
 * const band = { lower: 240, upper: 360 };
 * twoPercentRule({ band, standardUncertainty: 7.5 }).holds; // → false
 * twoPercentRule({ band, acceptance: { lower: 241, upper: 359 }, standardUncertainty: 7.5 }).holds; // → true
 * const prior = { kind: 'normal', mean: 300, standardDeviation: 30 } as const;
 * twoPercentRule({ band, standardUncertainty: 7.5, prior }).holds; // → true
 * ```
 */
export function twoPercentRule(question: TwoPercentQuestion): TwoPercentAnswer {
  const { band, acceptance = band, standardUncertainty, prior, limit = 0.02 } = question;
  requireFraction(limit, 'limit');
  const found =
    prior === undefined
      ? worstConsumerRisk({ band, acceptance, standardUncertainty })
      : { prior, consumerRisk: globalRisk({ band, acceptance, prior, standardUncertainty }).consumerRisk };
  const { consumerRisk } = found;
  return {
    holds: consumerRisk <= limit * (1 + 1e-11),
    consumerRisk,
    limit,
    prior: found.prior,
    isWorstCase: prior === undefined,
  };
}
