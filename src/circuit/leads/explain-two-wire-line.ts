import { twoWireCapacitanceFormula, twoWireInductanceFormula } from '../../working/formulas/circuit-effects.js';
import { type ExplainedLine, explainedLine } from './explain-line.js';
import { type TwoWires, twoWireLine } from './two-wire-line.js';

/**
 * `twoWireLine` with its working.
 *
 * @param wires Spacing, diameter, permittivity
 * @returns Constants by length, with the steps that lead to them
 * @throws CalculationError as `twoWireLine`
 * @source Electrostatics of two parallel cylinders
 * @example
 * ```ts
 * import { explainTwoWireLine } from 'esu-limits';
 * explainTwoWireLine({ spacing: 20e-3, diameter: 1e-3 }).working[0]?.expression; // → "8e-7 * asinh(sqrt((D - d) / (2 * d)))"
 * ```
 */
export function explainTwoWireLine(wires: TwoWires): ExplainedLine {
  const { spacing: D, diameter: d, relativePermittivity = 1 } = wires;
  const line = twoWireLine(wires);
  return explainedLine(line, twoWireInductanceFormula, twoWireCapacitanceFormula, { D, d }, relativePermittivity);
}
