import { describe, expect, it } from 'vitest';
import {
  adaptiveMonteCarlo,
  arcsineInput,
  curvilinearTrapezoidInput,
  expandedUncertainty,
  monteCarlo,
  normalInput,
  numericalTolerance,
  propagate,
  rectangularInput,
  repeatedReadingsInput,
  trapezoidalInput,
  triangularInput,
  type UncertainInput,
  validateFirstOrder,
} from '../../src/uncertainty/index.js';

const four = (inputs: readonly UncertainInput[]): Record<'a' | 'b' | 'c' | 'd', UncertainInput> => {
  const [a, b, c, d] = inputs as [UncertainInput, UncertainInput, UncertainInput, UncertainInput];
  return { a, b, c, d };
};
const sum = (x: Readonly<Record<'a' | 'b' | 'c' | 'd', number>>): number => x.a + x.b + x.c + x.d;
const unit = normalInput({ value: 0, standardUncertainty: 1 });
const rectangle = rectangularInput({ value: 0, halfWidth: Math.sqrt(3) });
const wide = rectangularInput({ value: 0, halfWidth: 10 * Math.sqrt(3) });
const trials = 400_000;

/** Standard error of an interval limit from the density of the result there: √(q(1 − q)/M)/density. */
function limitError(density: number, p = 0.95): number {
  const q = (1 - p) / 2;
  return Math.sqrt((q * (1 - q)) / trials) / density;
}

describe('additive models of JCGM 101:2008, 9.2, against the exact values', () => {
  // Densities at the limits: normal σ = 2 exactly; the others from the closed forms of the sums of rectangles.
  it('9.2.2: four normal inputs', () => {
    const run = monteCarlo(sum, four([unit, unit, unit, unit]), { seed: 922, trials });
    const density = Math.exp(-(1.96 ** 2) / 2) / (2 * Math.sqrt(2 * Math.PI));
    expect(Math.abs(run.value)).toBeLessThan(4 * (2 / Math.sqrt(trials)));
    expect(Math.abs(run.standardUncertainty - 2)).toBeLessThan(4 * (2 / Math.sqrt(2 * trials)));
    expect(Math.abs((run.symmetricInterval?.upper ?? 0) - 3.91992796908011)).toBeLessThan(4 * limitError(density));
    expect(Math.abs((run.symmetricInterval?.lower ?? 0) + 3.91992796908011)).toBeLessThan(4 * limitError(density));
  });

  it('9.2.3: four rectangular inputs, where the first order is 1 % off', () => {
    const run = monteCarlo(sum, four([rectangle, rectangle, rectangle, rectangle]), {
      seed: 923,
      trials,
      interval: 'both',
    });
    // Near the end the distribution function is (4√3 − y)⁴/(4!·(2√3)⁴).
    const exact = 3.87940674134782;
    const density = (4 * (4 * Math.sqrt(3) - exact) ** 3) / (24 * (2 * Math.sqrt(3)) ** 4);
    expect(Math.abs((run.symmetricInterval?.upper ?? 0) - exact)).toBeLessThan(4 * limitError(density));
    expect(Math.abs((run.symmetricInterval?.lower ?? 0) + exact)).toBeLessThan(4 * limitError(density));
    const shortest = (run.shortestInterval?.upper ?? 0) - (run.shortestInterval?.lower ?? 0);
    expect(shortest).toBeLessThanOrEqual((run.symmetricInterval?.upper ?? 0) - (run.symmetricInterval?.lower ?? 0));
  });

  it('9.2.4: one rectangle dominates, and clause 8 refuses the first order', () => {
    const inputs = four([rectangle, rectangle, rectangle, wide]);
    const run = monteCarlo(sum, inputs, { seed: 924, trials });
    // The density near the limits is that of the wide rectangle.
    const density = 1 / (20 * Math.sqrt(3));
    expect(Math.abs((run.symmetricInterval?.upper ?? 0) - 17.0158140998667)).toBeLessThan(4 * limitError(density));
    expect(Math.abs(run.standardUncertainty - 10.1488915650922)).toBeLessThan(4 * (10.15 / Math.sqrt(2 * trials)));
    const first = propagate(sum, inputs);
    const { expandedUncertainty: U } = expandedUncertainty(first);
    expect(U).toBeCloseTo(19.8914619505831, 10);
    const interval = run.symmetricInterval ?? { lower: 0, upper: 0 };
    expect(validateFirstOrder({ ...first, expandedUncertainty: U, interval }).valid).toBe(false);
  });
});

