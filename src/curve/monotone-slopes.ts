/**
 * Slopes at the knots of a monotone piecewise cubic: inside, the weighted harmonic mean of the two neighbouring
 * secants, 0 where they differ in sign; at the ends, the one-sided three-point formula, held to 0 where its sign
 * differs from the end secant's and to three times the end secant where the secants differ in sign.
 *
 * @param steps Widths of the stretches, greater than 0
 * @param secants Slopes of the secants of the stretches
 * @returns One slope for each knot: one more than there are stretches
 * @source F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984), with the end rule of the PCHIP package
 */
export function monotoneSlopes(steps: Float64Array, secants: Float64Array): Float64Array {
  const last = steps.length;
  const slopes = new Float64Array(last + 1);
  for (let k = 0; k <= last; k++) {
    if (k === 0 || k === last) {
      const near = k === 0 ? 0 : last - 1;
      slopes[k] = last === 1 ? secants[0]! : endSlope(steps, secants, near, k === 0 ? 1 : last - 2);
      continue;
    }
    const [h0, h1, d0, d1] = [steps[k - 1]!, steps[k]!, secants[k - 1]!, secants[k]!];
    slopes[k] = Math.sign(d0) * Math.sign(d1) > 0 ? (3 * (h0 + h1)) / ((2 * h1 + h0) / d0 + (h1 + 2 * h0) / d1) : 0;
  }
  return slopes;
}

function endSlope(steps: Float64Array, secants: Float64Array, near: number, next: number): number {
  const [h0, h1, d0, d1] = [steps[near]!, steps[next]!, secants[near]!, secants[next]!];
  const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (Math.sign(slope) !== Math.sign(d0)) return 0;
  return Math.sign(d0) !== Math.sign(d1) && Math.abs(slope) > 3 * Math.abs(d0) ? 3 * d0 : slope;
}
