import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCurve } from '../../src/curve/index.js';
import {
  type CurvePlace,
  curveReading,
  curveReadingBudget,
  monteCarlo,
  rectangularInput,
} from '../../src/uncertainty/index.js';
import { load, valueBetween } from '../generators.js';

const errors = { loadDigitising: 0.01, powerDigitising: 0.02 };

describe('a value read off a published curve', () => {
  it('has the exponent of a power law as its slope', () => {
    fc.assert(
      fc.property(load(), valueBetween(-2, 2), valueBetween(0, 0.1), (at, exponent, loadDigitising) => {
        const curve = { powerAt: (ohms: number) => 100 * (ohms / 500) ** exponent };
        const read = curveReading({ curve, load: at, loadDigitising, powerDigitising: 0.02 });
        expect(read.slope).toBeCloseTo(exponent, 11);
        expect(read.power).toBe(curve.powerAt(at));
      }),
    );
  });

  it('at either end of a curve has the slope of the inner side', () => {
    const curve = loadCurve([
      { load: 100, power: 100 },
      { load: 200, power: 200 },
      { load: 800, power: 50 },
    ]);
    expect(curveReading({ curve, load: 100, ...errors }).slope).toBeCloseTo(1, 11);
    expect(curveReading({ curve, load: 800, ...errors }).slope).toBeCloseTo(-1, 11);
  });

  it('on a knee has the slope over what the digitising error spans', () => {
    const curve = loadCurve([
      { load: 100, power: 100 },
      { load: 200, power: 200 },
      { load: 800, power: 50 },
    ]);
    expect(Math.abs(curveReading({ curve, load: 200, ...errors }).slope)).toBeLessThan(0.02);
  });

  it('has a budget that Monte Carlo confirms, on a stretch of one law', () => {
    const curve = loadCurve([
      { load: 100, power: 200 },
      { load: 1000, power: 20 },
    ]);
    const budget = curveReadingBudget(curveReading({ curve, load: 300, ...errors }));
    const run = monteCarlo(
      (x) => curve.powerAt(300 * (1 + x.load)) * (1 + x.power),
      { load: rectangularInput({ value: 0, halfWidth: 0.01 }), power: rectangularInput({ value: 0, halfWidth: 0.02 }) },
      { seed: 4, trials: 200_000, interval: 'none' },
    );
    // Three standard errors of u, 1/√(2M), and the second order of 1/(1 + x): 1e-4.
    expect(run.standardUncertainty / budget.standardUncertainty).toBeGreaterThan(1 - 0.006);
    expect(run.standardUncertainty / budget.standardUncertainty).toBeLessThan(1 + 0.006);
  });

  it('without digitising errors and other curves has no uncertainty', () => {
    const curve = { powerAt: () => 100 };
    const read = curveReading({ curve, load: 300, loadDigitising: 0, powerDigitising: 0 });
    expect(curveReadingBudget(read)).toMatchObject({ value: 100, standardUncertainty: 0 });
  });

  const constant = { powerAt: () => 100 };
  it.each<readonly [string, string, Partial<CurvePlace>]>([
    ['not-positive', 'load', { load: 0 }],
    ['not-a-number', 'load', { load: Number.NaN }],
    ['not-a-fraction', 'loadDigitising', { loadDigitising: 5 }],
    ['out-of-range', 'loadDigitising', { loadDigitising: 1 }],
    ['not-a-fraction', 'powerDigitising', { powerDigitising: -0.1 }],
    ['not-a-number', 'curve.powerAt(load)', { curve: { powerAt: () => Number.NaN } }],
    ['not-positive', 'curve.powerAt(load)', { curve: { powerAt: () => 0 } }],
    ['out-of-range', 'load', { curve: { ...constant, loads: { from: 300, to: 300 } } }],
    [
      'load-outside-curve',
      'load',
      {
        curve: loadCurve([
          { load: 1, power: 1 },
          { load: 2, power: 1 },
        ]),
      },
    ],
  ])('is refused with %s at %s', (code, path, change) => {
    expect(() => curveReading({ curve: constant, load: 300, ...errors, ...change })).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});
