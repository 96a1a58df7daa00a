import { fail, requireResult } from '../../checks/index.js';
import { requireDegreesOfFreedom } from '../require-degrees-of-freedom.js';
import { requireProbability } from '../require-probability.js';
import { gammaHalfRatio } from '../special/gamma-half-ratio.js';
import { normalQuantileEstimate } from '../special/normal-quantile-estimate.js';
import { studentMiddle } from '../special/student-middle.js';
import { studentTail } from '../special/student-tail.js';
import { studentWeight } from '../special/student-weight.js';
import { normalUpperQuantile } from './normal-upper-quantile.js';

/**
 * The value that Student's t exceeds with a given probability: the coverage factor of a symmetric interval of level p
 * is its value at (1 − p)/2.
 *
 * @param upperTail Probability above the value, greater than 0 and less than 1
 * @param degreesOfFreedom Greater than 0, whole or not, or infinite (the normal distribution)
 * @throws CalculationError `not-a-number`, `not-positive`, `not-a-fraction`, `out-of-range`, `result-out-of-range`
 * @accuracy Relative error below 4e-15 down to 1e-15, 8e-14 down to 1e-300, for 1 to 10⁹ degrees of freedom, measured against 40 digits
 */
export function studentTUpperQuantile(upperTail: number, degreesOfFreedom: number): number {
  requireDegreesOfFreedom(degreesOfFreedom);
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalUpperQuantile(upperTail);
  requireProbability(upperTail, 'upperTail');
  if (upperTail > 0.5) return -studentTUpperQuantile(1 - upperTail, degreesOfFreedom);
  if (degreesOfFreedom === 1) return requireResult(cauchy(upperTail), 'quantile');
  const ratio = gammaHalfRatio(degreesOfFreedom / 2) / Math.sqrt(Math.PI);
  if (upperTail > 0.25) return inMiddle(0.5 - upperTail, degreesOfFreedom, ratio);
  return requireResult(inTail(upperTail, degreesOfFreedom, ratio), 'quantile');
}

/** One degree of freedom has a closed form, whose argument is kept small at both ends. */
function cauchy(upperTail: number): number {
  return upperTail > 0.25 ? Math.tan(Math.PI * (0.5 - upperTail)) : 1 / Math.tan(Math.PI * upperTail);
}

/** Halley's method on the logarithm of the tail, in v = √L, L = ln(1 + t²/ν): in v it falls like a normal tail. */
function inTail(upperTail: number, degreesOfFreedom: number, ratio: number): number {
  const a = degreesOfFreedom / 2;
  let v = Math.sqrt(estimate(upperTail, a, ratio));
  for (let round = 0; round < 50; round++) {
    const logarithm = v * v;
    const weight = Math.exp(-a * logarithm);
    const tail = studentTail(a, logarithm, weight, ratio);
    const rise = -Math.expm1(-logarithm);
    // Minus the logarithmic derivative of the tail, and the logarithmic derivative of its density.
    const hazard = (ratio * weight * v) / (Math.sqrt(rise) * tail);
    const trend = 1 / v - 2 * a * v - (v * (1 - rise)) / rise;
    const newton = Math.log(tail / upperTail) / hazard;
    v += newton / (1 + (newton * (trend + hazard)) / 2);
    if (Math.abs(newton) < 3e-6 * v) {
      const last = v * v;
      return last < 700
        ? Math.sqrt(degreesOfFreedom * Math.expm1(last))
        : Math.sqrt(degreesOfFreedom) * Math.exp(last / 2);
    }
  }
  return fail('not-converged', 'upperTail', upperTail, 'the quantile was not found');
}

/** First value of L: from the normal quantile, or where the tail is a power of t, from its leading term. */
function estimate(upperTail: number, a: number, ratio: number): number {
  const z = normalQuantileEstimate(upperTail);
  const shape = a - 0.25;
  const logarithm = (z * z) / (2 * shape);
  if (shape > 0 && logarithm < 1.2) return shape < 1 ? logarithm : logarithm * correction((z * z) / 2, shape);
  const leading = -Math.log((2 * a * upperTail) / ratio) / a;
  return leading + Math.exp(-leading) / (2 * (a + 1));
}

/**
 * What the second and third terms of the tail's expansion, of which the normal tail is the first, change in L.
 * It spares the quantile a round at most degrees of freedom.
 */
function correction(x: number, shape: number): number {
  const q = 1 / (shape * shape);
  return 1 - q * ((x + 1.5) / 48 - (q * (((2 * x + 17) * x + 48.75) * x + 61.875)) / 11520);
}

/** Halley's method on the probability between 0 and t, whose digits count near the middle. */
function inMiddle(probability: number, degreesOfFreedom: number, ratio: number): number {
  if (probability === 0) return 0;
  const height = ratio / Math.sqrt(degreesOfFreedom);
  let t = probability / height;
  for (let round = 0; round < 50; round++) {
    const weight = studentWeight(t, degreesOfFreedom);
    const density = (height * weight) / Math.sqrt(1 + (t * t) / degreesOfFreedom);
    const newton = (probability - studentMiddle(t, degreesOfFreedom, weight, ratio)) / density;
    t += newton / (1 - (newton * (degreesOfFreedom + 1) * t) / (2 * (degreesOfFreedom + t * t)));
    if (Math.abs(newton) < 3e-6 * t) return t;
  }
  return fail('not-converged', 'upperTail', 0.5 - probability, 'the quantile was not found');
}
