import { requireInteger } from '../../checks/index.js';
import { type Moments, meanAndVariance, mergeMoments, momentsOf } from '../../numeric/index.js';
import type { Correlation } from '../correlation.js';
import type { Model } from '../differentiation/model.js';
import { checkInputs } from '../propagate.js';
import { requireLevel } from '../require-uncertainty.js';
import type { UncertainInput } from '../uncertain-input.js';
import { shortestInterval, symmetricInterval } from './coverage-interval.js';
import { type MonteCarloResult, resultOf } from './monte-carlo.js';
import { numericalTolerance } from './numerical-tolerance.js';
import { trialRunner } from './run-trials.js';
import { createSampler } from './sampler.js';

/** How an adaptive Monte Carlo calculation is made. */
export interface AdaptiveOptions {
  /** Seed of the random numbers: a whole number. */
  readonly seed: number;
  /** Meaningful figures of the standard uncertainty that must settle; 2 unless stated. */
  readonly digits?: number;
  /** Coverage probability as a fraction; 0.95 unless stated. */
  readonly coverageProbability?: number;
  readonly interval?: 'symmetric' | 'shortest';
  /** Trials after which it stops even if nothing settled; 10 million unless stated. */
  readonly maximumTrials?: number;
  readonly correlations?: readonly Correlation[];
}

/** Result of an adaptive run: that of all its trials, and whether it settled. */
export interface AdaptiveResult extends MonteCarloResult {
  /** Whether mean, standard uncertainty and both limits settled within the tolerance. */
  readonly settled: boolean;
  /** Numerical tolerance that was asked for. */
  readonly tolerance: number;
  /** Twice the standard deviation of the block averages of each figure, at the end. */
  readonly spread: {
    readonly value: number;
    readonly standardUncertainty: number;
    readonly lower: number;
    readonly upper: number;
  };
  readonly blocks: number;
}

/**
 * Propagates distributions by Monte Carlo in blocks, until the figures have settled to the wanted digits.
 *
 * The published stopping rule reaches its target somewhat less often than its level says; it is used as published.
 *
 * @param model As for `propagate`
 * @param inputs Inputs by name
 * @param options Seed, digits, coverage probability, interval, most trials
 * @returns The result over all trials, with what settled
 * @throws CalculationError as `monteCarlo`
 * @source JCGM 101:2008, 7.9
 * @example
 * ```ts
 * import { adaptiveMonteCarlo, rectangularInput } from 'esu-limits/uncertainty';
 * const run = adaptiveMonteCarlo((x) => x.a, { a: rectangularInput({ value: 0, halfWidth: 1 }) }, { seed: 7, digits: 1 });
 * run.settled; // → true
 * ```
 */
export function adaptiveMonteCarlo<N extends string>(
  model: Model<N>,
  inputs: Readonly<Record<N, UncertainInput>>,
  options: AdaptiveOptions,
): AdaptiveResult {
  const { seed, digits = 2, coverageProbability: p = 0.95, interval = 'symmetric', correlations = [] } = options;
  const { maximumTrials = 1e7 } = options;
  const names = checkInputs(inputs);
  requireLevel(p, 'coverageProbability');
  requireInteger(digits, 'digits', 1, 6);
  // The smallest block that has a hundred values outside the interval, and 10⁴ at least.
  const length = Math.max(Math.ceil(100 / (1 - p) - 1e-6), 10000);
  requireInteger(maximumTrials, 'maximumTrials', 2 * length);
  const sampler = createSampler(seed, names, inputs, correlations, length);
  const run = trialRunner(model as Model, sampler);

  const blocks: Float64Array[] = [];
  const figures: { value: number; standardUncertainty: number; lower: number; upper: number }[] = [];
  let moments: Moments | undefined;
  let tolerance = 0;
  let spread = { value: 0, standardUncertainty: 0, lower: 0, upper: 0 };
  let settled = false;
  while (!settled && (blocks.length + 1) * length <= maximumTrials) {
    sampler.draw();
    const values = new Float64Array(length);
    run(values, length);
    const part = momentsOf(values);
    moments = moments === undefined ? part : mergeMoments(moments, part);
    const limits = (interval === 'shortest' ? shortestInterval : symmetricInterval)(values, p);
    blocks.push(values);
    figures.push({ value: part.mean, standardUncertainty: Math.sqrt(part.squares / (length - 1)), ...limits });
    if (figures.length < 2) continue;
    const standardUncertainty = Math.sqrt(moments.squares / (moments.count - 1));
    spread = spreadOf(figures);
    // A result without any spread has settled at once.
    tolerance = standardUncertainty === 0 ? 0 : numericalTolerance(standardUncertainty, digits);
    settled = Object.values(spread).every((s) => s < tolerance || s === 0);
  }
  const trials = blocks.length * length;
  const all = new Float64Array(trials);
  blocks.forEach((block, i) => {
    all.set(block, i * length);
  });
  const frame = { seed, generator: sampler.random.generator, trials, coverageProbability: p, interval, correlations };
  return { ...resultOf(moments as Moments, all, frame), settled, tolerance, spread, blocks: blocks.length };
}

function spreadOf(
  figures: readonly { value: number; standardUncertainty: number; lower: number; upper: number }[],
): AdaptiveResult['spread'] {
  const twice = (pick: (f: (typeof figures)[number]) => number): number =>
    2 * Math.sqrt(meanAndVariance(figures.map(pick)).variance / figures.length);
  return {
    value: twice((f) => f.value),
    standardUncertainty: twice((f) => f.standardUncertainty),
    lower: twice((f) => f.lower),
    upper: twice((f) => f.upper),
  };
}
