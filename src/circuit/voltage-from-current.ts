import { requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Rms voltage across a resistive load from its rms current: V = I·R.
 *
 * @param current Rms current, in amperes, 0 or more
 * @param load Resistance of the load, in ohms, greater than 0
 * @returns Rms voltage, in volts
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `result-out-of-range`
 * @source Ohm's law
 * @accuracy One rounding: the nearest number
 * @example
 * ```ts
 * import { voltageFromCurrent } from 'esu-limits';
 * voltageFromCurrent(0.5, 500); // → 250
 * ```
 */
export function voltageFromCurrent(current: number, load: number): number {
  requireNonNegative(current, 'current');
  requirePositive(load, 'load');
  return current === 0 ? 0 : requirePositiveResult(current * load, 'voltage');
}
