import { skinDepthFormula } from '../../working/formulas/circuit-effects.js';
import type { ExplainedValue } from '../explain-conversion.js';
import { explained } from '../explained.js';
import { type ConductorAtFrequency, skinDepth } from './skin-depth.js';

/**
 * `skinDepth` with its working.
 *
 * @param conductor Resistivity, frequency, permeability
 * @returns Skin depth, in metres, with its step
 * @throws CalculationError as `skinDepth`
 * @source Diffusion of a sinusoidal field into a plane conductor
 * @example
 * ```ts
 * import { explainSkinDepth } from 'esu-limits';
 * const { working } = explainSkinDepth({ resistivity: 1.68e-8, frequency: 500e3 });
 * working[0]?.expression; // → "sqrt(rho / (pi * f * 4e-7 * pi * mu_r))"
 * ```
 */
export function explainSkinDepth(conductor: ConductorAtFrequency): ExplainedValue {
  const { resistivity: rho, frequency: f, relativePermeability: mu_r = 1 } = conductor;
  return explained(skinDepthFormula, 'skin depth', { rho, f, mu_r }, skinDepth(conductor));
}
