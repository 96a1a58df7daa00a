import { straightWireSurfaceFormula, straightWireUniformFormula } from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { type StraightWire, straightWireInductance } from './straight-wire-inductance.js';

/** An inductance with the step that leads to it. */
export interface ExplainedInductance {
  /** In henries. */
  readonly inductance: number;
  readonly working: readonly Step[];
}

/**
 * `straightWireInductance` with its working.
 *
 * @param wire Length, diameter, where the current flows
 * @returns Inductance, in henries, with its step
 * @throws CalculationError as `straightWireInductance`
 * @source E. B. Rosa, The self and mutual inductances of linear conductors, Bulletin of the Bureau of Standards 4 (1908)
 * @example
 * ```ts
 * import { explainStraightWireInductance } from 'esu-limits';
 * explainStraightWireInductance({ length: 1, diameter: 1e-3 }).working[0]?.source; // → "rosa-1908"
 * ```
 */
export function explainStraightWireInductance(wire: StraightWire): ExplainedInductance {
  const inductance = straightWireInductance(wire);
  const formula = wire.current === 'uniform' ? straightWireUniformFormula : straightWireSurfaceFormula;
  return {
    inductance,
    working: [step(formula, 'inductance of the wire', { l: wire.length, r: wire.diameter / 2 }, inductance)],
  };
}
