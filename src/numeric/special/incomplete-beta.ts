import { requireFraction, requirePositive } from '../../checks/index.js';
import { decayingIntegral, decayReach } from './decaying-integral.js';
import { gamma } from './gamma.js';
import { log1pMinus } from './log1p-minus.js';
import { stirlingRemainder } from './stirling-remainder.js';
import { type Tails, tailsFromLower, tailsFromUpper } from './tails.js';

/**
 * Regularised incomplete beta function I_x(a, b) and its complement, for a, b > 0 and 0 ≤ x ≤ 1.
 *
 * `y` is 1 − x: give it where it is known better than the subtraction would. The tail on the far side of the mean is
 * computed, by the continued fraction, or by Gauss's rule where both parameters are large.
 *
 * @throws CalculationError `not-a-number`, `not-positive`, `not-a-fraction`
 * @source NIST DLMF 8.17.1, 8.17.4; the fraction: A. R. DiDonato and A. H. Morris, ACM Trans. Math. Softw. 18 (1992)
 * 360, section 5
 */
export function incompleteBeta(a: number, b: number, x: number, y: number = 1 - x): Tails {
  requirePositive(a, 'a');
  requirePositive(b, 'b');
  if (requireFraction(x, 'x') === 0) return tailsFromLower(0);
  if (requireFraction(y, 'y') === 0) return tailsFromUpper(0);
  return x * b < y * a ? tailsFromLower(lowerTail(a, b, x, y)) : tailsFromUpper(lowerTail(b, a, y, x));
}

function lowerTail(a: number, b: number, x: number, y: number): number {
  const weight = betaWeight(a, b, x, y);
  return weight * (a >= 100 && b >= 100 ? below(a, b, x, y) / y : fraction(a, b, x, y));
}

/** xᵃ·yᵇ/B(a, b), the factor that all forms share. */
export function betaWeight(a: number, b: number, x: number, y: number): number {
  if (a > b) return betaWeight(b, a, y, x);
  const sum = a + b;
  if (a >= 10) {
    const excess = x * b - y * a;
    const exponent = a * log1pMinus(excess / a, (x * sum) / a) + b * log1pMinus(-excess / b, (y * sum) / b);
    const remainder = stirlingRemainder(sum) - stirlingRemainder(a) - stirlingRemainder(b);
    return Math.sqrt(((a / sum) * b) / (2 * Math.PI)) * Math.exp(exponent + remainder);
  }
  if (b < 10) return (x ** a * y ** b * gamma(sum)) / (gamma(a) * gamma(b));
  const exponent =
    b * logOf(y, x) + (b - 0.5) * Math.log1p(a / b) - a + (stirlingRemainder(sum) - stirlingRemainder(b));
  return ((x * sum) ** a * Math.exp(exponent)) / gamma(a);
}

/** ln y for y = 1 − x. */
function logOf(y: number, x: number): number {
  return y > 0.5 ? Math.log1p(-x) : Math.log(y);
}

/**
 * Continued fraction in x, y = 1 − x and λ = a·y − b·x, evaluated from the front (modified Lentz). It keeps its digits
 * where x is close to 1 and only y is known well.
 */
function fraction(a: number, b: number, x: number, y: number): number {
  const excess = a * y - b * x + 1;
  let c = Number.POSITIVE_INFINITY;
  let d = (a + 1) / (a * excess);
  let value = d;
  for (let n = 1; n < 10_000; n++) {
    const middle = a + 2 * n;
    const product = (n * (b - n) * x) / (middle - 1);
    const alpha = (((a + n - 1) * (a + b + n - 1)) / (middle - 1)) * x * product;
    const beta = n + product + ((a + n) / (middle + 1)) * (excess + n * (1 + y));
    d = 1 / (beta + alpha * d);
    c = beta + alpha / c;
    const change = c * d;
    value *= change;
    if (Math.abs(change - 1) < 2e-16) break;
  }
  return value;
}

/** ∫ (1 − s)^(a−1)·(1 + s·x/y)^(b−1) ds from 0 to 1: t = x(1 − s) in the defining integral. */
function below(a: number, b: number, x: number, y: number): number {
  const ratio = x / y;
  const slope = a - 1 - (b - 1) * ratio;
  const reach = Math.min(1, decayReach(slope, a - 1, 0), decayReach(slope, (b - 1) * ratio * ratio, ratio));
  return decayingIntegral((s) => (a - 1) * log1pMinus(-s) + (b - 1) * log1pMinus(ratio * s) - slope * s, reach);
}
