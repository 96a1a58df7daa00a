import { describe, expect, it } from 'vitest';
import { leastSquares, meanAndVariance } from '../../src/numeric/index.js';
import { exactRegressions, piDigits, plainRegressions, strd, univariateSets } from './strd-data.js';

/** Digits in which a value agrees with a certified one; 17 where they are equal. */
function digits(value: number, certified: string | number): number {
  const exact = Number(certified);
  return value === exact ? 17 : -Math.log10(Math.abs(value - exact) / Math.abs(exact));
}

describe('NIST StRD, in doubles as the data stand', () => {
  // Digits as measured, rounded down to halves; what is lacking to 15 is lost where the decimals become doubles.
  it.each([
    ['Lottery', 15, 15],
    ['Mavro', 15, 13],
    ['Michelso', 15, 13.5],
    ['NumAcc1', 15, 15],
    ['NumAcc2', 15, 15],
    ['NumAcc4', 15, 8],
    ['PiDigits', 15, 15],
  ] as const)('%s: mean to %s digits, standard deviation to %s', (name, meanDigits, deviationDigits) => {
    const { data, perUnit } = univariateSets.find((set) => set.name === name) as (typeof univariateSets)[number];
    const { mean, standardDeviation } = meanAndVariance(data.map((value) => value / perUnit));
    const certified = strd.univariate[name];
    const reached = [digits(mean, certified.mean), digits(standardDeviation, certified.standardDeviation)];
    expect(reached[0]).toBeGreaterThanOrEqual(meanDigits);
    expect(reached[1]).toBeGreaterThanOrEqual(deviationDigits);
    if (deviationDigits < 15) expect(reached[1]).toBeLessThan(deviationDigits + 1);
  });

  it.each([
    ['Norris', 13.5, 13.5],
    ['Pontius', 13, 13.5],
    ['NoInt1', 14.5, 14.5],
    ['Longley', 14.5, 14.5],
    ['Filip', 7.5, 7.5],
  ] as const)('%s: coefficients to %s digits, standard errors to %s', (name, coefficientDigits, errorDigits) => {
    const { design, observations } = plainRegressions.find((set) => set.name === name) as (typeof plainRegressions)[0];
    const fit = leastSquares(design, observations);
    const certified = strd.regression[name].certified;
    const worst = (values: readonly number[], member: 'coefficient' | 'standardError'): number =>
      Math.min(...certified.map((row, i) => digits(values[i] as number, row[member])));
    expect(worst(fit.coefficients, 'coefficient')).toBeGreaterThanOrEqual(coefficientDigits);
    expect(worst(fit.standardErrors, 'standardError')).toBeGreaterThanOrEqual(errorDigits);
    if (coefficientDigits < 15) expect(worst(fit.coefficients, 'coefficient')).toBeLessThan(coefficientDigits + 1);
    expect(fit.degreesOfFreedom).toBe(observations.length - certified.length);
  });

  it('Pontius in whole numbers: coefficient 1 to the last bit', () => {
    const { design, observations } = exactRegressions.find(
      ({ name }) => name === 'Pontius',
    ) as (typeof exactRegressions)[0];
    const [, slope] = leastSquares(design, observations).coefficients;
    expect(Math.abs((slope as number) / 1e5 - Number('7.3205916040100251e-7'))).toBeLessThanOrEqual(1.1e-22);
  });

  it('PiDigits is not π: one digit of the published set differs', () => {
    expect(meanAndVariance(piDigits(5000, false)).mean).toBeCloseTo(4.5358, 13);
    expect(meanAndVariance(piDigits(5000, true)).mean).toBeCloseTo(4.5348, 13);
    expect(piDigits(20, false).join('')).toBe('31415926535897932384');
  });
});
