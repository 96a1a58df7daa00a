import { describe, expect, it } from 'vitest';
import { monteCarlo, normalInput } from '../../src/uncertainty/index.js';

const inputsOf = (count: number) =>
  Object.fromEntries(
    Array.from({ length: count }, (_, i) => [`x${i}`, normalInput({ value: 10 ** i, standardUncertainty: 0 })]),
  );

describe('what a model sees of a trial', () => {
  it.each([1, 2, 3, 4, 5, 7])('is every one of %d inputs, by its name', (count) => {
    const names: string[][] = [];
    const { value } = monteCarlo(
      (x) => {
        if (names.length === 0)
          names.push(Object.keys(x), Object.keys({ ...x }), JSON.stringify(x).match(/x\d/g) ?? []);
        return Object.values(x).reduce((total, each, i) => total + (i + 1) * each, 0);
      },
      inputsOf(count),
      { seed: 1, trials: 10, interval: 'none' },
    );
    expect(value).toBe(Array.from({ length: count }, (_, i) => (i + 1) * 10 ** i).reduce((a, b) => a + b));
    for (const seen of names) expect(seen).toEqual(Object.keys(inputsOf(count)));
  });

  it('is its own trial, also where a model runs trials itself', () => {
    const a = normalInput({ value: 5, standardUncertainty: 1 });
    const b = normalInput({ value: 7, standardUncertainty: 1 });
    const frame = { seed: 3, trials: 50, interval: 'none' } as const;
    const plain = monteCarlo((x) => x.a * x.b, { a, b }, frame);
    const nested = monteCarlo(
      (x) => {
        const before = x.a;
        monteCarlo((y) => y.a - y.b, { a: b, b: a }, { seed: 9, trials: 5, interval: 'none' });
        return before * x.b;
      },
      { a, b },
      frame,
    );
    expect(nested.value).toBe(plain.value);
    expect(nested.standardUncertainty).toBe(plain.standardUncertainty);
  });

  it('cannot be changed by a model, and is named where it fails', () => {
    const a = normalInput({ value: 5, standardUncertainty: 0 });
    const write = (x: { a: number }) => {
      x.a = 3;
      return x.a;
    };
    expect(() => monteCarlo(write as never, { a }, { seed: 1, trials: 10, interval: 'none' })).toThrow(
      expect.objectContaining({
        code: 'function-not-finite',
        requirement: 'must be a finite number at the draw a = 5',
      }),
    );
    let trial = 0;
    const fails = (x: { a: number; b: number }) => (++trial === 7 ? Number.NaN : x.a + x.b);
    const b = normalInput({ value: 1, standardUncertainty: 0 });
    expect(() => monteCarlo(fails, { a, b }, { seed: 1, trials: 10, interval: 'none' })).toThrow(
      expect.objectContaining({ requirement: 'must be a finite number at the draw a = 5, b = 1' }),
    );
  });
});
