import { fail, requirePositive } from '../checks/index.js';
import {
  currentFromPowerAndVoltageFormula,
  currentFromPowerFormula,
  currentFromVoltageFormula,
  loadFromCurrentAndVoltageFormula,
  loadFromPowerAndCurrentFormula,
  loadFromPowerAndVoltageFormula,
  powerFromCurrentAndVoltageFormula,
  powerFromCurrentFormula,
  powerFromVoltageFormula,
  voltageFromCurrentFormula,
  voltageFromPowerAndCurrentFormula,
  voltageFromPowerFormula,
} from '../working/formulas/circuit.js';
import { type Formula, type Step, step } from '../working/index.js';
import { currentFromPower } from './current-from-power.js';
import { currentFromPowerAndVoltage } from './current-from-power-and-voltage.js';
import { currentFromVoltage } from './current-from-voltage.js';
import { loadFromCurrentAndVoltage } from './load-from-current-and-voltage.js';
import { loadFromPowerAndCurrent } from './load-from-power-and-current.js';
import { loadFromPowerAndVoltage } from './load-from-power-and-voltage.js';
import { powerFromCurrent } from './power-from-current.js';
import { powerFromCurrentAndVoltage } from './power-from-current-and-voltage.js';
import { powerFromVoltage } from './power-from-voltage.js';
import { quantitySymbols } from './quantity.js';
import { voltageFromCurrent } from './voltage-from-current.js';
import { voltageFromPower } from './voltage-from-power.js';
import { voltageFromPowerAndCurrent } from './voltage-from-power-and-current.js';

/** Power, rms current, rms voltage and resistance of one resistive load, in SI units. */
export interface OhmicValues {
  /** In watts. */
  readonly power: number;
  /** In amperes, rms. */
  readonly current: number;
  /** In volts, rms. */
  readonly voltage: number;
  /** In ohms. */
  readonly load: number;
}

/** All four values, the two that were given and the two that follow, with the working. */
export interface OhmicSolution extends OhmicValues {
  readonly working: readonly Step[];
}

type Name = keyof OhmicValues;
type Relation = readonly [result: Name, formula: Formula, solve: (first: number, second: number) => number];

const symbols = { ...quantitySymbols, load: 'R' } as const;
const names: readonly Name[] = ['power', 'current', 'voltage', 'load'];

/** What follows from each pair, by the names of the pair in the order of `names`. */
const relations: Readonly<Record<string, readonly Relation[]>> = {
  'power,current': [
    ['voltage', voltageFromPowerAndCurrentFormula, voltageFromPowerAndCurrent],
    ['load', loadFromPowerAndCurrentFormula, loadFromPowerAndCurrent],
  ],
  'power,voltage': [
    ['current', currentFromPowerAndVoltageFormula, currentFromPowerAndVoltage],
    ['load', loadFromPowerAndVoltageFormula, loadFromPowerAndVoltage],
  ],
  'power,load': [
    ['current', currentFromPowerFormula, currentFromPower],
    ['voltage', voltageFromPowerFormula, voltageFromPower],
  ],
  'current,voltage': [
    ['power', powerFromCurrentAndVoltageFormula, powerFromCurrentAndVoltage],
    ['load', loadFromCurrentAndVoltageFormula, loadFromCurrentAndVoltage],
  ],
  'current,load': [
    ['power', powerFromCurrentFormula, powerFromCurrent],
    ['voltage', voltageFromCurrentFormula, voltageFromCurrent],
  ],
  'voltage,load': [
    ['power', powerFromVoltageFormula, powerFromVoltage],
    ['current', currentFromVoltageFormula, currentFromVoltage],
  ],
};

/**
 * Any two of power, rms current, rms voltage and load give the other two.
 * Exactly two: a third value would contradict the two, or hide that it does.
 *
 * @param known Two of the four, each greater than 0 (with a 0 the others cannot be told), in SI units
 * @returns All four, with the working of the two that were computed
 * @throws CalculationError `wrong-count`, `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { solveOhmic } from 'esu-limits';
 * const { power, load } = solveOhmic({ current: 0.5, voltage: 250 });
 * [power, load]; // → [125, 500]
 * ```
 */
export function solveOhmic(known: Partial<OhmicValues>): OhmicSolution {
  const given = names.filter((name) => known[name] !== undefined);
  const pair = relations[given.join()];
  if (pair === undefined) {
    return fail('wrong-count', '', given.join(', ') || 'none', 'give exactly two of power, current, voltage and load');
  }
  const [a, b] = given as [Name, Name];
  const first = requirePositive(known[a] as number, a);
  const second = requirePositive(known[b] as number, b);
  const inputs = { [symbols[a]]: first, [symbols[b]]: second };
  const working = pair.map(([result, formula, solve]) => step(formula, result, inputs, solve(first, second)));
  const solved = Object.fromEntries(pair.map(([result], i) => [result, working[i]?.value]));
  return { [a]: first, [b]: second, ...solved, working } as unknown as OhmicSolution;
}
