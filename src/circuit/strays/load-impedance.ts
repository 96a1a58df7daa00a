import { requirePositive, requirePositiveResult, requireResult } from '../../checks/index.js';
import { impedanceMagnitudeFormula, phaseOfLoadFormula, powerFactorFormula } from '../../working/formulas/circuit.js';
import {
  capacitivePartFormula,
  inductivePartFormula,
  seriesReactanceFormula,
  seriesResistanceFormula,
} from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { type LoadAtFrequency, partsOf, requireLoad } from './load-with-strays.js';

/** Impedance of a load at one frequency. */
export interface LoadImpedance {
  /** Resistance that it shows in series, in ohms: lower than its own where there is a capacitance across it. */
  readonly resistance: number;
  /** Reactance that it shows in series, in ohms: positive when inductive. */
  readonly reactance: number;
  /** Magnitude, in ohms. */
  readonly impedance: number;
  /** Phase of the voltage ahead of the current, in radians: positive when inductive. */
  readonly phase: number;
  /** Active over apparent power, 0–1. */
  readonly powerFactor: number;
  readonly working: readonly Step[];
}

/**
 * Impedance of a load with a series inductance and a parallel capacitance: Z = jωL + R/(1 + jωRC).
 *
 * @param load Resistance, strays and frequency
 * @returns Resistance, reactance, magnitude, phase and power factor, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `result-out-of-range`
 * @source Impedance of R, L and C for a sinusoidal quantity
 * @accuracy Within 4 units in the last place of the magnitude
 * @example
 * ```ts
 * import { loadImpedance } from 'esu-limits';
 * const load = loadImpedance({ resistance: 2000, parallelCapacitance: 20e-12, frequency: 500e3 });
 * (load.phase * 180 / Math.PI).toFixed(2); // → "-7.16"
 * load.impedance.toFixed(1); // → "1984.4"
 * ```
 */
export function loadImpedance(load: LoadAtFrequency): LoadImpedance {
  const checked = requireLoad(load);
  const f = requirePositive(load.frequency, 'frequency');
  const { R, L, C } = checked;
  const { y, x } = partsOf(checked, f);
  const resistance = requirePositiveResult(R / (1 + x * x), 'resistance');
  const reactance = requireResult(R * (y - x / (1 + x * x)), 'reactance');
  const impedance = requirePositiveResult(Math.hypot(resistance, reactance), 'impedance');
  const phase = Math.atan2(reactance, resistance);
  const powerFactor = resistance / impedance;
  const working = [
    step(inductivePartFormula, 'reactance of the inductance over the resistance', { f, L, R }, y),
    step(capacitivePartFormula, 'resistance over the reactance of the capacitance', { f, R, C }, x),
    step(seriesResistanceFormula, 'resistance in series', { R, x }, resistance),
    step(seriesReactanceFormula, 'reactance in series', { R, x, y }, reactance),
    step(impedanceMagnitudeFormula, 'magnitude of the impedance', { R: resistance, X: reactance }, impedance),
    step(phaseOfLoadFormula, 'phase of the voltage ahead of the current', { X: reactance, R: resistance }, phase),
    step(powerFactorFormula, 'power factor', { R: resistance, Z: impedance }, powerFactor),
  ];
  return { resistance, reactance, impedance, phase, powerFactor, working };
}
