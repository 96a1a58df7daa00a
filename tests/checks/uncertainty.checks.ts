import {
  arcsineInput,
  certificateInput,
  effectiveDegrees,
  expandedUncertainty,
  monteCarlo,
  normalInput,
  type Propagated,
  propagate,
  propagateAll,
  rectangularInput,
  repeatedReadingsInput,
  simultaneousReadings,
  triangularInput,
} from '../../src/uncertainty/index.js';
import { type Check, type CheckRow, rowsOf } from './check.js';
import { distributionsChecks } from './distributions.checks.js';
import { exactFiguresChecks } from './exact-figures.checks.js';
import { vectorsChecks } from './vectors.checks.js';

const h2Readings = {
  V: [5.007, 4.994, 5.005, 4.99, 4.999],
  I: [0.019663, 0.019639, 0.01964, 0.019685, 0.019678],
  phi: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
};
const h2 = simultaneousReadings(h2Readings);
const { inputs: h2Inputs, correlations: h2Correlations } = h2;
const h2Between = (first: string, second: string): number =>
  h2Correlations.find(({ between: [a, b] }) => a === first && b === second)?.coefficient ?? Number.NaN;
type H2 = Readonly<Record<'V' | 'I' | 'phi', number>>;
const h2Models = {
  R: ({ V, I, phi }: H2) => (V / I) * Math.cos(phi),
  X: ({ V, I, phi }: H2) => (V / I) * Math.sin(phi),
  Z: ({ V, I }: H2) => V / I,
};
const approach1 = propagateAll(h2Models, h2Inputs, { correlations: h2Correlations });
const ignored = propagateAll(h2Models, h2Inputs);
const rounded = propagateAll(
  h2Models,
  {
    V: normalInput({ value: 4.999, standardUncertainty: 0.0032 }),
    I: normalInput({ value: 0.019661, standardUncertainty: 9.5e-6 }),
    phi: normalInput({ value: 1.04446, standardUncertainty: 0.00075 }),
  },
  {
    correlations: [
      { between: ['V', 'I'], coefficient: -0.36 },
      { between: ['V', 'phi'], coefficient: 0.86 },
      { between: ['I', 'phi'], coefficient: -0.65 },
    ],
  },
);

type Together = typeof approach1;
const output = (of: Together, name: string): Propagated => of.outputs[name] as Propagated;
const pair = (of: Pick<Together, 'correlations'>, a: string, b: string): number =>
  of.correlations.find((c) => c.between[0] === a && c.between[1] === b)?.coefficient ?? Number.NaN;

/** Each of the five sets evaluated for itself, then type A evaluation of the results (approach 2). */
const h2Rows = (name: 'R' | 'X' | 'Z'): number[] =>
  h2Readings.V.map((V, i) => h2Models[name]({ V, I: h2Readings.I[i] as number, phi: h2Readings.phi[i] as number }));
const approach2 = simultaneousReadings({ R: h2Rows('R'), X: h2Rows('X'), Z: h2Rows('Z') });
/** Table H.4, as printed. */
const h2RowsPrinted = {
  R: [127.67, 127.89, 127.51, 127.71, 127.88],
  X: [220.32, 219.79, 220.64, 218.97, 219.51],
  Z: [254.64, 254.29, 254.84, 253.49, 254.04],
} as const;
const outputNames = ['R', 'X', 'Z'] as const;

const ten = Array.from({ length: 10 }, (_, i) => `R${i}`);
const tenInputs = Object.fromEntries(ten.map((name) => [name, normalInput({ value: 1000, standardUncertainty: 0.1 })]));
const series = (x: Readonly<Record<string, number>>): number => ten.reduce((sum, name) => sum + (x[name] as number), 0);
const allCorrelated = ten.flatMap((a, i) =>
  ten.slice(i + 1).map((b) => ({ between: [a, b] as const, coefficient: 1 })),
);

