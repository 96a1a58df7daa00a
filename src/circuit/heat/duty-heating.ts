import { requireNonNegative, requirePositive, requireResult } from '../../checks/index.js';
import { dutyRiseFormula } from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { requireThermal, type ThermalLoad } from './load-heating.js';

/** Activations and pauses of a duty that goes on and on. */
export interface DutyQuestion extends ThermalLoad {
  /** Power in the load during an activation, in watts, greater than 0. */
  readonly power: number;
  /** Length of each activation, in seconds, greater than 0. */
  readonly on: number;
  /** Length of each pause, in seconds, 0 or more. */
  readonly off: number;
}

/** How warm a load becomes on a duty. */
export interface DutyHeating {
  /** Temperature above the surroundings at the end of an activation, after many, in kelvins: none is warmer. */
  readonly rise: number;
  /** The same at the end of a pause, in kelvins. */
  readonly riseAfterPause: number;
  /** The rise that an endless activation would reach, in kelvins. */
  readonly finalRise: number;
  /** Power that the load takes on the mean, in watts: what its continuous rating is compared with. */
  readonly meanPower: number;
  readonly working: readonly Step[];
}

/**
 * Temperature rise of a load on a duty of activations and pauses that goes on and on, with one time constant.
 *
 * @param duty Power, activation, pause, thermal resistance and time constant
 * @returns Rise at the end of an activation and of a pause, mean power, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `result-out-of-range`
 * @source Newton's law of cooling: a load that begins and ends a period at the same temperature
 * @accuracy Within 4 units in the last place
 * @example
 * ```ts
 * import { dutyHeating } from 'esu-limits';
 * const load = { thermalResistance: 2, timeConstant: 120 };
 * const { rise, meanPower } = dutyHeating({ ...load, power: 100, on: 10, off: 30 });
 * [rise.toFixed(1), meanPower]; // → ["56.4", 25]
 * ```
 */
export function dutyHeating(duty: DutyQuestion): DutyHeating {
  const { T_f, tau, working } = requireThermal(duty);
  const t = requirePositive(duty.on, 'on');
  const t_p = requireNonNegative(duty.off, 'off');
  const rise = requireResult((T_f * Math.expm1(-t / tau)) / Math.expm1(-(t + t_p) / tau), 'rise');
  return {
    rise,
    riseAfterPause: rise * Math.exp(-t_p / tau),
    finalRise: T_f,
    meanPower: duty.power * (t / (t + t_p)),
    working: [...working, step(dutyRiseFormula, 'rise at the end of an activation', { T_f, t, t_p, tau }, rise)],
  };
}
