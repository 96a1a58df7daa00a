import { fail } from '../../checks/index.js';
import { compensatedDot } from '../sums/compensated-dot.js';
import { entry, type Matrix, requireMatrix } from './matrix.js';
import { type Reflections, reflectionsOf } from './reflections.js';

/** A linear fit. */
export interface LinearFit {
  readonly coefficients: readonly number[];
  /** Standard errors of the coefficients, from the residuals. */
  readonly standardErrors: readonly number[];
  /** (XᵀX)⁻¹: times the variance of an observation, the covariance of the coefficients. */
  readonly cofactors: readonly (readonly number[])[];
  readonly residuals: readonly number[];
  readonly residualSumOfSquares: number;
  /** Observations less coefficients. */
  readonly degreesOfFreedom: number;
  /** √(residualSumOfSquares/degreesOfFreedom); 0 where no degree of freedom is left. */
  readonly residualStandardDeviation: number;
}

/**
 * Coefficients b that make the sum of squares of y − X·b least, by Householder's reflections, and then refined
 * with residuals of twice the digits until the coefficients stand still.
 *
 * For weights, multiply each row and its observation by the square root of its weight.
 *
 * @param design Rows of X, one for each observation; at least as many as columns
 * @param observations The values y
 * @throws CalculationError `matrix-shape`, `not-a-number`, `wrong-count`, `singular`
 * @source G. H. Golub and C. F. Van Loan, Matrix Computations, 5.3; Å. Björck, BIT 7 (1967) 257: the refinement
 */
export function leastSquares(design: Matrix, observations: ArrayLike<number>): LinearFit {
  requireMatrix(design, 'design');
  requireMatrix([observations], 'observations', design.length);
  const count = design.length;
  const width = (design[0] as ArrayLike<number>).length;
  if (count < width) fail('wrong-count', 'observations', count, `must be at least as many as the ${width} columns`);
  const columns = Array.from({ length: width }, (_, j) => Float64Array.from(design, (row) => row[j] as number));
  const factors = reflectionsOf(columns);
  const { solution, residuals } = refined(factors, design, columns, Float64Array.from(observations), null);
  const residualSumOfSquares = compensatedDot(residuals, residuals);
  const degreesOfFreedom = count - width;
  const residualStandardDeviation = degreesOfFreedom === 0 ? 0 : Math.sqrt(residualSumOfSquares / degreesOfFreedom);
  const cofactors = columns.map((_, j) => {
    // With observations of 0 and Xᵀ·r = −unit vector, the solution is a column of (XᵀX)⁻¹.
    return Array.from(refined(factors, design, columns, new Float64Array(count), j).solution);
  });
  return {
    coefficients: Array.from(solution),
    standardErrors: cofactors.map((_, j) => residualStandardDeviation * Math.sqrt(entry(cofactors, j, j))),
    cofactors,
    residuals: Array.from(residuals),
    residualSumOfSquares,
    degreesOfFreedom,
    residualStandardDeviation,
  };
}

/** A solution and its residuals, or a step of both. */
interface Pair {
  readonly solution: Float64Array;
  readonly residuals: Float64Array;
}

/** Solution of r + X·b = y and Xᵀ·r = 0, or minus the unit vector of a column, by steps that end at rounding. */
function refined(
  factors: Reflections,
  design: Matrix,
  columns: readonly Float64Array[],
  observations: Float64Array,
  unit: number | null,
): Pair {
  let fit: Pair = { solution: new Float64Array(columns.length), residuals: new Float64Array(design.length) };
  let last = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 10; round++) {
    const step = correction(factors, design, columns, observations, unit, fit);
    const size = largestRatio(step.solution, fit.solution);
    // From the second round on each step is far smaller than the one before, or only rounding.
    if (round > 1 && size > last / 2) break;
    fit = { solution: added(fit.solution, step.solution), residuals: added(fit.residuals, step.residuals) };
    last = size;
  }
  return fit;
}

/** The step that the equations ask for, their defects taken with twice the digits. */
function correction(
  factors: Reflections,
  design: Matrix,
  columns: readonly Float64Array[],
  observations: Float64Array,
  unit: number | null,
  fit: Pair,
): Pair {
  const negative = Float64Array.of(...fit.solution, 1).map((value) => -value);
  const defects = observations.map((value, i) =>
    compensatedDot([...Array.from(design[i] as ArrayLike<number>), fit.residuals[i] as number], negative, value),
  );
  const h = factors.solveLower(columns.map((column, j) => -compensatedDot(column, fit.residuals, j === unit ? 1 : 0)));
  const image = factors.reflect(defects);
  const solution = factors.solveUpper(h.map((value, j) => (image[j] as number) - value));
  image.set(h);
  return { solution, residuals: factors.reflectBack(image) };
}

function added(a: Float64Array, b: Float64Array): Float64Array {
  return a.map((value, i) => value + (b[i] as number));
}

/** Largest ratio of a step to the value that it changes. */
function largestRatio(step: Float64Array, value: Float64Array): number {
  return step.reduce((largest, change, j) => {
    const size = Math.abs(value[j] as number);
    return size === 0 ? largest : Math.max(largest, Math.abs(change) / size);
  }, 0);
}
