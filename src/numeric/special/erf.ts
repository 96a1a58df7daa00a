import { erfc } from './erfc.js';

/**
 * Error function, with full relative accuracy near 0 too.
 *
 * Near 0 the series erf(x) = 2x·exp(−x²)/√π · Σ (2x²)ⁿ/(2n+1)!! has positive terms only; beyond, 1 − erfc(x).
 *
 * @source NIST DLMF 7.6.2
 */
export function erf(x: number): number {
  const size = Math.abs(x);
  if (size > 1) return x < 0 ? erfc(size) - 1 : 1 - erfc(size);
  const twiceSquare = 2 * x * x;
  let term = 1;
  let sum = 1;
  for (let n = 3; term > 1e-17 * sum; n += 2) {
    term *= twiceSquare / n;
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * x * Math.exp(-x * x) * sum;
}
