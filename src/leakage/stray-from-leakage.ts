import { fail, requirePositive, requirePositiveResult } from '../checks/index.js';
import { strayFromLeakageFormula } from '../working/formulas/leakage.js';
import { type Step, step } from '../working/index.js';

/** A leakage that a stray capacitance may have given. */
export interface StrayQuestion {
  /** Rms voltage to earth of the conductor that couples, in volts, greater than 0. */
  readonly voltage: number;
  /** Leakage, in amperes rms, greater than 0. */
  readonly current: number;
  /** Carrier frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /** In ohms, greater than 0; 200 unless stated. */
  readonly measuringResistance?: number;
}

/** The capacitance that would give a leakage. */
export interface StrayCapacitance {
  /** In farads. */
  readonly capacitance: number;
  readonly working: readonly Step[];
}

/**
 * Stray capacitance that would drive a leakage through the measuring resistor: 1/(ω·√((V/I)² − R²)).
 *
 * It holds for a sinusoidal output: other waveforms need less. Where the leakage is as large as the voltage drives
 * through the measuring resistor alone, no capacitance gives it, and the error says so.
 *
 * @param question Voltage, leakage, frequency, measuring resistor
 * @returns Capacitance, with the step
 * @throws CalculationError `not-a-number`, `not-positive`, `contradiction` (no capacitance gives so much),
 * `result-out-of-range`
 * @source Ohm's law for R and C in series
 * @accuracy Within 6 units in the last place of V/I − R
 * @example
 * ```ts
 * import { strayFromLeakage } from 'esu-limits/leakage';
 * const { capacitance } = strayFromLeakage({ voltage: 300, current: 0.15, frequency: 500e3 });
 * (capacitance * 1e12).toFixed(1); // → "160.0"
 * ```
 */
export function strayFromLeakage({
  voltage,
  current,
  frequency,
  measuringResistance = 200,
}: StrayQuestion): StrayCapacitance {
  const V = requirePositive(voltage, 'voltage');
  const I = requirePositive(current, 'current');
  const f = requirePositive(frequency, 'frequency');
  const R = requirePositive(measuringResistance, 'measuringResistance');
  const Z = requirePositiveResult(V / I, 'current');
  if (!(Z > R)) {
    fail(
      'contradiction',
      'current',
      I,
      `must be below ${V / R} A, which the voltage drives through the measuring resistor alone`,
      'Look for a path that conducts, or check voltage and resistance.',
    );
  }
  // Two roots: the product under one would lose its range at extremes.
  const capacitance = requirePositiveResult(1 / (2 * Math.PI * f * Math.sqrt(Z - R) * Math.sqrt(Z + R)), 'capacitance');
  const label = 'stray capacitance that would give the leakage';
  return { capacitance, working: [step(strayFromLeakageFormula, label, { V, I, R, f }, capacitance)] };
}
