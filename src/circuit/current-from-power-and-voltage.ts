import { requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Rms current in a resistive load from its power and rms voltage: I = P/V.
 *
 * @param power Power in the load, in watts, greater than 0
 * @param voltage Rms voltage across the load, in volts, greater than 0
 * @returns Rms current, in amperes
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { currentFromPowerAndVoltage } from 'esu-limits';
 * currentFromPowerAndVoltage(125, 250); // → 0.5
 * ```
 */
export function currentFromPowerAndVoltage(power: number, voltage: number): number {
  requirePositive(power, 'power');
  requirePositive(voltage, 'voltage');
  return requirePositiveResult(power / voltage, 'current');
}
