import { roundWireRatioFormula, roundWireResistanceFormula } from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { explainSkinDepth } from './explain-skin-depth.js';
import { type RoundWire, reckonRoundWire, type WireResistance } from './round-wire-resistance.js';

/** Resistance of a round wire, with the steps that lead to it. */
export interface ExplainedWireResistance extends WireResistance {
  /** The quotient of Bessel functions, which has no closed form, stands in the step of the ratio as a value. */
  readonly working: readonly Step[];
}

/**
 * `roundWireResistance` with its working.
 *
 * @param wire Resistivity, frequency, diameter, length
 * @returns The same figures, with the steps that lead to each
 * @throws CalculationError as `roundWireResistance`
 * @source Impedance of a round wire by Bessel functions, Z' = ρm·I₀(ma)/(2πa·I₁(ma)), m = (1 + j)/δ
 * @example
 * ```ts
 * import { explainRoundWireResistance } from 'esu-limits';
 * const wire = { resistivity: 1.68e-8, frequency: 500e3, diameter: 1e-3, length: 2 };
 * const [, , ratio] = explainRoundWireResistance(wire).working;
 * [ratio?.inputs['B_re']?.toFixed(4), ratio?.inputs['B_im']?.toFixed(4)]; // → ["1.0453", "-0.0531"]
 * ```
 */
export function explainRoundWireResistance(wire: RoundWire): ExplainedWireResistance {
  const { seen, a: r, delta, quotient } = reckonRoundWire(wire);
  const { resistivity: rho, length: l } = wire;
  const { resistance, directCurrentResistance, ratio: k_R } = seen;
  const { re: B_re, im: B_im } = quotient;
  return {
    ...seen,
    working: [
      ...explainSkinDepth(wire).working,
      step(roundWireResistanceFormula, 'resistance for direct current', { k_R: 1, rho, l, r }, directCurrentResistance),
      step(roundWireRatioFormula, 'ratio at the frequency', { r, delta, B_re, B_im }, k_R),
      step(roundWireResistanceFormula, 'resistance at the frequency', { k_R, rho, l, r }, resistance),
    ],
  };
}
