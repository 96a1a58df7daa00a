import { requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';
import { type Quantity, requireQuantity } from './quantity.js';
import { rootOfProduct, rootOfRatio } from './roots.js';

/** From which quantity to which, at which load. */
export interface Conversion {
  readonly from: Quantity;
  readonly to: Quantity;
  /** Resistance of the load, in ohms, greater than 0. */
  readonly load: number;
}

/**
 * Turns power, rms current or rms voltage of a resistive load into one another.
 * The conversion is the exact one, √(P/R) and its kin: not the rule of thumb that halves a percentage.
 *
 * @param value Value to convert, in watts, amperes or volts, 0 or more; 0 gives 0
 * @param conversion Quantity of the value, wanted quantity, load
 * @returns The value in the wanted quantity, in watts, amperes or volts
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `unknown-choice`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { convertQuantity } from 'esu-limits';
 * convertQuantity(45, { from: 'power', to: 'voltage', load: 500 }); // → 150
 * convertQuantity(0.5, { from: 'current', to: 'power', load: 500 }); // → 125
 * convertQuantity(0, { from: 'power', to: 'current', load: 500 }); // → 0
 * ```
 */
export function convertQuantity(value: number, { from, to, load }: Conversion): number {
  requireNonNegative(value, 'value');
  requirePositive(load, 'load');
  requireQuantity(from, 'from');
  requireQuantity(to, 'to');
  if (value === 0) return 0;
  return from === to ? value : requirePositiveResult(converted(value, from, to, load), to);
}

/** The arithmetic of the six functions between two quantities, whose checks are not repeated here. */
function converted(value: number, from: Quantity, to: Quantity, load: number): number {
  if (from === 'power') return to === 'current' ? rootOfRatio(value, load) : rootOfProduct(value, load);
  if (from === 'current') return to === 'power' ? value * load * value : value * load;
  return to === 'power' ? (value / load) * value : value / load;
}
