import { solenoidInductanceFormula } from '../../working/formulas/circuit-effects.js';
import { step } from '../../working/index.js';
import type { ExplainedInductance } from './explain-straight-wire-inductance.js';
import { reckonSolenoid, type Solenoid } from './solenoid-inductance.js';

/**
 * `solenoidInductance` with its working. The complete elliptic integrals, which have no closed form, stand in the step
 * as values.
 *
 * @param coil Diameter, length, turns
 * @returns Inductance, in henries, with its step
 * @throws CalculationError as `solenoidInductance`
 * @source L. Lorenz (1879), with the coefficient that H. Nagaoka tabulated (1909)
 * @example
 * ```ts
 * import { explainSolenoidInductance } from 'esu-limits';
 * const [made] = explainSolenoidInductance({ diameter: 5.4e-3, length: 9e-3, turns: 100 }).working;
 * [made?.inputs['D_e']?.toFixed(4), made?.inputs['E_k']?.toFixed(4)]; // → ["0.8794", "0.9465"]
 * ```
 */
export function explainSolenoidInductance(coil: Solenoid): ExplainedInductance {
  const { inductance, difference: D_e, rest: E_k } = reckonSolenoid(coil);
  const { diameter: d, length: l, turns: N } = coil;
  return {
    inductance,
    working: [step(solenoidInductanceFormula, 'inductance of the coil', { N, d, l, D_e, E_k }, inductance)],
  };
}
