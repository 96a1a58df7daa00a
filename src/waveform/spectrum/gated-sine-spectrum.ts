import { fail } from '../../checks/index.js';
import { type GatedSine, gatedSine } from '../gated-sine.js';
import { burstHarmonics } from './burst-harmonics.js';
import { requireHarmonicCount } from './require-spectrum.js';
import type { Spectrum } from './spectrum.js';

/**
 * Spectrum of a gated sine, by its exact Fourier coefficients.
 *
 * @param wave The gated sine, with its frequency and repetition rate
 * @param harmonics How many harmonics of the repetition rate; several times frequency over repetition rate
 * @returns Mean, harmonics with peak and phase, and the rms value of the whole
 * @throws CalculationError as `gatedSine`; `missing-member` without frequency; `not-an-integer`, `out-of-range` (count)
 * @source Fourier's coefficients of a sine over a part of the period
 * @accuracy Within 1e-12 of the amplitude
 * @example
 * ```ts
 * import { gatedSineSpectrum } from 'esu-limits/waveform';
 * const wave = { dutyCycle: 0.5, frequency: 400e3, repetitionRate: 50e3 };
 * gatedSineSpectrum(wave, 8).harmonics[7]?.peak.toFixed(12); // → "0.500000000000"
 * ```
 */
export function gatedSineSpectrum(wave: GatedSine, harmonics: number): Spectrum {
  if (wave.frequency === undefined) {
    fail('missing-member', 'frequency', undefined, 'must be given: the spectrum lies about it');
  }
  const { rms } = gatedSine(wave);
  const fundamental = wave.repetitionRate as number;
  const course = {
    amplitude: wave.peak ?? 1,
    cycles: (wave.frequency as number) / fundamental,
    phase: wave.startPhase ?? 0,
    decay: 0,
    gate: wave.dutyCycle,
  };
  return { fundamental, ...burstHarmonics(course, requireHarmonicCount(harmonics)), rms };
}
