import { fail, requireFinite } from '../../checks/index.js';
import { meanAndVariance } from '../../numeric/index.js';
import { type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';

/**
 * An input from repeated readings: their mean, u = s/√n, and n − 1 degrees of freedom (type A).
 * For Monte Carlo it has the scaled t-distribution of such a series.
 *
 * @param readings Two readings or more, in one unit
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `wrong-count`, `not-a-number`
 * @source JCGM 100:2008, 4.2; JCGM 101:2008, 6.4.9
 * @example
 * ```ts
 * import { repeatedReadingsInput } from 'esu-limits/uncertainty';
 * repeatedReadingsInput([5.007, 4.994, 5.005, 4.99, 4.999]).value; // → 4.999
 * ```
 */
export function repeatedReadingsInput(readings: ArrayLike<number>, naming?: InputNaming): UncertainInput {
  if (readings.length < 2) fail('wrong-count', 'readings', readings.length, 'must hold at least two readings');
  for (let i = 0; i < readings.length; i++) requireFinite(readings[i] as number, `readings[${i}]`);
  const { mean, variance, count } = meanAndVariance(readings);
  const scale = Math.sqrt(variance / count);
  const degreesOfFreedom = count - 1;
  return inputOf(mean, scale, { kind: 'student-t', scale, degreesOfFreedom }, naming, degreesOfFreedom, 'A');
}
