import { coaxialCapacitanceFormula, coaxialInductanceFormula } from '../../working/formulas/circuit-effects.js';
import { type CoaxialConductors, coaxialLine } from './coaxial-line.js';
import { type ExplainedLine, explainedLine } from './explain-line.js';

/**
 * `coaxialLine` with its working.
 *
 * @param line Diameters, permittivity
 * @returns Constants by length, with the steps that lead to them
 * @throws CalculationError as `coaxialLine`
 * @source Electrostatics of two coaxial cylinders
 * @example
 * ```ts
 * import { explainCoaxialLine } from 'esu-limits';
 * const cable = { innerDiameter: 0.9e-3, outerDiameter: 3.15e-3, relativePermittivity: 2.25 };
 * explainCoaxialLine(cable).working[2]?.value.toFixed(2); // → "50.08"
 * ```
 */
export function explainCoaxialLine(line: CoaxialConductors): ExplainedLine {
  const { innerDiameter: d_i, outerDiameter: d_o, relativePermittivity = 1 } = line;
  const constants = coaxialLine(line);
  const build = { d_o, d_i };
  return explainedLine(constants, coaxialInductanceFormula, coaxialCapacitanceFormula, build, relativePermittivity);
}
