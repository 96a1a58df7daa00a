import { fUpperQuantile, leastSquares, sum } from '../../src/numeric/index.js';
import {
  type Arithmetic,
  arcsineInput,
  curvilinearTrapezoidInput,
  type MonteCarloResult,
  monteCarlo,
  normalInput,
  numericalTolerance,
  type Propagated,
  propagate,
  rectangularInput,
  repeatedReadingsInput,
  trapezoidalInput,
  triangularInput,
  type UncertainInput,
} from '../../src/uncertainty/index.js';
import { type Check, rowsOf } from './check.js';

/*
 * JCGM 101, and the examples of JCGM 100 that lead to a distribution. The printed Monte Carlo figures carry noise of their
 * own: a row stands here where a million trials settle the printed digits; the other figures are held to the exact
 * values, within the run's own standard error, by the tests of the room.
 */

const rowsIn = rowsOf('uncertainty');

/** A run that is made when the first of its figures is asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly result: T } | undefined;
  return () => {
    made ??= { result: make() };
    return made.result;
  };
}
const million = { seed: 1, trials: 1_000_000 } as const;
const symmetric = ({ symmetricInterval }: MonteCarloResult) => symmetricInterval!;

type Sum = Readonly<Record<'a' | 'b' | 'c' | 'd', number>>;
const sumOfFour = (x: Sum): number => x.a + x.b + x.c + x.d;
const foursome = (a: UncertainInput, d = a) => ({ a, b: a, c: a, d });
const normals = foursome(normalInput({ value: 0, standardUncertainty: 1 }));
const rectangles = foursome(rectangularInput({ value: 0, halfWidth: Math.sqrt(3) }));
const dominated = foursome(rectangles.a, rectangularInput({ value: 0, halfWidth: 10 * Math.sqrt(3) }));
const additive = {
  normals: once(() => monteCarlo(sumOfFour, normals, million)),
  rectangles: once(() => monteCarlo(sumOfFour, rectangles, million)),
  dominated: once(() => monteCarlo(sumOfFour, dominated, million)),
};
/** The factor that the supplement takes for 95 %. */
const k = 1.96;

type Mass = Readonly<Record<'mR' | 'dm' | 'ra' | 'rW' | 'rR', number>>;
const massModel = {
  arithmetic: <T>({ mR, dm, ra, rW, rR }: Readonly<Record<keyof Mass, T>>, m: Arithmetic<T>): T => {
    const buoyancy = m.multiply(m.subtract(ra, 1.2), m.subtract(m.divide(1, rW), m.divide(1, rR)));
    return m.subtract(m.multiply(m.add(mR, dm), m.add(1, buoyancy)), 100000);
  },
};
const massInputs = {
  mR: normalInput({ value: 100000, standardUncertainty: 0.05 }),
  dm: normalInput({ value: 1.234, standardUncertainty: 0.02 }),
  ra: rectangularInput({ value: 1.2, halfWidth: 0.1 }),
  rW: rectangularInput({ value: 8000, halfWidth: 1000 }),
  rR: rectangularInput({ value: 8000, halfWidth: 50 }),
};
const mass = once(() => propagate(massModel, massInputs));
const massRun = once(() => monteCarlo(massModel, massInputs, million));
const secondOrderOf = ({ secondOrder }: Propagated): number => secondOrder!.standardUncertainty!;

type Loss = Readonly<Record<'x1' | 'x2', number>>;
const lossInputs = (x1: number) => ({
  x1: normalInput({ value: x1, standardUncertainty: 0.005 }),
  x2: normalInput({ value: 0, standardUncertainty: 0.005 }),
});
const lossModel = (x: Loss) => x.x1 * x.x1 + x.x2 * x.x2;
const loss = (x1: number) => propagate(lossModel, lossInputs(x1));
const lossRun = (x1: number, coefficient: number) =>
  once(() =>
    monteCarlo(lossModel, lossInputs(x1), { ...million, correlations: [{ between: ['x1', 'x2'], coefficient }] }),
  );
const lossAtZero = lossRun(0, 0);
const lossAtTen = lossRun(0.01, 0);
const lossCorrelated = lossRun(0, 0.9);

