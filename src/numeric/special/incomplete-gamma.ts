import { requireNonNegative, requirePositive } from '../../checks/index.js';
import { decayingIntegral, decayReach } from './decaying-integral.js';
import { gamma } from './gamma.js';
import { logGamma } from './log-gamma.js';
import { log1pMinus } from './log1p-minus.js';
import { stirlingRemainder } from './stirling-remainder.js';
import { type Tails, tailsFromLower, tailsFromUpper } from './tails.js';

/**
 * Regularised incomplete gamma functions P(a, x) and Q(a, x), for a > 0 and x ≥ 0.
 *
 * The smaller of the two is computed, each way by sums of positive terms or a continued fraction: series below the mean,
 * fraction above it; from a = 100 on, the integral itself by Gauss's rule, whose cost does not grow with a.
 *
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`
 * @source NIST DLMF 8.2.4, 8.7.3, 8.9.2, 8.11.4
 */
export function incompleteGamma(a: number, x: number): Tails {
  requirePositive(a, 'a');
  if (x === Number.POSITIVE_INFINITY) return tailsFromUpper(0);
  if (requireNonNegative(x, 'x') === 0) return tailsFromLower(0);
  const weight = gammaWeight(a, x);
  if (a >= 100) return x < a ? tailsFromLower(weight * a * below(a, x)) : tailsFromUpper(weight * a * above(a, x));
  if (x < a || x < 0.7) {
    if (a < 1 && x > 0.1) return tailsFromUpper(upperOfSmallShape(a, x));
    return tailsFromLower(weight * series(a, x));
  }
  return tailsFromUpper(weight * a * fraction(a, x));
}

/** xᵃ·exp(−x)/Γ(a + 1), the factor that all forms share. */
export function gammaWeight(a: number, x: number): number {
  if (a >= 10) {
    return Math.exp(a * log1pMinus((x - a) / a, x / a) - stirlingRemainder(a)) / Math.sqrt(2 * Math.PI * a);
  }
  return (x ** a * Math.exp(-x)) / gamma(a + 1);
}

/** Σ xⁿ/((a + 1)…(a + n)). */
function series(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; term > 1e-17 * sum; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** Continued fraction of Γ(a, x)·exp(x)/xᵃ, evaluated from the front (modified Lentz). */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = Number.POSITIVE_INFINITY;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < 1000; n++) {
    const numerator = -n * (n - a);
    b += 2;
    d = 1 / (numerator * d + b);
    c = b + numerator / c;
    const change = c * d;
    value *= change;
    if (Math.abs(change - 1) < 2e-16) break;
  }
  return value;
}

/** Q(a, x) for a < 1 and small x, where 1 − P would lose digits: 1 − xᵃ/Γ(1 + a), and the rest of the series. */
function upperOfSmallShape(a: number, x: number): number {
  const logGammaAfter = logGamma(a + 1);
  const power = a * Math.log(x) - logGammaAfter;
  let term = 1;
  let sum = 0;
  for (let n = 1; Math.abs(term) > 1e-18; n++) {
    term *= -x / n;
    sum += term / (a + n);
  }
  return -Math.expm1(power) - a * Math.exp(power) * sum;
}

/** ∫ (1 + s)^(a−1)·exp(−x·s) ds from 0, x ≥ a: t = x(1 + s). */
function above(a: number, x: number): number {
  const slope = x - a + 1;
  return decayingIntegral((s) => (a - 1) * log1pMinus(s) - slope * s, decayReach(slope, a - 1, 1));
}

/** ∫ (1 − s)^(a−1)·exp(x·s) ds from 0 to 1, x < a: t = x(1 − s). */
function below(a: number, x: number): number {
  const slope = a - 1 - x;
  return decayingIntegral((s) => (a - 1) * log1pMinus(-s) - slope * s, Math.min(1, decayReach(slope, a - 1, 0)));
}
