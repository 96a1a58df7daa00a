import { describe, expect, it } from 'vitest';
import * as numeric from '../../src/numeric/index.js';
import fixture from './fixtures/tails.json' with { type: 'json' };

type Function = (...inputs: number[]) => number;

/** Largest relative error against fixtures/tails.py, as measured: the bound is at most twice of it. */
const bounds: readonly (readonly [name: string, rows: readonly number[][], compute: Function, bound: number])[] = [
  ['normal quantile at 1e-15', fixture.normalUpperQuantile, numeric.normalUpperQuantile, 4e-17],
  ["Student's quantile at 1e-15", fixture.studentTUpperQuantile, numeric.studentTUpperQuantile, 4e-15],
  ['χ² quantile at 1e-15', fixture.chiSquaredQuantile, numeric.chiSquaredQuantile, 1.5e-15],
  ['χ² upper quantile at 1e-15', fixture.chiSquaredUpperQuantile, numeric.chiSquaredUpperQuantile, 1.5e-16],
  ['F quantile at 1e-15', fixture.fUpperQuantile, numeric.fUpperQuantile, 5e-16],
  ['normal density', fixture.normalDensity, numeric.normalDensity, 3e-16],
  ["Student's density", fixture.studentTDensity, numeric.studentTDensity, 4e-14],
];

describe('quantiles at 1e-15 and densities, against values of 40 digits', () => {
  it.each(bounds)('%s', (_, rows, compute, bound) => {
    const errors = rows.map((row) => {
      const [value, rest] = row.slice(-2) as [number, number];
      return Math.abs((compute(...row.slice(0, -2)) - value - rest) / value);
    });
    const largest = Math.max(...errors);
    const place = JSON.stringify(rows[errors.indexOf(largest)]);
    expect(largest, `largest error at ${place}`).toBeLessThanOrEqual(bound);
    expect(largest, 'the bound is looser than the measured error allows').toBeGreaterThan(bound / 2);
  });
});
