import { requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Resistance of a load from its power and rms current: R = P/I².
 *
 * @param power Power in the load, in watts, greater than 0
 * @param current Rms current, in amperes, greater than 0
 * @returns Resistance, in ohms
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { loadFromPowerAndCurrent } from 'esu-limits';
 * loadFromPowerAndCurrent(125, 0.5); // → 500
 * ```
 */
export function loadFromPowerAndCurrent(power: number, current: number): number {
  requirePositive(power, 'power');
  requirePositive(current, 'current');
  return requirePositiveResult(power / current / current, 'load');
}
