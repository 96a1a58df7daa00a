import { erfcx } from './erfcx.js';
import { expMinusHalfSquare } from './exp-minus-half-square.js';

/** Complementary error function 1 − erf(x), with full relative accuracy in the upper tail. */
export function erfc(x: number): number {
  if (x < 0) return 2 - erfc(-x);
  // exp(−x²) as the square of exp(−x²/2), whose exponent is exact.
  const half = expMinusHalfSquare(x);
  return half * half * erfcx(x);
}
