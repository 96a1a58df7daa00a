import { requireNonNegative, requirePositiveResult } from '../checks/index.js';

/**
 * Power in a resistive load from its rms current and rms voltage: P = I·V.
 * In a load with reactance this is the apparent power: see `complexLoadPower`.
 *
 * @param current Rms current, in amperes, 0 or more
 * @param voltage Rms voltage across the load, in volts, 0 or more
 * @returns Power, in watts
 * @throws CalculationError `not-a-number`, `negative`, `result-out-of-range`
 * @source Joule's law
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { powerFromCurrentAndVoltage } from 'esu-limits';
 * powerFromCurrentAndVoltage(0.5, 250); // → 125
 * ```
 */
export function powerFromCurrentAndVoltage(current: number, voltage: number): number {
  requireNonNegative(current, 'current');
  requireNonNegative(voltage, 'voltage');
  return current === 0 || voltage === 0 ? 0 : requirePositiveResult(current * voltage, 'power');
}
