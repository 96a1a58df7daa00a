import { atPath, fail, requireResult } from '../../checks/index.js';
import { sum } from '../../numeric/index.js';
import type { Correlation, CorrelationMatrix } from '../correlation.js';
import { repeatedReadingsInput } from '../inputs/repeated-readings-input.js';
import type { InputNaming, UncertainInput } from '../uncertain-input.js';

/** A covariance matrix over named quantities, in the products of their units. */
export type CovarianceMatrix = CorrelationMatrix;

/** Simultaneous readings evaluated: what `propagateAll` takes, and the covariance matrix behind it. */
export interface SimultaneousReadings<N extends string = string> {
  /** Each quantity with its mean, the standard uncertainty of the mean, and n − 1 degrees of freedom. */
  readonly inputs: Readonly<Record<N, UncertainInput>>;
  /** Correlation of every pair of means; none where one of the two has no scatter. */
  readonly correlations: readonly Correlation[];
  /** Covariance matrix of the means. */
  readonly covariance: CovarianceMatrix;
  /** n − 1, of the whole matrix. */
  readonly degreesOfFreedom: number;
}

/**
 * Type A evaluation of simultaneous repeated readings of several quantities: means, covariance matrix of the means,
 * degrees of freedom. Readings of one place in the series belong together.
 *
 * @param readings Readings by the name of the quantity, each in its own unit, of every quantity as many; two or more
 * @param naming Description and unit by name, for the budget
 * @returns Inputs and correlations for `propagateAll` and `monteCarlo`, the covariance matrix, the degrees of freedom
 * @throws CalculationError `wrong-count` (no quantity, one reading, series of different lengths), `not-a-number`,
 * `result-out-of-range`
 * @source JCGM 100:2008, 5.2.3 (17) and H.2; JCGM 102:2011, 5.3
 * @example
 * ```ts
 * import { simultaneousReadings } from 'esu-limits/uncertainty';
 * const { covariance, correlations, degreesOfFreedom } = simultaneousReadings({ V: [100, 101, 103], I: [0.5, 0.51, 0.52] });
 * covariance.rows[0]?.[1]?.toFixed(6); // → "0.005000"
 * correlations[0]?.coefficient.toFixed(6); // → "0.981981"
 * degreesOfFreedom; // → 2
 * ```
 */
export function simultaneousReadings<N extends string>(
  readings: Readonly<Record<N, ArrayLike<number>>>,
  naming?: Readonly<Partial<Record<N, InputNaming>>>,
): SimultaneousReadings<N> {
  const names = Object.keys(readings) as N[];
  if (names.length === 0) fail('wrong-count', 'readings', readings, 'must hold at least one quantity');
  const count = readings[names[0] as N].length;
  const inputs = {} as Record<N, UncertainInput>;
  // Deviations from the mean, in standard uncertainties of it; of a quantity that did not move they are 0.
  const z = names.map((name) => {
    const series = readings[name];
    if (series.length !== count) {
      fail('wrong-count', `readings.${name}`, series.length, `must hold ${count} readings, as ${names[0]} does`);
    }
    const input = atPath(`readings.${name}`, () => repeatedReadingsInput(series, naming?.[name]));
    inputs[name] = input;
    return Array.from(series, (x) => (x - input.value) / (input.standardUncertainty || 1));
  });
  const u = names.map((name) => inputs[name].standardUncertainty);
  const coefficientOf = (i: number, j: number): number => {
    const products = (z[i] as number[]).map((x, k) => x * (z[j]?.[k] as number));
    return Math.max(-1, Math.min(1, sum(products) / (count * (count - 1))));
  };
  const rows = u.map((a, i) =>
    u.map((b, j) => requireResult(a * b * (i === j ? 1 : coefficientOf(i, j)), 'covariance')),
  );
  const correlations = names.flatMap((first, i) =>
    names.slice(i + 1).flatMap((second, k): Correlation[] => {
      const j = i + 1 + k;
      return u[i] && u[j] ? [{ between: [first, second], coefficient: coefficientOf(i, j) }] : [];
    }),
  );
  return { inputs, correlations, covariance: { names, rows }, degreesOfFreedom: count - 1 };
}
