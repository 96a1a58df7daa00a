import { requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';

/**
 * Power in a resistive load from its rms current: P = I²·R.
 *
 * @param current Rms current, in amperes, 0 or more: a measured 0 A is 0 W
 * @param load Resistance of the load, in ohms, greater than 0
 * @returns Power, in watts
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { powerFromCurrent } from 'esu-limits';
 * powerFromCurrent(0.5, 500); // → 125
 * ```
 */
export function powerFromCurrent(current: number, load: number): number {
  requireNonNegative(current, 'current');
  requirePositive(load, 'load');
  // I·R·I and not I·I·R: the square alone can leave the range of numbers where the power does not.
  return current === 0 ? 0 : requirePositiveResult(current * load * current, 'power');
}
