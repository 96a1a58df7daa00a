import {
  strayCapacitanceAtPhaseFormula,
  strayInductanceAtPhaseFormula,
} from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { type PhaseQuestion, type StrayLimits, straysAtPhase } from './strays-at-phase.js';
import { testLoadPhase } from './test-load-phase.js';

/** Strays that bring a load to a phase, with the steps that lead to them. */
export interface ExplainedStrays extends StrayLimits {
  readonly working: readonly Step[];
}

/**
 * `straysAtPhase` with its working.
 *
 * @param question Resistance, frequency, phase
 * @returns Inductance in henries and capacitance in farads, with their steps
 * @throws CalculationError as `straysAtPhase`
 * @source Impedance of R with L in series or C in parallel
 * @example
 * ```ts
 * import { explainStraysAtPhase } from 'esu-limits';
 * const { working } = explainStraysAtPhase({ resistance: 50, frequency: 2.5e6 });
 * working.map(({ expression }) => expression); // → ["R * tan(phi) / (2 * pi * f)", "tan(phi) / (2 * pi * f * R)"]
 * ```
 */
export function explainStraysAtPhase(question: PhaseQuestion): ExplainedStrays {
  const strays = straysAtPhase(question);
  const { resistance: R, frequency: f, phase: phi = testLoadPhase.phase } = question;
  return {
    ...strays,
    working: [
      step(strayInductanceAtPhaseFormula, 'inductance in series', { R, phi, f }, strays.seriesInductance),
      step(strayCapacitanceAtPhaseFormula, 'capacitance across the load', { R, phi, f }, strays.parallelCapacitance),
    ],
  };
}
