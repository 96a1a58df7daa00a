import { fail, requireChoice, requirePositive, type Warning } from '../checks/index.js';
import {
  dampedSineAverageFormula,
  dampedSineOverlapAmplitudeFormula,
  dampedSineOverlapPhaseFormula,
  dampedSinePeakFormula,
  dampedSineRemainderFormula,
  dampedSineRmsFormula,
  phaseOfNextBurstFormula,
  ringingFormula,
} from '../working/formulas/waveform.js';
import { type Step, step } from '../working/index.js';
import { figuresOf, type WaveformFigures, type WaveformQuantity } from './waveform-figures.js';
import { requireBurst, requireWaveformQuantity } from './waveform-scale.js';

/** Bursts of A·e^(−t/τ)·sin ωt that follow each other at a fixed rate. */
export interface DampedSine {
  /** Frequency of the sine, in hertz: not below the repetition rate. */
  readonly frequency: number;
  /** Time in which the envelope falls to 1/e, in seconds, greater than 0. */
  readonly timeConstant: number;
  /** Bursts a second, in hertz, greater than 0. */
  readonly repetitionRate: number;
  /** Height A from which the envelope starts, in volts or amperes; 1 unless stated. The true peak is lower. */
  readonly amplitude?: number;
  /** What the waveform is the course of; `voltage` unless stated. */
  readonly quantity?: WaveformQuantity;
  /**
   * What becomes of the rest of a burst when the next begins: with `restarts` (unless stated) it ends there, with
   * `overlaps` it goes on below the next one, as in a resonant circuit that is struck again and again.
   */
  readonly rest?: 'restarts' | 'overlaps';
  /** Load into which the energy of one burst is wanted, in ohms. */
  readonly load?: number;
}

/** Figures of a repeated damped sine. */
export interface DampedSineFigures extends WaveformFigures {
  /** Share of its amplitude that a burst still has when the next begins, 0–1. */
  readonly remainder: number;
  readonly warnings: readonly Warning[];
}

/** The waveform within one period, B·e^(−t/τ)·sin(ωt + ψ), and what its figures are reckoned with. */
export interface DampedShape {
  readonly f: number;
  readonly tau: number;
  readonly f_r: number;
  readonly B: number;
  readonly psi: number;
  /** ωτ. */
  readonly u: number;
  /** Phase that the sine has reached when the next burst begins, less whole turns. */
  readonly theta: number;
  readonly remainder: number;
  readonly working: readonly Step[];
}

/** A burst that has kept more than this share of its amplitude is not over when the next begins. */
const negligibleRemainder = 0.001;

/**
 * Figures of a repeated damped sine: the true first peak, and the rms value with what is left of a burst at its end.
 *
 * @param wave Frequency, time constant, repetition rate; amplitude, quantity, what becomes of the rest, load
 * @returns Rms, average, true peak, crest and form factor, energy of a burst, with the working; a warning
 * `burst-not-over` where more than 0.1 % of the amplitude is left at the end, for then it matters what becomes of it
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range` (a frequency below the repetition rate),
 * `unknown-choice`, `result-out-of-range`
 * @source Definition of the quantities, integrated over a period
 * @accuracy Within 1e-13 (relative), measured against 40 digits
 * @example
 * ```ts
 * import { dampedSine } from 'esu-limits/waveform';
 * const burst = dampedSine({ frequency: 500e3, timeConstant: 2e-6, repetitionRate: 30e3 });
 * [burst.rms, burst.peak, burst.crestFactor].map((value) => value.toFixed(6)); // → ["0.120952", "0.788685", "6.520638"]
 * ```
 */
export function dampedSine(wave: DampedSine): DampedSineFigures {
  const quantity = requireWaveformQuantity(wave.quantity);
  const shape = dampedShape(wave);
  const burst = requireBurst(wave);
  const rms = rmsStep(shape);
  const average = averageStep(shape);
  const peak = peakStep(shape);
  const figures = figuresOf({
    rms: rms.value,
    averageRectified: average.value,
    peak: peak.value,
    quantity,
    burst,
    working: [...shape.working, rms, average, peak],
  });
  const share = `${(100 * shape.remainder).toPrecision(3)} %`;
  const treated = wave.rest === 'overlaps' ? 'goes on below the next one' : 'ends there';
  const warnings: Warning[] =
    shape.remainder > negligibleRemainder
      ? [
          {
            code: 'burst-not-over',
            message: `A burst has kept ${share} of its amplitude when the next begins; it ${treated}.`,
          },
        ]
      : [];
  return { ...figures, remainder: shape.remainder, warnings };
}

