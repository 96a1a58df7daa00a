import { requirePositive, requireResult } from '../../checks/index.js';
import { requireHarmonicCount } from './require-spectrum.js';
import type { Harmonic, Spectrum } from './spectrum.js';

/** A wave with its frequency. */
export interface WaveAtFrequency {
  /** Frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /** Peak value, in volts or amperes; 1 unless stated. */
  readonly peak?: number;
}

/**
 * Spectrum of a square wave: odd harmonics of 4/(πn).
 *
 * @param wave Frequency and peak
 * @param harmonics Highest order
 * @returns Odd harmonics, and the rms value of the whole
 * @throws CalculationError `not-a-number`, `not-positive`, `not-an-integer`, `out-of-range`, `result-out-of-range`
 * @source Fourier series of the square wave
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { squareWaveSpectrum } from 'esu-limits/waveform';
 * squareWaveSpectrum({ frequency: 400e3 }, 4).harmonics.map(({ order }) => order); // → [1, 3]
 * ```
 */
export function squareWaveSpectrum({ frequency, peak = 1 }: WaveAtFrequency, harmonics: number): Spectrum {
  requirePositive(frequency, 'frequency');
  requirePositive(peak, 'peak');
  const list: Harmonic[] = [];
  for (let order = 1; order <= requireHarmonicCount(harmonics); order += 2) {
    list.push({ order, peak: requireResult(peak * (4 / (Math.PI * order)), 'harmonics'), phase: 0 });
  }
  return { fundamental: frequency, mean: 0, harmonics: list, rms: peak };
}
