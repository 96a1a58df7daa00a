import { pauseFromRatingFormula } from '../../working/formulas/circuit-effects.js';
import type { ExplainedValue } from '../explain-conversion.js';
import { explained } from '../explained.js';
import { pauseFromRating, type RatingQuestion } from './pause-from-rating.js';

/**
 * `pauseFromRating` with its working.
 *
 * @param question Power, rating, activation
 * @returns Pause, in seconds, with its step
 * @throws CalculationError as `pauseFromRating`
 * @source Mean power of activation and pause
 * @example
 * ```ts
 * import { explainPauseFromRating } from 'esu-limits';
 * const question = { power: 300, ratedPower: 100, duration: 10 };
 * explainPauseFromRating(question).working[0]?.expression; // → "t * max((P - P_r) / P_r, 0)"
 * ```
 */
export function explainPauseFromRating(question: RatingQuestion): ExplainedValue {
  const { duration: t, power: P, ratedPower: P_r } = question;
  return explained(pauseFromRatingFormula, 'pause', { t, P, P_r }, pauseFromRating(question));
}
