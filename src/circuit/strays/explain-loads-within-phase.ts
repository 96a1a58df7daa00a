import {
  highestLoadFormula,
  loadRangeDiscriminantFormula,
  lowestLoadFormula,
  resonancePartFormula,
} from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { type LoadRange, type LoadsQuestion, reckonLoadRange } from './loads-within-phase.js';
import { testLoadPhase } from './test-load-phase.js';

/** Resistances whose phase stays within a limit, with the steps that lead to the ends. */
export interface ExplainedLoadRange extends LoadRange {
  readonly working: readonly Step[];
}

/**
 * `loadsWithinPhase` with its working.
 *
 * @param question Strays, frequency, phase
 * @returns Lowest and highest resistance, in ohms, with the steps that lead to each, or to a discriminant below 0
 * @throws CalculationError as `loadsWithinPhase`
 * @source tan φ = ωL/R − ωRC·(1 − ω²LC), solved for R
 * @example
 * ```ts
 * import { explainLoadsWithinPhase } from 'esu-limits';
 * const box = { seriesInductance: 0.5e-6, parallelCapacitance: 15e-12, frequency: 2.5e6 };
 * explainLoadsWithinPhase(box).working.map(({ symbol }) => symbol); // → ["u", "D", "R_l", "R_u"]
 * ```
 */
export function explainLoadsWithinPhase(question: LoadsQuestion): ExplainedLoadRange {
  const { range, u, discriminant: D } = reckonLoadRange(question);
  const {
    seriesInductance: L = 0,
    parallelCapacitance: C = 0,
    frequency: f,
    phase: phi = testLoadPhase.phase,
  } = question;
  const { lower, upper } = range;
  const working = [
    step(resonancePartFormula, 'reactance of the inductance over that of the capacitance', { f, L, C }, u),
    step(loadRangeDiscriminantFormula, 'discriminant', { phi, u }, D),
  ];
  if (lower) working.push(step(lowestLoadFormula, 'lowest load', { f, L, phi, D }, lower));
  if (upper) working.push(step(highestLoadFormula, 'highest load', { phi, D, f, C, u }, upper));
  return { ...range, working };
}
