import { requirePositive, requireResult } from '../../checks/index.js';

/** Activations into a load of which only the continuous rating is known. */
export interface RatingQuestion {
  /** Power in the load, in watts, greater than 0. */
  readonly power: number;
  /** Power that the load takes for ever, in watts, greater than 0. */
  readonly ratedPower: number;
  /** Length of each activation, in seconds, greater than 0. */
  readonly duration: number;
}

/**
 * Pause after which the mean power is the rating: t·(P/P_rated − 1), 0 below the rating.
 *
 * It holds for activations that are short beside the thermal time constant of the load: the maker's own limit of a
 * single activation comes first.
 *
 * @param question Power, rating, activation
 * @returns Pause, in seconds
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Mean power of activation and pause
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { pauseFromRating } from 'esu-limits';
 * pauseFromRating({ power: 300, ratedPower: 100, duration: 10 }); // → 20
 * ```
 */
export function pauseFromRating({ power, ratedPower, duration }: RatingQuestion): number {
  requirePositive(power, 'power');
  requirePositive(ratedPower, 'ratedPower');
  requirePositive(duration, 'duration');
  return requireResult(duration * Math.max((power - ratedPower) / ratedPower, 0), 'pause');
}
