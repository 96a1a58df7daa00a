import { zetaScoreFormula } from '../working/formulas/decision.js';
import { type Step, step } from '../working/index.js';
import { isAtMost, scoreOf } from './score.js';

/** Two results with their standard uncertainties, all in one unit. */
export interface ZetaScoreInput {
  /** The result that is judged, such as the display of the generator. */
  readonly value: number;
  /** Its standard uncertainty, 0 or more. */
  readonly standardUncertainty: number;
  /** What it is compared with, such as the reading of the instrument. */
  readonly reference: number;
  /** Standard uncertainty of the reference, 0 or more; one of the two is greater than 0. */
  readonly referenceStandardUncertainty: number;
}

/** The zeta score of two results. */
export interface ZetaScore {
  /** Signed: positive where the value is above the reference. */
  readonly score: number;
  /** `satisfactory` up to 2, `questionable` between 2 and 3, `unsatisfactory` from 3 on, either sign. */
  readonly verdict: 'satisfactory' | 'questionable' | 'unsatisfactory';
  readonly working: readonly Step[];
}

/**
 * Zeta score: how many standard uncertainties of their difference two results lie apart.
 *
 * The results share no error. A score that is 2 but for the rounding of decimal readings counts as 2.
 *
 * @param input Value, reference, standard uncertainties
 * @returns Score, verdict, one step
 * @throws CalculationError `not-a-number`, `negative`, `not-positive` (both uncertainties 0), `result-out-of-range`
 * @source ISO 13528: ζ = (x − X)/√(u_x² + u_X²); satisfactory up to 2, action from 3 on
 * @example
 * ```ts
 * import { zetaScore } from 'esu-limits/decision';
 * const display = { value: 122, standardUncertainty: 2 };
 * const instrument = { reference: 117, referenceStandardUncertainty: 1.5 };
 * const { score, verdict } = zetaScore({ ...display, ...instrument });
 * score; // → 2
 * verdict; // → "satisfactory"
 * ```
 */
export function zetaScore(input: ZetaScoreInput): ZetaScore {
  const { value, standardUncertainty, reference, referenceStandardUncertainty } = input;
  const score = scoreOf({
    value,
    reference,
    uncertainty: ['standardUncertainty', standardUncertainty],
    referenceUncertainty: ['referenceStandardUncertainty', referenceStandardUncertainty],
  });
  const isAction = Math.abs(score) >= 3 || isAtMost(3, Math.abs(score), input);
  const inputs = { x: value, X: reference, u_x: standardUncertainty, u_X: referenceStandardUncertainty };
  return {
    score,
    verdict: isAtMost(score, 2, input) ? 'satisfactory' : isAction ? 'unsatisfactory' : 'questionable',
    working: [step(zetaScoreFormula, 'zeta score', inputs, score)],
  };
}
