import type { Step } from '../../working/index.js';
import { type FrequencyQuestion, frequencyOfPhase, type PhaseFrequency } from './frequency-of-phase.js';
import { loadImpedance } from './load-impedance.js';

/** The frequency up to which a load is good, with the steps that show it. */
export interface ExplainedFrequency extends PhaseFrequency {
  /** The impedance at the frequency: its phase is the limit, inductive or capacitive. Empty for a load without strays. */
  readonly working: readonly Step[];
}

/**
 * `frequencyOfPhase` with the working of the impedance there. The frequency solves an equation of the third degree, and
 * the steps show that it does: the phase that they come to is the limit.
 *
 * @param question Resistance, strays, phase
 * @returns The frequency, in hertz, with the steps
 * @throws CalculationError as `frequencyOfPhase` and `loadImpedance`
 * @source tan φ = ω(L/R − RC) + ω³LRC², solved for ω
 * @example
 * ```ts
 * import { explainFrequencyOfPhase } from 'esu-limits';
 * const { working } = explainFrequencyOfPhase({ resistance: 50, seriesInductance: 0.5e-6 });
 * const phase = working.find(({ formula }) => formula === 'phase-of-load')?.value ?? 0;
 * ((phase * 180) / Math.PI).toFixed(9); // → "8.500000000"
 * ```
 */
export function explainFrequencyOfPhase(question: FrequencyQuestion): ExplainedFrequency {
  const found = frequencyOfPhase(question);
  const { frequency } = found;
  return { ...found, working: frequency ? loadImpedance({ ...question, frequency }).working : [] };
}
