import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  choleskyFactor,
  leastSquares,
  type Matrix,
  solveLinear,
  symmetricEigenvalues,
} from '../../src/numeric/index.js';
import { faultOf } from '../band/fault-of.js';

/** Numbers of six decimals: as small as a measured value gets, beside the others. */
const value = fc.double({ min: -10, max: 10, noNaN: true }).map((x) => Math.round(x * 1e6) / 1e6);
const matrixOf = (rows: number, columns: number) =>
  fc.array(fc.array(value, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows });
const size = fc.integer({ min: 1, max: 7 });

const times = (a: Matrix, b: Matrix): number[][] =>
  a.map((row) =>
    Array.from(b[0] as ArrayLike<number>, (_, j) =>
      Array.from(row).reduce((sum, x, k) => sum + x * ((b[k] as ArrayLike<number>)[j] as number), 0),
    ),
  );
const transposed = (a: Matrix): number[][] =>
  Array.from(a[0] as ArrayLike<number>, (_, j) => a.map((row) => row[j] as number));
const largest = (a: Matrix): number => Math.max(...a.flatMap((row) => Array.from(row, Math.abs)));
const difference = (a: Matrix, b: Matrix): number =>
  largest(a.map((row, i) => Array.from(row, (x, j) => x - ((b[i] as ArrayLike<number>)[j] as number))));
/** M·Mᵀ made symmetric to the last bit. */
const gram = (m: Matrix): number[][] => {
  const g = times(m, transposed(m));
  return g.map((row, i) => row.map((_, j) => (i < j ? (g[i]?.[j] as number) : (g[j]?.[i] as number))));
};

describe('choleskyFactor', () => {
  it('gives a factor whose product with itself is the matrix, of the rank it has', () => {
    fc.assert(
      fc.property(
        size.chain((n) => fc.tuple(fc.constant(n), fc.integer({ min: 1, max: 7 })).chain(([a, b]) => matrixOf(a, b))),
        (m) => {
          const covariance = gram(m);
          const { rows, rank } = choleskyFactor(covariance);
          expect(rank).toBeLessThanOrEqual(Math.min(m.length, (m[0] as number[]).length));
          if (rank > 0)
            expect(difference(gram(rows), covariance)).toBeLessThanOrEqual(1e-11 * (largest(covariance) || 1));
        },
      ),
    );
  });

  it.each<[string, number[][], number]>([
    [
      'the identity',
      [
        [1, 0],
        [0, 1],
      ],
      2,
    ],
    [
      'a correlation of 1',
      [
        [1, 1],
        [1, 1],
      ],
      1,
    ],
    [
      'a correlation of −1',
      [
        [1, -1],
        [-1, 1],
      ],
      1,
    ],
    ['ten inputs from one standard', Array.from({ length: 10 }, () => Array<number>(10).fill(1)), 1],
    [
      'a variance of 0',
      [
        [4, 0, 2],
        [0, 0, 0],
        [2, 0, 1],
      ],
      1,
    ],
    [
      'no variance at all',
      [
        [0, 0],
        [0, 0],
      ],
      0,
    ],
    [
      'correlations that just agree',
      [
        [1, 0.6, 0.8],
        [0.6, 1, 0],
        [0.8, 0, 1],
      ],
      2,
    ],
    [
      'units that differ by 1e12',
      [
        [1e-12, 0.5],
        [0.5, 1e12],
      ],
      2,
    ],
  ])('%s', (_, matrix, rank) => {
    const factor = choleskyFactor(matrix);
    expect(factor.rank).toBe(rank);
    if (rank > 0) {
      gram(factor.rows).forEach((row, i) => {
        row.forEach((product, j) => {
          const scale = Math.sqrt((matrix[i]?.[i] as number) * (matrix[j]?.[j] as number)) || 1;
          expect(Math.abs(product - (matrix[i]?.[j] as number))).toBeLessThanOrEqual(1e-15 * scale * matrix.length);
        });
      });
    }
  });

  it.each<[string, number[][], string, string]>([
    [
      'a correlation of 1.2',
      [
        [1, 1.2],
        [1.2, 1],
      ],
      'not-positive-semidefinite',
      'matrix[1]',
    ],
    [
      'correlations that contradict',
      [
        [1, 0.9, 0.9],
        [0.9, 1, -0.9],
        [0.9, -0.9, 1],
      ],
      'not-positive-semidefinite',
      'matrix[2]',
    ],
    [
      'correlations that just contradict',
      [
        [1, 0.6, 0.8],
        [0.6, 1, -0.001],
        [0.8, -0.001, 1],
      ],
      'not-positive-semidefinite',
      'matrix[2]',
    ],
    [
      'a negative variance',
      [
        [-1, 0],
        [0, 1],
      ],
      'not-positive-semidefinite',
      'matrix[0]',
    ],
    [
      'a covariance with a constant',
      [
        [0, 0.1],
        [0.1, 1],
      ],
      'not-positive-semidefinite',
      'matrix[0]',
    ],
    [
      'an asymmetric matrix',
      [
        [1, 0.2],
        [0.3, 1],
      ],
      'not-symmetric',
      'matrix[1][0]',
    ],
    ['a row too short', [[1, 0.2], [0.2]], 'matrix-shape', 'matrix[1]'],
    ['no row', [], 'matrix-shape', 'matrix'],
    [
      'a value that is no number',
      [
        [1, Number.NaN],
        [0, 1],
      ],
      'not-a-number',
      'matrix[0][1]',
    ],
  ])('refuses %s', (_, matrix, code, path) => {
    expect(faultOf(() => choleskyFactor(matrix))).toMatchObject({ code, path });
  });
});

