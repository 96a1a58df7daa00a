/**
 * ln(1 + x) − x without cancellation near 0. `onePlus` is 1 + x, where it is known better than the addition would give.
 *
 * With s = x/(2 + x), ln(1 + x) = 2·artanh(s), so that ln(1 + x) − x = −x·s + 2s³(1/3 + s²/5 + s⁴/7 + …).
 */
export function log1pMinus(x: number, onePlus: number = 1 + x): number {
  if (x > 1 || x < -0.6) return Math.log(onePlus) - x;
  const s = x / (2 + x);
  const square = s * s;
  let power = 1;
  let sum = 1 / 3;
  for (let k = 5; power > 1e-17; k += 2) {
    power *= square;
    sum += power / k;
  }
  return s * (2 * square * sum - x);
}
