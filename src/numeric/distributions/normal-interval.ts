import { gaussLegendre } from '../quadrature/gauss-legendre.js';
import { requireNumber } from '../require-number.js';
import { erf } from '../special/erf.js';
import { expMinusHalfSquare } from '../special/exp-minus-half-square.js';
import { normalSurvival } from './normal-survival.js';

/**
 * Probability that a standard normal variable lies between `lower` and `upper` (infinite limits allowed), with full
 * relative accuracy: no difference of nearly equal tails is taken.
 *
 * Limits on both sides of 0: a sum of two error functions. On one side and far apart: a difference of tails that
 * differ by a factor. On one side and close together: the integral of the density itself.
 *
 * @throws CalculationError `not-a-number`
 * @accuracy Relative error below 6e-16, measured against 90 digits
 */
export function normalInterval(lower: number, upper: number): number {
  requireNumber(lower, 'lower');
  requireNumber(upper, 'upper');
  if (!(lower < upper)) return 0;
  if (lower < 0 && upper > 0) return 0.5 * (erf(upper * Math.SQRT1_2) + erf(-lower * Math.SQRT1_2));
  const near = Math.min(Math.abs(lower), Math.abs(upper));
  const width = upper - lower;
  if (width * (near + width / 2) > 1.5) return normalSurvival(near) - normalSurvival(Math.max(-lower, upper));
  const { nodes, weights } = gaussLegendre(12);
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const s = (width / 2) * (1 + (nodes[i] as number));
    sum += (weights[i] as number) * Math.exp(-s * (near + s / 2));
  }
  return (expMinusHalfSquare(near) / Math.sqrt(2 * Math.PI)) * (width / 2) * sum;
}
