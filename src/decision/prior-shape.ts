import { fail, requireFinite, requirePositive } from '../checks/index.js';
import { normalInterval } from '../numeric/index.js';
import type { Prior } from './prior.js';
import type { Range } from './range.js';

/**
 * A prior as the quadrature sees it: in a variable t, the quantity counted from a place, in which the density is smooth
 * and its logarithm concave.
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
    default:
      return fail(
        'unknown-choice',
        `${path}.kind`,
        (prior as { kind: unknown }).kind,
        'must be one of: normal, rectangular',
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
    about: () => ({ weight: () => height, exponent: flat, slope: flat, bend: flat }),
    between: (low, high) => (high - low) * height,
  };
}
