import { fail, requireNonNegative, requirePositive, requireResult } from '../../checks/index.js';
import { permittedActivationFormula } from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { requireThermal, type ThermalLoad } from './load-heating.js';

/** A load, the power in it, and how warm it may become. */
export interface ActivationQuestion extends ThermalLoad {
  /** Power in the load, in watts, greater than 0. */
  readonly power: number;
  /** Highest permitted temperature above the surroundings, in kelvins, greater than 0. */
  readonly maximumRise: number;
  /** Temperature above the surroundings at the beginning, in kelvins, below the highest; 0 unless stated. */
  readonly initialRise?: number;
}

/** How long a load may be activated. */
export interface PermittedActivation {
  /** Longest activation, in seconds; absent where the load never becomes too warm. */
  readonly duration?: number;
  /** The rise that an endless activation would reach, in kelvins. */
  readonly finalRise: number;
  readonly working: readonly Step[];
}

/**
 * The longest activation after which a load is not warmer than permitted.
 *
 * @param question Power, thermal resistance and time constant, highest rise, rise at the beginning
 * @returns The time, in seconds, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `out-of-range` (too warm at the beginning)
 * @source Newton's law of cooling with a constant power, solved for the time
 * @accuracy Within 4 units in the last place
 * @example
 * ```ts
 * import { permittedActivation } from 'esu-limits';
 * const load = { thermalResistance: 2, timeConstant: 120, maximumRise: 100 };
 * permittedActivation({ ...load, power: 100 }).duration?.toFixed(1); // → "83.2"
 * permittedActivation({ ...load, power: 40 }).duration; // → undefined
 * ```
 */
export function permittedActivation(question: ActivationQuestion): PermittedActivation {
  const { T_f, tau, working } = requireThermal(question);
  const T_m = requirePositive(question.maximumRise, 'maximumRise');
  const T_0 = requireNonNegative(question.initialRise ?? 0, 'initialRise');
  if (T_0 >= T_m) fail('out-of-range', 'initialRise', T_0, `must be below the highest permitted rise, ${T_m}`);
  if (T_f <= T_m) return { finalRise: T_f, working };
  const duration = requireResult(tau * Math.log1p((T_m - T_0) / (T_f - T_m)), 'duration');
  const made = step(permittedActivationFormula, 'longest activation', { tau, T_m, T_0, T_f }, duration);
  return { duration, finalRise: T_f, working: [...working, made] };
}
