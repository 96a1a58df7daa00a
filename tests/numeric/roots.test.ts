import { describe, expect, it } from 'vitest';
import { findRoot, minimise } from '../../src/numeric/index.js';
import { faultOf } from '../band/fault-of.js';

describe('findRoot', () => {
  it.each<[string, (x: number) => number, number, number, number]>([
    ['√2', (x) => x * x - 2, 0, 2, Math.SQRT2],
    ['cos', Math.cos, 1, 2, Math.PI / 2],
    ['a triple root', (x) => (x - 1) ** 3, 0, 3, 1],
    ['a step', (x) => (x < 0.7 ? -1 : 1), 0, 1, 0.7],
    ['a root far from both ends in size', (x) => Math.log(x / 1e-8), 1e-12, 1e6, 1e-8],
    ['a flat function', (x) => x ** 9, -1, 4, 0],
    ['an end', (x) => x, 0, 5, 0],
    ['limits exchanged', (x) => x - 3, 10, 0, 3],
    ['an infinite value at one end', (x) => -1 / x + 2, 0, 1, 0.5],
  ])('%s', (_, f, low, high, exact) => {
    const root = findRoot(f, low, high);
    expect(Math.abs(root - exact)).toBeLessThanOrEqual(Math.max(5e-16 * Math.abs(exact), 1e-34));
  });

  it('is far quicker than halving on a smooth function', () => {
    let calls = 0;
    findRoot(
      (x) => {
        calls++;
        return Math.exp(x) - 5;
      },
      0,
      10,
    );
    expect(calls).toBeLessThan(20);
  });

  it('takes a wider tolerance', () => {
    const root = findRoot((x) => x * x - 2, 0, 2, { absolute: 1e-3 });
    expect(Math.abs(root - Math.SQRT2)).toBeLessThanOrEqual(1e-3);
  });

  it('refuses ends of one sign, a function that is not a number, and too few steps', () => {
    expect(faultOf(() => findRoot((x) => x * x + 1, -1, 1))).toMatchObject({ code: 'no-sign-change' });
    expect(faultOf(() => findRoot((x) => (x > 0.4 && x < 0.6 ? Number.NaN : x - 0.5), 0, 1))).toMatchObject({
      code: 'function-not-finite',
      requirement: expect.stringMatching(/x = 0\.5/),
    });
    expect(faultOf(() => findRoot((x) => x - 0.3, 0, 1e300, { maximumSteps: 5 }))).toMatchObject({
      code: 'not-converged',
    });
    expect(faultOf(() => findRoot((x) => x, Number.NaN, 1))).toMatchObject({ code: 'not-a-number', path: 'low' });
    expect(faultOf(() => findRoot((x) => x, 0, Number.POSITIVE_INFINITY))).toMatchObject({ path: 'high' });
  });
});

describe('minimise', () => {
  it.each<[string, (x: number) => number, number, number, number, number]>([
    ['a parabola', (x) => (x - 2) ** 2 + 1, 0, 5, 2, 1e-7],
    ['a cosine', Math.cos, 2, 5, Math.PI, 1e-7],
    ['a corner', (x) => Math.abs(x - 0.3), -1, 1, 0.3, 1e-7],
    ['a minimum at an end', (x) => x, 1, 2, 1, 1e-7],
    ['a flat quartic', (x) => (x + 1) ** 4, -3, 4, -1, 2e-4],
    ['limits exchanged', (x) => (x - 2) ** 2, 5, 0, 2, 1e-7],
  ])('%s', (_, f, from, to, place, tolerance) => {
    const found = minimise(f, from, to);
    expect(Math.abs(found.place - place)).toBeLessThan(tolerance);
    expect(found.value).toBe(f(found.place));
  });

  it('refuses a function that is not a number, and too few steps', () => {
    expect(faultOf(() => minimise(() => Number.NaN, 0, 1))).toMatchObject({ code: 'function-not-finite' });
    expect(faultOf(() => minimise(Math.cos, 2, 5, { maximumSteps: 2 }))).toMatchObject({ code: 'not-converged' });
    expect(faultOf(() => minimise(Math.cos, 2, Number.NaN))).toMatchObject({ code: 'not-a-number', path: 'to' });
  });
});