const s3 = propagate(
  (x: Readonly<Record<'RS' | 'dRD' | 'dRTS' | 'dRTX' | 'rC' | 'r', number>>) =>
    (x.RS + x.dRD + x.dRTS) * x.rC * x.r - x.dRTX,
  {
    RS: certificateInput({ value: 10000.053, expandedUncertainty: 0.005, coverage: { factor: 2 } }),
    dRD: rectangularInput({ value: 0.02, halfWidth: 0.01 }),
    dRTS: rectangularInput({ value: 0, halfWidth: 0.00275 }),
    dRTX: rectangularInput({ value: 0, halfWidth: 0.0055 }),
    rC: triangularInput({ value: 1, halfWidth: 1e-6 }),
    r: repeatedReadingsInput([1.0000104, 1.0000107, 1.0000106, 1.0000103, 1.0000105]),
  },
);
const voltmeter = propagate((x: Readonly<Record<'mean' | 'meter', number>>) => x.mean + x.meter, {
  mean: normalInput({ value: 0.928571, standardUncertainty: 12e-6 }),
  meter: rectangularInput({ value: 0, halfWidth: 14e-6 * 0.928571 + 2e-6 }),
});
const g4Terms = [
  { name: 'a', contribution: 0.25, degreesOfFreedom: 9 },
  { name: 'b', contribution: 0.57, degreesOfFreedom: 4 },
  { name: 'c', contribution: 0.82, degreesOfFreedom: 14 },
];
function g4Degrees(combined: number): number {
  const result = effectiveDegrees(g4Terms, combined, new Set());
  return 'reason' in result ? Number.NaN : Number(result.degreesOfFreedom);
}
const s9Model = (x: Readonly<Record<'ViX' | 'VS' | 'dViX' | 'dVS', number>>) => x.ViX - x.VS + x.dViX - x.dVS;
const s9Inputs = {
  ViX: normalInput({ value: 100.1, standardUncertainty: 0 }),
  VS: certificateInput({ value: 100, expandedUncertainty: 0.002, coverage: { factor: 2 } }),
  dViX: rectangularInput({ value: 0, halfWidth: 0.05 }),
  dVS: rectangularInput({ value: 0, halfWidth: 0.011 }),
};
const s9 = propagate(s9Model, s9Inputs);
const s9HalfInterval = (): number => {
  const { symmetricInterval } = monteCarlo(s9Model, s9Inputs, { seed: 1, trials: 1_000_000 });
  return symmetricInterval === undefined ? Number.NaN : (symmetricInterval.upper - symmetricInterval.lower) / 2;
};
const s6 = propagate(
  (x: Readonly<Record<'KS' | 'dKD' | 'MSr' | 'MXc' | 'MSc' | 'MXr' | 'pCr' | 'pCc' | 'p', number>>) =>
    (((x.KS + x.dKD) * x.MSr * x.MXc) / (x.MSc * x.MXr)) * x.pCr * x.pCc * x.p,
  {
    KS: normalInput({ value: 0.957, standardUncertainty: 0.0055 }),
    dKD: rectangularInput({ value: -0.001, halfWidth: 0.002 }),
    MSr: arcsineInput({ value: 1, halfWidth: 0.0008 }),
    MXr: arcsineInput({ value: 1, halfWidth: 0.0008 }),
    MSc: arcsineInput({ value: 1, halfWidth: 0.014 }),
    MXc: arcsineInput({ value: 1, halfWidth: 0.0168 }),
    pCr: normalInput({ value: 1, standardUncertainty: 0.00142 }),
    pCc: normalInput({ value: 1, standardUncertainty: 0.000142 }),
    p: repeatedReadingsInput([0.9772, 0.9671, 0.9836]),
  },
);

const inUncertainty = rowsOf('uncertainty');

/** Checks of one example, whose identifiers begin alike. */
function exampleOf(prefix: string, source: string, standing: Check['standing'], rows: readonly CheckRow[]): Check[] {
  return inUncertainty(source, standing, rows).map((check) => ({ ...check, id: `${prefix}-${check.id}` }));
}

