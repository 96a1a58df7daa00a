import { describe, expect, it } from 'vitest';
import * as numeric from '../../src/numeric/index.js';
import { faultOf } from '../band/fault-of.js';

const none = Number.NaN;
const infinity = Number.POSITIVE_INFINITY;

describe('bad input of distributions', () => {
  it.each<[string, () => unknown, string, string]>([
    ['a probability of 0', () => numeric.normalUpperQuantile(0), 'out-of-range', 'upperTail'],
    ['a probability of 1', () => numeric.normalQuantile(1), 'out-of-range', 'probability'],
    ['a probability given as 95', () => numeric.normalQuantile(95), 'not-a-fraction', 'probability'],
    ['a negative probability', () => numeric.studentTUpperQuantile(-0.1, 5), 'not-a-fraction', 'upperTail'],
    ['a probability that is no number', () => numeric.chiSquaredQuantile(none, 5), 'not-a-number', 'probability'],
    ['no degrees of freedom', () => numeric.studentTUpperQuantile(0.025, 0), 'not-positive', 'degreesOfFreedom'],
    ['negative degrees', () => numeric.studentTSurvival(1, -3), 'not-positive', 'degreesOfFreedom'],
    ['degrees that are no number', () => numeric.studentTDensity(1, none), 'not-a-number', 'degreesOfFreedom'],
    ['a t that is no number', () => numeric.studentTSurvival(none, 5), 'not-a-number', 't'],
    ['a z that is no number', () => numeric.normalSurvival(none), 'not-a-number', 'z'],
    ['an interval without a limit', () => numeric.normalInterval(none, 1), 'not-a-number', 'lower'],
    ['an interval without the other', () => numeric.normalInterval(0, none), 'not-a-number', 'upper'],
    ['a negative χ²', () => numeric.chiSquaredTails(-1, 5), 'negative', 'value'],
    ['infinite degrees of χ²', () => numeric.chiSquaredTails(1, infinity), 'not-a-number', 'degreesOfFreedom'],
    ['no degrees of χ²', () => numeric.chiSquaredUpperQuantile(0.1, 0), 'not-positive', 'degreesOfFreedom'],
    ['a negative F', () => numeric.fTails(-1, 2, 3), 'negative', 'value'],
    ['no degrees of the denominator', () => numeric.fTails(1, 2, 0), 'not-positive', 'denominator'],
    ['no degrees of the numerator', () => numeric.fUpperQuantile(0.1, 0, 3), 'not-positive', 'numerator'],
    ['a quantile of t too large', () => numeric.studentTUpperQuantile(1e-300, 0.5), 'result-out-of-range', 'quantile'],
    ['one of χ² too small', () => numeric.chiSquaredQuantile(1e-300, 1), 'result-out-of-range', 'quantile'],
    ['a log-gamma of 0', () => numeric.logGamma(0), 'not-positive', 'x'],
    ['a shape of 0', () => numeric.incompleteGamma(0, 1), 'not-positive', 'a'],
    ['a negative argument', () => numeric.incompleteGamma(1, -1), 'negative', 'x'],
    ['a beta argument above 1', () => numeric.incompleteBeta(1, 2, 1.5), 'not-a-fraction', 'x'],
    ['a gamma sampler without shape', () => numeric.nextGamma(numeric.createRandom(1), 0), 'out-of-range', 'shape'],
  ])('%s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });

  it('percent gets a hint', () => {
    expect(faultOf(() => numeric.normalQuantile(95)).hint).toBe('If 95 % is meant, give 0.95.');
  });
});

describe('infinite and extreme arguments', () => {
  it('have their limits', () => {
    expect(numeric.normalSurvival(infinity)).toBe(0);
    expect(numeric.normalSurvival(-infinity)).toBe(1);
    expect(numeric.normalDensity(infinity)).toBe(0);
    expect(numeric.normalLogSurvival(-infinity)).toBeCloseTo(0, 20);
    expect(numeric.normalLogSurvival(infinity)).toBe(-infinity);
    expect(numeric.studentTSurvival(infinity, 3)).toBe(0);
    expect(numeric.studentTSurvival(-infinity, 3)).toBe(1);
    expect(numeric.studentTSurvival(1e200, 1)).toBeCloseTo(1e-200 / Math.PI, 210);
    expect(numeric.studentTDensity(infinity, 3)).toBe(0);
    expect(numeric.chiSquaredTails(0, 3)).toEqual({ lower: 0, upper: 1 });
    expect(numeric.fTails(0, 3, 4)).toEqual({ lower: 0, upper: 1 });
    expect(numeric.incompleteBeta(2, 3, 1)).toEqual({ lower: 1, upper: 0 });
    expect(numeric.erf(infinity)).toBe(1);
    expect(numeric.erf(-infinity)).toBe(-1);
    expect(numeric.erfc(infinity)).toBe(0);
    expect(numeric.erfc(-infinity)).toBe(2);
    expect(numeric.erfcx(infinity)).toBe(0);
  });
});
