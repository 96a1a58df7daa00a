import { type MeasurementModel, parseModel } from '../../src/model/index.js';
import { normalInput, propagateAll } from '../../src/uncertainty/index.js';
import type { Check } from './check.js';

/*
 * What is checked here is that a model written as an expression has the values and the symbolic sensitivities that
 * were published: first-order uncertainties are root sums of squares of sensitivity times uncertainty, done here.
 */

interface Stated {
  readonly value: number;
  readonly u: number;
}

/** Half-widths to standard uncertainties. */
const rectangular = (halfWidth: number) => halfWidth / Math.sqrt(3);
const triangular = (halfWidth: number) => halfWidth / Math.sqrt(6);
const arcsine = (halfWidth: number) => halfWidth / Math.sqrt(2);

function valuesOf(inputs: Readonly<Record<string, Stated>>): Record<string, number> {
  return Object.fromEntries(Object.entries(inputs).map(([symbol, { value }]) => [symbol, value]));
}

function firstOrder(model: MeasurementModel, inputs: Readonly<Record<string, Stated>>): number {
  const at = valuesOf(inputs);
  return Math.hypot(
    ...model.symbols.map((symbol) => model.derivative(symbol).evaluate(at) * (inputs[symbol]?.u ?? Number.NaN)),
  );
}

/** ½ Σ Σ (∂²f/∂xᵢ∂xⱼ)² u²ᵢ u²ⱼ under the root, with the first order: JCGM 100, 5.1.2, where third derivatives vanish. */
function withCurvature(model: MeasurementModel, inputs: Readonly<Record<string, Stated>>): number {
  const at = valuesOf(inputs);
  const u = (symbol: string) => inputs[symbol]?.u ?? Number.NaN;
  const terms = model.symbols.flatMap((a) =>
    model.symbols.map((b) => (model.secondDerivative(a, b).evaluate(at) * u(a) * u(b)) / Math.SQRT2),
  );
  return Math.hypot(firstOrder(model, inputs), ...terms);
}

// JCGM 100, 4.1.1 and 5.1.3. The guide gives the formulas; the point is chosen so that each is a short decimal.
const heated = parseModel('V^2 / (R0 * (1 + alpha*(t - t0)))', {
  units: { V: 'V', R0: 'ohm', alpha: '1/K', t: 'K', t0: 'K' },
  unit: 'W',
});
const heatedAt = { V: 10, R0: 100, alpha: 0.005, t: 343, t0: 293 };
const guide =
  'JCGM 100:2008, 5.1.3, example: formula of the guide, evaluated by hand at V = 10, R0 = 100, α(t − t0) = 0.25';
const sensitivity = (symbol: string, formula: string, published: number, unit: string): Check => ({
  id: `model-gum-5-1-3-${symbol.toLowerCase()}`,
  room: 'model',
  title: `∂P/∂${symbol} = ${formula}`,
  source: guide,
  standing: 'from memory',
  published,
  unit,
  tolerance: 1e-14 * Math.abs(published),
  compute: () => heated.derivative(symbol).evaluate(heatedAt),
});

// JCGM 100, H.2 with the rounded inputs of its table: twelve digits printed by a published test.
const h2Inputs = {
  V: normalInput({ value: 4.999, standardUncertainty: 0.0032 }),
  I: normalInput({ value: 0.019661, standardUncertainty: 9.5e-6 }),
  phi: normalInput({ value: 1.04446, standardUncertainty: 0.00075 }),
};
const names = Object.keys(h2Inputs);
const h2 = propagateAll(
  {
    R: parseModel('V / I * cos(phi)').forInputs(names),
    X: parseModel('V / I * sin(phi)').forInputs(names),
    Z: parseModel('V / I').forInputs(names),
  },
  h2Inputs,
  {
    correlations: [
      { between: ['V', 'I'], coefficient: -0.36 },
      { between: ['V', 'phi'], coefficient: 0.86 },
      { between: ['I', 'phi'], coefficient: -0.65 },
    ],
  },
);
const h2Check = (output: 'R' | 'X' | 'Z', published: number, tolerance: number): Check => ({
  id: `model-gum-h2-rounded-u-${output.toLowerCase()}`,
  room: 'model',
  title: `u(${output}) of JCGM 100 H.2 from its rounded inputs, correlated, by symbolic sensitivities`,
  source: 'GUM Tree Calculator, published test of JCGM 100:2008 H.2 (test_uncertain_real_dof.py)',
  standing: 'published',
  published,
  unit: 'ohm',
  tolerance,
  compute: () => h2.outputs[output]?.standardUncertainty ?? Number.NaN,
});

