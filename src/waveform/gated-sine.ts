import { fail, requireFinite, requirePositive } from '../checks/index.js';
import {
  gateAngleFormula,
  gatedSineAverageFormula,
  gatedSineAverageInsideFormula,
  gatedSineAverageOverFormula,
  gatedSinePeakFormula,
  gatedSineRmsFormula,
  gatedSineRmsWithEndFormula,
} from '../working/formulas/waveform.js';
import { type Step, step } from '../working/index.js';
import { requireDutyCycle } from './require-duty-cycle.js';
import { figuresOf, type WaveformFigures } from './waveform-figures.js';
import { type BurstLoad, requireBurst, requireWaveformQuantity, type WaveformScale } from './waveform-scale.js';

/** A sine that is let through for a part of each period, always from the same phase on. */
export interface GatedSine extends WaveformScale, BurstLoad {
  /** Share of the time in which the gate is open, above 0 and at most 1. */
  readonly dutyCycle: number;
  /**
   * Frequency of the sine, in hertz; needs `repetitionRate`. The gate then covers what it covers: with a part of a
   * half-cycle at its end the figures differ from those of whole half-cycles, which are taken where it is not stated.
   */
  readonly frequency?: number;
  /** Phase of the sine when the gate opens, in radians, within ±2π; 0 unless stated. Needs `frequency`. */
  readonly startPhase?: number;
}

/** A gate of less than this angle lets no burst through, and its figures would lose their digits: 1/100 of a cycle. */
const smallestGate = 0.02 * Math.PI;

/**
 * Figures of a gated sine. Whole half-cycles are assumed unless frequency and repetition rate say how many there are.
 *
 * `peak` is that of the ungated sine; the peak of the result is lower where the gate reaches no crest.
 *
 * @param wave Duty cycle, peak, quantity; frequency, repetition rate and start phase of the burst; load
 * @returns Rms, average, true peak, crest and form factor, energy of a burst, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `not-a-fraction`, `unknown-choice`, `missing-member`,
 * `out-of-range` (a gate shorter than 1/100 of a cycle, a start phase beyond ±2π), `result-out-of-range`
 * @source Definition of the quantities, integrated over a period
 * @accuracy Within 1e-15 (relative), measured against 40 digits for periods of up to 10⁴ cycles
 * @example
 * ```ts
 * import { gatedSine } from 'esu-limits/waveform';
 * gatedSine({ dutyCycle: 0.06 }).crestFactor; // → 5.773502691896257
 * // A gate of three eighths of a cycle, from the zero on, covers more of the crest than whole half-cycles would:
 * gatedSine({ dutyCycle: 0.375, frequency: 500e3, repetitionRate: 500e3 }).rms.toFixed(6); // → "0.476748"
 * ```
 */
export function gatedSine(wave: GatedSine): WaveformFigures {
  const D = requireDutyCycle(wave.dutyCycle);
  const amplitude = requirePositive(wave.peak ?? 1, 'peak');
  const quantity = requireWaveformQuantity(wave.quantity);
  const burst = requireBurst(wave);
  const shape = wave.frequency === undefined ? wholeHalfCycles(wave, D, amplitude) : anyGate(wave, D, amplitude);
  return figuresOf({ ...shape, quantity, dutyCycle: D, burst });
}

interface Shape {
  readonly rms: number;
  readonly averageRectified: number;
  readonly peak: number;
  readonly working: readonly Step[];
}

function wholeHalfCycles({ startPhase }: GatedSine, D: number, A: number): Shape {
  if (startPhase !== undefined) {
    fail('missing-member', 'frequency', undefined, 'must be given where the gate opens at a stated phase');
  }
  const rms = A * Math.sqrt(D / 2);
  const averageRectified = (2 * A * D) / Math.PI;
  const working = [
    step(gatedSineRmsFormula, 'rms value', { A, D }, rms),
    step(gatedSineAverageFormula, 'average rectified value', { A, D }, averageRectified),
  ];
  return { rms, averageRectified, peak: A, working };
}

function anyGate({ frequency, repetitionRate, startPhase = 0 }: GatedSine, D: number, A: number): Shape {
  const f = requirePositive(frequency as number, 'frequency');
  if (repetitionRate === undefined) {
    fail('missing-member', 'repetitionRate', undefined, 'must be given with the frequency');
  }
  const f_r = repetitionRate as number;
  const phi = requireFinite(startPhase, 'startPhase');
  if (Math.abs(phi) > 2 * Math.PI) fail('out-of-range', 'startPhase', phi, 'must be from -2π to 2π radians');
  const theta = 2 * Math.PI * (f / f_r) * D;
  if (!(theta >= smallestGate && theta < Number.POSITIVE_INFINITY)) {
    fail('out-of-range', 'dutyCycle', D, 'must let through at least 1/100 of a cycle of the sine');
  }
  // The squares of the sine average to a half but for the part of a half-cycle at the end.
  const over = 2 * Math.sin(phi + theta / 2) ** 2 + Math.cos(2 * phi + theta) * (1 - Math.sin(theta) / theta);
  const rms = A * Math.sqrt((D / 2) * over);
  const working = [
    step(gateAngleFormula, 'angle of the sine while the gate is open', { f, f_r, D }, theta),
    step(gatedSineRmsWithEndFormula, 'rms value', { A, D, phi, theta }, rms),
  ];
  const average = averageOf(A, D, phi, theta);
  const peak = peakOf(A, phi, theta);
  return {
    rms,
    averageRectified: average.value,
    peak: peak.value,
    working: [...working, average, ...(peak.value === A ? [] : [peak])],
  };
}

/** Mean of |sin| over the gate, by half-cycles: no part of the sum is negative, so no digit is lost. */
function averageOf(A: number, D: number, phi: number, theta: number): Step {
  const label = 'average rectified value';
  const start = ((phi % Math.PI) + Math.PI) % Math.PI;
  if (start + theta <= Math.PI) {
    const value = (2 * A * D * Math.sin(start + theta / 2) * Math.sin(theta / 2)) / theta;
    return step(gatedSineAverageInsideFormula, label, { A, D, theta, a: start }, value);
  }
  const rest = theta - (Math.PI - start);
  const n = Math.floor(rest / Math.PI);
  const r = rest - n * Math.PI;
  const value = (A * D * (2 + Math.cos(start) + 2 * n - Math.cos(r))) / theta;
  return step(gatedSineAverageOverFormula, label, { A, D, theta, a: start, n, r }, value);
}

/** The crest where the gate reaches one, otherwise the larger of its two ends. */
function peakOf(A: number, phi: number, theta: number): Step {
  const toCrest = (((Math.PI / 2 - phi) % Math.PI) + Math.PI) % Math.PI;
  const value = toCrest <= theta ? A : A * Math.max(Math.abs(Math.sin(phi)), Math.abs(Math.sin(phi + theta)));
  return step(gatedSinePeakFormula, 'peak', { A, phi, theta }, value);
}
