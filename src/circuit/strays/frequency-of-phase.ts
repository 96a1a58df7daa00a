import { requireResult } from '../../checks/index.js';
import { findRoot } from '../../numeric/index.js';
import { type LoadWithStrays, requireLoad } from './load-with-strays.js';
import { tangentOf } from './test-load-phase.js';

/** A load with strays and the phase that it may have. */
export interface FrequencyQuestion extends LoadWithStrays {
  /** Largest phase, in radians, below π/2; 8.5° unless stated (from memory). */
  readonly phase?: number;
}

/** The frequency up to which a load is good. */
export interface PhaseFrequency {
  /** In hertz; absent for a load without strays, which is good at any. */
  readonly frequency?: number;
}

/**
 * The lowest frequency at which the phase of a load reaches a limit, inductive or capacitive.
 *
 * @param question Resistance, strays, phase
 * @returns The frequency, in hertz
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `out-of-range` (phase), `result-out-of-range`
 * @source tan φ = ω(L/R − RC) + ω³LRC², solved for ω
 * @accuracy Within 1e-15 (relative), measured against 40 digits
 * @example
 * ```ts
 * import { frequencyOfPhase } from 'esu-limits';
 * const { frequency = 0 } = frequencyOfPhase({ resistance: 50, seriesInductance: 0.5e-6 });
 * (frequency / 1e6).toFixed(3); // → "2.379"
 * ```
 */
export function frequencyOfPhase(question: FrequencyQuestion): PhaseFrequency {
  const { R, L, C } = requireLoad(question);
  const t = tangentOf(question.phase);
  if (L === 0 && C === 0) return {};
  // In the time constant T of the strays: tan φ = p·w + q·w³ with w = ωT.
  const T = L / R + R * C;
  const a = L / R / T;
  const b = (R * C) / T;
  const p = a - b;
  const q = a * b * b;
  const tangent = (w: number): number => w * (p + q * w * w);
  const frequency = (w: number): PhaseFrequency => ({
    frequency: requireResult(w / T / (2 * Math.PI), 'frequency'),
  });
  if (q === 0) return frequency(t / Math.abs(p));
  if (p < 0) {
    // Capacitive at first: it turns back at w = √(−p/3q), if it has not reached the limit by then.
    const turn = Math.sqrt(-p / (3 * q));
    if (tangent(turn) <= -t) return frequency(findRoot((w) => tangent(w) + t, 0, turn));
  }
  const high = Math.max(2 * Math.sqrt(Math.max(-p, 0) / q), 2 * Math.cbrt(t / q));
  return frequency(findRoot((w) => tangent(w) - t, 0, high));
}
