import {
  type CovarianceContribution,
  covarianceContributions,
  coverageEllipse,
  jointEffectiveDegrees,
  normalInput,
  propagateAll,
  simultaneousReadings,
} from '../../src/uncertainty/index.js';
import { type Check, rowsOf } from './check.js';

const rowsIn = rowsOf('uncertainty');

const entry = (rows: readonly (readonly number[])[], row: number, column: number): number =>
  rows[row]?.[column] ?? Number.NaN;
const degreesOf = (contributions: readonly CovarianceContribution[]): number =>
  Number(jointEffectiveDegrees(contributions).degreesOfFreedom);

// A reflection coefficient Γ = Γ′ − S₁₁, each read five times: real part and imaginary part together.
const s11 = simultaneousReadings({
  sRe: [0.0242, -0.0023, 0.0599, 0.0433, -0.0026],
  sIm: [-0.0101, 0.2229, 0.0601, 0.21, 0.0627],
});
const gammaRead = simultaneousReadings({
  gRe: [0.1648, 0.1568, 0.1598, 0.1198, 0.3162],
  gIm: [-0.025, -0.0179, -0.1367, -0.0045, -0.131],
});
const gamma = propagateAll(
  { re: (x) => x.gRe - x.sRe, im: (x) => x.gIm - x.sIm },
  { ...s11.inputs, ...gammaRead.inputs },
  { correlations: [...s11.correlations, ...gammaRead.correlations] },
);
const gammaParts = covarianceContributions(gamma);
const gammaJoint = jointEffectiveDegrees(gammaParts);

/** The three covariance matrices of the paper's own numbers. */
const three: readonly CovarianceContribution[] = (
  [
    [0.96, -0.34, 0.27, 5],
    [0.51, 0.33, 0.31, 3],
    [0.45, 0.28, 1.65, 6],
  ] as const
).map(([v11, v12, v22, degreesOfFreedom], i) => ({
  name: `x${i + 1}`,
  covariance: [
    [v11, v12],
    [v12, v22],
  ],
  degreesOfFreedom,
}));

// Impedance as in JCGM 100 H.2, with five degrees of freedom; voltage for itself, current and phase read together.
const input = (value: number, standardUncertainty: number) =>
  normalInput({ value, standardUncertainty, degreesOfFreedom: 5 });
const impedance = propagateAll(
  {
    R: { arithmetic: (x, m) => m.multiply(m.divide(x.V, x.I), m.cos(x.phi)) },
    X: { arithmetic: (x, m) => m.multiply(m.divide(x.V, x.I), m.sin(x.phi)) },
  },
  { V: input(4.999, 0.0032), I: input(0.019661, 0.0000095), phi: input(1.04446, 0.00075) },
);
const [ofVoltage, ofCurrent, ofPhase] = covarianceContributions(impedance);
const impedanceDegrees = (): number => {
  if (!ofVoltage || !ofCurrent || !ofPhase) return Number.NaN;
  const { covariance } = jointEffectiveDegrees([ofCurrent, ofPhase]);
  return degreesOf([ofVoltage, { name: 'I, phi', covariance, degreesOfFreedom: 5 }]);
};

const h2 = simultaneousReadings({
  V: [5.007, 4.994, 5.005, 4.99, 4.999],
  I: [0.019663, 0.019639, 0.01964, 0.019685, 0.019678],
  phi: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
});
const h2Together = propagateAll(
  { R: (x) => (x.V / x.I) * Math.cos(x.phi), X: (x) => (x.V / x.I) * Math.sin(x.phi) },
  h2.inputs,
  { correlations: h2.correlations },
);

const example =
  'R. Willink and B. D. Hall, Metrologia 39 (2002) 361, example 1, as the tests of a GUM tree calculator state it';
const calculator = 'Published test values of a GUM tree calculator';
const circle = [
  [1, 0],
  [0, 1],
];