describe('symmetricEigenvalues', () => {
  it('have the trace as sum and the sum of squares as theirs, ascending', () => {
    fc.assert(
      fc.property(
        size.chain((n) => matrixOf(n, n)),
        (m) => {
          const s = m.map((row, i) => row.map((x, j) => x + (m[j]?.[i] as number)));
          const eigenvalues = symmetricEigenvalues(s);
          const scale = largest(s) * s.length || 1;
          const trace = s.reduce((sum, row, i) => sum + (row[i] as number), 0);
          const squares = s.flat().reduce((sum, x) => sum + x * x, 0);
          expect(Math.abs(eigenvalues.reduce((sum, x) => sum + x, 0) - trace)).toBeLessThan(1e-13 * scale);
          expect(Math.abs(eigenvalues.reduce((sum, x) => sum + x * x, 0) - squares)).toBeLessThan(
            1e-13 * scale * scale,
          );
          expect([...eigenvalues].sort((a, b) => a - b)).toEqual(eigenvalues);
        },
      ),
    );
  });

  it('are those of matrices that are known', () => {
    const [a, b] = symmetricEigenvalues([
      [2, 1],
      [1, 2],
    ]);
    expect([a, b]).toEqual([1, 3].map((x) => expect.closeTo(x, 15)));
    // The second difference matrix: 2 − 2·cos(kπ/6).
    const second = Array.from({ length: 5 }, (_, i) =>
      Array.from({ length: 5 }, (_, j) => (i === j ? 2 : Math.abs(i - j) === 1 ? -1 : 0)),
    );
    symmetricEigenvalues(second).forEach((x, k) => {
      expect(x).toBeCloseTo(2 - 2 * Math.cos(((k + 1) * Math.PI) / 6), 14);
    });
    expect(
      symmetricEigenvalues([
        [1, 0.9, 0.9],
        [0.9, 1, -0.9],
        [0.9, -0.9, 1],
      ])[0],
    ).toBeCloseTo(-0.8, 14);
    expect(
      faultOf(() =>
        symmetricEigenvalues([
          [1, 2],
          [3, 1],
        ]),
      ),
    ).toMatchObject({ code: 'not-symmetric' });
  });
});

