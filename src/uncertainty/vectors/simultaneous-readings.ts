import { atPath, fail } from '../../checks/index.js';
import { compensatedDot } from '../../numeric/index.js';
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
 * @returns Inputs and correlations for `propagateAll`, the covariance matrix, the degrees of freedom
 * @throws CalculationError `wrong-count` (no quantity, one reading, series of different lengths), `not-a-number`
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
  const first = readings[names[0] as N];
  const count = first.length;
  const list = names.map((name) => {
    const series = readings[name];
    if (series.length !== count) {
      fail('wrong-count', `readings.${name}`, series.length, `must hold ${count} readings, as ${names[0]} does`);
    }
    return atPath(`readings.${name}`, () => repeatedReadingsInput(series, naming?.[name]));
  });
  const away = names.map((name, i) => Array.from(readings[name], (x) => x - (list[i] as UncertainInput).value));
  const u = list.map(({ standardUncertainty }) => standardUncertainty);
  const correlations: Correlation[] = [];
  const rows = u.map((a, i) => u.map((_, j) => (i === j ? a * a : 0)));
  for (let i = 0; i < u.length; i++) {
    for (let j = i + 1; j < u.length; j++) {
      const [a, b] = [u[i] as number, u[j] as number];
      if (a === 0 || b === 0) continue;
      const scaled = (away[i] as number[]).map((x) => x / a);
      const other = (away[j] as number[]).map((x) => x / b);
      const product = compensatedDot(scaled, other) / (count * (count - 1));
      const coefficient = Math.max(-1, Math.min(1, product));
      correlations.push({ between: [names[i] as N, names[j] as N], coefficient });
      (rows[i] as number[])[j] = (rows[j] as number[])[i] = coefficient * a * b;
    }
  }
  const inputs = Object.fromEntries(names.map((name, i) => [name, list[i]])) as Record<N, UncertainInput>;
  return { inputs, correlations, covariance: { names, rows }, degreesOfFreedom: count - 1 };
}
