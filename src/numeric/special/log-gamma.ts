import { requirePositive } from '../../checks/index.js';
import { stirlingRemainder } from './stirling-remainder.js';

/** (ζ(k) − 1)/k for k = 2, 3, …; made by coefficients.py. */
export const logGammaSeries = [
  0.3224670334241132, 0.0673523010531981, 0.020580808427784546, 0.007385551028673986, 0.0028905103307415234,
  0.001192753911703261, 0.0005096695247430425, 0.00022315475845357939, 9.945751278180853e-5, 4.492623673813314e-5,
  2.050721277567069e-5, 9.439488275268397e-6, 4.374866789907488e-6, 2.039215753801366e-6, 9.55141213040742e-7,
  4.492469198764566e-7, 2.1207184805554665e-7, 1.0043224823968099e-7, 4.7698101693639804e-8, 2.2711094608943164e-8,
  1.0838659214896955e-8, 5.183475041970047e-9, 2.4836745438024785e-9, 1.1921401405860912e-9, 5.731367241678862e-10,
] as const;

/** 1 − γ (Euler). */
const oneMinusEuler = 0.42278433509846713;

/** ln Γ(2 + w) for |w| ≤ ½: exact zero at 0, full relative accuracy beside it. */
export function logGammaNearTwo(w: number): number {
  let sum = 0;
  for (let k = logGammaSeries.length - 1; k >= 0; k--) sum = (logGammaSeries[k] as number) - w * sum;
  return w * (oneMinusEuler + w * sum);
}

/**
 * Natural logarithm of the gamma function for x > 0, with full relative accuracy beside its zeros at 1 and 2.
 *
 * @throws CalculationError `not-a-number`, `not-positive`
 * @source NIST DLMF 5.7.3 near 1 and 2, 5.5.1 (recurrence) up to 10, 5.11.1 (Stirling) beyond
 */
export function logGamma(x: number): number {
  requirePositive(x, 'x');
  if (x >= 10) return (x - 0.5) * (Math.log(x) - 1) + (0.5 * Math.log(2 * Math.PI) - 0.5) + stirlingRemainder(x);
  if (x < 0.5) return logGammaNearTwo(x) - Math.log1p(x) - Math.log(x);
  if (x < 1.5) return logGammaNearTwo(x - 1) - Math.log1p(x - 1);
  let product = 1;
  let shifted = x;
  while (shifted > 2.5) {
    shifted -= 1;
    product *= shifted;
  }
  return Math.log(product) + logGammaNearTwo(shifted - 2);
}