/** Checks a damped sine and finds its course within one period. */
export function dampedShape(wave: DampedSine): DampedShape {
  const f = requirePositive(wave.frequency, 'frequency');
  const tau = requirePositive(wave.timeConstant, 'timeConstant');
  const f_r = requirePositive(wave.repetitionRate, 'repetitionRate');
  const A = requirePositive(wave.amplitude ?? 1, 'amplitude');
  const rest = requireChoice(wave.rest ?? 'restarts', 'rest', ['restarts', 'overlaps']);
  if (f < f_r) fail('out-of-range', 'frequency', f, `must not lie below the repetition rate, ${f_r}`);
  const u = 2 * Math.PI * f * tau;
  const cycles = f / f_r;
  const theta = 2 * Math.PI * (cycles - Math.round(cycles));
  const h = 1 / (f_r * tau);
  const remainder = Math.exp(-h);
  const working: Step[] = [
    step(ringingFormula, 'ringing, the time constant in radians of the sine', { f, tau }, u),
    step(phaseOfNextBurstFormula, 'phase reached when the next burst begins', { f, f_r }, theta),
    step(dampedSineRemainderFormula, 'share of the amplitude left then', { f_r, tau }, remainder),
  ];
  if (rest === 'restarts') return { f, tau, f_r, B: A, psi: 0, u, theta, remainder, working };
  // The bursts so far add up to a geometric series of ratio q = e^(−T/τ + jωT): 1/(1 − q) scales and turns the sine.
  const across = remainder * Math.sin(theta);
  const along = -Math.expm1(-h) + 2 * remainder * Math.sin(theta / 2) ** 2;
  const B = A / Math.hypot(along, across);
  const psi = Math.atan2(across, along);
  working.push(
    step(dampedSineOverlapAmplitudeFormula, 'amplitude with the rest of earlier bursts', { A, f_r, tau, theta }, B),
    step(dampedSineOverlapPhaseFormula, 'phase with the rest of earlier bursts', { f_r, tau, theta }, psi),
  );
  return { f, tau, f_r, B, psi, u, theta, remainder, working };
}

function rmsStep({ tau, f_r, B, psi, u, theta }: DampedShape): Step {
  const m = 2 / (f_r * tau);
  const end = 2 * Math.sin(psi + theta) ** 2 + u * Math.sin(2 * (psi + theta));
  const start = 2 * Math.sin(psi) ** 2 + u * Math.sin(2 * psi);
  const sum = start - Math.exp(-m) * end - u * u * Math.expm1(-m);
  const value = (B / 2) * Math.sqrt(((f_r * tau) / (1 + u * u)) * sum);
  return step(dampedSineRmsFormula, 'rms value', { B, f_r, tau, psi, u, theta }, value);
}

/**
 * The first place where the sine turns. Nothing is higher: later turns are lower, and overlapping bursts join without a
 * step (each begins at 0), so that the start is as high as the end of the burst before, after its own turn. That start
 * lies before the turn, since a new burst always outweighs what is left of a cycle ago.
 */
function peakStep({ B, psi, u }: DampedShape): Step {
  const value = (B * Math.exp(-(Math.atan(u) - psi) / u) * u) / Math.sqrt(1 + u * u);
  return step(dampedSinePeakFormula, 'peak, where the sine first turns', { B, psi, u }, value);
}

/** By half-cycles: the rest of the first, n whole ones, whose parts form a geometric series, and the part at the end. */
function averageStep({ f, f_r, B, psi, u }: DampedShape): Step {
  const x = psi < 0 ? psi + Math.PI : psi;
  const angle = 2 * Math.PI * (f / f_r) - (Math.PI - x);
  const n = Math.floor(angle / Math.PI);
  const r = angle - n * Math.PI;
  const halfCycle = Math.PI / u;
  const whole = ((1 + Math.exp(-halfCycle)) * Math.expm1(-halfCycle * n)) / Math.expm1(-halfCycle);
  const last = Math.exp(-halfCycle * n) * (1 - Math.exp(-r / u) * (Math.sin(r) / u + Math.cos(r)));
  const sum = Math.sin(x) / u + Math.cos(x) + Math.exp(-(Math.PI - x) / u) * (1 + whole + last);
  const value = ((B * f_r * u * u) / (2 * Math.PI * f * (1 + u * u))) * sum;
  return step(dampedSineAverageFormula, 'average rectified value', { B, f_r, f, u, x, n, r }, value);
}
