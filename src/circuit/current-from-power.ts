import { requirePositive, requirePositiveResult } from '../checks/index.js';
import { rootOfRatio } from './roots.js';

/**
 * Rms current in a resistive load from its power: I = √(P/R).
 *
 * @param power Power in the load, in watts, greater than 0: an expected power of 0 is a mistake, not an output.
 * A measured 0 is turned by `convertQuantity`
 * @param load Resistance of the load, in ohms, greater than 0
 * @returns Rms current, in amperes
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { currentFromPower } from 'esu-limits';
 * currentFromPower(120, 500); // → 0.4898979485566356
 * ```
 */
export function currentFromPower(power: number, load: number): number {
  requirePositive(power, 'power');
  requirePositive(load, 'load');
  return requirePositiveResult(rootOfRatio(power, load), 'current');
}