// JCGM 100, H.1: end gauge; lengths in nanometres.
const gauge = parseModel('ls + d - ls * (dalpha * theta + alphas * dtheta)');
const gaugeInputs = {
  ls: { value: 50_000_623, u: 25 },
  d: { value: 215, u: 9.7 },
  dalpha: { value: 0, u: rectangular(1e-6) },
  theta: { value: -0.1, u: Math.hypot(0.2, arcsine(0.5)) },
  alphas: { value: 11.5e-6, u: rectangular(2e-6) },
  dtheta: { value: 0, u: rectangular(0.05) },
};
const gaugeTerm = (a: string, b: string) =>
  Math.abs(gauge.secondDerivative(a, b).evaluate(valuesOf(gaugeInputs))) *
  (gaugeInputs[a as 'd']?.u ?? Number.NaN) *
  (gaugeInputs[b as 'd']?.u ?? Number.NaN);

// JCGM 101, 9.3: mass, in milligrams.
const mass = parseModel('(mR + dm) * (1 + (ra - ra0) * (1/rW - 1/rR)) - mnom');
const massInputs = {
  mR: { value: 100_000, u: 0.05 },
  dm: { value: 1.234, u: 0.02 },
  ra: { value: 1.2, u: rectangular(0.1) },
  rW: { value: 8000, u: rectangular(1000) },
  rR: { value: 8000, u: rectangular(50) },
  ra0: { value: 1.2, u: 0 },
  mnom: { value: 100_000, u: 0 },
};

// EA-4/02 M, S3: standard resistor of 10 kΩ.
const ratios = [1.0000104, 1.0000107, 1.0000106, 1.0000103, 1.0000105];
const ratio = ratios.reduce((sum, r) => sum + r, 0) / 5;
const resistor = parseModel('(RS + dRD + dRTS) * rC * r - dRTX');
const resistorInputs = {
  RS: { value: 10_000.053, u: 0.0025 },
  dRD: { value: 0.02, u: rectangular(0.01) },
  dRTS: { value: 0, u: rectangular(0.00275) },
  dRTX: { value: 0, u: rectangular(0.0055) },
  rC: { value: 1, u: triangular(1e-6) },
  r: { value: ratio, u: Math.sqrt(ratios.reduce((sum, r) => sum + (r - ratio) ** 2, 0) / 20) },
};

// EA-4/02 M, S6: power sensor at 19 GHz.
const sensor = parseModel('(KS + dKD) * (MSr * MXc) / (MSc * MXr) * pCr * pCc * p');
const sensorAt = {
  KS: 0.957,
  dKD: -0.001,
  MSr: 1,
  MXc: 1,
  MSc: 1,
  MXr: 1,
  pCr: 1,
  pCc: 1,
  p: (0.9772 + 0.9671 + 0.9836) / 3,
};

// NIST TN 1900, E15: a voltage reflection coefficient, as its two real parts.
const reflection = (part: 'cos' | 'sin') =>
  parseModel(`S22 * ${part}(p22) - S12 * S23 / S13 * ${part}(p12 + p23 - p13)`);
const reflectionInputs = {
  S22: { value: 0.24776, u: 0.00337 },
  p22: { value: 4.88683, u: 0.01392 },
  S12: { value: 0.49935, u: 0.0034 },
  p12: { value: 4.78595, u: 0.00835 },
  S23: { value: 0.24971, u: 0.0017 },
  p23: { value: 4.85989, u: 0.00842 },
  S13: { value: 0.49952, u: 0.0034 },
  p13: { value: 4.79054, u: 0.00835 },
};

const row = (check: Omit<Check, 'room'>): Check => ({ ...check, room: 'model' });

