import { fail, requirePositive, requireResult } from '../../checks/index.js';
import { requiredPauseFormula, startRiseFormula } from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { requireThermal, type ThermalLoad } from './load-heating.js';

/** Activations that follow each other, and how warm the load may become. */
export interface PauseQuestion extends ThermalLoad {
  /** Power in the load, in watts, greater than 0. */
  readonly power: number;
  /** Length of each activation, in seconds, greater than 0. */
  readonly duration: number;
  /** Highest permitted temperature above the surroundings, in kelvins, greater than 0. */
  readonly maximumRise: number;
}

/** The pause between activations that go on for ever. */
export interface RequiredPause {
  /** Shortest pause, in seconds; 0 where none is needed. */
  readonly pause: number;
  /** Rise to which the load cools by then, in kelvins; absent where no pause is needed. */
  readonly startRise?: number;
  readonly working: readonly Step[];
}

/**
 * The shortest pause after which a load can take the same activation again, and so on for ever.
 *
 * @param question Power, activation, thermal resistance and time constant, highest rise
 * @returns The pause, in seconds, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range` (an activation too long even for a cold load),
 * `result-out-of-range`
 * @source Newton's law of cooling; the load cools from the highest rise to that from which it may be warmed again
 * @accuracy Within 1e-14 (relative) of the time constant
 * @example
 * ```ts
 * import { requiredPause } from 'esu-limits';
 * const load = { thermalResistance: 2, timeConstant: 120, maximumRise: 100 };
 * requiredPause({ ...load, power: 100, duration: 30 }).pause.toFixed(1); // → "40.1"
 * ```
 */
export function requiredPause(question: PauseQuestion): RequiredPause {
  const { T_f, tau, working } = requireThermal(question);
  const t = requirePositive(question.duration, 'duration');
  const T_m = requirePositive(question.maximumRise, 'maximumRise');
  if (T_f <= T_m) return { pause: 0, working };
  const startRise = T_m - (T_f - T_m) * Math.expm1(t / tau);
  if (!(startRise > 0)) {
    fail('out-of-range', 'duration', t, 'must be short enough that even a cold load stays below the highest rise');
  }
  const pause = requireResult(tau * Math.log(T_m / startRise), 'pause');
  working.push(
    step(startRiseFormula, 'rise from which the load may be activated again', { T_m, T_f, t, tau }, startRise),
    step(requiredPauseFormula, 'shortest pause', { tau, T_m, T_s: startRise }, pause),
  );
  return { pause, startRise, working };
}