describe('solveLinear', () => {
  it('gives what the matrix turns back into the right side', () => {
    fc.assert(
      fc.property(
        size.chain((n) => fc.tuple(matrixOf(n, n), fc.array(value, { minLength: n, maxLength: n }))),
        ([m, b]) => {
          // A heavy diagonal keeps the system well conditioned.
          const a = m.map((row, i) => row.map((x, j) => x + (i === j ? 80 : 0)));
          const x = solveLinear(a, b);
          const back = times(
            a,
            Array.from(x, (v) => [v]),
          ).map(([v]) => v as number);
          expect(Math.max(...back.map((v, i) => Math.abs(v - (b[i] as number))))).toBeLessThan(1e-13 * 80);
        },
      ),
    );
  });

  it('exchanges rows, whatever their scale', () => {
    expect(
      Array.from(
        solveLinear(
          [
            [0, 1],
            [1, 0],
          ],
          [2, 3],
        ),
      ),
    ).toEqual([3, 2]);
    const [x, y] = solveLinear(
      [
        [1, 1e20],
        [1, 1],
      ],
      [1e20, 2],
    );
    expect([x, y]).toEqual([1, 1].map((v) => expect.closeTo(v, 14)));
  });

  it('refuses what has no unique solution', () => {
    expect(
      faultOf(() =>
        solveLinear(
          [
            [1, 2],
            [2, 4],
          ],
          [1, 2],
        ),
      ),
    ).toMatchObject({ code: 'singular' });
    expect(
      faultOf(() =>
        solveLinear(
          [
            [0, 0],
            [0, 1],
          ],
          [1, 2],
        ),
      ),
    ).toMatchObject({ code: 'singular' });
    expect(faultOf(() => solveLinear([[1, 2]], [1]))).toMatchObject({ code: 'matrix-shape', path: 'matrix[0]' });
    expect(faultOf(() => solveLinear([[1]], [1, 2]))).toMatchObject({ code: 'matrix-shape', path: 'right[0]' });
  });
});

describe('leastSquares', () => {
  it('leaves residuals that no column can lessen', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value), { minLength: 4, maxLength: 20 }), (points) => {
        fc.pre(new Set(points.map(([x]) => x.toFixed(3))).size > 2);
        const fit = leastSquares(
          points.map(([x]) => [1, x]),
          points.map(([, y]) => y),
        );
        const scale = points.length * 100;
        expect(Math.abs(fit.residuals.reduce((sum, r) => sum + r, 0))).toBeLessThan(1e-14 * scale);
        expect(Math.abs(fit.residuals.reduce((sum, r, i) => sum + r * (points[i]?.[0] as number), 0))).toBeLessThan(
          1e-14 * scale,
        );
        expect(fit.degreesOfFreedom).toBe(points.length - 2);
      }),
    );
  });

  it('goes through the points where there are as many as coefficients', () => {
    const fit = leastSquares(
      [
        [1, 2],
        [1, 4],
      ],
      [1, 2],
    );
    expect(fit.coefficients).toEqual([0, 0.5].map((x) => expect.closeTo(x, 15)));
    expect(fit).toMatchObject({ degreesOfFreedom: 0, residualStandardDeviation: 0 });
  });

  it('has the cofactors of a straight line', () => {
    const { cofactors } = leastSquares(
      [
        [1, 1],
        [1, 2],
        [1, 3],
        [1, 4],
      ],
      [1, 3, 2, 5],
    );
    expect(cofactors).toEqual(
      [
        [1.5, -0.5],
        [-0.5, 0.2],
      ].map((row) => row.map((x) => expect.closeTo(x, 15))),
    );
  });

  it('refuses columns that depend on one another, and shapes that do not fit', () => {
    expect(
      faultOf(() =>
        leastSquares(
          [
            [1, 2],
            [2, 4],
            [3, 6],
          ],
          [1, 2, 3],
        ),
      ),
    ).toMatchObject({
      code: 'singular',
      path: 'design[][1]',
    });
    expect(faultOf(() => leastSquares([[1, 2]], [1]))).toMatchObject({ code: 'wrong-count', path: 'observations' });
    expect(faultOf(() => leastSquares([[1], [2]], [1]))).toMatchObject({ code: 'matrix-shape' });
    expect(faultOf(() => leastSquares([[1], [Number.NaN]], [1, 2]))).toMatchObject({
      code: 'not-a-number',
      path: 'design[1][0]',
    });
  });
});