/** Published evaluations of vector quantities. */
export const vectorsChecks: readonly Check[] = [
  ...rowsIn(example, 'secondary', [
    ['willink-hall-s11-re', 'mean of S₁₁, real part', 0.0245, '1', 5e-6, () => s11.inputs.sRe.value],
    ['willink-hall-s11-im', 'mean of S₁₁, imaginary part', 0.10912, '1', 5e-6, () => s11.inputs.sIm.value],
    ['willink-hall-s11-11', 'its variance, real part', 0.000153, '1', 5e-7, () => entry(s11.covariance.rows, 0, 0)],
    ['willink-hall-s11-12', 'covariance of its parts', -7.97e-5, '1', 5e-8, () => entry(s11.covariance.rows, 0, 1)],
    [
      'willink-hall-s11-22',
      'its variance, imaginary part',
      0.0020947,
      '1',
      5e-8,
      () => entry(s11.covariance.rows, 1, 1),
    ],
    ['willink-hall-read-re', 'mean of the reading, real part', 0.18348, '1', 5e-6, () => gammaRead.inputs.gRe.value],
    [
      'willink-hall-read-im',
      'mean of the reading, imaginary part',
      -0.06302,
      '1',
      5e-6,
      () => gammaRead.inputs.gIm.value,
    ],
    [
      'willink-hall-read-11',
      'its variance, real part',
      0.0011646,
      '1',
      5e-8,
      () => entry(gammaRead.covariance.rows, 0, 0),
    ],
    [
      'willink-hall-read-12',
      'covariance of its parts',
      -0.0006459,
      '1',
      5e-8,
      () => entry(gammaRead.covariance.rows, 0, 1),
    ],
    [
      'willink-hall-read-22',
      'its variance, imaginary part',
      0.0008478,
      '1',
      5e-8,
      () => entry(gammaRead.covariance.rows, 1, 1),
    ],
    ['willink-hall-re', 'difference, real part', 0.15898, '1', 5e-6, () => gamma.outputs['re']?.value ?? Number.NaN],
    [
      'willink-hall-im',
      'difference, imaginary part',
      -0.17214,
      '1',
      5e-6,
      () => gamma.outputs['im']?.value ?? Number.NaN,
    ],
    ['willink-hall-11', 'its variance, real part', 0.0013175, '1', 5e-8, () => entry(gammaJoint.covariance, 0, 0)],
    ['willink-hall-12', 'covariance of its parts', -0.0007256, '1', 5e-8, () => entry(gammaJoint.covariance, 0, 1)],
    ['willink-hall-22', 'its variance, imaginary part', 0.0029425, '1', 5e-8, () => entry(gammaJoint.covariance, 1, 1)],
    ['willink-hall-degrees', 'its effective degrees of freedom', 6.85, '1', 0.005, () => degreesOf(gammaParts)],
  ]),
  ...rowsIn(
    'R. Willink and B. D. Hall, Metrologia 39 (2002), page 365, as the tests of a GUM tree calculator state it',
    'secondary',
    [
      [
        'willink-hall-three',
        'degrees of freedom of three covariance matrices',
        11.34,
        '1',
        0.005,
        () => degreesOf(three),
      ],
    ],
  ),
  ...rowsIn(calculator, 'published', [
    ['joint-degrees-three', 'the same, 15 digits', 11.3409777904914, '1', 5e-14, () => degreesOf(three)],
    [
      'joint-degrees-impedance',
      'impedance, current and phase as one source',
      8.23564845495,
      '1',
      5e-12,
      impedanceDegrees,
    ],
    [
      'joint-degrees-impedance-correlation',
      'correlation of its resistance and reactance',
      0.05820381031584,
      '1',
      5e-15,
      () => impedance.correlations[0]?.coefficient ?? Number.NaN,
    ],
  ]),
  ...rowsIn(calculator, 'published', [
    [
      'joint-degrees-impedance-u-r',
      'its resistance: standard uncertainty',
      0.194117890168,
      'ohm',
      5e-13,
      () => impedance.outputs['R']?.standardUncertainty ?? Number.NaN,
    ],
    // That of the reactance is printed as 0.200665630894, cut off: it is 0.2006656308947.
  ]),
  ...rowsIn('JCGM 100:2008, H.2: one series of five simultaneous readings has four degrees of freedom', 'derived', [
    [
      'gum-h2-degrees',
      'resistance and reactance together',
      4,
      '1',
      1e-14,
      () => degreesOf(covarianceContributions(h2Together)),
    ],
  ]),
  ...rowsIn('JCGM 102:2011, 6.5, coverage factors for the bivariate case', 'from memory', [
    [
      's2-factor-95',
      'elliptical region at 95 %',
      2.45,
      '1',
      0.005,
      () => coverageEllipse({ covariance: circle }).coverageFactor,
    ],
  ]),
];
