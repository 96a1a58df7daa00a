const ln2High = 0.6931471803691238;
const ln2Low = 1.9082149292705877e-10;

/** 2 to the powers 512, 256, … 1. */
const powers = [
  1.3407807929942597e154, 1.157920892373162e77, 3.402823669209385e38, 18446744073709552000, 4294967296, 65536, 256, 16,
  4, 2,
] as const;

/**
 * Natural logarithm of a positive, normal number from + − × ÷ alone: the same bits on every engine, which `Math.log` does
 * not promise. Within 3e-16 of the size of the result or of 1, whichever is greater.
 *
 * With x = 2ᵏ·m, ln x = k·ln 2 + 2·artanh((m − 1)/(m + 1)).
 */
export function reproducibleLog(x: number): number {
  let m = x;
  let k = 0;
  let power = 512;
  for (const factor of powers) {
    if (m >= factor) {
      m /= factor;
      k += power;
    } else if (m * factor < 1) {
      m *= factor;
      k -= power;
    }
    power /= 2;
  }
  if (m > Math.SQRT2) {
    m /= 2;
    k += 1;
  } else if (m < Math.SQRT1_2) {
    m *= 2;
    k -= 1;
  }
  const s = (m - 1) / (m + 1);
  const square = s * s;
  let sum = 0;
  for (let n = 21; n >= 3; n -= 2) sum = (sum + 1 / n) * square;
  return k * ln2High + (k * ln2Low + 2 * s * sum + 2 * s);
}
