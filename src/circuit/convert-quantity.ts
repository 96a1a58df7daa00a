import { isFullNumber, requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';
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
export function convertQuantity(value: number, conversion: Conversion): number {
  const result = converted(value, conversion);
  // A good result proves its inputs good, so they are looked at only where it is not: one limit may be a call of
  // millions, and a function this small becomes part of its callers.
  return isFullNumber(result) ? result : unusual(value, conversion);
}

/** The arithmetic between two quantities; 0 where the conversion cannot be. */
function converted(value: number, { from, to, load }: Conversion): number {
  if (typeof value !== 'number' || typeof load !== 'number') return 0;
  if (from === 'power') return fromPower(value, to, load);
  if (from === 'current') return fromCurrent(value, to, load);
  return from === 'voltage' ? fromVoltage(value, to, load) : 0;
}

function fromPower(power: number, to: Quantity, load: number): number {
  if (to === 'current') return rootOfRatio(power, load);
  return to === 'voltage' ? rootOfProduct(power, load) : 0;
}

function fromCurrent(current: number, to: Quantity, load: number): number {
  if (to === 'power') return current > 0 ? current * load * current : 0;
  return to === 'voltage' ? current * load : 0;
}

function fromVoltage(voltage: number, to: Quantity, load: number): number {
  if (to === 'power') return voltage > 0 ? (voltage / load) * voltage : 0;
  return to === 'current' ? voltage / load : 0;
}

/** A conversion from a quantity to itself, of 0, or with a fault. */
function unusual(value: number, conversion: Conversion): number {
  const { from, to, load } = conversion;
  requireNonNegative(value, 'value');
  requirePositive(load, 'load');
  requireQuantity(from, 'from');
  requireQuantity(to, 'to');
  return value === 0 || from === to ? value : requirePositiveResult(converted(value, conversion), to);
}
