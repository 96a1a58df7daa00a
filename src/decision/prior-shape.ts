import { fail, requireFinite, requirePositive } from '../checks/index.js';
import { logGamma, normalInterval } from '../numeric/index.js';
import type { Prior } from './prior.js';
import type { Range } from './range.js';

/**
 * A prior as the quadrature sees it: in a variable t, counted from a place of the quantity, in which the density is
 * smooth and its logarithm concave. For a gamma distribution t is logarithmic; else it is the quantity itself.
 */
export interface PriorShape extends Range {
  /** Where prior density times normal density of a reading drawn to `edge` is greatest; without edge, its own peak. */
  readonly peak: (edge: number | undefined, standardUncertainty: number) => number;
  /** The density about a place of the quantity. */
  readonly about: (place: number) => LocalShape;
  /** Probability of a range inside the support, where a closed form is as good as the quadrature. */
  readonly between?: (from: number, to: number) => number;
}

/** The density about a place: t is 0 there. */
export interface LocalShape {
  /** The quantity is place·exp(t), not place + t. */
  readonly isLogarithmic: boolean;
  /** Density of t. */
  readonly weight: (t: number) => number;
  /** Minus the logarithm of the density, but for a constant. */
  readonly exponent: (t: number) => number;
  readonly slope: (t: number) => number;
  readonly bend: (t: number) => number;
}

/** A prior that is checked, in the form that the quadrature needs. */
export function priorShape(prior: Prior, path = 'prior'): PriorShape {
  switch (prior.kind) {
    case 'normal':
      requireFinite(prior.mean, `${path}.mean`);
      return normalShape(prior.mean, requirePositive(prior.standardDeviation, `${path}.standardDeviation`));
    case 'rectangular':
      requireFinite(prior.lower, `${path}.lower`);
      requireFinite(prior.upper, `${path}.upper`);
      if (prior.lower > prior.upper)
        fail('band-reversed', `${path}.lower`, prior.lower, 'must lie below the upper limit');
      requirePositive(prior.upper - prior.lower, `${path}: its width`);
      return rectangularShape(prior.lower, prior.upper);
    case 'gamma':
      requirePositive(prior.mean, `${path}.mean`);
      return gammaShape(prior.mean, requirePositive(prior.standardDeviation, `${path}.standardDeviation`));
    default:
      return fail(
        'unknown-choice',
        `${path}.kind`,
        (prior as { kind: unknown }).kind,
        'must be one of: normal, rectangular, gamma',
      );
  }
}

function normalShape(mean: number, deviation: number): PriorShape {
  const height = 1 / (deviation * Math.sqrt(2 * Math.PI));
  return {
    from: Number.NEGATIVE_INFINITY,
    to: Number.POSITIVE_INFINITY,
    peak: (edge, u) => (edge === undefined ? mean : mean + (edge - mean) / (1 + (u / deviation) ** 2)),
    about: (place) => {
      const start = (place - mean) / deviation;
      const at = (t: number) => start + t / deviation;
      return {
        isLogarithmic: false,
        weight: (t) => height * Math.exp(-0.5 * at(t) ** 2),
        exponent: (t) => 0.5 * at(t) ** 2,
        slope: (t) => at(t) / deviation,
        bend: () => 1 / (deviation * deviation),
      };
    },
    between: (from, to) => normalInterval((from - mean) / deviation, (to - mean) / deviation),
  };
}

function rectangularShape(from: number, to: number): PriorShape {
  const flat = () => 0;
  const height = 1 / (to - from);
  return {
    from,
    to,
    peak: (edge) => edge ?? from / 2 + to / 2,
    about: () => ({ isLogarithmic: false, weight: () => height, exponent: flat, slope: flat, bend: flat }),
    between: (low, high) => (high - low) * height,
  };
}

function gammaShape(mean: number, deviation: number): PriorShape {
  const shape = (mean / deviation) ** 2;
  const scale = mean / shape;
  const height = gammaHeight(shape);
  return {
    from: 0,
    to: Number.POSITIVE_INFINITY,
    peak: (edge, u) => {
      if (edge === undefined) return mean;
      const half = (edge - (u / scale) * u) / 2;
      const root = Math.hypot(half, Math.sqrt(shape) * u);
      return half > 0 ? half + root : (shape * u * u) / (root - half);
    },
    about: (place) => {
      const start = Math.log(place / mean);
      const exponent = (t: number) => shape * (Math.expm1(start + t) - (start + t));
      return {
        isLogarithmic: true,
        weight: (t) => height * Math.exp(-exponent(t)),
        exponent,
        slope: (t) => shape * Math.expm1(start + t),
        bend: (t) => shape * Math.exp(start + t),
      };
    },
  };
}

/** kᵏ·exp(−k)/Γ(k), from k = 64 on by Stirling's series: the three parts are large and nearly cancel. */
function gammaHeight(shape: number): number {
  if (shape < 64) return Math.exp(shape * (Math.log(shape) - 1) - logGamma(shape));
  const inverse = 1 / shape;
  const square = inverse * inverse;
  return Math.sqrt(shape / (2 * Math.PI)) * Math.exp(-inverse * (1 / 12 - square * (1 / 360 - square / 1260)));
}
