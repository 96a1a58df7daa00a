import {
  chiSquaredTails,
  createRandom,
  fillArcsine,
  fillNormal,
  fillStudentT,
  fillUniform,
  incompleteGamma,
  nextGamma,
  normalInterval,
  normalQuantile,
  normalSurvival,
  type Random,
  studentTCdf,
} from '../../src/numeric/index.js';

/** One comparison of draws with the distribution that they should have. */
export interface SamplerRow {
  readonly sampler: string;
  readonly statistic: string;
  readonly draws: number;
  readonly observed: number;
  readonly expected: number;
  /** Probability of being as far off as this, or farther, by chance. */
  readonly probability: number;
}

const blockSize = 65_536;

/** Moments, tails, correlations and χ² of the samplers, for a number of normal draws; others get a tenth of it. */
export function samplerReport(draws: number, seed: number): readonly SamplerRow[] {
  const random = createRandom(seed);
  return [
    ...normalRows(draws, (target) => fillNormal(random, target)),
    ...uniformRows(draws, createRandom(seed, 1)),
    fittedRow('arcsine', draws / 10, createRandom(seed, 2), fillArcsine, (x) => 1 - Math.acos(x) / Math.PI),
    ...[1, 4.5, 30].map((degrees, i) =>
      fittedRow(
        `Student's t, ${degrees} degrees of freedom`,
        draws / 10,
        createRandom(seed, 3 + i),
        (random, target) => fillStudentT(random, target, degrees),
        (x) => studentTCdf(x, degrees),
      ),
    ),
    ...[0.5, 3.3, 40].map((shape, i) =>
      fittedRow(
        `gamma, shape ${shape}`,
        draws / 10,
        createRandom(seed, 6 + i),
        (random, target) => {
          for (let k = 0; k < target.length; k++) target[k] = nextGamma(random, shape);
        },
        (x) => incompleteGamma(shape, x).lower,
      ),
    ),
  ];
}

/** The rows of a sampler that should be normal. */
export function normalRows(draws: number, fill: (target: Float64Array) => void): SamplerRow[] {
  const sampler = 'normal';
  const block = new Float64Array(blockSize);
  const powers = new Float64Array(7);
  const cells = new Float64Array(640);
  const pairs = new Float64Array(256);
  const thresholds = [2, 3, 3.6541528853610088, 4, 4.5, 5, 5.5];
  const above = new Float64Array(thresholds.length);
  const below = new Float64Array(thresholds.length);
  const sixteenths = Array.from({ length: 15 }, (_, i) => normalQuantile((i + 1) / 16));
  let products = 0;
  let before = 0;
  for (let done = 0; done < draws; done += blockSize) {
    const part = block.subarray(0, Math.min(blockSize, draws - done));
    fill(part);
    for (let i = 0; i < part.length; i++) {
      const z = part[i] as number;
      let power = 1;
      for (let k = 1; k <= 6; k++) {
        power *= z;
        powers[k] = (powers[k] as number) + power;
      }
      // Cells of width 1/64 from −5 to 5, the outermost open.
      const cell = Math.min(639, Math.max(0, Math.floor(z * 64) + 320));
      cells[cell] = (cells[cell] as number) + 1;
      products += z * before;
      if (i % 2 === 1) {
        const pair = 16 * place(sixteenths, before) + place(sixteenths, z);
        pairs[pair] = (pairs[pair] as number) + 1;
      }
      before = z;
      if (z > 2) count(above, thresholds, z);
      else if (z < -2) count(below, thresholds, -z);
    }
  }
  const moments = [0, 0, 1, 0, 3, 0, 15];
  const spreads = [0, 1, 2, 15, 96, 945, 10_170];
  const momentRows = [1, 2, 3, 4, 5, 6].map((k) => {
    const observed = (powers[k] as number) / draws;
    const expected = moments[k] as number;
    return row(sampler, `mean of z^${k}`, draws, observed, expected, (spreads[k] as number) / draws);
  });
  const cellProbabilities = Array.from({ length: 640 }, (_, i) =>
    normalInterval(
      i === 0 ? Number.NEGATIVE_INFINITY : i / 64 - 5,
      i === 639 ? Number.POSITIVE_INFINITY : (i + 1) / 64 - 5,
    ),
  );
  return [
    ...momentRows,
    row(sampler, 'product of neighbours', draws, products / draws, 0, 1 / draws),
    ...thresholds.flatMap((threshold, i) => [
      tailRow(`above ${threshold.toFixed(3)}`, draws, above[i] as number, normalSurvival(threshold)),
      tailRow(`below ${(-threshold).toFixed(3)}`, draws, below[i] as number, normalSurvival(threshold)),
    ]),
    chiSquaredRow(sampler, 'chi-squared, cells of width 1/64', cells, cellProbabilities),
    chiSquaredRow(sampler, 'chi-squared, pairs in 16 by 16 cells', pairs, Array(256).fill(1 / 256)),
  ];
}

