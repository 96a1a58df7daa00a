import { requirePositive } from '../checks/index.js';
import {
  gaussLegendre,
  normalInterval,
  normalSurvival,
  normalUpperQuantile,
  studentTDensity,
  studentTSurvival,
  studentTUpperQuantile,
} from '../numeric/index.js';
import type { DegreesOfFreedom } from '../uncertainty/index.js';

/** Probabilities of the measured quantity about its value, in standard uncertainties. */
export interface Tails {
  /** Probability of more than z. */
  readonly above: (z: number) => number;
  /** Probability between two values, with full relative accuracy. */
  readonly between: (low: number, high: number) => number;
  /** The z that is exceeded with a probability. */
  readonly quantile: (upperTail: number) => number;
}

const normalTails: Tails = { above: normalSurvival, between: normalInterval, quantile: normalUpperQuantile };

/** The normal distribution, or Student's t where the degrees of freedom are finite. */
export function tailsOf(degreesOfFreedom: DegreesOfFreedom = 'infinite', path = 'degreesOfFreedom'): Tails {
  if (degreesOfFreedom === 'infinite') return normalTails;
  const degrees = requirePositive(degreesOfFreedom, path);
  return {
    above: (t) => studentTSurvival(t, degrees),
    between: (low, high) => studentInterval(low, high, degrees),
    quantile: (upperTail) => studentTUpperQuantile(upperTail, degrees),
  };
}

/**
 * Probability that Student's t lies between two limits: a difference of tails where they differ by a factor, else the
 * integral of the density, so that a narrow interval keeps its digits.
 */
function studentInterval(low: number, high: number, degrees: number): number {
  if (!(low < high)) return 0;
  if (low < 0 && high > 0) return studentInterval(0, -low, degrees) + studentInterval(0, high, degrees);
  const near = Math.min(Math.abs(low), Math.abs(high));
  const far = Math.max(Math.abs(low), Math.abs(high));
  const fall = ((degrees + 1) / 2) * Math.log1p(((far - near) * (far + near)) / (degrees + near * near));
  if (!(fall < 0.7)) return studentTSurvival(near, degrees) - studentTSurvival(far, degrees);
  const { nodes, weights } = gaussLegendre(20);
  const half = (far - near) / 2;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    sum += (weights[i] as number) * studentTDensity(near + half * (1 + (nodes[i] as number)), degrees);
  }
  return half * sum;
}
