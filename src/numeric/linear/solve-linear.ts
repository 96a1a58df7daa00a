import { fail } from '../../checks/index.js';
import { entry, type Matrix, requireMatrix } from './matrix.js';

/**
 * Solution x of A·x = b for a small square matrix, by elimination with row pivoting.
 *
 * @throws CalculationError `matrix-shape`, `not-a-number`, `singular`
 */
export function solveLinear(matrix: Matrix, right: ArrayLike<number>, path = 'matrix'): Float64Array {
  const size = matrix.length;
  requireMatrix(matrix, path, size);
  requireMatrix([right], 'right', size);
  const a: Float64Array[] = matrix.map((row, i) => Float64Array.of(...Array.from(row), right[i] as number));
  const scales = a.map((row) =>
    row.subarray(0, size).reduce((largest, value) => Math.max(largest, Math.abs(value)), 0),
  );
  for (let k = 0; k < size; k++) {
    let pivot = k;
    const merit = (i: number) => Math.abs(entry(a, i, k)) / (scales[i] as number);
    for (let i = k + 1; i < size; i++) if (merit(i) > merit(pivot)) pivot = i;
    if (!(merit(pivot) > 1e-15)) fail('singular', path, entry(a, pivot, k), `column ${k} depends on those before it`);
    [a[k], a[pivot]] = [a[pivot] as Float64Array, a[k] as Float64Array];
    [scales[k], scales[pivot]] = [scales[pivot] as number, scales[k] as number];
    const top = a[k] as Float64Array;
    for (let i = k + 1; i < size; i++) {
      const row = a[i] as Float64Array;
      const factor = (row[k] as number) / (top[k] as number);
      for (let j = k; j <= size; j++) row[j] = (row[j] as number) - factor * (top[j] as number);
    }
  }
  const solution = new Float64Array(size);
  for (let k = size - 1; k >= 0; k--) {
    let sum = entry(a, k, size);
    for (let j = k + 1; j < size; j++) sum -= entry(a, k, j) * (solution[j] as number);
    solution[k] = sum / entry(a, k, k);
  }
  return solution;
}
