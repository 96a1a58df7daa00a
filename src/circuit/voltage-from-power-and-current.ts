import { requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Rms voltage across a resistive load from its power and rms current: V = P/I.
 *
 * @param power Power in the load, in watts, greater than 0
 * @param current Rms current, in amperes, greater than 0
 * @returns Rms voltage, in volts
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { voltageFromPowerAndCurrent } from 'esu-limits';
 * voltageFromPowerAndCurrent(125, 0.5); // → 250
 * ```
 */
export function voltageFromPowerAndCurrent(power: number, current: number): number {
  requirePositive(power, 'power');
  requirePositive(current, 'current');
  return requirePositiveResult(power / current, 'voltage');
}
