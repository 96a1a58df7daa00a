import { findRoot } from '../numeric/index.js';
import { riskOf } from './global-risk.js';
import type { Prior } from './prior.js';
import { priorShape } from './prior-shape.js';
import type { Range } from './range.js';

/** Least guard band of 0 or more, the same at both limits, that keeps the global consumer's risk. */
export function globalRiskGuardBand(tolerance: Range, prior: Prior, u: number, risk: number): number {
  const shape = priorShape(prior, 'rule.prior');
  const consumerRisk = (w: number): number => {
    const readings = { from: tolerance.from + w, to: tolerance.to - w };
    return riskOf({ tolerance, readings, prior, shape, u }).consumerRisk;
  };
  if (consumerRisk(0) <= risk) return 0;
  let most = (tolerance.to - tolerance.from) / 2;
  if (most === Number.POSITIVE_INFINITY) {
    most = u;
    while (consumerRisk(most) > risk) most *= 2;
  }
  const excess = (w: number) => Math.log(consumerRisk(w) / risk);
  return findRoot(excess, 0, most, { relative: 1e-14, absolute: 1e-14 * u });
}