function uniformRows(draws: number, random: Random): SamplerRow[] {
  const block = new Float64Array(blockSize);
  const cells = new Float64Array(4096);
  const pairs = new Float64Array(1024);
  let sum = 0;
  let before = 0;
  for (let done = 0; done < draws; done += blockSize) {
    const part = block.subarray(0, Math.min(blockSize, draws - done));
    fillUniform(random, part);
    for (let i = 0; i < part.length; i++) {
      const u = part[i] as number;
      sum += u - 0.5;
      const cell = Math.floor(u * 4096);
      cells[cell] = (cells[cell] as number) + 1;
      if (i % 2 === 1) {
        const pair = 32 * Math.floor(before * 32) + Math.floor(u * 32);
        pairs[pair] = (pairs[pair] as number) + 1;
      }
      before = u;
    }
  }
  return [
    row('uniform', 'mean less ½', draws, sum / draws, 0, 1 / 12 / draws),
    chiSquaredRow('uniform', 'chi-squared, 4096 cells', cells, Array(4096).fill(1 / 4096)),
    chiSquaredRow('uniform', 'chi-squared, pairs in 32 by 32 cells', pairs, Array(1024).fill(1 / 1024)),
  ];
}

/** Draws put through their own distribution function, which makes them uniform, in 500 equal cells. */
function fittedRow(
  sampler: string,
  draws: number,
  random: Random,
  fill: (random: Random, target: Float64Array) => void,
  distribution: (x: number) => number,
): SamplerRow {
  const values = new Float64Array(draws);
  fill(random, values);
  const cells = new Float64Array(500);
  for (const value of values) {
    const cell = Math.min(499, Math.floor(distribution(value) * 500));
    cells[cell] = (cells[cell] as number) + 1;
  }
  return chiSquaredRow(sampler, 'chi-squared, 500 equal cells', cells, Array(500).fill(1 / 500));
}

function place(limits: readonly number[], value: number): number {
  let i = 0;
  while (i < limits.length && value > (limits[i] as number)) i++;
  return i;
}

function count(counts: Float64Array, thresholds: readonly number[], size: number): void {
  for (let i = 0; i < thresholds.length && size > (thresholds[i] as number); i++) counts[i] = (counts[i] as number) + 1;
}

/** A mean whose variance is known. */
function row(
  sampler: string,
  statistic: string,
  draws: number,
  observed: number,
  expected: number,
  variance: number,
): SamplerRow {
  const probability = 2 * normalSurvival(Math.abs(observed - expected) / Math.sqrt(variance));
  return { sampler, statistic, draws, observed, expected, probability };
}

/** A count in a tail: Poisson where it is rare, normal where it is not. */
function tailRow(statistic: string, draws: number, observed: number, tail: number): SamplerRow {
  const expected = draws * tail;
  if (tail > 1e-3) return row('normal', statistic, draws, observed, expected, expected * (1 - tail));
  const atLeast = observed === 0 ? 1 : incompleteGamma(observed, expected).lower;
  const atMost = incompleteGamma(observed + 1, expected).upper;
  return {
    sampler: 'normal',
    statistic,
    draws,
    observed,
    expected,
    probability: Math.min(1, 2 * Math.min(atLeast, atMost)),
  };
}

/** Pearson's statistic over the cells, neighbours joined until each expects 10 or more. */
function chiSquaredRow(
  sampler: string,
  statistic: string,
  counts: Float64Array,
  probabilities: readonly number[],
): SamplerRow {
  const draws = counts.reduce((sum, value) => sum + value, 0);
  let value = 0;
  let cells = 0;
  let seen = 0;
  let expected = 0;
  let rest = 1;
  probabilities.forEach((probability, i) => {
    seen += counts[i] as number;
    expected += draws * probability;
    rest -= probability;
    if (expected < 10 || draws * rest < 10) return;
    value += (seen - expected) ** 2 / expected;
    cells++;
    seen = 0;
    expected = 0;
  });
  if (expected > 0) {
    value += (seen - expected) ** 2 / expected;
    cells++;
  }
  const { lower, upper } = chiSquaredTails(value, cells - 1);
  return { sampler, statistic, draws, observed: value, expected: cells - 1, probability: 2 * Math.min(lower, upper) };
}
