import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enNumber, zetaScore } from '../../src/decision/index.js';
import { real } from './generators.js';

const en = (value: number, reference: number, U: number, V: number) =>
  enNumber({ value, reference, expandedUncertainty: U, referenceExpandedUncertainty: V });
const zeta = (value: number, reference: number, u: number, v: number) =>
  zetaScore({ value, reference, standardUncertainty: u, referenceStandardUncertainty: v });

describe('E_n number', () => {
  it.each([
    [122, 117, 4, 3, 1, 'satisfactory'],
    [112, 117, 4, 3, -1, 'satisfactory'],
    [122.01, 117, 4, 3, 1.002, 'unsatisfactory'],
    [117, 117, 4, 3, 0, 'satisfactory'],
    [10.05, 10, 0.04, 0.03, 1, 'satisfactory'],
    [9.95, 10, 0.04, 0.03, -1, 'satisfactory'],
    [5, 2, 0, 4, 0.75, 'satisfactory'],
  ] as const)('of %d against %d with %d and %d', (value, reference, U, V, score, verdict) => {
    const found = en(value, reference, U, V);
    expect(found.score).toBeCloseTo(score, 12);
    expect(found.verdict).toBe(verdict);
    expect(found.working).toHaveLength(1);
  });

  it.each([
    ['negative', 'expandedUncertainty', [1, 2, -1, 1]],
    ['negative', 'referenceExpandedUncertainty', [1, 2, 1, -1]],
    ['not-positive', 'expandedUncertainty', [1, 2, 0, 0]],
    ['not-a-number', 'value', [Number.NaN, 2, 1, 1]],
    ['not-a-number', 'reference', [1, Number.NEGATIVE_INFINITY, 1, 1]],
    ['result-out-of-range', 'score', [1e300, 0, 1e-300, 0]],
  ] as const)('is refused with %s at %s', (code, path, [value, reference, U, V]) => {
    expect(() => en(value, reference, U, V)).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('zeta score', () => {
  it.each([
    [122, 117, 2, 1.5, 2, 'satisfactory'],
    [112, 117, 2, 1.5, -2, 'satisfactory'],
    [122.01, 117, 2, 1.5, 2.004, 'questionable'],
    [124.49, 117, 2, 1.5, 2.996, 'questionable'],
    [124.5, 117, 2, 1.5, 3, 'unsatisfactory'],
    [109.5, 117, 2, 1.5, -3, 'unsatisfactory'],
    // 10.075 − 10 over 0.025 is a little less than 3 in binary fractions: on paper it is 3.
    [10.075, 10, 0.02, 0.015, 3, 'unsatisfactory'],
    [9.925, 10, 0.02, 0.015, -3, 'unsatisfactory'],
    [1.3, 1, 0.06, 0.08, 3, 'unsatisfactory'],
    [10.05, 10, 0.02, 0.015, 2, 'satisfactory'],
  ] as const)('of %d against %d with %d and %d', (value, reference, u, v, score, verdict) => {
    const found = zeta(value, reference, u, v);
    expect(found.score).toBeCloseTo(score, 11);
    expect(found.verdict).toBe(verdict);
  });

  it.each([
    ['negative', 'standardUncertainty', [1, 2, -1, 1]],
    ['not-positive', 'standardUncertainty', [1, 2, 0, 0]],
  ] as const)('is refused with %s at %s', (code, path, [value, reference, u, v]) => {
    expect(() => zeta(value, reference, u, v)).toThrow(expect.objectContaining({ code, path }));
  });

  it('is twice the E_n number where k is 2, changes its sign with the roles, and not with the unit', () => {
    fc.assert(
      fc.property(real(1, 1000), real(1, 1000), real(0.01, 50), real(0.01, 50), (x, X, u, v) => {
        const { score } = zeta(x, X, u, v);
        const twice = en(x, X, 2 * u, 2 * v).score;
        expect(Math.abs(score - 2 * twice)).toBeLessThanOrEqual(1e-15 * Math.abs(score));
        expect(zeta(X, x, v, u).score).toBe(-score || 0);
        const scaled = zeta(1024 * x, 1024 * X, 1024 * u, 1024 * v);
        expect(scaled.score).toBe(score);
        expect(scaled.verdict).toBe(zeta(x, X, u, v).verdict);
      }),
    );
  });
});
