import { requirePositiveResult } from '../../checks/index.js';
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
 * @accuracy Within 1e-15 (relative), measured against 50 digits; less where the phase only just reaches the limit
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
  const frequency = (w: number): PhaseFrequency => ({
    frequency: requirePositiveResult(w / T / (2 * Math.PI), 'frequency'),
  });
  if (q === 0) return frequency(t / Math.abs(p));
  if (p >= 0) return frequency(meets(t, Math.min(p > 0 ? t / p : Number.POSITIVE_INFINITY, Math.cbrt(t / q)), p, q));
  // Capacitive at first: it turns back at w = √(−p/3q), if it has not reached the limit by then.
  if ((-2 * p * Math.sqrt(-p / (3 * q))) / 3 >= t) return frequency(meets(-t, -t / p, p, q));
  return frequency(meets(t, Math.sqrt(-p / q) + Math.cbrt(t / q), p, q));
}

/** Where p·w + q·w³ meets a value, by Newton's steps from the side on which none of them leads too far. */
function meets(value: number, start: number, p: number, q: number): number {
  let w = start;
  for (let k = 0; k < 200; k++) {
    const square = q * w * w;
    const next = w - (w * (p + square) - value) / (p + 3 * square);
    if (!(Math.abs(next - w) > 2e-16 * w)) break;
    w = next;
  }
  return w;
}
