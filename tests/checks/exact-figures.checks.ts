import {
  choleskyFactor,
  findRoot,
  gaussHermite,
  integrate,
  minimise,
  normalDensity,
  normalInterval,
  studentTDensity,
} from '../../src/numeric/index.js';
import { adaptiveMonteCarlo, expandedUncertainty, rectangularInput } from '../../src/uncertainty/index.js';
import { shortestInterval, symmetricInterval } from '../../src/uncertainty/monte-carlo/coverage-interval.js';
import { type Check, type CheckRow, rowsOf } from './check.js';

/*
 * Figures that JCGM 101 prints from its Monte Carlo runs and that the exact distribution reproduces to their digits:
 * the exact value is found here by the quadratures of numeric/. Where noise of the printed run is in a digit there is no
 * row; the tests of the room hold our own runs to the exact values, within their standard error.
 */

const rowsIn = rowsOf('uncertainty');

// 9.2.3: four rectangular inputs are two pairs, and the sum of a pair is triangular with this half-width.
const w = 2 * Math.sqrt(3);
const pairDensity = (x: number): number => Math.max(0, w - Math.abs(x)) / w ** 2;
const pairAbove = (x: number): number => (w - x) ** 2 / (2 * w ** 2);
/** For y of w and more, so that only the falling side of each pair counts. */
const fourAbove = (y: number): number =>
  integrate((x) => pairDensity(x) * pairAbove(y - x), y - w, w, { relative: 1e-13 }).value;
const fourUpper = (): number => findRoot((y) => fourAbove(y) / 0.025 - 1, w, 1.5 * w);

// 9.4: Y = X₁² + X₂², both inputs with this standard uncertainty, the second about 0.
const u = 0.005;
/** Probability that Y is at most y: the normal distribution of both inputs over a disc. */
function lossBelow(x1: number, r: number, y: number): number {
  if (y <= 0) return 0;
  const radius = Math.sqrt(y);
  const s = u * Math.sqrt(1 - r * r);
  const chord = (angle: number): number => {
    const x = radius * Math.sin(angle);
    const half = radius * Math.cos(angle);
    const mean = r * (x - x1);
    return (normalDensity((x - x1) / u) / u) * normalInterval((-half - mean) / s, (half - mean) / s) * half;
  };
  return integrate(chord, -Math.PI / 2, Math.PI / 2, { relative: 1e-12 }).value;
}
/** Upper limit of the interval of 95 % that starts at a lower one. */
function lossUpper(x1: number, r: number, lower: number): number {
  const start = lossBelow(x1, r, lower);
  return findRoot((y) => lossBelow(x1, r, y) - start - 0.95, lower, 0.02);
}
const shortestLower = (x1: number, r: number, most: number): number =>
  minimise((lower) => lossUpper(x1, r, lower) - lower, 0, most).place;

/** Mean and standard deviation of Y, exact: the rule is, for polynomials of this degree. */
function lossMoments(x1: number, r: number): { readonly mean: number; readonly deviation: number } {
  const { rows } = choleskyFactor([
    [u * u, r * u * u],
    [r * u * u, u * u],
  ]);
  const [[a = 0] = [], [b = 0, c = 0] = []] = rows.map((row) => Array.from(row));
  const { nodes, weights } = gaussHermite(5);
  const average = (f: (y: number) => number): number => {
    let sum = 0;
    nodes.forEach((z, i) => {
      nodes.forEach((t, j) => {
        const y = (x1 + a * z) ** 2 + (b * z + c * t) ** 2;
        sum += (weights[i] as number) * (weights[j] as number) * f(y);
      });
    });
    return sum;
  };
  const mean = average((y) => y);
  return { mean, deviation: Math.sqrt(average((y) => (y - mean) ** 2)) };
}
const millionths = (value: number): number => 1e6 * value;

/** The values 1, 2, 3 … are their own ranks. */
const ranks = (count: number): Float64Array => Float64Array.from({ length: count }, (_, i) => i + 1);
const rankRows = (
  [
    [1_000_000, 25_000, 975_000],
    [10_000, 250, 9750],
    [1001, 25, 976],
    [999, 25, 974],
  ] as const
).flatMap(([count, lower, upper]): CheckRow[] => [
  [
    `s1-rank-lower-${count}`,
    `lower limit of ${count} values`,
    lower,
    '1',
    0,
    () => symmetricInterval(ranks(count), 0.95).lower,
  ],
  [
    `s1-rank-upper-${count}`,
    `upper limit of ${count} values`,
    upper,
    '1',
    0,
    () => symmetricInterval(ranks(count), 0.95).upper,
  ],
  [
    `s1-rank-span-${count}`,
    `ranks between the limits of the shortest interval of ${count} values`,
    upper - lower,
    '1',
    0,
    () => {
      const interval = shortestInterval(ranks(count), 0.95);
      return interval.upper - interval.lower;
    },
  ],
]);
const blockLength = (coverageProbability: number) => (): number => {
  const inputs = { a: rectangularInput({ value: 0, halfWidth: 1 }) };
  const run = adaptiveMonteCarlo(({ a }) => a, inputs, { seed: 1, digits: 1, coverageProbability });
  return run.trials / run.blocks;
};

