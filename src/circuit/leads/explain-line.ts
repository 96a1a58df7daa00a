import { characteristicImpedanceFormula, lineVelocityFormula } from '../../working/formulas/leads.js';
import { type Formula, type Step, step } from '../../working/index.js';
import type { LineConstants } from './line.js';

/** Constants of a pair of conductors, with the steps that lead to them. */
export interface ExplainedLine extends LineConstants {
  readonly working: readonly Step[];
}

/** The steps of a line: inductance and capacitance from its build, then what follows from these. */
export function explainedLine(
  line: LineConstants,
  inductance: Formula,
  capacitance: Formula,
  build: Readonly<Record<string, number>>,
  epsilon_r: number,
): ExplainedLine {
  const { inductance: L_l, capacitance: C_l, characteristicImpedance, velocity } = line;
  return {
    ...line,
    working: [
      step(inductance, 'inductance by length, both leads', build, L_l),
      step(capacitance, 'capacitance by length', { ...build, epsilon_r }, C_l),
      step(characteristicImpedanceFormula, 'characteristic impedance', { L_l, C_l }, characteristicImpedance),
      step(lineVelocityFormula, 'velocity of a wave', { L_l, C_l }, velocity),
    ],
  };
}
