import { requireNonNegative, requirePositive, requirePositiveResult, requireResult } from '../../checks/index.js';
import {
  dissipatedEnergyFormula,
  finalRiseFormula,
  temperatureRiseFormula,
} from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';

/** A load as one thermal resistance and one time constant. */
export interface ThermalLoad {
  /** Thermal resistance to the surroundings, in kelvins per watt, greater than 0. */
  readonly thermalResistance: number;
  /** Thermal time constant, in seconds, greater than 0. */
  readonly timeConstant: number;
}

/** An activation into a load. */
export interface Heating extends ThermalLoad {
  /** Power in the load, in watts, 0 or more. */
  readonly power: number;
  /** Length of the activation, in seconds, 0 or more. */
  readonly duration: number;
  /** Temperature above the surroundings at its beginning, in kelvins; 0 unless stated. */
  readonly initialRise?: number;
}

/** How far a load has warmed. */
export interface LoadHeating {
  /** Temperature above the surroundings at the end, in kelvins. */
  readonly rise: number;
  /** The rise that an endless activation would reach, in kelvins. */
  readonly finalRise: number;
  /** Energy turned into heat, in joules. */
  readonly energy: number;
  readonly working: readonly Step[];
}

/**
 * Temperature rise of a load at the end of an activation, with one time constant.
 *
 * @param heating Power, duration, thermal resistance and time constant, rise at the beginning
 * @returns Rise at the end and in the long run, energy, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `result-out-of-range`
 * @source Newton's law of cooling with a constant power
 * @accuracy Within 3 units in the last place
 * @example
 * ```ts
 * import { loadHeating } from 'esu-limits';
 * const heating = { power: 100, duration: 30, thermalResistance: 2, timeConstant: 120 };
 * loadHeating(heating).rise.toFixed(2); // → "44.24"
 * ```
 */
export function loadHeating(heating: Heating): LoadHeating {
  const P = requireNonNegative(heating.power, 'power');
  const R_th = requirePositive(heating.thermalResistance, 'thermalResistance');
  const tau = requirePositive(heating.timeConstant, 'timeConstant');
  const t = requireNonNegative(heating.duration, 'duration');
  const T_0 = requireNonNegative(heating.initialRise ?? 0, 'initialRise');
  const finalRise = requireResult(P * R_th, 'finalRise');
  const rise = requireResult(T_0 * Math.exp(-t / tau) - finalRise * Math.expm1(-t / tau), 'rise');
  const energy = requireResult(P * t, 'energy');
  const working = [
    step(finalRiseFormula, 'rise in the long run', { P, R_th }, finalRise),
    step(temperatureRiseFormula, 'rise at the end', { T_0, T_f: finalRise, t, tau }, rise),
    step(dissipatedEnergyFormula, 'energy turned into heat', { P, t }, energy),
  ];
  return { rise, finalRise, energy, working };
}

/** Checked power, thermal resistance and time constant, with the rise in the long run. */
export function requireThermal(load: ThermalLoad & { readonly power: number }): {
  T_f: number;
  tau: number;
  working: Step[];
} {
  const P = requirePositive(load.power, 'power');
  const R_th = requirePositive(load.thermalResistance, 'thermalResistance');
  const tau = requirePositive(load.timeConstant, 'timeConstant');
  const T_f = requirePositiveResult(P * R_th, 'finalRise');
  return { T_f, tau, working: [step(finalRiseFormula, 'rise in the long run', { P, R_th }, T_f)] };
}