/** Figures of JCGM 101 by exact distributions, and its rules for ranks and blocks. */
export const exactFiguresChecks: readonly Check[] = [
  ...rowsIn('JCGM 101:2008, 9.2.2, table 2', 'from memory', [
    [
      's1-normals-upper',
      'four normal inputs: upper limit',
      3.92,
      '1',
      0.005,
      () => expandedUncertainty({ standardUncertainty: 2 }).expandedUncertainty,
    ],
  ]),
  ...rowsIn('JCGM 101:2008, 9.2.3, table 3', 'from memory', [
    ['s1-rectangles-upper', 'four rectangular inputs: upper limit, exact distribution', 3.88, '1', 0.005, fourUpper],
  ]),
  ...rowsIn('JCGM 101:2008, 9.2.3: ±2√3·[2 − (3/5)^¼]', 'derived', [
    ['s1-rectangles-upper-full', 'four rectangular inputs: upper limit', 3.8794067413478, '1', 5e-13, fourUpper],
  ]),
  ...rowsIn('JCGM 101:2008, 9.4, tables 8 and 9, by the exact distribution, in millionths', 'from memory', [
    ['s1-loss-0-upper', 'shortest interval at 0: upper limit', 150, '1', 0.5, () => millionths(lossUpper(0, 0, 0))],
    ['s1-loss-10-u-exact', 'u at 0.010', 112, '1', 0.5, () => millionths(lossMoments(0.01, 0).deviation)],
    ['s1-loss-50-u-exact', 'u at 0.050', 502, '1', 0.5, () => millionths(lossMoments(0.05, 0).deviation)],
    ['s1-loss-0-correlated-u', 'u at 0, r = 0.9', 67, '1', 0.5, () => millionths(lossMoments(0, 0.9).deviation)],
    [
      's1-loss-0-correlated-upper',
      'shortest interval at 0, r = 0.9: upper limit',
      185,
      '1',
      0.5,
      () => millionths(lossUpper(0, 0.9, 0)),
    ],
    ['s1-loss-10-correlated', 'value at 0.010, r = 0.9', 150, '1', 0.5, () => millionths(lossMoments(0.01, 0.9).mean)],
    [
      's1-loss-10-correlated-u',
      'u at 0.010, r = 0.9',
      121,
      '1',
      0.5,
      () => millionths(lossMoments(0.01, 0.9).deviation),
    ],
    [
      's1-loss-10-correlated-lower',
      'shortest interval at 0.010, r = 0.9: lower limit',
      13,
      '1',
      0.5,
      () => millionths(shortestLower(0.01, 0.9, 3e-5)),
    ],
  ]),
  ...rowsIn('JCGM 101:2008, 9.4, recomputed to 8 and 12 digits, in millionths', 'derived', [
    ['s1-loss-0-upper-full', 'shortest interval at 0', 149.78661, '1', 5e-6, () => millionths(lossUpper(0, 0, 0))],
    [
      's1-loss-10-upper-full',
      'shortest interval at 0.010',
      366.00529,
      '1',
      5e-6,
      () => millionths(lossUpper(0.01, 0, 0)),
    ],
    [
      's1-loss-0-correlated-upper-full',
      'shortest interval at 0, r = 0.9',
      185.05646,
      '1',
      5e-6,
      () => millionths(lossUpper(0, 0.9, 0)),
    ],
    ['s1-loss-10-u-full', 'u at 0.010', 111.803398875, '1', 5e-10, () => millionths(lossMoments(0.01, 0).deviation)],
    ['s1-loss-50-u-full', 'u at 0.050', 502.493781056, '1', 5e-10, () => millionths(lossMoments(0.05, 0).deviation)],
    [
      's1-loss-0-correlated-u-full',
      'u at 0, r = 0.9',
      67.2681202354,
      '1',
      5e-11,
      () => millionths(lossMoments(0, 0.9).deviation),
    ],
    [
      's1-loss-10-correlated-u-full',
      'u at 0.010, r = 0.9',
      120.519707932,
      '1',
      5e-10,
      () => millionths(lossMoments(0.01, 0.9).deviation),
    ],
  ]),
  ...rowsIn('JCGM 101:2008, 6.4.9.4: variance of the t-distribution, ν/(ν − 2)', 'derived', [
    [
      's1-student',
      'five degrees of freedom, by quadrature of the density',
      5 / 3,
      '1',
      1e-12,
      () => 2 * integrate((t) => t * t * studentTDensity(t, 5), 0, Number.POSITIVE_INFINITY, { relative: 1e-13 }).value,
    ],
  ]),
  ...rowsIn(
    'JCGM 101:2008, 7.7.2 and 7.7.4, rule from memory, ranks worked out by hand, 95 %',
    'from memory',
    rankRows,
  ),
  ...rowsIn(
    'JCGM 101:2008, 7.9.4, rule from memory: the smallest block with 100/(1 − p) values, 10⁴ at least',
    'from memory',
    [
      ['s1-block-length-95', 'values of a block at 95 %', 10_000, '1', 0, blockLength(0.95)],
      ['s1-block-length-99', 'values of a block at 99 %', 10_000, '1', 0, blockLength(0.99)],
      ['s1-block-length-9973', 'values of a block at 99.73 %', 37_038, '1', 0, blockLength(0.9973)],
    ],
  ),
];
