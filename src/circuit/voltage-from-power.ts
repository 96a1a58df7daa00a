import { requirePositive, requirePositiveResult } from '../checks/index.js';
import { rootOfProduct } from './roots.js';

/**
 * Rms voltage across a resistive load from its power: V = √(P·R).
 *
 * @param power Power in the load, in watts, greater than 0 (a measured 0 is turned by `convertQuantity`)
 * @param load Resistance of the load, in ohms, greater than 0
 * @returns Rms voltage, in volts
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { voltageFromPower } from 'esu-limits';
 * voltageFromPower(45, 500); // → 150
 * ```
 */
export function voltageFromPower(power: number, load: number): number {
  requirePositive(power, 'power');
  requirePositive(load, 'load');
  return requirePositiveResult(rootOfProduct(power, load), 'voltage');
}
