import { requireFinite, requireNonNegative } from '../../checks/index.js';
import { requireDegrees } from '../require-uncertainty.js';
import { type DegreesOfFreedom, type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';

/** A value with a standard uncertainty. */
export interface NormalStatement {
  readonly value: number;
  /** Standard uncertainty, in the unit of the value, 0 or more. */
  readonly standardUncertainty: number;
  /** Degrees of freedom; `infinite` unless stated. */
  readonly degreesOfFreedom?: DegreesOfFreedom;
}

/**
 * An input with a normal distribution.
 *
 * @param statement Value, standard uncertainty, degrees of freedom
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `not-a-number`, `negative`, `out-of-range`
 * @source JCGM 101:2008, 6.4.7
 * @example
 * ```ts
 * import { normalInput } from 'esu-limits/uncertainty';
 * normalInput({ value: 500, standardUncertainty: 2 }).standardUncertainty; // → 2
 * ```
 */
export function normalInput(statement: NormalStatement, naming?: InputNaming): UncertainInput {
  const { value, standardUncertainty, degreesOfFreedom = 'infinite' } = statement;
  requireFinite(value, 'value');
  requireNonNegative(standardUncertainty, 'standardUncertainty');
  requireDegrees(degreesOfFreedom, 'degreesOfFreedom');
  return inputOf(value, standardUncertainty, { kind: 'normal' }, naming, degreesOfFreedom);
}
