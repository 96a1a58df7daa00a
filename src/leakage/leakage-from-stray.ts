import { requirePositive, requirePositiveResult } from '../checks/index.js';
import { leakageFromStrayFormula } from '../working/formulas/leakage.js';
import { type Step, step } from '../working/index.js';

/** A stray capacitance that couples an output to the measuring resistor. */
export interface StrayPath {
  /** Rms voltage to earth of the conductor that couples, in volts, greater than 0. */
  readonly voltage: number;
  /** In farads, greater than 0. */
  readonly capacitance: number;
  /** Carrier frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /** In ohms, greater than 0; 200 unless stated. */
  readonly measuringResistance?: number;
}

/** The leakage of a stray path. */
export interface StrayLeakage {
  /** In amperes rms. */
  readonly current: number;
  readonly working: readonly Step[];
}

/**
 * HF leakage that a stray capacitance drives through the measuring resistor: V/√(R² + 1/(ωC)²).
 *
 * It holds for a sinusoidal output: harmonics pass a capacitance more easily, so that other waveforms give more.
 *
 * @param path Voltage, capacitance, frequency, measuring resistor
 * @returns Leakage, with the step
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law for R and C in series
 * @accuracy Within 5 units in the last place
 * @example
 * ```ts
 * import { leakageFromStray } from 'esu-limits/leakage';
 * const { current } = leakageFromStray({ voltage: 300, capacitance: 100e-12, frequency: 500e3 });
 * (current * 1000).toFixed(1); // → "94.1"
 * ```
 */
export function leakageFromStray({
  voltage,
  capacitance,
  frequency,
  measuringResistance = 200,
}: StrayPath): StrayLeakage {
  const V = requirePositive(voltage, 'voltage');
  const C = requirePositive(capacitance, 'capacitance');
  const f = requirePositive(frequency, 'frequency');
  const R = requirePositive(measuringResistance, 'measuringResistance');
  const current = requirePositiveResult(V / Math.hypot(R, 1 / (2 * Math.PI * f * C)), 'current');
  return {
    current,
    working: [step(leakageFromStrayFormula, 'leakage through the stray capacitance', { V, R, f, C }, current)],
  };
}
