import { fail } from '../../checks/index.js';
import { entry, type Matrix, requireSymmetric } from './matrix.js';

/** A factor L of a matrix A = L·Lᵀ. */
export interface CholeskyFactor {
  /** Rows of L, in the order of A; each has `rank` values. */
  readonly rows: readonly Float64Array[];
  /** Number of independent variables behind A: less than its size where A is singular. */
  readonly rank: number;
}

/**
 * Factor L of a covariance or correlation matrix A = L·Lᵀ, by Cholesky's method with the largest remaining variance
 * taken first, so that singular matrices (a correlation of exactly 1, a variance of 0) have a factor too: L then has
 * fewer columns than rows. Independent standard variables z give variables L·z with the covariances of A.
 *
 * Only + − × ÷ and square roots: the same bits on every engine.
 *
 * @param matrix Symmetric matrix
 * @param path Name of the matrix in an error
 * @param tolerance Largest negative variance, relative to the variable's own, that counts as rounding; default 1e-12
 * @throws CalculationError `matrix-shape`, `not-a-number`, `not-symmetric`, `not-positive-semidefinite`
 * @source N. J. Higham, Analysis of the Cholesky decomposition of a semi-definite matrix (1990): the pivoting
 */
export function choleskyFactor(matrix: Matrix, path = 'matrix', tolerance = 1e-12): CholeskyFactor {
  requireSymmetric(matrix, path);
  const size = matrix.length;
  const scales = scalesOf(matrix, path);
  // What is left of the matrix, scaled to a correlation matrix so that units do not matter.
  const left = scales.map((si, i) =>
    Float64Array.from(scales, (sj, j) => (si && sj ? entry(matrix, i, j) / si / sj : 0)),
  );
  const rows = scales.map(() => new Float64Array(size));
  const open = new Set(scales.keys());
  let rank = 0;
  for (; open.size > 0; rank++) {
    const pivot = largest(left, open);
    const variance = entry(left, pivot, pivot);
    if (variance <= tolerance) break;
    const root = Math.sqrt(variance);
    open.delete(pivot);
    (rows[pivot] as Float64Array)[rank] = root;
    for (const i of open) (rows[i] as Float64Array)[rank] = entry(left, i, pivot) / root;
    for (const i of open) {
      const row = left[i] as Float64Array;
      for (const j of open) row[j] = (row[j] as number) - entry(rows, i, rank) * entry(rows, j, rank);
    }
  }
  for (const i of open) {
    for (const j of open) {
      const rest = entry(left, i, j);
      // Beside a variance of 0, a covariance of √tolerance is what rounding to `tolerance` allows.
      const excess = i === j ? -rest : Math.abs(rest) - Math.sqrt(tolerance);
      if (excess > tolerance) refuse(path, i, rest);
    }
  }
  return { rows: rows.map((row, i) => row.slice(0, rank).map((value) => value * (scales[i] as number))), rank };
}

/** Square roots of the diagonal. */
function scalesOf(matrix: Matrix, path: string): number[] {
  return matrix.map((row, i) => {
    const variance = row[i] as number;
    if (variance < 0) refuse(path, i, variance);
    for (let j = 0; variance === 0 && j < row.length; j++) if (row[j] !== 0) refuse(path, i, row[j] as number);
    return Math.sqrt(variance);
  });
}

function largest(left: readonly Float64Array[], open: ReadonlySet<number>): number {
  let best = -1;
  for (const i of open) if (best < 0 || entry(left, i, i) > entry(left, best, best)) best = i;
  return best;
}

function refuse(path: string, row: number, received: number): never {
  return fail(
    'not-positive-semidefinite',
    `${path}[${row}]`,
    received,
    'no variables have such covariances: a combination of them would have a negative variance',
  );
}