describe('JCGM 101:2008, 9.3: mass calibration', () => {
  type Mass = Readonly<Record<'mR' | 'dm' | 'ra' | 'rW' | 'rR', number>>;
  const model = ({ mR, dm, ra, rW, rR }: Mass): number => (mR + dm) * (1 + (ra - 1.2) * (1 / rW - 1 / rR)) - 100000;
  const inputs = {
    mR: normalInput({ value: 100000, standardUncertainty: 0.05 }),
    dm: normalInput({ value: 1.234, standardUncertainty: 0.02 }),
    ra: rectangularInput({ value: 1.2, halfWidth: 0.1 }),
    rW: rectangularInput({ value: 8000, halfWidth: 1000 }),
    rR: rectangularInput({ value: 8000, halfWidth: 50 }),
  };

  it('first order misses the uncertainty of the air density, second order finds it, and the result says so', () => {
    const result = propagate(model, inputs);
    expect(result.standardUncertainty).toBeCloseTo(0.0538516480713, 6);
    // The second-order figure of the supplement is 0.0750.
    expect(result.secondOrder?.standardUncertainty).toBeCloseTo(0.0749634738503, 4);
    expect(result.secondOrder?.firstOrderEnough).toBe(false);
    expect(result.secondOrder?.statement).toContain('Use Monte Carlo');
  });

  it('Monte Carlo agrees with the exact figures within its standard error', () => {
    const run = monteCarlo(model, inputs, { seed: 93, trials });
    expect(Math.abs(run.value - 1.234)).toBeLessThan((4 * 0.0755) / Math.sqrt(trials));
    expect(Math.abs(run.standardUncertainty - 0.0754801322615)).toBeLessThan((4 * 0.0755) / Math.sqrt(trials));
    // The density at the limits, read off a normal of the same deviation, bounds the error of the limits from above.
    const error = limitError(Math.exp(-(1.98 ** 2) / 2) / (0.0755 * Math.sqrt(2 * Math.PI)));
    expect(Math.abs((run.symmetricInterval?.lower ?? 0) - 1.08443329878)).toBeLessThan(4 * error);
    expect(Math.abs((run.symmetricInterval?.upper ?? 0) - 1.38356677929)).toBeLessThan(4 * error);
  });
});

describe('JCGM 101:2008, 9.4: comparison loss of a power meter', () => {
  const loss = ({ x1, x2 }: Readonly<Record<'x1' | 'x2', number>>): number => x1 * x1 + x2 * x2;
  const at = (value: number): Record<'x1' | 'x2', UncertainInput> => ({
    x1: normalInput({ value, standardUncertainty: 0.005 }),
    x2: normalInput({ value: 0, standardUncertainty: 0.005 }),
  });

  it('says that the first order gives nothing at x₁ = 0, where the truth is 50e-6', () => {
    const result = propagate(loss, at(0));
    expect(result.standardUncertainty).toBeLessThan(1e-12);
    expect(result.secondOrder?.firstOrderEnough).toBe(false);
    expect(result.secondOrder?.standardUncertainty).toBeCloseTo(5e-5, 10);
    expect(result.secondOrder?.shift).toBeCloseTo(5e-5, 10);
  });

  it.each([
    [0, 0, 5e-5, 5e-5, [1.2658904e-6, 1.84443973e-4]],
    [0.05, 0, 2.55e-3, 5.02493781056e-4, [1.63847707e-3, 3.60335805e-3]],
    [0.01, 0.9, 1.5e-4, 1.20519707932e-4, [2.90814667e-5, 4.78310679e-4]],
  ] as const)('x₁ = %s, r = %s', (x1, coefficient, mean, deviation, limits) => {
    const correlations = coefficient === 0 ? [] : [{ between: ['x1', 'x2'] as const, coefficient }];
    const run = monteCarlo(loss, at(x1), { seed: 94, trials, correlations });
    const error = deviation / Math.sqrt(trials);
    expect(Math.abs(run.value - mean)).toBeLessThan(4 * error);
    // The fourth moment of these skewed results makes the error of u up to three times that of a normal one.
    expect(Math.abs(run.standardUncertainty - deviation)).toBeLessThan(4 * 2 * error);
    // Values outside each true limit: a fraction of 2.5 % with binomial error.
    const outside = 4 * Math.sqrt(0.025 * 0.975 * trials);
    const fresh = monteCarlo((x: { x1: number; x2: number }) => (loss(x) < limits[0] ? 1 : 0), at(x1), {
      seed: 95,
      trials,
      correlations,
      interval: 'none',
    });
    expect(Math.abs(fresh.value * trials - 0.025 * trials)).toBeLessThan(outside);
    const above = monteCarlo((x: { x1: number; x2: number }) => (loss(x) > limits[1] ? 1 : 0), at(x1), {
      seed: 96,
      trials,
      correlations,
      interval: 'none',
    });
    expect(Math.abs(above.value * trials - 0.025 * trials)).toBeLessThan(outside);
  });
});

