import { requireFinite } from '../../checks/index.js';
import type { CoverageInterval } from './coverage-interval.js';
import { numericalTolerance } from './numerical-tolerance.js';

/** A first-order result and a Monte Carlo interval at the same coverage probability. */
export interface ValidationInput {
  /** Value of the first order. */
  readonly value: number;
  /** Its combined standard uncertainty, greater than 0. */
  readonly standardUncertainty: number;
  /** Its expanded uncertainty. */
  readonly expandedUncertainty: number;
  /** Coverage interval by Monte Carlo. */
  readonly interval: CoverageInterval;
  /** Meaningful figures of the standard uncertainty; 2 unless stated. */
  readonly digits?: number;
}

/** Whether the first-order result stands beside Monte Carlo. */
export interface Validation {
  readonly valid: boolean;
  /** Differences of the lower and of the upper limits. */
  readonly lowerDifference: number;
  readonly upperDifference: number;
  /** Largest difference that is permitted. */
  readonly tolerance: number;
  readonly statement: string;
}

/**
 * Compares the interval y ± U of the first order with the interval of a Monte Carlo run, limit by limit.
 * The run itself should have settled to a fifth of the tolerance.
 *
 * @param input First-order result, Monte Carlo interval, digits
 * @returns Whether both limits agree within the numerical tolerance
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range`
 * @source JCGM 101:2008, clause 8
 * @example
 * ```ts
 * import { validateFirstOrder } from 'esu-limits/uncertainty';
 * const interval = { lower: -17.0, upper: 17.0 };
 * validateFirstOrder({ value: 0, standardUncertainty: 10.1, expandedUncertainty: 19.9, interval }).valid; // → false
 * ```
 */
export function validateFirstOrder(input: ValidationInput): Validation {
  const { value, standardUncertainty, expandedUncertainty, interval, digits = 2 } = input;
  requireFinite(value, 'value');
  requireFinite(expandedUncertainty, 'expandedUncertainty');
  requireFinite(interval.lower, 'interval.lower');
  requireFinite(interval.upper, 'interval.upper');
  const tolerance = numericalTolerance(standardUncertainty, digits);
  const lowerDifference = Math.abs(value - expandedUncertainty - interval.lower);
  const upperDifference = Math.abs(value + expandedUncertainty - interval.upper);
  const valid = lowerDifference <= tolerance && upperDifference <= tolerance;
  const show = (x: number): string => String(Number(x.toPrecision(3)));
  const statement =
    `The limits of the first order and of Monte Carlo differ by ${show(lowerDifference)} and ${show(upperDifference)}; ` +
    `${show(tolerance)} is permitted: the first order is ${valid ? 'validated' : 'not validated. Use the Monte Carlo result'}.`;
  return { valid, lowerDifference, upperDifference, tolerance, statement };
}
