import { findRoot } from '../numeric/index.js';
import type { Tails } from './tails.js';

/** What a specific risk asks for at one acceptance limit; distances in standard uncertainties of a value there. */
export interface SpecificRiskQuestion {
  /** `consumer`: the quantity may lie outside with this probability; `producer`: inside. */
  readonly whose: 'consumer' | 'producer';
  readonly risk: number;
  readonly tails: Tails;
  /** Distance of the value from the other tolerance limit, when it lies z inside this one; infinite without one. */
  readonly toOther: (z: number) => number;
  /** The z at which the value is in the middle of the tolerance; infinite with one limit. */
  readonly middle: number;
}

/**
 * Distance z of the acceptance limit inside the tolerance limit, in standard uncertainties, at which the risk is held;
 * negative outside. With one limit it is a quantile; with two, both tails together count. `null` where not even a value
 * in the middle of the tolerance holds the risk.
 */
export function specificRiskLimit({ whose, risk, tails, toOther, middle }: SpecificRiskQuestion): number | null {
  const quantile = tails.quantile(risk);
  /** Positive where a value is not accepted; it falls from the limit to the middle. */
  const excess = (z: number): number =>
    whose === 'consumer'
      ? Math.log((tails.above(z) + tails.above(toOther(z))) / risk)
      : Math.log(risk / tails.between(-z, toOther(z)));
  const alone = whose === 'consumer' ? quantile : -quantile;
  if (middle === Number.POSITIVE_INFINITY) return alone;
  if (!(alone < middle) || excess(middle) > 0) return null;
  // Where the other limit is far its tail is lost beside the risk.
  return excess(alone) <= 0 ? alone : findRoot(excess, alone, middle, { relative: 1e-15 });
}