describe('JCGM 101:2008, 9.5: gauge block', () => {
  const student = (value: number, scale: number, degreesOfFreedom: number): UncertainInput => ({
    value,
    standardUncertainty: scale,
    degreesOfFreedom,
    type: 'A',
    distribution: { kind: 'student-t', scale, degreesOfFreedom },
  });
  type Block = Readonly<Record<'Ls' | 'D' | 'd1' | 'd2' | 'alphas' | 'theta0' | 'Delta' | 'da' | 'dtheta', number>>;
  const model = (x: Block): number =>
    x.Ls + x.D + x.d1 + x.d2 - x.Ls * (x.da * (x.theta0 + x.Delta) + x.alphas * x.dtheta) - 50_000_000;
  const inputs = {
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

  it('agrees with the published 838 nm, 36 nm and [745, 932] nm', () => {
    const run = monteCarlo(model, inputs, { seed: 95, trials, coverageProbability: 0.99 });
    expect(Math.abs(run.value - 838.002)).toBeLessThan((4 * 35.8) / Math.sqrt(trials) + 0.003);
    expect(Math.abs(run.standardUncertainty - 35.806)).toBeLessThan((4 * 35.8) / Math.sqrt(trials) + 0.003);
    const error = limitError(Math.exp(-(2.6 ** 2) / 2) / (35.8 * Math.sqrt(2 * Math.PI)), 0.99);
    expect(Math.abs((run.symmetricInterval?.lower ?? 0) - 744.36)).toBeLessThan(4 * error + 0.02);
    expect(Math.abs((run.symmetricInterval?.upper ?? 0) - 931.65)).toBeLessThan(4 * error + 0.02);
  });
});

describe('distributions of inputs, JCGM 101:2008, 6.4', () => {
  it.each([
    ['rectangular', rectangularInput({ value: 3, halfWidth: 2 })],
    ['triangular', triangularInput({ value: 3, halfWidth: 2 })],
    ['arcsine', arcsineInput({ value: 3, halfWidth: 2 })],
    ['trapezoidal', trapezoidalInput({ value: 3, halfWidth: 2, shape: 0.4 })],
    ['curvilinear trapezoid', curvilinearTrapezoidInput({ value: 3, halfWidth: 2, inexactness: 1 })],
    ['normal', normalInput({ value: 3, standardUncertainty: 2 })],
  ])('%s: mean, standard deviation and support', (_, input) => {
    const run = monteCarlo(({ a }) => a, { a: input }, { seed: 64, trials });
    const u = input.standardUncertainty;
    expect(Math.abs(run.value - 3)).toBeLessThan((4 * u) / Math.sqrt(trials));
    expect(Math.abs(run.standardUncertainty - u)).toBeLessThan((4 * u) / Math.sqrt(trials));
    if (input.distribution.kind === 'normal' || input.distribution.kind === 'curvilinear-trapezoid') return;
    const outside = monteCarlo(
      ({ a }) => (Math.abs(a - 3) > 2 ? 1 : 0),
      { a: input },
      { seed: 65, trials, interval: 'none' },
    );
    expect(outside.value).toBe(0);
  });

  it('repeated readings have the wider spread of the t-distribution', () => {
    const input = repeatedReadingsInput([1, 2, 3, 4, 5, 6, 7]);
    const run = monteCarlo(({ a }) => a, { a: input }, { seed: 66, trials });
    // s²/n · ν/(ν − 2) with ν = 6
    const expected = input.standardUncertainty * Math.sqrt(6 / 4);
    expect(Math.abs(run.standardUncertainty / expected - 1)).toBeLessThan(0.02);
  });
});

describe('a Monte Carlo run', () => {
  const inputs = { a: unit, b: rectangle };
  const model = ({ a, b }: Readonly<Record<'a' | 'b', number>>): number => a * b + a;

  it('is the same for the same seed and another for another, and says what it was', () => {
    const run = (seed: number) => monteCarlo(model, inputs, { seed, trials: 20_000 });
    expect(run(1)).toEqual(run(1));
    expect(run(1).value).not.toBe(run(2).value);
    expect(run(1)).toMatchObject({ seed: 1, trials: 20_000, generator: 'xoshiro128++', coverageProbability: 0.95 });
  });

  it('gives the same moments with and without values kept', () => {
    const kept = monteCarlo(model, inputs, { seed: 3, trials: 50_001 });
    const free = monteCarlo(model, inputs, { seed: 3, trials: 50_001, interval: 'none' });
    expect(free.value).toBe(kept.value);
    expect(free.standardUncertainty).toBe(kept.standardUncertainty);
    expect(free.symmetricInterval).toBeUndefined();
  });

  it('takes a model over an arithmetic and a model with sensitivities for the same as a plain one', () => {
    const plain = monteCarlo(model, inputs, { seed: 4, trials: 10_000 });
    const arithmetic = monteCarlo({ arithmetic: (x, m) => m.add(m.multiply(x.a, x.b), x.a) }, inputs, {
      seed: 4,
      trials: 10_000,
    });
    expect(arithmetic).toEqual(plain);
    const sensitivities = { a: ({ b }: { b: number }) => b + 1, b: ({ a }: { a: number }) => a };
    const analytic = monteCarlo({ evaluate: model, sensitivities }, inputs, { seed: 4, trials: 10_000 });
    expect(analytic).toEqual(plain);
  });

  it('shows the draw at which a model fails', () => {
    const bad = () => monteCarlo(({ a }) => Math.sqrt(a), { a: unit }, { seed: 5, trials: 2000 });
    expect(bad).toThrow(/finite number at the draw a = -\d/);
    const thrower = ({ a }: { a: number }): number => {
      if (a < 0) throw new Error('no value here');
      return a;
    };
    expect(() => monteCarlo(thrower, { a: unit }, { seed: 5, trials: 2000 })).toThrow(/no value here.*draw a = -\d/);
  });

  it('refuses correlated inputs whose joint distribution is not known', () => {
    const correlations = [{ between: ['a', 'b'] as const, coefficient: 0.5 }];
    expect(() => monteCarlo(model, inputs, { seed: 6, trials: 10_000, correlations })).toThrow(/must all be normal/);
  });

  it('gives correlated series of readings a joint t-distribution', () => {
    const a = repeatedReadingsInput([1, 2, 3, 4, 5, 6]);
    const correlations = [{ between: ['a', 'b'] as const, coefficient: 1 }];
    const run = monteCarlo(({ a: x, b: y }) => x - y, { a, b: a }, { seed: 7, trials: 10_000, correlations });
    expect(run.standardUncertainty).toBeLessThan(1e-12);
  });

  it.each([
    [{ trials: 0 }, 'out-of-range'],
    [{ trials: 1999 }, 'wrong-count'],
    [{ coverageProbability: 95 }, 'not-a-fraction'],
    [{ seed: 1.5 }, 'not-an-integer'],
  ])('refuses %o', (change, code) => {
    const run = () => monteCarlo(model, inputs, { seed: 1, trials: 2000, ...change });
    expect(run).toThrow(expect.objectContaining({ code }));
  });
});

describe('the adaptive procedure of JCGM 101:2008, 7.9', () => {
  it('stops when the figures have settled, and reports what it needed', () => {
    const run = adaptiveMonteCarlo(sum, four([unit, unit, unit, unit]), { seed: 79, digits: 2 });
    expect(run.settled).toBe(true);
    expect(run.tolerance).toBe(0.05);
    expect(run.trials).toBe(run.blocks * 10_000);
    expect(Math.max(...Object.values(run.spread))).toBeLessThan(0.05);
    expect(Math.abs(run.standardUncertainty - 2)).toBeLessThan(0.05);
  });

  it('needs more trials for more digits', () => {
    const inputs = { a: unit };
    const one = adaptiveMonteCarlo(({ a }) => a, inputs, { seed: 80, digits: 1 });
    const two = adaptiveMonteCarlo(({ a }) => a, inputs, { seed: 80, digits: 2 });
    expect(two.trials).toBeGreaterThanOrEqual(one.trials);
    expect(two.tolerance).toBeLessThan(one.tolerance);
  });

  it('says that it did not settle when trials run out', () => {
    const run = adaptiveMonteCarlo(({ a }) => a, { a: unit }, { seed: 81, digits: 4, maximumTrials: 50_000 });
    expect(run).toMatchObject({ settled: false, trials: 50_000 });
  });

  it('takes larger blocks for a higher probability', () => {
    const run = adaptiveMonteCarlo(({ a }) => a, { a: unit }, { seed: 82, digits: 1, coverageProbability: 0.9973 });
    expect(run.trials % 37_038).toBe(0);
  });

  it.each([
    [0.00035, 2, 0.000005],
    [0.0004, 1, 0.00005],
    [2, 1, 0.5],
    [9.96, 2, 0.5],
  ])('tolerance of u = %s with %s digits is %s', (u, digits, expected) => {
    expect(numericalTolerance(u, digits)).toBe(expected);
  });
});
