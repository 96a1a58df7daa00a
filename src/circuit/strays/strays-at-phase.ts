import { requirePositive, requirePositiveResult } from '../../checks/index.js';
import { tangentOf } from './test-load-phase.js';

/** A load and the phase that it may have. */
export interface PhaseQuestion {
  /** Resistance, in ohms, greater than 0. */
  readonly resistance: number;
  /** Frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /** Largest phase, in radians, below π/2; 8.5° unless stated (from memory). */
  readonly phase?: number;
}

/** Strays each of which alone turns the phase of a load to a given angle. */
export interface StrayLimits {
  /** Inductance in series, in henries: R·tan φ/ω. */
  readonly seriesInductance: number;
  /** Capacitance across the load, in farads: tan φ/(ωR). */
  readonly parallelCapacitance: number;
}

/**
 * The strays that bring a load to a phase angle, each alone: low loads are limited by inductance, high ones by capacitance.
 *
 * @param question Resistance, frequency, phase
 * @returns Inductance in henries and capacitance in farads
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range` (phase), `result-out-of-range`
 * @source Impedance of R with L in series or C in parallel
 * @accuracy Within 3 units in the last place
 * @example
 * ```ts
 * import { straysAtPhase } from 'esu-limits';
 * const { seriesInductance, parallelCapacitance } = straysAtPhase({ resistance: 50, frequency: 2.5e6 });
 * [(seriesInductance * 1e6).toFixed(3), (parallelCapacitance * 1e12).toFixed(0)]; // → ["0.476", "190"]
 * ```
 */
export function straysAtPhase({ resistance, frequency, phase }: PhaseQuestion): StrayLimits {
  requirePositive(resistance, 'resistance');
  requirePositive(frequency, 'frequency');
  const turned = tangentOf(phase) / (2 * Math.PI * frequency);
  return {
    seriesInductance: requirePositiveResult(resistance * turned, 'seriesInductance'),
    parallelCapacitance: requirePositiveResult(turned / resistance, 'parallelCapacitance'),
  };
}
