/** Coefficients of the logarithm of the ratio in 1/w², w = x − ¼; made by coefficients.py. */
export const gammaHalfRatioSeries = [
  0.015625, -0.00244140625, 0.0012410481770833333, -0.0013208389282226562, 0.002409029006958008, -0.006712389489014943,
  0.026524197443255355,
] as const;

/**
 * Γ(x + ½)/Γ(x) for x > 0.
 *
 * Far out it is √w·exp(even series in 1/w), w = x − ¼; nearer, the recurrence brings x up to 10.
 *
 * @source NIST DLMF 5.11.8 with Bernoulli polynomials at ¼ and ¾
 */
export function gammaHalfRatio(x: number): number {
  let above = 1;
  let below = 1;
  let shifted = x;
  for (; shifted < 10; shifted += 1) {
    above *= shifted;
    below *= shifted + 0.5;
  }
  const w = shifted - 0.25;
  const inverseSquare = 1 / (w * w);
  let sum = 0;
  for (let k = gammaHalfRatioSeries.length - 1; k >= 0; k--)
    sum = sum * inverseSquare + (gammaHalfRatioSeries[k] as number);
  // The exponent is below 2e-4: four terms of the exponential series are exact to rounding.
  const y = inverseSquare * sum;
  return (above / below) * Math.sqrt(w) * (1 + y * (1 + (y / 2) * (1 + y / 3)));
}
