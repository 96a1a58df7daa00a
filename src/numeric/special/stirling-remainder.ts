/** B₂ₖ/(2k(2k − 1)), the coefficients of Stirling's series. */
export const stirlingSeries = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156] as const;

/**
 * What Stirling's formula leaves of ln Γ(x): ln Γ(x) − (x − ½)·ln x + x − ½·ln 2π, for x ≥ 10.
 *
 * @source NIST DLMF 5.11.1
 */
export function stirlingRemainder(x: number): number {
  const inverseSquare = 1 / (x * x);
  let sum = 0;
  for (let k = stirlingSeries.length - 1; k >= 0; k--) sum = sum * inverseSquare + (stirlingSeries[k] as number);
  return sum / x;
}
