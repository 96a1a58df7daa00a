import { atPath, fail } from '../checks/index.js';
import type { Quantity } from '../circuit/index.js';
import {
  type AccuracyStatement,
  type LoadStatement,
  loadErrors,
  type Propagated,
  propagate,
  type ReadingConditions,
  readingErrors,
  type UncertainInput,
  type Values,
} from '../uncertainty/index.js';

/** The instrument that a leakage was read with: what its maker states, and the conditions of the reading. */
export interface LeakageInstrument extends Omit<ReadingConditions, 'reading'> {
  /** For the quantity that was read. */
  readonly accuracy: AccuracyStatement;
}

/** What is known of the measuring resistor: one of tolerance and certificate, and the limits of strays. */
export type MeasuringResistor = Pick<LoadStatement, 'tolerance' | 'certificate' | 'strays'>;

/** What a budget of a leakage needs. */
export interface LeakageBudgetInput {
  readonly reading: number;
  readonly quantity: Quantity;
  /** Leakage at the nominal resistance, in amperes. */
  readonly current: number;
  readonly measuringResistance: number;
  /** As of `NominalLeakage`; absent where the path is unknown. */
  readonly exponent: number | undefined;
  readonly instrument: LeakageInstrument;
  readonly resistor: MeasuringResistor | undefined;
}

/** Exponent with which the resistance enters when the reading becomes a current: I, V/R, √(P/R). */
const conversionExponents: Readonly<Record<Quantity, number>> = { current: 0, voltage: -1, power: -0.5 };

/** Budget of a leakage at the nominal resistance, in amperes: errors of the instrument and of the measuring resistor. */
export function leakageBudget(input: LeakageBudgetInput): Propagated {
  const { reading, quantity, current, measuringResistance, instrument, resistor = {} } = input;
  if (quantity === 'power' && reading === 0) {
    fail(
      'not-positive',
      'reading',
      reading,
      'must be greater than 0: a power of 0 fixes no uncertainty of the current',
    );
  }
  const unit = { power: 'W', current: 'A', voltage: 'V' }[quantity];
  const errors = atPath('instrument', () => readingErrors(instrument.accuracy, { ...instrument, reading }, unit));
  const ofResistor = atPath('resistor', () => loadErrors({ ...resistor, resistance: measuringResistance }));
  const readingNames = Object.keys(errors);
  const resistorNames = Object.keys(ofResistor);
  const inputs: Record<string, UncertainInput> = { ...errors, ...ofResistor };
  const e = resistanceExponent(quantity, input.exponent);
  const ratio = (x: Values): number => resistorNames.reduce((product, name) => product * (1 + (x[name] as number)), 1);
  const power = quantity === 'power' ? 0.5 : 1;
  // Leakage for one unit of the quantity read; of a reading of 0 the same for any other.
  const perUnit = sensitivityOf(quantity, current, reading, measuringResistance);
  const evaluate = (x: Values): number => {
    const error = readingNames.reduce((sum, name) => sum + (x[name] as number), 0);
    const shown = reading === 0 ? perUnit * error : current * (1 + error / reading) ** power;
    return shown * ratio(x) ** e;
  };
  const sensitivities: Record<string, (x: Values) => number> = {};
  // The inputs are all 0, so that the derivatives are those at the reading itself.
  for (const name of readingNames) sensitivities[name] = () => perUnit;
  for (const name of resistorNames) sensitivities[name] = () => e * current;
  return propagate({ evaluate, sensitivities }, inputs, { secondOrder: false });
}

/** d ln I_N / d ln R at the same reading. Where the path is unknown: the one that counts most. */
function resistanceExponent(quantity: Quantity, exponent: number | undefined): number {
  const conversion = conversionExponents[quantity];
  if (exponent !== undefined) return conversion + exponent;
  return conversion + 1 > -conversion ? conversion + 1 : conversion;
}

function sensitivityOf(quantity: Quantity, current: number, reading: number, resistance: number): number {
  if (reading === 0) return quantity === 'voltage' ? 1 / resistance : 1;
  return quantity === 'power' ? current / reading / 2 : current / reading;
}
