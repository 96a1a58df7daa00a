import { requirePositive, requirePositiveResult } from '../checks/index.js';
import { requireCrestFactor } from './require-crest-factor.js';
import { rootOfProduct } from './roots.js';

/** An output in a resistive load, with the crest factor of its waveform at that load. */
export interface PeakInput {
  /** Power in the load, in watts, greater than 0. */
  readonly power: number;
  /** Resistance of the load, in ohms, greater than 0. */
  readonly load: number;
  /** Crest factor at this load, 1 or more: makers also state it for the open circuit, where it may differ. */
  readonly crestFactor: number;
}

/**
 * Peak voltage across a resistive load: V_p = CF·√(P·R).
 *
 * @param output Power, load and crest factor
 * @returns Peak voltage, in volts
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range`, `result-out-of-range`
 * @source Definition of the crest factor, Ohm's law and Joule's law
 * @accuracy Three roundings: within 2 units in the last place
 * @example
 * ```ts
 * import { peakVoltage } from 'esu-limits';
 * peakVoltage({ power: 45, load: 500, crestFactor: 7 }); // → 1050
 * ```
 */
export function peakVoltage({ power, load, crestFactor }: PeakInput): number {
  requirePositive(power, 'power');
  requirePositive(load, 'load');
  return requirePositiveResult(requireCrestFactor(crestFactor) * rootOfProduct(power, load), 'peakVoltage');
}
