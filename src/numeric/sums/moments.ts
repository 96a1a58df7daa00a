import { fail } from '../../checks/index.js';

/** What is kept of a series: enough for mean and variance, and to join it with another. */
export interface Moments {
  /** Number of values. */
  readonly count: number;
  readonly mean: number;
  /** Sum of the squares of the deviations from the mean. */
  readonly squares: number;
}

/**
 * Count, mean and squares of a series, in two passes: the second, on the deviations, also corrects the mean.
 *
 * Sums run in small blocks, whose own sum carries along what it loses: rounding does not grow with the number of values.
 *
 * @param values One value or more
 * @throws CalculationError `wrong-count`
 * @source T. F. Chan, G. H. Golub and R. J. LeVeque, American Statistician 37 (1983) 242: the corrected two-pass method
 */
export function momentsOf(values: ArrayLike<number>): Moments {
  const count = values.length;
  if (count === 0) fail('wrong-count', 'values', 0, 'must hold at least one value');
  const first = values[0] as number;
  // Sums are taken of differences to the first value: a large common part then costs no digits.
  const rough = first + blockSums(values, first).sum / count;
  const { sum, squares } = blockSums(values, rough);
  return { count, mean: rough + sum / count, squares: Math.max(0, squares - (sum * sum) / count) };
}

/** Sum and sum of squares of the differences to a value: blocks of 16 in two lanes, their sums with what is lost. */
function blockSums(values: ArrayLike<number>, origin: number): { readonly sum: number; readonly squares: number } {
  let sum = 0;
  let sumLost = 0;
  let squares = 0;
  let squaresLost = 0;
  for (let from = 0; from < values.length; from += 16) {
    const to = Math.min(values.length, from + 16);
    let s0 = 0;
    let s1 = 0;
    let q0 = 0;
    let q1 = 0;
    let i = from;
    for (; i + 1 < to; i += 2) {
      const a = (values[i] as number) - origin;
      const b = (values[i + 1] as number) - origin;
      s0 += a;
      s1 += b;
      q0 += a * a;
      q1 += b * b;
    }
    if (i < to) {
      const a = (values[i] as number) - origin;
      s0 += a;
      q0 += a * a;
    }
    const part = s0 + s1;
    const nextSum = sum + part;
    const virtual = nextSum - sum;
    sumLost += sum - (nextSum - virtual) + (part - virtual);
    sum = nextSum;
    const square = q0 + q1;
    const nextSquares = squares + square;
    const virtualSquare = nextSquares - squares;
    squaresLost += squares - (nextSquares - virtualSquare) + (square - virtualSquare);
    squares = nextSquares;
  }
  return { sum: sum + sumLost, squares: squares + squaresLost };
}
