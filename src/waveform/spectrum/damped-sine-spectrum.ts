import { type DampedSine, dampedShape, dampedSine } from '../damped-sine.js';
import { burstHarmonics } from './burst-harmonics.js';
import { requireHarmonicCount } from './require-spectrum.js';
import type { Spectrum } from './spectrum.js';

/**
 * Spectrum of a repeated damped sine, by its exact Fourier coefficients.
 *
 * @param wave The damped sine
 * @param harmonics How many harmonics of the repetition rate; several times frequency over repetition rate
 * @returns Mean, harmonics with peak and phase, and the rms value of the whole
 * @throws CalculationError as `dampedSine`; `not-an-integer`, `out-of-range` (count)
 * @source Fourier's coefficients of an exponential over a period
 * @accuracy Within 1e-12 of the amplitude
 * @example
 * ```ts
 * import { dampedSineSpectrum } from 'esu-limits/waveform';
 * const wave = { frequency: 500e3, timeConstant: 2e-6, repetitionRate: 25e3 };
 * dampedSineSpectrum(wave, 60).harmonics[19]?.peak.toFixed(6); // → "0.049842"
 * ```
 */
export function dampedSineSpectrum(wave: DampedSine, harmonics: number): Spectrum {
  const { rms } = dampedSine(wave);
  const { f, tau, f_r, B, psi } = dampedShape(wave);
  const course = { amplitude: B, cycles: f / f_r, phase: psi, decay: 1 / (f_r * tau), gate: 1 };
  return { fundamental: f_r, ...burstHarmonics(course, requireHarmonicCount(harmonics)), rms };
}
