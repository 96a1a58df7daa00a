import { enNumberFormula } from '../working/formulas/decision.js';
import { type Step, step } from '../working/index.js';
import { isAtMost, scoreOf } from './score.js';

/** Two results with their expanded uncertainties, all in one unit. */
export interface EnNumberInput {
  /** The result that is judged, such as the display of the generator. */
  readonly value: number;
  /** Its expanded uncertainty, 0 or more. */
  readonly expandedUncertainty: number;
  /** What it is compared with, such as the reading of the instrument. */
  readonly reference: number;
  /** Expanded uncertainty of the reference, of the same coverage factor, 0 or more; one of the two is greater than 0. */
  readonly referenceExpandedUncertainty: number;
}

/** The E_n number of two results. */
export interface EnNumber {
  /** Signed: positive where the value is above the reference. */
  readonly score: number;
  /** `satisfactory` up to an E_n of 1, either sign. */
  readonly verdict: 'satisfactory' | 'unsatisfactory';
  readonly working: readonly Step[];
}

/**
 * E_n number: whether two results agree within their expanded uncertainties.
 *
 * Both uncertainties are expanded, with one coverage factor of about 2, and the results share no error. A difference that
 * is 1 but for the rounding of decimal readings counts as 1.
 *
 * @param input Value, reference, expanded uncertainties
 * @returns Score, verdict, one step
 * @throws CalculationError `not-a-number`, `negative`, `not-positive` (both uncertainties 0), `result-out-of-range`
 * @source ISO 13528 and ISO/IEC 17043: E_n = (x − X)/√(U_x² + U_X²), |E_n| ≤ 1
 * @example
 * ```ts
 * import { enNumber } from 'esu-limits/decision';
 * const display = { value: 122, expandedUncertainty: 4 };
 * const instrument = { reference: 117, referenceExpandedUncertainty: 3 };
 * const { score, verdict } = enNumber({ ...display, ...instrument });
 * score; // → 1
 * verdict; // → "satisfactory"
 * ```
 */
export function enNumber(input: EnNumberInput): EnNumber {
  const { value, expandedUncertainty, reference, referenceExpandedUncertainty } = input;
  const score = scoreOf({
    value,
    reference,
    uncertainty: ['expandedUncertainty', expandedUncertainty],
    referenceUncertainty: ['referenceExpandedUncertainty', referenceExpandedUncertainty],
  });
  const inputs = { x: value, X: reference, U_x: expandedUncertainty, U_X: referenceExpandedUncertainty };
  return {
    score,
    verdict: isAtMost(score, 1, input) ? 'satisfactory' : 'unsatisfactory',
    working: [step(enNumberFormula, 'E_n number', inputs, score)],
  };
}
