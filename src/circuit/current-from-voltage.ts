import { requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Rms current in a resistive load from the rms voltage across it: I = V/R.
 *
 * @param voltage Rms voltage across the load, in volts, 0 or more
 * @param load Resistance of the load, in ohms, greater than 0
 * @returns Rms current, in amperes
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `result-out-of-range`
 * @source Ohm's law
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { currentFromVoltage } from 'esu-limits';
 * currentFromVoltage(150, 500); // → 0.3
 * ```
 */
export function currentFromVoltage(voltage: number, load: number): number {
  requireNonNegative(voltage, 'voltage');
  requirePositive(load, 'load');
  return voltage === 0 ? 0 : requirePositiveResult(voltage / load, 'current');
}
