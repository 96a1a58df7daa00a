import { requireNonNegative, requirePositive, requirePositiveResult, requireResult } from '../../checks/index.js';
import { tangentOf } from './test-load-phase.js';

/** Strays that any load of a box has, and the phase that it may have. */
export interface LoadsQuestion {
  /** Inductance in series, in henries; 0 unless stated. */
  readonly seriesInductance?: number;
  /** Capacitance across the load, in farads; 0 unless stated. */
  readonly parallelCapacitance?: number;
  /** Frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /** Largest phase, in radians, below π/2; 8.5° unless stated (from memory). */
  readonly phase?: number;
}

/** Resistances whose phase stays within a limit; an absent end is open. */
export interface LoadRange {
  /** Whether there is any such resistance. */
  readonly possible: boolean;
  /** Below it the inductance turns the phase too far, in ohms. */
  readonly lower?: number;
  /** Above it the capacitance turns the phase too far, in ohms. */
  readonly upper?: number;
}

/**
 * The loads whose phase stays within a limit in spite of given strays.
 *
 * @param question Strays, frequency, phase
 * @returns Lowest and highest resistance, in ohms; `possible: false` where the strays leave none
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `out-of-range` (phase), `result-out-of-range`
 * @source tan φ = ωL/R − ωRC·(1 − ω²LC), solved for R
 * @accuracy Within 1e-15 (relative), measured against 40 digits; less near the resonance of the strays
 * @example
 * ```ts
 * import { loadsWithinPhase } from 'esu-limits';
 * const box = { seriesInductance: 0.5e-6, parallelCapacitance: 15e-12 };
 * const { lower, upper } = loadsWithinPhase({ ...box, frequency: 2.5e6 });
 * [lower?.toFixed(1), upper?.toFixed(1)]; // → ["48.8", "684.3"]
 * ```
 */
export function loadsWithinPhase(question: LoadsQuestion): LoadRange {
  return reckonLoadRange(question).range;
}

/** The range, and what it follows from: u = ω²LC and the discriminant. */
export function reckonLoadRange(question: LoadsQuestion): { range: LoadRange; u: number; discriminant: number } {
  const { seriesInductance: L = 0, parallelCapacitance: C = 0, frequency, phase } = question;
  requireNonNegative(L, 'seriesInductance');
  requireNonNegative(C, 'parallelCapacitance');
  const omega = 2 * Math.PI * requirePositive(frequency, 'frequency');
  const t = tangentOf(phase);
  const u = omega * L * (omega * C);
  // tan φ = ωL/R − ωRC·(1 − u); above the resonance of the strays the load is inductive at any resistance.
  const discriminant = requireResult(t * t + 4 * u * (1 - u), 'resistance');
  if (discriminant < 0) return { range: { possible: false }, u, discriminant };
  const sum = t + Math.sqrt(discriminant);
  const lower = L === 0 ? {} : { lower: requirePositiveResult((2 * omega * L) / sum, 'lower') };
  // Of the two forms of the same root, that without a difference of near values.
  const upper =
    C === 0 || u === 1 ? {} : { upper: requirePositiveResult(sum / (2 * omega * C * Math.abs(1 - u)), 'upper') };
  return { range: { possible: true, ...lower, ...upper }, u, discriminant };
}
