/** 2^27 + 1: splits a double into two halves whose products are exact (Dekker). */
const splitter = 134217729;

/**
 * exp(−x²/2) to a relative error of about one rounding.
 *
 * The square is taken exactly, as a rounded square and its remainder: rounding it alone would cost x²/2 units in the
 * last place, 600 of them at the far end of the tail.
 */
export function expMinusHalfSquare(x: number): number {
  const size = Math.abs(x);
  if (size > 40) return 0;
  const square = x * x;
  const high = splitter * x - (splitter * x - x);
  const low = x - high;
  const remainder = high * high - square + 2 * high * low + low * low;
  return Math.exp(-square / 2) * (1 - remainder / 2);
}
