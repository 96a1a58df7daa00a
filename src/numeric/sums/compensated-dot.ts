/** 2^27 + 1: splits a double into two halves whose products are exact (Dekker). */
const splitter = 134217729;

/**
 * start + Σ aᵢ·bᵢ as if computed with twice the digits and then rounded: sums of products that nearly cancel keep theirs.
 *
 * @source T. Ogita, S. M. Rump and S. Oishi, SIAM J. Sci. Comput. 26 (2005) 1955: Dot2
 */
export function compensatedDot(a: ArrayLike<number>, b: ArrayLike<number>, start = 0): number {
  let sum = start;
  let rest = 0;
  for (let i = 0; i < a.length; i++) {
    const x = a[i] as number;
    const y = b[i] as number;
    const product = x * y;
    const xHigh = splitter * x - (splitter * x - x);
    const yHigh = splitter * y - (splitter * y - y);
    const xLow = x - xHigh;
    const yLow = y - yHigh;
    const productRest = xLow * yLow - (product - xHigh * yHigh - xLow * yHigh - xHigh * yLow);
    const next = sum + product;
    const virtual = next - sum;
    rest += sum - (next - virtual) + (product - virtual) + productRest;
    sum = next;
  }
  return sum + rest;
}
