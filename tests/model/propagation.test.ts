import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { parseModel } from '../../src/model/index.js';
import { monteCarlo, normalInput, propagate, propagateAll, rectangularInput } from '../../src/uncertainty/index.js';

const inputs = {
  I: normalInput({ value: 0.5, standardUncertainty: 0.004 }),
  R: normalInput({ value: 500, standardUncertainty: 2.5 }),
  T: rectangularInput({ value: 303, halfWidth: 5 }),
  T0: normalInput({ value: 293, standardUncertainty: 0.1 }),
  a: rectangularInput({ value: 2e-4, halfWidth: 2e-5 }),
};
const power = parseModel('I^2 * R * (1 + a*(T - T0))');

describe('a model that was read', () => {
  it('propagates as it is, with its own sensitivities', () => {
    const result = propagate(power, inputs);
    const byDifferences = propagate((x) => x.I ** 2 * x.R * (1 + x.a * (x.T - x.T0)), inputs);
    expect(result.method).toBe('analytic');
    expect(result.value).toBeCloseTo(125.25, 12);
    expect(result.standardUncertainty / byDifferences.standardUncertainty).toBeCloseTo(1, 9);
    for (const [i, { name, sensitivity }] of result.contributions.entries()) {
      expect(sensitivity).toBe(power.derivative(name).evaluate({ I: 0.5, R: 500, T: 303, T0: 293, a: 2e-4 }));
      expect(sensitivity / (byDifferences.contributions[i]?.sensitivity ?? 0)).toBeCloseTo(1, 8);
    }
  });

  it('is drawn by Monte Carlo, the same to the last bit as an ordinary function', () => {
    const options = { seed: 42, trials: 20_000, interval: 'none' } as const;
    const plain = monteCarlo((x) => x.I * x.I * x.R * (1 + x.a * (x.T - x.T0)), inputs, options);
    const parsed = monteCarlo(power, inputs, options);
    expect(parsed.value).toBe(plain.value);
    expect(parsed.standardUncertainty).toBe(plain.standardUncertainty);
  });

  it('shares inputs with others: its sensitivity to those that it does not use is 0', () => {
    const pair = {
      V: normalInput({ value: 100, standardUncertainty: 1 }),
      I: normalInput({ value: 2, standardUncertainty: 0.01 }),
      phi: normalInput({ value: 0.3, standardUncertainty: 0.001 }),
    };
    const names = Object.keys(pair);
    const together = propagateAll(
      {
        Z: parseModel('V / I').forInputs(names),
        R: parseModel('V / I * cos(phi)').forInputs(names),
      },
      pair,
    );
    expect(together.outputs['Z']?.contributions.map(({ sensitivity }) => sensitivity)).toEqual([0.5, -25, 0]);
    expect(parseModel('V / I').forInputs(names).sensitivities['phi']?.({ V: 1, I: 1, phi: 0 })).toBe(0);
  });

  it('needs every symbol among the inputs', () => {
    expect(() => power.forInputs(['I', 'R'])).toThrow(CalculationError);
    expect(() => propagate(power, { I: inputs.I, R: inputs.R })).toThrow('inputs.T: received undefined; must be given');
  });

  it('names the draw at which it has no value', () => {
    const root = parseModel('sqrt(x - 1)');
    const wide = { x: normalInput({ value: 1.5, standardUncertainty: 1 }) };
    expect(() => monteCarlo(root, wide, { seed: 1, trials: 1000, interval: 'none' })).toThrow(
      /received x = -?\d[\d.]*; sqrt\(x - 1\) must have a value/,
    );
  });
});
