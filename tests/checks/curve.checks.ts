import { loadCurve, regimeCurve } from '../../src/curve/index.js';
import { interpolant } from '../../src/curve/interpolant.js';
import { monotoneSlopes } from '../../src/curve/monotone-slopes.js';
import type { Check } from './check.js';

/*
 * RPN 14, the data of Fritsch and Carlson (1980), in the five digits of the NAG Library's example for e01be.
 * End rule of the published values: one-sided three-point formula with the shape-preserving clamp (PCHIM).
 */
const rpn14 = interpolant(
  {
    loads: Float64Array.of(7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20),
    // The first value is 0, which no curve of power has: hence the interpolant itself and not loadCurve.
    powers: Float64Array.of(0, 2.7643e-5, 0.04375, 0.16918, 0.46943, 0.94374, 0.99864, 0.99992, 0.99999),
  },
  'monotone-cubic',
);

const rpn14Values = [
  [7.99, 0],
  [9.191, 0.464],
  [10.392, 0.9645],
  [11.593, 0.9965],
  [12.794, 0.9992],
  [13.995, 0.9998],
  [15.196, 0.9999],
  [16.397, 1],
  [17.598, 1],
  [18.799, 1],
  [20, 1],
] as const;

/** Quick check dpchq3 of the PCHIP package: slopes of exp(−x²), 9 significant digits. */
const gaussX = [-2.2, -1.2, -1, -0.5, -0.01, 0.5, 1, 2, 2.2];
const gaussSlopes = [
  [0, 0.5e-9],
  [0.380027352, 0.5e-9],
  [0.717253009, 0.5e-9],
  [0.582014161, 0.5e-9],
  [0, 0.5e-9],
  [-0.568208031, 0.5e-9],
  [-0.513501618, 0.5e-9],
  [-0.0777910977, 0.5e-10],
  [-0.00245611117, 0.5e-11],
] as const;

function slopesOfGauss(): Float64Array {
  const y = gaussX.map((x) => Math.exp(-x * x));
  const steps = Float64Array.from({ length: 8 }, (_, i) => gaussX[i + 1]! - gaussX[i]!);
  return monotoneSlopes(
    steps,
    steps.map((h, i) => (y[i + 1]! - y[i]!) / h),
  );
}

/** 11.2 V behind 0.8 Ω: the load takes most power where it equals the source's resistance. */
const source = loadCurve(
  [0.2, 0.3, 0.5, 0.8, 1.1, 1.6, 2.4, 4].map((load) => ({ load, power: 11.2 ** 2 * (load / (0.8 + load) ** 2) })),
  { interpolation: 'monotone-cubic-log' },
);
const maximumTransfer = {
  room: 'curve',
  source: 'T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, maximum power transfer theorem',
  standing: 'published',
} as const;

const regimes = {
  room: 'curve',
  source: "Ohm's law and Joule's law",
  standing: 'derived',
  sourceId: 'ohm-joule',
} as const;
const generator = regimeCurve({ power: 300, currentLimit: 2, voltageLimit: 600 });

export const curveChecks: readonly Check[] = [
  ...rpn14Values.map(
    ([x, published]): Check => ({
      id: `curve-rpn14-at-${String(x).replace('.', '-')}`,
      room: 'curve',
      title: `Monotone cubic through RPN 14, at ${x}`,
      source: 'NAG Library, example program of e01be/e01bf; data: Fritsch and Carlson (1980)',
      standing: 'published',
      published,
      unit: '1',
      tolerance: 0.5e-4,
      compute: () => rpn14.power(rpn14.locate(x), x),
      sourceId: 'fritsch-carlson-1980',
    }),
  ),
  ...gaussSlopes.map(
    ([published, tolerance], i): Check => ({
      id: `curve-slope-of-gauss-${i + 1}`,
      room: 'curve',
      title: `Slope of the monotone cubic through exp(-x^2) at ${gaussX[i]}, three-point end rule`,
      source: 'SLATEC, PCHIP package, quick check DPCHQ3',
      standing: 'published',
      published,
      unit: '1',
      tolerance,
      compute: () => slopesOfGauss()[i]!,
      sourceId: 'fritsch-butland-1984',
    }),
  ),
  {
    ...maximumTransfer,
    id: 'curve-maximum-power-transfer',
    title: 'Largest power of 11.2 V behind 0.8 ohm',
    published: 39.2,
    unit: 'W',
    tolerance: 0.05,
    compute: () => source.maximum.power,
  },
  {
    ...maximumTransfer,
    id: 'curve-maximum-power-load',
    title: 'Load of the largest power of 11.2 V behind 0.8 ohm',
    published: 0.8,
    unit: 'ohm',
    tolerance: 0.05,
    compute: () => source.maximum.load,
  },
  {
    ...regimes,
    id: 'curve-regimes-lower-corner',
    title: 'Corner P/I^2 of 300 W, 2 A, 600 V',
    published: 75,
    unit: 'ohm',
    tolerance: 1e-12,
    compute: () => generator.corners[0]!.load,
  },
  {
    ...regimes,
    id: 'curve-regimes-upper-corner',
    title: 'Corner V^2/P of 300 W, 2 A, 600 V',
    published: 1200,
    unit: 'ohm',
    tolerance: 1e-12,
    compute: () => generator.corners[1]!.load,
  },
  {
    ...regimes,
    id: 'curve-regimes-maximum',
    title: 'Largest power of 300 W, 2 A, 600 V',
    published: 300,
    unit: 'W',
    tolerance: 0,
    compute: () => generator.maximum.power,
  },
  {
    ...regimes,
    id: 'curve-regimes-never-full-power',
    title: 'Largest power of 300 W, 1 A, 200 V: V·I, the power limit is never reached',
    published: 200,
    unit: 'W',
    tolerance: 0,
    compute: () => regimeCurve({ power: 300, currentLimit: 1, voltageLimit: 200 }).maximum.power,
  },
  {
    ...regimes,
    id: 'curve-regimes-high-load',
    title: 'Power of 300 W, 2 A, 600 V at 2000 ohm: V^2/R',
    published: 180,
    unit: 'W',
    tolerance: 1e-12,
    compute: () => generator.powerAt(2000),
  },
];
