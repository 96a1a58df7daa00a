import {
  currentFromPowerFormula,
  currentFromVoltageFormula,
  powerFromCurrentFormula,
  powerFromVoltageFormula,
  voltageFromCurrentFormula,
  voltageFromPowerFormula,
} from '../working/formulas/circuit.js';
import { type Formula, type Step, step } from '../working/index.js';
import { type Conversion, convertQuantity } from './convert-quantity.js';
import { type Quantity, quantitySymbols } from './quantity.js';

/** How the steps of a conversion are named. */
export interface ConversionNaming {
  /** Added to the symbol: `lower` gives `I_lower`. None unless stated. */
  readonly subscript?: string;
  /** What the result is, in a few words; the name of the quantity unless stated. */
  readonly label?: string;
}

/** A value with the steps that lead to it. */
export interface ExplainedValue {
  /** In the unit of its step: of a conversion watts, amperes or volts. */
  readonly value: number;
  /** One step; none where nothing is converted. */
  readonly working: readonly Step[];
}

const formulas: Readonly<Record<Quantity, Partial<Record<Quantity, Formula>>>> = {
  power: { current: currentFromPowerFormula, voltage: voltageFromPowerFormula },
  current: { power: powerFromCurrentFormula, voltage: voltageFromCurrentFormula },
  voltage: { power: powerFromVoltageFormula, current: currentFromVoltageFormula },
};

/**
 * `convertQuantity` with its working.
 *
 * @param value Value to convert, in watts, amperes or volts, 0 or more
 * @param conversion Quantity of the value, wanted quantity, load
 * @param naming Subscript and label of the step
 * @returns The converted value and its step
 * @throws CalculationError as `convertQuantity`
 * @source Ohm's law and Joule's law
 * @example
 * ```ts
 * import { explainConversion } from 'esu-limits';
 * explainConversion(45, { from: 'power', to: 'voltage', load: 500 }).working[0]?.expression; // → "sqrt(P * R)"
 * ```
 */
export function explainConversion(
  value: number,
  conversion: Conversion,
  { subscript, label }: ConversionNaming = {},
): ExplainedValue {
  const { from, to, load } = conversion;
  const converted = convertQuantity(value, conversion);
  const formula = formulas[from][to];
  if (formula === undefined) return { value: converted, working: [] };
  const inputs = { [quantitySymbols[from]]: value, R: load };
  const symbol = subscript === undefined ? formula.symbol : `${formula.symbol}_${subscript}`;
  return { value: converted, working: [step(formula, label ?? to, inputs, converted, { symbol })] };
}
