import { fail, requireChoice, requireInteger } from '../../checks/index.js';
import { type Moments, mergeMoments, momentsOf } from '../../numeric/index.js';
import type { Correlation } from '../correlation.js';
import type { Model } from '../differentiation/model.js';
import { checkInputs } from '../propagate.js';
import { requireLevel } from '../require-uncertainty.js';
import type { UncertainInput } from '../uncertain-input.js';
import { type CoverageInterval, shortestInterval, symmetricInterval } from './coverage-interval.js';
import { trialRunner } from './run-trials.js';
import { createSampler } from './sampler.js';

/** How a Monte Carlo calculation is made. */
export interface MonteCarloOptions {
  /** Seed of the random numbers: a whole number. The same seed gives the same result to the bit. */
  readonly seed: number;
  /** Number of trials; at least 100/(1 − p) where an interval is wanted. */
  readonly trials: number;
  /** Coverage probability as a fraction; 0.95 unless stated. */
  readonly coverageProbability?: number;
  /** Coverage interval; `symmetric` unless stated. `none` keeps no values: memory does not grow with the trials. */
  readonly interval?: 'symmetric' | 'shortest' | 'both' | 'none';
  /** Correlated pairs of inputs. */
  readonly correlations?: readonly Correlation[];
}

/** Result of a Monte Carlo calculation. */
export interface MonteCarloResult {
  /** Mean of the model's values. */
  readonly value: number;
  /** Standard deviation of the model's values. */
  readonly standardUncertainty: number;
  readonly symmetricInterval?: CoverageInterval;
  readonly shortestInterval?: CoverageInterval;
  readonly coverageProbability: number;
  readonly trials: number;
  readonly seed: number;
  readonly generator: string;
  readonly assumptions: readonly string[];
}

/** Trials that are drawn at a time: the memory that a run without intervals needs. */
export const blockLength = 8192;

/**
 * Propagates distributions through a measurement model by Monte Carlo with a fixed number of trials.
 *
 * @param model As for `propagate`
 * @param inputs Inputs by name, with their distributions
 * @param options Seed, trials, coverage probability, interval, correlations
 * @returns Mean, standard deviation, coverage interval, and seed, generator and trials
 * @throws CalculationError `not-an-integer`, `out-of-range`, `not-a-fraction`, `wrong-count` (too few trials for the
 * interval), `function-not-finite` (with the draw), `wrong-type` (correlated inputs that are not normal)
 * @source JCGM 101:2008, clause 7
 * @accuracy The standard deviation of the value is u/√trials
 * @example
 * ```ts
 * import { monteCarlo, normalInput } from 'esu-limits/uncertainty';
 * const inputs = { a: normalInput({ value: 10, standardUncertainty: 3 }), b: normalInput({ value: 20, standardUncertainty: 4 }) };
 * const sum = monteCarlo((x) => x.a + x.b, inputs, { seed: 1, trials: 100000 });
 * sum.standardUncertainty.toFixed(1); // → "5.0"
 * ```
 */
export function monteCarlo<N extends string>(
  model: Model<N>,
  inputs: Readonly<Record<N, UncertainInput>>,
  options: MonteCarloOptions,
): MonteCarloResult {
  const { seed, trials, coverageProbability = 0.95, interval = 'symmetric', correlations = [] } = options;
  const names = checkInputs(inputs);
  requireInteger(trials, 'trials', 2);
  requireLevel(coverageProbability, 'coverageProbability');
  requireChoice(interval, 'interval', ['symmetric', 'shortest', 'both', 'none']);
  const needed = Math.ceil(100 / (1 - coverageProbability) - 1e-6);
  if (interval !== 'none' && trials < needed) {
    fail('wrong-count', 'trials', trials, `must be at least ${needed} for an interval at ${coverageProbability}`);
  }
  const length = Math.min(blockLength, trials);
  const sampler = createSampler(seed, names, inputs, correlations, length);
  const run = trialRunner(model as Model, sampler);
  const values = new Float64Array(interval === 'none' ? length : trials);
  let moments: Moments | undefined;
  for (let done = 0; done < trials; done += length) {
    const count = Math.min(length, trials - done);
    sampler.draw();
    const block = interval === 'none' ? values.subarray(0, count) : values.subarray(done, done + count);
    run(block, count);
    const part = momentsOf(block);
    moments = moments === undefined ? part : mergeMoments(moments, part);
  }
  return resultOf(moments as Moments, interval === 'none' ? undefined : values, {
    seed,
    generator: sampler.random.generator,
    trials,
    coverageProbability,
    interval,
    correlations,
  });
}

/** What a result is stated with. */
export interface ResultFrame {
  readonly seed: number;
  readonly generator: string;
  readonly trials: number;
  readonly coverageProbability: number;
  readonly interval: NonNullable<MonteCarloOptions['interval']>;
  readonly correlations: readonly Correlation[];
}

/** Moments and intervals of the values of all trials; the values are rearranged. */
export function resultOf(moments: Moments, values: Float64Array | undefined, frame: ResultFrame): MonteCarloResult {
  const { interval, coverageProbability: p } = frame;
  const symmetric = values !== undefined && (interval === 'symmetric' || interval === 'both');
  const shortest = values !== undefined && (interval === 'shortest' || interval === 'both');
  return {
    value: moments.mean,
    standardUncertainty: Math.sqrt(moments.squares / (moments.count - 1)),
    ...(symmetric ? { symmetricInterval: symmetricInterval(values, p) } : {}),
    ...(shortest ? { shortestInterval: shortestInterval(values, p) } : {}),
    coverageProbability: p,
    trials: frame.trials,
    seed: frame.seed,
    generator: frame.generator,
    assumptions: [
      'The inputs have the stated distributions.',
      frame.correlations.length === 0
        ? 'All inputs are independent of each other.'
        : 'Inputs are independent of each other except for the stated correlations.',
    ],
  };
}
