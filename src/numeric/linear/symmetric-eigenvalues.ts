import { entry, type Matrix, requireSymmetric } from './matrix.js';

/**
 * Eigenvalues of a symmetric matrix, ascending, by Jacobi's rotations. The matrix is positive semidefinite when the
 * first is not below 0 by more than rounding.
 *
 * @param matrix Symmetric matrix, small: the cost grows with the cube of its size
 * @param path Name of the matrix in an error
 * @throws CalculationError `matrix-shape`, `not-a-number`, `not-symmetric`
 * @source G. H. Golub and C. F. Van Loan, Matrix Computations, section 8.5
 * @accuracy Absolute, relative to the largest eigenvalue: some units of 1e-16
 */
export function symmetricEigenvalues(matrix: Matrix, path = 'matrix'): readonly number[] {
  requireSymmetric(matrix, path);
  const size = matrix.length;
  const a = matrix.map((row) => Float64Array.from(row));
  for (let sweep = 0; sweep < 60; sweep++) {
    let rotated = false;
    for (let p = 0; p < size; p++) {
      for (let q = p + 1; q < size; q++) rotated = rotate(a, p, q) || rotated;
    }
    if (!rotated) break;
  }
  return a.map((row, i) => row[i] as number).sort((x, y) => x - y);
}

/** One rotation that makes a[p][q] zero; false where it is zero to rounding already. */
function rotate(a: Float64Array[], p: number, q: number): boolean {
  const off = entry(a, p, q);
  const app = entry(a, p, p);
  const aqq = entry(a, q, q);
  if (Math.abs(off) <= 1e-17 * (Math.abs(app) + Math.abs(aqq)) || off === 0) return false;
  const theta = (aqq - app) / (2 * off);
  const tangent = Math.sign(theta || 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const cosine = 1 / Math.sqrt(tangent * tangent + 1);
  const sine = tangent * cosine;
  const rowP = a[p] as Float64Array;
  const rowQ = a[q] as Float64Array;
  for (let k = 0; k < a.length; k++) {
    const kp = rowP[k] as number;
    const kq = rowQ[k] as number;
    if (k === p || k === q) continue;
    rowP[k] = cosine * kp - sine * kq;
    rowQ[k] = sine * kp + cosine * kq;
    const rowK = a[k] as Float64Array;
    rowK[p] = rowP[k] as number;
    rowK[q] = rowQ[k] as number;
  }
  rowP[p] = app - tangent * off;
  rowQ[q] = aqq + tangent * off;
  rowP[q] = 0;
  rowQ[p] = 0;
  return true;
}
