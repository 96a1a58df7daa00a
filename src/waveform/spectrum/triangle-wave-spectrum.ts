import { requirePositive } from '../../checks/index.js';
import { requireHarmonicCount } from './require-spectrum.js';
import type { Harmonic, Spectrum } from './spectrum.js';
import type { WaveAtFrequency } from './square-wave-spectrum.js';

/**
 * Spectrum of a triangle of equal slopes: odd harmonics of 8/(πn)², with alternating sign.
 *
 * @param wave Frequency and peak
 * @param harmonics Highest order
 * @returns Odd harmonics, and the rms value of the whole
 * @throws CalculationError `not-a-number`, `not-positive`, `not-an-integer`, `out-of-range`
 * @source Fourier series of the triangle
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { triangleWaveSpectrum } from 'esu-limits/waveform';
 * triangleWaveSpectrum({ frequency: 400e3 }, 3).harmonics[0]?.peak; // → 0.8105694691387022
 * ```
 */
export function triangleWaveSpectrum({ frequency, peak = 1 }: WaveAtFrequency, harmonics: number): Spectrum {
  requirePositive(frequency, 'frequency');
  requirePositive(peak, 'peak');
  const list: Harmonic[] = [];
  for (let order = 1; order <= requireHarmonicCount(harmonics); order += 2) {
    list.push({ order, peak: peak * (8 / (Math.PI * order) ** 2), phase: order % 4 === 1 ? 0 : Math.PI });
  }
  return { fundamental: frequency, mean: 0, harmonics: list, rms: peak / Math.sqrt(3) };
}
