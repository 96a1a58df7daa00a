import { fail } from '../../checks/index.js';

/** X = Q·R, with Q as a product of reflections. */
export interface Reflections {
  /** Qᵀ·v. */
  readonly reflect: (v: Float64Array) => Float64Array;
  /** Q·v. */
  readonly reflectBack: (v: Float64Array) => Float64Array;
  /** R⁻¹·v, for the first values of v. */
  readonly solveUpper: (v: ArrayLike<number>) => Float64Array;
  /** R⁻ᵀ·v. */
  readonly solveLower: (v: ArrayLike<number>) => Float64Array;
}

/**
 * Householder's reflections that make a matrix, given by columns, upper triangular. They do not care how the columns are
 * scaled.
 *
 * @throws CalculationError `singular` where a column is a combination of those before it, to rounding
 */
export function reflectionsOf(columns: readonly Float64Array[]): Reflections {
  const vectors: Float64Array[] = [];
  const upper: Float64Array[] = [];
  const reflect = (v: Float64Array): Float64Array => vectors.reduce((w, u) => mirrored(w, u), v);
  columns.forEach((column, k) => {
    const image = reflect(column);
    const rest = image.slice().fill(0, 0, k);
    const length = norm(rest);
    if (!(length > 1e-14 * norm(column))) {
      fail('singular', `design[][${k}]`, length, `column ${k} must not be a combination of those before it`);
    }
    const diagonal = (image[k] as number) > 0 ? -length : length;
    upper.push(image.slice(0, k + 1));
    (upper[k] as Float64Array)[k] = diagonal;
    rest[k] = (rest[k] as number) - diagonal;
    const size = norm(rest);
    vectors.push(rest.map((value) => value / size));
  });
  const at = (i: number, j: number): number => (upper[j] as Float64Array)[i] as number;
  return {
    reflect,
    reflectBack: (v) => vectors.reduceRight((w, u) => mirrored(w, u), v),
    solveUpper: (v) => {
      const x = new Float64Array(columns.length);
      for (let i = columns.length - 1; i >= 0; i--) {
        let sum = v[i] as number;
        for (let j = i + 1; j < columns.length; j++) sum -= at(i, j) * (x[j] as number);
        x[i] = sum / at(i, i);
      }
      return x;
    },
    solveLower: (v) => {
      const x = new Float64Array(columns.length);
      for (let i = 0; i < columns.length; i++) {
        let sum = v[i] as number;
        for (let j = 0; j < i; j++) sum -= at(j, i) * (x[j] as number);
        x[i] = sum / at(i, i);
      }
      return x;
    },
  };
}

/** w − 2u(uᵀw), for a unit vector u. */
function mirrored(w: Float64Array, u: Float64Array): Float64Array {
  let product = 0;
  for (let i = 0; i < u.length; i++) product += (u[i] as number) * (w[i] as number);
  return w.map((value, i) => value - 2 * product * (u[i] as number));
}

/** Length of a vector, without overflow on the way. */
function norm(v: Float64Array): number {
  const largest = v.reduce((size, value) => Math.max(size, Math.abs(value)), 0);
  if (largest === 0) return 0;
  return largest * Math.sqrt(v.reduce((sum, value) => sum + (value / largest) * (value / largest), 0));
}
