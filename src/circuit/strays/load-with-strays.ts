import { requireNonNegative, requirePositive } from '../../checks/index.js';

/** A resistor with the strays of its build: L in series with R and C side by side. */
export interface LoadWithStrays {
  /** Resistance, in ohms, greater than 0. */
  readonly resistance: number;
  /** Inductance in series, in henries; 0 unless stated. */
  readonly seriesInductance?: number;
  /** Capacitance across the resistance, in farads; 0 unless stated. */
  readonly parallelCapacitance?: number;
}

/** The same at a frequency. */
export interface LoadAtFrequency extends LoadWithStrays {
  /** Frequency, in hertz, greater than 0. */
  readonly frequency: number;
}

/** A load with strays whose values are checked and all there. */
export interface CheckedLoad {
  readonly R: number;
  readonly L: number;
  readonly C: number;
}

/** Resistance and strays, or an error; an absent stray is 0. */
export function requireLoad({
  resistance,
  seriesInductance = 0,
  parallelCapacitance = 0,
}: LoadWithStrays): CheckedLoad {
  return {
    R: requirePositive(resistance, 'resistance'),
    L: requireNonNegative(seriesInductance, 'seriesInductance'),
    C: requireNonNegative(parallelCapacitance, 'parallelCapacitance'),
  };
}

/** Reactances of the strays relative to the resistance: y = ωL/R and x = ωRC. */
export function partsOf({ R, L, C }: CheckedLoad, f: number): { readonly y: number; readonly x: number } {
  const omega = 2 * Math.PI * f;
  return { y: (omega * L) / R, x: omega * R * C };
}
