import { requireNonNegative, requireResult } from '../checks/index.js';
import { requireCrestFactor } from './require-crest-factor.js';

/**
 * Peak value of a current or voltage from its rms value and crest factor: x_p = CF·x.
 *
 * @param rms Rms value, in amperes or volts, 0 or more
 * @param crestFactor Crest factor of the waveform, 1 or more; √2 for a continuous sine
 * @returns Peak value, in the unit of `rms`
 * @throws CalculationError `not-a-number`, `negative`, `out-of-range`, `result-out-of-range`
 * @source Definition of the crest factor
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { peakFromRms } from 'esu-limits';
 * peakFromRms(250, 7); // → 1750
 * ```
 */
export function peakFromRms(rms: number, crestFactor: number): number {
  requireNonNegative(rms, 'rms');
  requireCrestFactor(crestFactor);
  return requireResult(rms * crestFactor, 'peak');
}
