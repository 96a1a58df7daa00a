/**
 * Probability that Student's t lies between 0 and t, for t² ≤ ν or so, with full relative accuracy near 0:
 * half the incomplete beta I_y(½, a), y = t²/(ν + t²), by its series of positive terms.
 *
 * @source NIST DLMF 8.17.8
 */
export function studentMiddle(t: number, degreesOfFreedom: number, weight: number, ratio: number): number {
  const y = 1 / (1 + degreesOfFreedom / (t * t));
  const shape = degreesOfFreedom / 2 + 0.5;
  let term = 1;
  let sum = 1;
  for (let n = 0; term > 1e-17 * sum; n++) {
    term *= ((shape + n) * y) / (1.5 + n);
    sum += term;
  }
  return ratio * Math.sqrt(y) * weight * sum;
}