/** Models written as expressions: values, sensitivities and second derivatives against published examples. */
export const modelChecks: readonly Check[] = [
  sensitivity('V', '2V/{R0[1 + α(t − t0)]} = 2P/V', 0.16, 'W/V'),
  sensitivity('R0', '−V²/{R0²[1 + α(t − t0)]} = −P/R0', -0.008, 'W/ohm'),
  sensitivity('alpha', '−V²(t − t0)/{R0[1 + α(t − t0)]²}', -32, 'W K'),
  sensitivity('t', '−V²α/{R0[1 + α(t − t0)]²}', -0.0032, 'W/K'),
  h2Check('R', 0.0699787279884, 0.5e-13),
  h2Check('X', 0.295716826846, 0.5e-12),
  h2Check('Z', 0.236602971835, 0.5e-12),
  row({
    id: 'model-gum-h1-u',
    title: 'end gauge: combined standard uncertainty, first order',
    source: 'JCGM 100:2008, H.1.4 and table H.1',
    standing: 'from memory',
    published: 32,
    unit: 'nm',
    tolerance: 0.5,
    compute: () => firstOrder(gauge, gaugeInputs),
  }),
  row({
    id: 'model-gum-h1-second-dalpha-theta',
    title: 'end gauge: second-order term lₛ u(δα) u(θ)',
    source: 'JCGM 100:2008, H.1.7',
    standing: 'from memory',
    published: 11.7,
    unit: 'nm',
    tolerance: 0.05,
    compute: () => gaugeTerm('dalpha', 'theta'),
  }),
  row({
    id: 'model-gum-h1-second-alphas-dtheta',
    title: 'end gauge: second-order term lₛ u(αₛ) u(δθ)',
    source: 'JCGM 100:2008, H.1.7',
    standing: 'from memory',
    published: 1.7,
    unit: 'nm',
    tolerance: 0.05,
    compute: () => gaugeTerm('alphas', 'dtheta'),
  }),
  row({
    id: 'model-gum-h1-u-second',
    title: 'end gauge: combined standard uncertainty with second-order terms',
    source: 'JCGM 100:2008, H.1.7',
    standing: 'from memory',
    published: 34,
    unit: 'nm',
    tolerance: 0.5,
    compute: () => withCurvature(gauge, gaugeInputs),
  }),
  row({
    id: 'model-s1-9-3-u',
    title: 'mass calibration: first-order standard uncertainty of the deviation',
    source: 'JCGM 101:2008, 9.3, table 6, GUF1',
    standing: 'from memory',
    published: 0.0539,
    unit: 'mg',
    tolerance: 0.00005,
    compute: () => firstOrder(mass, massInputs),
  }),
  row({
    id: 'model-s1-9-3-u-second',
    title: 'mass calibration: standard uncertainty with second-order terms, by symbolic second derivatives',
    source: 'JCGM 101:2008, 9.3, table 6, GUF2',
    standing: 'from memory',
    published: 0.075,
    unit: 'mg',
    tolerance: 0.0005,
    compute: () => withCurvature(mass, massInputs),
  }),
  row({
    id: 'model-ea-s3-value',
    title: 'standard resistor: value',
    source: 'EA-4/02 M, S3, as computed to 15 digits in a published example file (S03.smu); inputs from memory',
    standing: 'published',
    published: 10_000.1780007665,
    unit: 'ohm',
    tolerance: 0.5e-10,
    compute: () => resistor.evaluate(valuesOf(resistorInputs)),
  }),
  row({
    id: 'model-ea-s3-u',
    title: 'standard resistor: combined standard uncertainty',
    source: 'EA-4/02 M, S3, table',
    standing: 'from memory',
    published: 0.00833,
    unit: 'ohm',
    tolerance: 0.000005,
    compute: () => firstOrder(resistor, resistorInputs),
  }),
  row({
    id: 'model-ea-s6-value',
    title: 'power sensor: calibration factor',
    source: 'EA-4/02 M, S6, as computed to 15 digits in a published example file (S06.smu); inputs from memory',
    standing: 'published',
    published: 0.933024133333333,
    unit: '1',
    tolerance: 0.5e-15,
    compute: () => sensor.evaluate(sensorAt),
  }),
  row({
    id: 'model-tn1900-e15-real',
    title: 'reflection coefficient: real part',
    source: 'NIST TN 1900, example E15',
    standing: 'published',
    published: 0.0074,
    unit: '1',
    tolerance: 0.00005,
    compute: () => reflection('cos').evaluate(valuesOf(reflectionInputs)),
  }),
  row({
    id: 'model-tn1900-e15-imaginary',
    title: 'reflection coefficient: imaginary part',
    source: 'NIST TN 1900, example E15',
    standing: 'published',
    published: 0.0031,
    unit: '1',
    tolerance: 0.00005,
    compute: () => reflection('sin').evaluate(valuesOf(reflectionInputs)),
  }),
  row({
    id: 'model-tn1900-e15-u-real',
    title: 'reflection coefficient: standard uncertainty of the real part',
    source: 'NIST TN 1900, example E15',
    standing: 'published',
    published: 0.005,
    unit: '1',
    tolerance: 0.00005,
    compute: () => firstOrder(reflection('cos'), reflectionInputs),
  }),
  row({
    id: 'model-tn1900-e15-u-imaginary',
    title: 'reflection coefficient: standard uncertainty of the imaginary part',
    source: 'NIST TN 1900, example E15',
    standing: 'published',
    published: 0.0045,
    unit: '1',
    tolerance: 0.00005,
    compute: () => firstOrder(reflection('sin'), reflectionInputs),
  }),
];