/** Published examples of uncertainty budgets and first-order propagation. */
export const uncertaintyChecks: readonly Check[] = [
  ...exampleOf('gum-h2', 'JCGM 100:2008, H.2, Table H.2', 'published', [
    ['v', 'mean of V', 4.999, 'V', 0.0005, () => h2Inputs.V.value],
    ['i', 'mean of I', 0.019661, 'A', 5e-7, () => h2Inputs.I.value],
    ['phi', 'mean of the phase', 1.04446, 'rad', 5e-6, () => h2Inputs.phi.value],
    ['u-v', 'standard deviation of the mean of V', 0.0032, 'V', 0.00005, () => h2Inputs.V.standardUncertainty],
    ['u-i', 'standard deviation of the mean of I', 9.5e-6, 'A', 0.05e-6, () => h2Inputs.I.standardUncertainty],
    [
      'u-phi',
      'standard deviation of the mean of the phase',
      0.00075,
      'rad',
      0.000005,
      () => h2Inputs.phi.standardUncertainty,
    ],
    ['r-vi', 'correlation of V and I', -0.36, '1', 0.005, () => h2Between('V', 'I')],
    ['r-vphi', 'correlation of V and phase', 0.86, '1', 0.005, () => h2Between('V', 'phi')],
    ['r-iphi', 'correlation of I and phase', -0.65, '1', 0.005, () => h2Between('I', 'phi')],
  ]),
  ...exampleOf('gum-h2-approach-1', 'JCGM 100:2008, H.2.3, Table H.3', 'published', [
    ['r', 'resistance, inputs correlated', 127.732, 'ohm', 0.0005, () => output(approach1, 'R').value],
    ['u-r', 'its uncertainty', 0.071, 'ohm', 0.0005, () => output(approach1, 'R').standardUncertainty],
    ['x', 'reactance', 219.847, 'ohm', 0.0005, () => output(approach1, 'X').value],
    ['z', 'impedance', 254.26, 'ohm', 0.0005, () => output(approach1, 'Z').value],
    ['u-z', 'its uncertainty', 0.236, 'ohm', 0.0005, () => output(approach1, 'Z').standardUncertainty],
    ['r-rx', 'correlation of R and X', -0.588, '1', 0.0005, () => pair(approach1, 'R', 'X')],
    ['r-rz', 'correlation of R and Z', -0.485, '1', 0.0005, () => pair(approach1, 'R', 'Z')],
    ['r-xz', 'correlation of X and Z', 0.993, '1', 0.0005, () => pair(approach1, 'X', 'Z')],
  ]),
  ...exampleOf(
    'gum-h2-full',
    'JCGM 100:2008, H.2, recomputed to 17 digits (0.295 is printed for u(X), unrounded 0.29558)',
    'derived',
    [
      ['u-r', 'uncertainty of R', 0.071071407396996, 'ohm', 1e-11, () => output(approach1, 'R').standardUncertainty],
      ['u-x', 'uncertainty of X', 0.295581677358644, 'ohm', 1e-11, () => output(approach1, 'X').standardUncertainty],
      ['u-z', 'uncertainty of Z', 0.23633613008238, 'ohm', 1e-11, () => output(approach1, 'Z').standardUncertainty],
    ],
  ),
  ...exampleOf('gum-h2-approach-2', 'JCGM 100:2008, H.2.4, Table H.4', 'published', [
    ['r', 'resistance, each set for itself', 127.732, 'ohm', 0.0005, () => approach2.inputs.R.value],
    ['u-r', 'its uncertainty', 0.071, 'ohm', 0.0005, () => approach2.inputs.R.standardUncertainty],
    ['x', 'reactance', 219.847, 'ohm', 0.0005, () => approach2.inputs.X.value],
    ['u-x', 'its uncertainty', 0.295, 'ohm', 0.0005, () => approach2.inputs.X.standardUncertainty],
    ['z', 'impedance', 254.26, 'ohm', 0.0005, () => approach2.inputs.Z.value],
    ['u-z', 'its uncertainty', 0.236, 'ohm', 0.0005, () => approach2.inputs.Z.standardUncertainty],
    ['r-rx', 'correlation of R and X', -0.588, '1', 0.0005, () => pair(approach2, 'R', 'X')],
    ['r-rz', 'correlation of R and Z', -0.485, '1', 0.0005, () => pair(approach2, 'R', 'Z')],
    ['r-xz', 'correlation of X and Z', 0.993, '1', 0.0005, () => pair(approach2, 'X', 'Z')],
  ]),
  ...exampleOf(
    'gum-h2-set',
    'JCGM 100:2008, H.2.4, Table H.4',
    'from memory',
    outputNames.flatMap((name) =>
      h2RowsPrinted[name].map((printed, i): CheckRow => {
        const id = `${name.toLowerCase()}-${i + 1}`;
        return [id, `${name} of set ${i + 1}`, printed, 'ohm', 0.005, () => h2Rows(name)[i] as number];
      }),
    ),
  ),
  ...exampleOf('gum-h2-ignored', 'JCGM 100:2008, Table H.5 (correlation wrongly left out)', 'from memory', [
    ['u-r', 'uncertainty of R', 0.195, 'ohm', 0.0005, () => output(ignored, 'R').standardUncertainty],
    ['u-x', 'uncertainty of X', 0.201, 'ohm', 0.0005, () => output(ignored, 'X').standardUncertainty],
    ['u-z', 'uncertainty of Z', 0.204, 'ohm', 0.0005, () => output(ignored, 'Z').standardUncertainty],
    ['r-rx', 'correlation of R and X', 0.056, '1', 0.0005, () => pair(ignored, 'R', 'X')],
    ['r-rz', 'correlation of R and Z', 0.527, '1', 0.0005, () => pair(ignored, 'R', 'Z')],
    ['r-xz', 'correlation of X and Z', 0.878, '1', 0.0005, () => pair(ignored, 'X', 'Z')],
  ]),
  ...exampleOf(
    'gum-h2-rounded',
    'Published test values of a GUM tree calculator, H.2 with its rounded inputs',
    'published',
    [
      ['u-r', 'uncertainty of R', 0.0699787279884, 'ohm', 5e-12, () => output(rounded, 'R').standardUncertainty],
      ['u-x', 'uncertainty of X', 0.295716826846, 'ohm', 5e-12, () => output(rounded, 'X').standardUncertainty],
      ['u-z', 'uncertainty of Z', 0.236602971835, 'ohm', 5e-12, () => output(rounded, 'Z').standardUncertainty],
      ['r-rx', 'correlation of R and X', -0.591484610819, '1', 5e-12, () => pair(rounded, 'R', 'X')],
      ['r-rz', 'correlation of R and Z', -0.490623905441, '1', 5e-12, () => pair(rounded, 'R', 'Z')],
      ['r-xz', 'correlation of X and Z', 0.992797472722, '1', 5e-12, () => pair(rounded, 'X', 'Z')],
    ],
  ),
  ...exampleOf('gum-g4', 'JCGM 100:2008, G.4.1, example', 'from memory', [
    ['u', 'combined relative uncertainty, percent', 1.03, '1', 0.005, () => Math.hypot(0.25, 0.57, 0.82)],
    ['nu', 'effective degrees of freedom', 19.0, '1', 0.05, () => g4Degrees(1.03)],
    [
      'nu-full',
      'effective degrees of freedom, unrounded uncertainty',
      18.998742314268,
      '1',
      5e-12,
      () => g4Degrees(Math.hypot(0.25, 0.57, 0.82)),
    ],
    [
      'k',
      'coverage factor at 95 %',
      2.09,
      '1',
      0.005,
      () => expandedUncertainty({ standardUncertainty: 1, degreesOfFreedom: 19 }).coverageFactor,
    ],
    [
      'expanded',
      'expanded uncertainty, percent',
      2.2,
      '1',
      0.05,
      () => expandedUncertainty({ standardUncertainty: 1.03, degreesOfFreedom: 19 }).expandedUncertainty,
    ],
  ]),
  ...exampleOf('gum-voltmeter', 'JCGM 100:2008, 4.3.7, example 2, and 5.1', 'from memory', [
    [
      'u-b',
      'type B uncertainty of the meter, microvolt',
      8.7,
      'V',
      0.05,
      () => (voltmeter.contributions[1]?.standardUncertainty ?? 0) * 1e6,
    ],
    [
      'half-width',
      'its limits, microvolt',
      15,
      'V',
      0.5,
      () => (voltmeter.contributions[1]?.standardUncertainty ?? 0) * Math.sqrt(3) * 1e6,
    ],
    [
      'u2',
      'its variance, square microvolt',
      75,
      'V^2',
      0.5,
      () => ((voltmeter.contributions[1]?.standardUncertainty ?? 0) * 1e6) ** 2,
    ],
    [
      'relative',
      'combined, of the value, in millionths',
      16,
      '1',
      0.5,
      () => (1e6 * voltmeter.standardUncertainty) / voltmeter.value,
    ],
    ['u', 'combined, microvolt', 15, 'V', 0.5, () => voltmeter.standardUncertainty * 1e6],
  ]),
  ...exampleOf('gum-certificate', 'JCGM 100:2008, 4.3.4', 'from memory', [
    [
      'u',
      'resistor, 129 µΩ at 99 %',
      50e-6,
      'ohm',
      0.5e-6,
      () =>
        certificateInput({ value: 10.000742, expandedUncertainty: 129e-6, coverage: { level: 0.99 } })
          .standardUncertainty,
    ],
    [
      'relative',
      'the same, of the value, in millionths',
      5,
      '1',
      0.5,
      () => {
        const value = 10.000742;
        const input = certificateInput({ value, expandedUncertainty: 129e-6, coverage: { level: 0.99 } });
        return (1e6 * input.standardUncertainty) / value;
      },
    ],
  ]),
  ...exampleOf('gum-ten-resistors', 'JCGM 100:2008, 5.2.2, example', 'from memory', [
    [
      'correlated',
      'ten resistors, one standard',
      1.0,
      'ohm',
      0.05,
      () => propagate(series, tenInputs, { correlations: allCorrelated, secondOrder: false }).standardUncertainty,
    ],
    [
      'independent',
      'the same, taken as independent',
      0.32,
      'ohm',
      0.005,
      () => propagate(series, tenInputs, { secondOrder: false }).standardUncertainty,
    ],
  ]),
  ...exampleOf(
    'ea-s3',
    'EA-4/02, supplement 1, S3: standard resistor, output file of a general uncertainty program',
    'published',
    [
      ['value', 'resistance', 10000.1780007665, 'ohm', 5e-11, () => s3.value],
      ['u', 'standard uncertainty', 0.00832800405259282, 'ohm', 5e-12, () => s3.standardUncertainty],
    ],
  ),
  ...exampleOf(
    'ea-s6',
    'EA-4/02, supplement 1, S6: power sensor, output file of a general uncertainty program',
    'published',
    [['value', 'calibration factor', 0.933024133333333, '1', 5e-15, () => s6.value]],
  ),
  ...exampleOf(
    'ea-s6-u',
    'EA-4/02, supplement 1, S6, inputs from memory: one small input is not identified',
    'from memory',
    [['u', 'standard uncertainty, three figures', 0.0162, '1', 0.00005, () => s6.standardUncertainty]],
  ),
  ...exampleOf('ea', 'EA-4/02, supplement 1, S3 and S6: expanded uncertainty, k = 2', 'from memory', [
    ['s3-expanded', 'standard resistor, milliohm', 17, 'ohm', 0.5, () => 2000 * s3.standardUncertainty],
    ['s6-expanded', 'power sensor', 0.032, '1', 0.0005, () => 2 * s6.standardUncertainty],
  ]),
  ...exampleOf('ea-s9', 'EA-4/02, supplement 1, S9: hand-held multimeter', 'from memory', [
    ['value', 'error of indication', 0.1, 'V', 0.05, () => s9.value],
    ['u', 'standard uncertainty', 0.03, 'V', 0.005, () => s9.standardUncertainty],
    ['expanded', 'half the interval of 95 %, Monte Carlo', 0.05, 'V', 0.005, s9HalfInterval],
    ['u-full', 'the same, recomputed', 0.029574764017091783, 'V', 5e-15, () => s9.standardUncertainty],
  ]),
  ...distributionsChecks,
  ...exactFiguresChecks,
  ...vectorsChecks,
];
