import { requirePositive, requirePositiveResult } from '../checks/index.js';
import type { PeakInput } from './peak-voltage.js';
import { requireCrestFactor } from './require-crest-factor.js';
import { rootOfRatio } from './roots.js';

/**
 * Peak current in a resistive load: I_p = CF·√(P/R).
 *
 * @param output Power, load and crest factor
 * @returns Peak current, in amperes
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range`, `result-out-of-range`
 * @source Definition of the crest factor, Ohm's law and Joule's law
 * @accuracy Three roundings: within 2 units in the last place
 * @example
 * ```ts
 * import { peakCurrent } from 'esu-limits';
 * peakCurrent({ power: 125, load: 500, crestFactor: 7 }); // → 3.5
 * ```
 */
export function peakCurrent({ power, load, crestFactor }: PeakInput): number {
  requirePositive(power, 'power');
  requirePositive(load, 'load');
  return requirePositiveResult(requireCrestFactor(crestFactor) * rootOfRatio(power, load), 'peakCurrent');
}