function student(value: number, scale: number, degreesOfFreedom: number): UncertainInput {
  const distribution = { kind: 'student-t', scale, degreesOfFreedom } as const;
  return { value, standardUncertainty: scale, degreesOfFreedom, type: 'A', distribution };
}
type Block = Readonly<Record<'Ls' | 'D' | 'd1' | 'd2' | 'alphas' | 'theta0' | 'Delta' | 'da' | 'dtheta', number>>;
const blockModel = (x: Block) =>
  x.Ls + x.D + x.d1 + x.d2 - x.Ls * (x.da * (x.theta0 + x.Delta) + x.alphas * x.dtheta) - 50_000_000;
const blockInputs = {
  Ls: student(50_000_623, 25, 18),
  D: student(215, 6, 24),
  d1: student(0, 4, 5),
  d2: student(0, 7, 8),
  alphas: rectangularInput({ value: 11.5e-6, halfWidth: 2e-6 }),
  theta0: normalInput({ value: -0.1, standardUncertainty: 0.2 }),
  Delta: arcsineInput({ value: 0, halfWidth: 0.5 }),
  da: curvilinearTrapezoidInput({ value: 0, halfWidth: 1e-6, inexactness: 0.1e-6 }),
  dtheta: curvilinearTrapezoidInput({ value: 0, halfWidth: 0.05, inexactness: 0.025 }),
};
const block = once(() => monteCarlo(blockModel, blockInputs, { ...million, coverageProbability: 0.99 }));

const temperatures = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
const corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
const line = once(() =>
  leastSquares(
    temperatures.map((t) => [1, t - 20]),
    corrections,
  ),
);
const lineCorrelation = () => {
  const [[a, c], [, b]] = line().cofactors as [[number, number], [number, number]];
  return c / Math.sqrt(a * b);
};
/** The fitted line at 30 °C, through the propagation of its two correlated coefficients. */
const atThirty = once(() => {
  const { coefficients, standardErrors, degreesOfFreedom } = line();
  const input = (i: number) =>
    normalInput({ value: coefficients[i]!, standardUncertainty: standardErrors[i]!, degreesOfFreedom });
  const correlations = [{ between: ['y1', 'y2'], coefficient: lineCorrelation() }] as const;
  return propagate(
    { arithmetic: (x, m) => m.add(x.y1, m.multiply(10, x.y2)) },
    { y1: input(0), y2: input(1) },
    {
      correlations,
    },
  );
});

const daily = repeatedReadingsInput([172, 116, 13, 144, 106, 31, 60, 125, 163, 41]);
const dailySpread = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86];
/** Five readings a day for ten days: variance of a reading between the days, and within them. */
const between = (): number => 5 * 10 * daily.standardUncertainty ** 2;
const within = (): number => sum(dailySpread.map((s) => s * s)) / 10;
const spreadOf = ({ standardUncertainty }: UncertainInput) => standardUncertainty;

