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
 * Sums run in blocks, so that rounding does not grow with their number.
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

/** Sum and sum of squares of the differences to a value, in blocks of 256 and four lanes. */
function blockSums(values: ArrayLike<number>, origin: number): { readonly sum: number; readonly squares: number } {
  let sum = 0;
  let squares = 0;
  for (let from = 0; from < values.length; from += 256) {
    const to = Math.min(values.length, from + 256);
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
    sum += s0 + s1;
    squares += q0 + q1;
  }
  return { sum, squares };
}
