import { fail, requirePositive, requireResult } from '../checks/index.js';

/** Peak and rms value of one waveform, in the same unit. */
export interface PeakAndRms {
  /** Largest absolute value, in amperes or volts. */
  readonly peak: number;
  /** Rms value, in the unit of `peak`. */
  readonly rms: number;
}

/** How far below 1 a quotient may lie that is 1 but for the rounding of its two values. */
const roundingOfInputs = 1e-12;

/**
 * Crest factor of a waveform: its peak value over its rms value.
 *
 * @param waveform Peak and rms value, in the same unit, both greater than 0
 * @returns Crest factor, 1 or more; a quotient less than 1e-12 below 1 counts as 1
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range` (peak below rms), `result-out-of-range`
 * @source Definition of the crest factor
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { crestFactor } from 'esu-limits';
 * crestFactor({ peak: 1750, rms: 250 }); // → 7
 * ```
 */
export function crestFactor({ peak, rms }: PeakAndRms): number {
  requirePositive(peak, 'peak');
  requirePositive(rms, 'rms');
  const factor = peak / rms;
  if (factor < 1 - roundingOfInputs) fail('out-of-range', 'peak', peak, `must not lie below the rms value, ${rms}`);
  return requireResult(Math.max(factor, 1), 'crestFactor');
}