export const distributionsChecks: readonly Check[] = [
  ...rowsIn('JCGM 100:2008, H.3, table H.6', 'published', [
    ['gum-h3-y1', 'intercept of a calibration line, °C', -0.1712, 'K', 0.00005, () => line().coefficients[0]!],
    ['gum-h3-u-y1', 'its standard uncertainty', 0.0029, 'K', 0.00005, () => line().standardErrors[0]!],
    ['gum-h3-y2', 'slope', 0.00218, '1', 0.000005, () => line().coefficients[1]!],
    ['gum-h3-u-y2', 'its standard uncertainty', 0.00067, '1', 0.000005, () => line().standardErrors[1]!],
    ['gum-h3-r', 'correlation of intercept and slope', -0.93, '1', 0.005, lineCorrelation],
    ['gum-h3-s', 'residual standard deviation', 0.0035, 'K', 0.00005, () => line().residualStandardDeviation],
    ['gum-h3-degrees', 'its degrees of freedom', 9, '1', 0, () => line().degreesOfFreedom],
    [
      'gum-h3-residuals',
      'sum of the squares of the residuals',
      0.000110096583109,
      'K^2',
      5e-16,
      () => line().residualSumOfSquares,
    ],
    ['gum-h3-b30', 'correction at 30 °C', -0.1494, 'K', 0.00005, () => atThirty().value],
    ['gum-h3-u-b30', 'its standard uncertainty', 0.0041, 'K', 0.00005, () => atThirty().standardUncertainty],
  ]),
  ...rowsIn('JCGM 100:2008, H.3, recomputed to 15 digits', 'derived', [
    ['gum-h3-b30-full', 'correction at 30 °C', -0.149376812732477, 'K', 5e-16, () => atThirty().value],
    [
      'gum-h3-u-single-full',
      'uncertainty of a single new correction at 30 °C',
      0.00541857255043797,
      'K',
      5e-18,
      () => Math.hypot(atThirty().standardUncertainty, line().residualStandardDeviation),
    ],
    [
      'gum-h3-u-b30-full',
      'its standard uncertainty',
      0.00413859575285495,
      'K',
      5e-18,
      () => atThirty().standardUncertainty,
    ],
  ]),
  ...rowsIn('JCGM 100:2008, H.5, table H.9', 'from memory', [
    ['gum-h5-mean', 'mean of ten days, microvolt above 10 V', 97, 'V', 0.5, () => daily.value],
    ['gum-h5-u', 'standard uncertainty from the days, microvolt', 18, 'V', 0.5, () => spreadOf(daily)],
    ['gum-h5-s-means', 'standard deviation of the daily means', 57, 'V', 0.5, () => spreadOf(daily) * Math.sqrt(10)],
    ['gum-h5-s-a', 'standard deviation from the scatter of the means', 128, 'V', 0.5, () => Math.sqrt(between())],
    ['gum-h5-s-b', 'standard deviation within a day', 85, 'V', 0.5, () => Math.sqrt(within())],
    ['gum-h5-s-days', 'standard deviation between days', 43, 'V', 0.5, () => Math.sqrt((between() - within()) / 5)],
    [
      'gum-h5-u-pooled',
      'standard uncertainty, all fifty readings as one series',
      13,
      'V',
      0.5,
      () => Math.sqrt((9 * between() + 40 * within()) / 49 / 50),
    ],
    ['gum-h5-f-95', 'F for 9 and 40 degrees of freedom, 95 %', 2.12, '1', 0.005, () => fUpperQuantile(0.05, 9, 40)],
    ['gum-h5-f-975', 'the same, 97.5 %', 2.45, '1', 0.005, () => fUpperQuantile(0.025, 9, 40)],
  ]),
  ...rowsIn('JCGM 101:2008, 6.4: standard deviations of the distributions, by their closed forms', 'derived', [
    [
      's1-rectangular',
      'rectangular, half-width 3',
      Math.sqrt(36 / 12),
      '1',
      5e-16,
      () => spreadOf(rectangularInput({ value: 0, halfWidth: 3 })),
    ],
    [
      's1-triangular',
      'triangular, half-width 3',
      Math.sqrt(36 / 24),
      '1',
      5e-16,
      () => spreadOf(triangularInput({ value: 0, halfWidth: 3 })),
    ],
    [
      's1-trapezoidal',
      'trapezoidal, half-width 3, shape 0.5',
      Math.sqrt((36 / 24) * 1.25),
      '1',
      5e-16,
      () => spreadOf(trapezoidalInput({ value: 0, halfWidth: 3, shape: 0.5 })),
    ],
    [
      's1-curvilinear',
      'curvilinear trapezoid, half-width 3, inexactness 1',
      Math.sqrt(36 / 12 + 1 / 9),
      '1',
      5e-16,
      () => spreadOf(curvilinearTrapezoidInput({ value: 0, halfWidth: 3, inexactness: 1 })),
    ],
    [
      's1-arcsine',
      'arcsine, half-width 3',
      Math.sqrt(36 / 8),
      '1',
      5e-16,
      () => spreadOf(arcsineInput({ value: 0, halfWidth: 3 })),
    ],
  ]),
  ...rowsIn('JCGM 101:2008, 7.9.2, examples', 'from memory', [
    ['s1-tolerance-two', 'tolerance of 0.00035 g, two digits', 0.000005, '1', 0, () => numericalTolerance(0.00035, 2)],
    ['s1-tolerance-one', 'tolerance of 0.0004 g, one digit', 0.00005, '1', 0, () => numericalTolerance(0.0004, 1)],
    ['s1-tolerance-kelvin', 'tolerance of 2 K, one digit', 0.5, '1', 0, () => numericalTolerance(2, 1)],
  ]),
  ...rowsIn('JCGM 101:2008, 9.2, tables 2 to 4', 'from memory', [
    ['s1-normals-u', 'four normal inputs, Monte Carlo: u', 2, '1', 0.05, () => additive.normals().standardUncertainty],
    [
      's1-rectangles-u',
      'four rectangular inputs, Monte Carlo: u',
      2,
      '1',
      0.05,
      () => additive.rectangles().standardUncertainty,
    ],
    [
      's1-rectangles-first-order',
      'four rectangular inputs, first order: upper limit',
      3.92,
      '1',
      0.005,
      () => k * propagate(sumOfFour, rectangles).standardUncertainty,
    ],
    [
      's1-dominated-u',
      'one wide rectangle, first order: u',
      10.1,
      '1',
      0.05,
      () => propagate(sumOfFour, dominated).standardUncertainty,
    ],
    [
      's1-dominated-first-order',
      'one wide rectangle, first order: upper limit',
      19.9,
      '1',
      0.05,
      () => k * propagate(sumOfFour, dominated).standardUncertainty,
    ],
    [
      's1-dominated-lower',
      'one wide rectangle, Monte Carlo: lower limit',
      -17,
      '1',
      0.05,
      () => symmetric(additive.dominated()).lower,
    ],
    [
      's1-dominated-upper',
      'one wide rectangle, Monte Carlo: upper limit',
      17,
      '1',
      0.05,
      () => symmetric(additive.dominated()).upper,
    ],
  ]),
  ...rowsIn('JCGM 101:2008, 9.3, table 6: mass calibration, in milligrams', 'from memory', [
    ['s1-mass-value', 'value', 1.234, '1', 0.0005, () => mass().value],
    ['s1-mass-u', 'u, first order', 0.0539, '1', 0.00005, () => mass().standardUncertainty],
    [
      's1-mass-lower',
      'lower limit, first order',
      1.1285,
      '1',
      0.00005,
      () => mass().value - k * mass().standardUncertainty,
    ],
    [
      's1-mass-upper',
      'upper limit, first order',
      1.3395,
      '1',
      0.00005,
      () => mass().value + k * mass().standardUncertainty,
    ],
    ['s1-mass-second-u', 'u, second order', 0.075, '1', 0.0005, () => secondOrderOf(mass())],
    [
      's1-mass-second-lower',
      'lower limit, second order',
      1.087,
      '1',
      0.0005,
      () => mass().value - k * secondOrderOf(mass()),
    ],
    [
      's1-mass-second-upper',
      'upper limit, second order',
      1.381,
      '1',
      0.0005,
      () => mass().value + k * secondOrderOf(mass()),
    ],
    ['s1-mass-run-value', 'value, Monte Carlo', 1.234, '1', 0.0005, () => massRun().value],
  ]),
  ...rowsIn('JCGM 101:2008, 9.3, recomputed to 12 digits', 'derived', [
    ['s1-mass-u-full', 'u, first order', 0.0538516480713, '1', 5e-14, () => mass().standardUncertainty],
    ['s1-mass-second-u-full', 'u, second order', 0.0749634738503, '1', 5e-14, () => secondOrderOf(mass())],
  ]),
  ...rowsIn('JCGM 101:2008, 9.4, tables 8 and 9: comparison loss of a power meter, in millionths', 'from memory', [
    ['s1-loss-10-u', 'u at 0.010, first order', 100, '1', 0.5, () => 1e6 * loss(0.01).standardUncertainty],
    ['s1-loss-50-value', 'value at 0.050, first order', 2500, '1', 0.5, () => 1e6 * loss(0.05).value],
    ['s1-loss-50-u', 'u at 0.050, first order', 500, '1', 0.5, () => 1e6 * loss(0.05).standardUncertainty],
    ['s1-loss-0-u-first', 'u at 0, first order: none', 0, '1', 0, () => loss(0).standardUncertainty],
    ['s1-loss-0-value', 'value at 0, Monte Carlo', 50, '1', 0.5, () => 1e6 * lossAtZero().value],
    ['s1-loss-0-u', 'u at 0, Monte Carlo', 50, '1', 0.5, () => 1e6 * lossAtZero().standardUncertainty],
    ['s1-loss-10-value', 'value at 0.010, Monte Carlo', 150, '1', 0.5, () => 1e6 * lossAtTen().value],
    ['s1-loss-0-correlated', 'value at 0, r = 0.9, Monte Carlo', 50, '1', 0.5, () => 1e6 * lossCorrelated().value],
  ]),
  ...rowsIn('JCGM 101:2008, 9.5, table 11: gauge block, in nanometres', 'from memory', [
    ['s1-block-value', 'value, first order', 838, '1', 0.5, () => propagate(blockModel, blockInputs).value],
    ['s1-block-u-first', 'u, first order', 32, '1', 0.5, () => propagate(blockModel, blockInputs).standardUncertainty],
    ['s1-block-run', 'value, Monte Carlo', 838, '1', 0.5, () => block().value],
    ['s1-block-u', 'u, Monte Carlo', 36, '1', 0.5, () => block().standardUncertainty],
  ]),
];
