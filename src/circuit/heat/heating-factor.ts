import { requireNonNegative, requireResult } from '../../checks/index.js';

/** A current through a neutral electrode. */
export interface ElectrodeCurrent {
  /** Rms current, in amperes, 0 or more. */
  readonly current: number;
  /** Length of the activation, in seconds, 0 or more. */
  readonly duration: number;
}

/**
 * Heating factor of a current through a neutral electrode: I²·t.
 *
 * @param activation Current and duration
 * @returns Heating factor, in A²·s
 * @throws CalculationError `not-a-number`, `negative`, `result-out-of-range`
 * @source Definition of the heating factor
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { heatingFactor } from 'esu-limits';
 * heatingFactor({ current: 0.5, duration: 60 }); // → 15
 * ```
 */
export function heatingFactor({ current, duration }: ElectrodeCurrent): number {
  requireNonNegative(current, 'current');
  requireNonNegative(duration, 'duration');
  return requireResult(current * duration * current, 'heatingFactor');
}
