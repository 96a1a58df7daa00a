import { requireFinite, requireNonNegative, requirePositive } from '../../checks/index.js';
import { studentTUpperQuantile } from '../../numeric/index.js';
import { requireDegrees, requireLevel } from '../require-uncertainty.js';
import { type DegreesOfFreedom, type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';

/** A value from a certificate: expanded uncertainty with its coverage factor, or with its level of confidence. */
export interface CertificateStatement {
  readonly value: number;
  /** Expanded uncertainty U, in the unit of the value, 0 or more. */
  readonly expandedUncertainty: number;
  /** Coverage: the factor k as printed, or the level as a fraction (0.95), from which k follows. */
  readonly coverage: { readonly factor: number } | { readonly level: number };
  /** Degrees of freedom; `infinite` unless stated. */
  readonly degreesOfFreedom?: DegreesOfFreedom;
}

/**
 * An input from a certificate: u = U/k, with k as printed or from the level of confidence.
 *
 * @param statement Value, expanded uncertainty, coverage, degrees of freedom
 * @param naming Description and unit, for the budget
 * @returns The input, with a normal distribution
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `not-a-fraction`, `out-of-range`
 * @source JCGM 100:2008, 4.3.3 and 4.3.4
 * @example
 * ```ts
 * import { certificateInput } from 'esu-limits/uncertainty';
 * certificateInput({ value: 10, expandedUncertainty: 0.02, coverage: { factor: 2 } }).standardUncertainty; // → 0.01
 * ```
 */
export function certificateInput(statement: CertificateStatement, naming?: InputNaming): UncertainInput {
  const { value, expandedUncertainty, coverage, degreesOfFreedom = 'infinite' } = statement;
  requireFinite(value, 'value');
  requireNonNegative(expandedUncertainty, 'expandedUncertainty');
  requireDegrees(degreesOfFreedom, 'degreesOfFreedom');
  const factor =
    'factor' in coverage
      ? requirePositive(coverage.factor, 'coverage.factor')
      : coverageFactor(requireLevel(coverage.level, 'coverage.level'), degreesOfFreedom);
  return inputOf(value, expandedUncertainty / factor, { kind: 'normal' }, naming, degreesOfFreedom);
}

function coverageFactor(level: number, degreesOfFreedom: DegreesOfFreedom): number {
  const degrees = degreesOfFreedom === 'infinite' ? Number.POSITIVE_INFINITY : degreesOfFreedom;
  return studentTUpperQuantile((1 - level) / 2, degrees);
}
