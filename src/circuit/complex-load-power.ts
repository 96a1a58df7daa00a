import { fail, requireFinite, requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';
import {
  apparentPowerFormula,
  currentThroughImpedanceFormula,
  impedanceMagnitudeFormula,
  phaseOfLoadFormula,
  powerFactorFormula,
  powerFromCurrentFormula,
  reactivePowerFormula,
  voltageAcrossImpedanceFormula,
} from '../working/formulas/circuit.js';
import { type Step, step } from '../working/index.js';

/** A load with reactance, at a given voltage or a given current. */
export interface ComplexLoad {
  /** Series resistance, in ohms, 0 or more. */
  readonly resistance: number;
  /** Series reactance, in ohms: positive when inductive, negative when capacitive. */
  readonly reactance: number;
  /** Rms voltage across the load, in volts, greater than 0: this or `current`. */
  readonly voltage?: number;
  /** Rms current in the load, in amperes, greater than 0: this or `voltage`. */
  readonly current?: number;
}

/** What a load with reactance takes from a sinusoidal source. */
export interface ComplexPower {
  /** Magnitude of the impedance, in ohms. */
  readonly impedance: number;
  /** Phase of the voltage ahead of the current, in radians: positive when inductive. */
  readonly phase: number;
  /** Rms voltage, in volts. */
  readonly voltage: number;
  /** Rms current, in amperes. */
  readonly current: number;
  /** Product of voltage and current, in volt-amperes. */
  readonly apparentPower: number;
  /** Power that the load turns into heat, in watts. */
  readonly activePower: number;
  /** Power that swings to and fro, in var: positive when inductive. */
  readonly reactivePower: number;
  /** Active over apparent power, 0–1; the sign of `phase` tells lagging (positive) from leading. */
  readonly powerFactor: number;
  readonly working: readonly Step[];
}

/**
 * Apparent, active and reactive power, power factor and phase of a load with reactance,
 * for a sinusoidal voltage or current.
 *
 * @param load Resistance and reactance in series, with exactly one of voltage and current
 * @returns All of it, with the working
 * @throws CalculationError `wrong-count`, `not-a-number`, `negative`, `not-positive`, `result-out-of-range`
 * @source Definition of the quantities; Ohm's law for a sinusoidal quantity
 * @accuracy Within 4 units in the last place
 * @example
 * ```ts
 * import { complexLoadPower } from 'esu-limits';
 * const { impedance, activePower, reactivePower, powerFactor } =
 *   complexLoadPower({ resistance: 300, reactance: 400, current: 0.5 });
 * [impedance, activePower, reactivePower, powerFactor]; // → [500, 75, 100, 0.6]
 * ```
 */
export function complexLoadPower(load: ComplexLoad): ComplexPower {
  const R = requireNonNegative(load.resistance, 'resistance');
  const X = requireFinite(load.reactance, 'reactance');
  if ((load.voltage === undefined) === (load.current === undefined)) {
    fail('wrong-count', '', load.voltage === undefined ? 'neither' : 'both', 'give exactly one of voltage and current');
  }
  if (R === 0 && X === 0) fail('not-positive', 'resistance', R, 'must be greater than 0 where there is no reactance');

  const Z = requirePositiveResult(Math.hypot(R, X), 'impedance');
  const working: Step[] = [step(impedanceMagnitudeFormula, 'magnitude of the impedance', { R, X }, Z)];
  let I: number;
  let V: number;
  if (load.current !== undefined) {
    I = requirePositive(load.current, 'current');
    V = requirePositiveResult(I * Z, 'voltage');
    working.push(step(voltageAcrossImpedanceFormula, 'voltage', { I, Z }, V));
  } else {
    V = requirePositive(load.voltage as number, 'voltage');
    I = requirePositiveResult(V / Z, 'current');
    working.push(step(currentThroughImpedanceFormula, 'current', { V, Z }, I));
  }
  // A part that is exactly 0 gives 0; any other must not fade to it.
  const partOf = (part: number, path: string): number =>
    part === 0 ? 0 : Math.sign(part) * requirePositiveResult(I * Math.abs(part) * I, path);
  const phase = Math.atan2(X, R);
  const apparentPower = requirePositiveResult(V * I, 'apparentPower');
  const activePower = partOf(R, 'activePower');
  const reactivePower = partOf(X, 'reactivePower');
  const powerFactor = R / Z;
  working.push(
    step(phaseOfLoadFormula, 'phase of the voltage ahead of the current', { X, R }, phase),
    step(apparentPowerFormula, 'apparent power', { V, I }, apparentPower),
    step(powerFromCurrentFormula, 'active power', { I, R }, activePower),
    step(reactivePowerFormula, 'reactive power', { I, X }, reactivePower),
    step(powerFactorFormula, 'power factor', { R, Z }, powerFactor),
  );
  return {
    impedance: Z,
    phase,
    voltage: V,
    current: I,
    apparentPower,
    activePower,
    reactivePower,
    powerFactor,
    working,
  };
}
