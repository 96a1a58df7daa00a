import { describe, expect, it } from 'vitest';
import * as numeric from '../../src/numeric/index.js';
import { gammaHalfRatio } from '../../src/numeric/special/gamma-half-ratio.js';
import { log1pMinus } from '../../src/numeric/special/log1p-minus.js';
import fixture from './fixtures/special-functions.json' with { type: 'json' };

/**
 * Largest relative error against values of 40 digits (fixtures/special-functions.py), as measured; the bound may be up to
 * twice the measured error and no more, so that it fails when it is loosened as well as when accuracy is lost.
 */
interface Bound {
  readonly name: string;
  readonly rows: readonly number[][];
  readonly compute: (...inputs: number[]) => number;
  /** Which rows; default all. */
  readonly where?: (value: number, inputs: readonly number[]) => boolean;
  readonly bound: number;
}

const usual = (tail: number): boolean => tail >= 1e-15;
const far = (tail: number): boolean => tail < 1e-15;

const bounds: readonly Bound[] = [
  { name: 'erf', rows: fixture.erf, compute: numeric.erf, bound: 6e-16 },
  { name: 'erfc to 1e-300', rows: fixture.erfc, compute: numeric.erfc, bound: 4e-16 },
  { name: 'erfcx', rows: fixture.erfcx, compute: numeric.erfcx, bound: 3e-16 },
  { name: 'normal survival to 1e-300', rows: fixture.normalSurvival, compute: numeric.normalSurvival, bound: 5e-16 },
  { name: 'normal log survival', rows: fixture.normalLogSurvival, compute: numeric.normalLogSurvival, bound: 2e-16 },
  {
    name: 'normal quantile to 1e-300',
    rows: fixture.normalUpperQuantile,
    compute: numeric.normalUpperQuantile,
    bound: 7e-16,
  },
  { name: 'normal interval', rows: fixture.normalInterval, compute: numeric.normalInterval, bound: 6e-16 },
  { name: 'log-gamma', rows: fixture.logGamma, compute: numeric.logGamma, bound: 3e-16 },
  { name: 'ratio of gammas', rows: fixture.gammaHalfRatio, compute: gammaHalfRatio, bound: 8e-16 },
  { name: 'ln(1 + x) − x', rows: fixture.log1pMinus, compute: log1pMinus, bound: 3e-16 },
  {
    name: "Student's survival to 1e-15",
    rows: fixture.studentTSurvival,
    compute: numeric.studentTSurvival,
    where: usual,
    bound: 4e-15,
  },
  {
    name: "Student's survival from 1e-15 to 1e-300",
    rows: fixture.studentTSurvival,
    compute: numeric.studentTSurvival,
    where: far,
    bound: 8e-14,
  },
  {
    name: "Student's quantile to 1e-15",
    rows: fixture.studentTUpperQuantile,
    compute: numeric.studentTUpperQuantile,
    where: (_, [tail]) => usual(tail as number),
    bound: 4e-15,
  },
  {
    name: "Student's quantile to 1e-300, 8 degrees of freedom and more",
    rows: fixture.studentTUpperQuantile,
    compute: numeric.studentTUpperQuantile,
    where: (_, [tail, degrees]) => far(tail as number) && (degrees as number) >= 8,
    bound: 2e-14,
  },
  {
    name: "Student's quantile to 1e-300, fewer degrees of freedom",
    rows: fixture.studentTUpperQuantile,
    compute: numeric.studentTUpperQuantile,
    where: (_, [tail, degrees]) => far(tail as number) && (degrees as number) < 8,
    bound: 8e-14,
  },
  {
    name: 'χ², lower tail to 1e-15',
    rows: fixture.chiSquaredLower,
    compute: (x, degrees) => numeric.chiSquaredTails(x as number, degrees as number).lower,
    where: usual,
    bound: 1e-14,
  },
  {
    name: 'χ², upper tail to 1e-15',
    rows: fixture.chiSquaredUpper,
    compute: (x, degrees) => numeric.chiSquaredTails(x as number, degrees as number).upper,
    where: usual,
    bound: 1e-14,
  },
  {
    name: 'χ², lower tail from 1e-15 to 1e-300',
    rows: fixture.chiSquaredLower,
    compute: (x, degrees) => numeric.chiSquaredTails(x as number, degrees as number).lower,
    where: far,
    bound: 2.5e-13,
  },
  {
    name: 'χ², upper tail from 1e-15 to 1e-300',
    rows: fixture.chiSquaredUpper,
    compute: (x, degrees) => numeric.chiSquaredTails(x as number, degrees as number).upper,
    where: far,
    bound: 1.7e-13,
  },
  { name: 'χ² quantile', rows: fixture.chiSquaredQuantile, compute: numeric.chiSquaredQuantile, bound: 4e-15 },
  {
    name: 'χ² upper quantile',
    rows: fixture.chiSquaredUpperQuantile,
    compute: numeric.chiSquaredUpperQuantile,
    bound: 4e-15,
  },
  {
    name: 'F, lower tail, up to 1000 degrees of freedom on one side',
    rows: fixture.fLower,
    compute: (x, a, b) => numeric.fTails(x as number, a as number, b as number).lower,
    where: (tail, [, a, b]) => usual(tail) && Math.min(a as number, b as number) <= 1000,
    bound: 1e-14,
  },
  {
    name: 'F, upper tail, up to 1000 degrees of freedom on one side',
    rows: fixture.fUpper,
    compute: (x, a, b) => numeric.fTails(x as number, a as number, b as number).upper,
    where: (tail, [, a, b]) => usual(tail) && Math.min(a as number, b as number) <= 1000,
    bound: 1e-14,
  },
  {
    name: 'F, all of the lower tail to 1e-300',
    rows: fixture.fLower,
    compute: (x, a, b) => numeric.fTails(x as number, a as number, b as number).lower,
    bound: 1e-12,
  },
  {
    name: 'F, all of the upper tail to 1e-300',
    rows: fixture.fUpper,
    compute: (x, a, b) => numeric.fTails(x as number, a as number, b as number).upper,
    bound: 6e-13,
  },
  { name: 'F quantile', rows: fixture.fUpperQuantile, compute: numeric.fUpperQuantile, bound: 3e-15 },
];

/** Relative error of a result against a value that is given as a double and what is left of it. */
function relativeError(row: readonly number[], compute: (...inputs: number[]) => number): number {
  const inputs = row.slice(0, -2);
  const value = row.at(-2) as number;
  const got = compute(...inputs);
  return value === 0 ? Math.abs(got) : Math.abs((got - value - (row.at(-1) as number)) / value);
}

describe('special functions and distributions, against values of 40 digits', () => {
  it.each(bounds)('$name: within $bound', ({ rows, compute, where = () => true, bound }) => {
    const chosen = rows.filter((row) => where(row.at(-2) as number, row.slice(0, -2)));
    const errors = chosen.map((row) => relativeError(row, compute));
    const largest = Math.max(...errors);
    const place = JSON.stringify(chosen[errors.indexOf(largest)]);
    expect(errors.length).toBeGreaterThan(8);
    expect(largest, `largest error at ${place}`).toBeLessThanOrEqual(bound);
    expect(largest, 'the bound is looser than the measured error allows').toBeGreaterThan(bound / 2);
  });

  it('name every group of the fixture', () => {
    const groups = Object.entries(fixture).filter(([, rows]) => Array.isArray(rows));
    const used = new Set(bounds.map(({ rows }) => rows));
    expect(groups.filter(([, rows]) => !used.has(rows as number[][])).map(([name]) => name)).toEqual([]);
  });
});
