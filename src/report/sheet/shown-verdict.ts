import type { OverallVerdict, ReasonCode, Verdict } from '../../procedure/index.js';

/** A verdict as it is shown: a pass close to a limit has a mark of its own. */
export type ShownVerdict = Verdict | OverallVerdict | 'close';

/** The verdict that is shown for a verdict and its reason. */
export function shownVerdict<V extends Verdict | OverallVerdict>(
  verdict: V,
  reason: ReasonCode | undefined,
): V | 'close' {
  return verdict === 'pass' && reason === 'close-to-limit' ? 'close' : verdict;
}
