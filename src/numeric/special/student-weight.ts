import { expMinusHalfSquare } from './exp-minus-half-square.js';
import { log1pMinus } from './log1p-minus.js';

/**
 * (1 + t²/ν)^(−ν/2), the core of Student's density.
 *
 * For t² small beside ν it is taken as exp(−t²/2), exactly, times a correction: a plain power would lose the digits of
 * its exponent.
 */
export function studentWeight(t: number, degreesOfFreedom: number): number {
  const ratio = (t / degreesOfFreedom) * t;
  if (ratio < 0.3) {
    const correction = Math.exp((-degreesOfFreedom / 2) * log1pMinus(ratio));
    if (t < 36) return expMinusHalfSquare(t) * correction;
    if (t > 80) return 0;
    // Far out exp(−t²/2) alone would underflow where the product does not.
    const fourth = expMinusHalfSquare(t / 2);
    return fourth * fourth * correction * (fourth * fourth);
  }
  return Math.exp((-degreesOfFreedom / 2) * studentLogarithm(t, degreesOfFreedom));
}

/** ln(1 + t²/ν), also where t² overflows. */
export function studentLogarithm(t: number, degreesOfFreedom: number): number {
  const ratio = (t / degreesOfFreedom) * t;
  return ratio < 1e16 ? Math.log1p(ratio) : 2 * Math.log(t) - Math.log(degreesOfFreedom);
}
