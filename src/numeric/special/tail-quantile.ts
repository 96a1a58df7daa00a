import { fail } from '../../checks/index.js';

/** What `tailQuantile` needs to know about a distribution at one value. */
export interface TailAt {
  /** The probability of the tail that is sought. */
  readonly tail: number;
  /** Value times density. */
  readonly scaledDensity: number;
}

/**
 * The positive value at which a tail has a given probability, by Newton's method in the logarithms of both: a tail is
 * close to a power of the value on one side and falls faster on the other, so that this converges from afar. Steps that
 * leave the bracket found so far are replaced by its middle.
 *
 * @param direction 1 for a lower tail, which grows with the value; −1 for an upper tail
 */
export function tailQuantile(at: (value: number) => TailAt, target: number, start: number, direction: 1 | -1): number {
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  let value = start;
  for (let round = 0; round < 200; round++) {
    const { tail, scaledDensity } = at(value);
    const excess = tail > 0 ? direction * Math.log(tail / target) : -direction * Number.POSITIVE_INFINITY;
    const next = value * Math.exp((-excess * tail) / scaledDensity);
    // What is left after a step is about the square of the excess before it.
    if (Math.abs(excess) < 1e-8) return next;
    if (excess > 0) high = value;
    else low = value;
    value = next > low && next < high ? next : middle(low, high);
    if (value === 0) fail('result-out-of-range', 'quantile', value, 'the quantile is too small for a number');
  }
  return fail('not-converged', 'probability', target, 'the quantile was not found');
}

/** Geometric middle of a bracket, or a step outward while one side is still open. */
function middle(low: number, high: number): number {
  if (high === Number.POSITIVE_INFINITY) return low * 4;
  return low === 0 ? high / 4 : Math.sqrt(low) * Math.sqrt(high);
}
