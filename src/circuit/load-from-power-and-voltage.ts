import { requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Resistance of a load from its power and rms voltage: R = V²/P.
 *
 * @param power Power in the load, in watts, greater than 0
 * @param voltage Rms voltage across the load, in volts, greater than 0
 * @returns Resistance, in ohms
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { loadFromPowerAndVoltage } from 'esu-limits';
 * loadFromPowerAndVoltage(45, 150); // → 500
 * ```
 */
export function loadFromPowerAndVoltage(power: number, voltage: number): number {
  requirePositive(power, 'power');
  requirePositive(voltage, 'voltage');
  return requirePositiveResult((voltage / power) * voltage, 'load');
}
