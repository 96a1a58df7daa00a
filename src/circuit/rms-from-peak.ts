import { requireNonNegative, requirePositiveResult } from '../checks/index.js';
import { requireCrestFactor } from './require-crest-factor.js';

/**
 * Rms value of a current or voltage from its peak value and crest factor: x = x_p/CF.
 *
 * @param peak Peak value, in amperes or volts, 0 or more; half of the peak-to-peak value of a symmetric waveform
 * @param crestFactor Crest factor of the waveform, 1 or more; √2 for a continuous sine
 * @returns Rms value, in the unit of `peak`
 * @throws CalculationError `not-a-number`, `negative`, `out-of-range`, `result-out-of-range`
 * @source Definition of the crest factor
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { rmsFromPeak } from 'esu-limits';
 * rmsFromPeak(1750, 7); // → 250
 * ```
 */
export function rmsFromPeak(peak: number, crestFactor: number): number {
  requireNonNegative(peak, 'peak');
  requireCrestFactor(crestFactor);
  return peak === 0 ? 0 : requirePositiveResult(peak / crestFactor, 'rms');
}
