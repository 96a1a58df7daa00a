import { requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Resistance of a load from its rms current and rms voltage: R = V/I.
 *
 * @param current Rms current, in amperes, greater than 0
 * @param voltage Rms voltage across the load, in volts, greater than 0
 * @returns Resistance, in ohms
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { loadFromCurrentAndVoltage } from 'esu-limits';
 * loadFromCurrentAndVoltage(0.5, 250); // → 500
 * ```
 */
export function loadFromCurrentAndVoltage(current: number, voltage: number): number {
  requirePositive(current, 'current');
  requirePositive(voltage, 'voltage');
  return requirePositiveResult(voltage / current, 'load');
}
