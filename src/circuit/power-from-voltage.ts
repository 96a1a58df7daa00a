import { requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Power in a resistive load from the rms voltage across it: P = V²/R.
 *
 * @param voltage Rms voltage, in volts, 0 or more: a measured 0 V is 0 W
 * @param load Resistance of the load, in ohms, greater than 0
 * @returns Power, in watts
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { powerFromVoltage } from 'esu-limits';
 * powerFromVoltage(150, 500); // → 45
 * ```
 */
export function powerFromVoltage(voltage: number, load: number): number {
  requireNonNegative(voltage, 'voltage');
  requirePositive(load, 'load');
  return voltage === 0 ? 0 : requirePositiveResult((voltage / load) * voltage, 'power');
}
