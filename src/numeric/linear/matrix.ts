import { describe, fail, requireFinite } from '../../checks/index.js';

/** A matrix as rows of numbers. */
export type Matrix = readonly ArrayLike<number>[];

/** Checks that a matrix has the given number of columns in every row, all finite, and at least one row. */
export function requireMatrix(matrix: Matrix, path: string, columns: number = matrix[0]?.length ?? 0): void {
  if (matrix.length === 0 || columns === 0) fail('matrix-shape', path, matrix, 'must have at least one row and column');
  matrix.forEach((row, i) => {
    if (row.length !== columns) {
      fail('matrix-shape', `${path}[${i}]`, describe(row), `must have ${columns} values`);
    }
    for (let j = 0; j < columns; j++) requireFinite(row[j] as number, `${path}[${i}][${j}]`);
  });
}

/** Checks that a matrix is square and symmetric, to rounding. */
export function requireSymmetric(matrix: Matrix, path: string): void {
  requireMatrix(matrix, path, matrix.length);
  for (let i = 0; i < matrix.length; i++) {
    for (let j = 0; j < i; j++) {
      const below = entry(matrix, i, j);
      const above = entry(matrix, j, i);
      if (Math.abs(below - above) > 1e-14 * Math.max(Math.abs(below), Math.abs(above))) {
        fail('not-symmetric', `${path}[${i}][${j}]`, below, `must equal ${path}[${j}][${i}], ${above}`);
      }
    }
  }
}

/** One value of a matrix that has been checked. */
export function entry(matrix: Matrix, row: number, column: number): number {
  return (matrix[row] as ArrayLike<number>)[column] as number;
}
