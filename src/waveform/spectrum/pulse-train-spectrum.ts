import { fail } from '../../checks/index.js';
import { type PulseTrain, pulseTrain } from '../pulse-train.js';
import { requireHarmonicCount } from './require-spectrum.js';
import type { Harmonic, Spectrum } from './spectrum.js';

/**
 * Spectrum of a train of rectangular pulses that begin at time 0: harmonics of 2·|sin πnD|/(πn), and the mean D.
 *
 * @param train Duty cycle, peak, repetition rate
 * @param harmonics Highest order
 * @returns Mean, harmonics, and the rms value of the whole
 * @throws CalculationError as `pulseTrain`; `missing-member` without repetition rate; `not-an-integer`, `out-of-range`
 * @source Fourier series of the pulse train
 * @accuracy Within 1e-13 of the peak up to order 1000
 * @example
 * ```ts
 * import { pulseTrainSpectrum } from 'esu-limits/waveform';
 * pulseTrainSpectrum({ dutyCycle: 0.25, repetitionRate: 30e3 }, 2).mean; // → 0.25
 * ```
 */
export function pulseTrainSpectrum(train: PulseTrain, harmonics: number): Spectrum {
  if (train.repetitionRate === undefined) {
    fail('missing-member', 'repetitionRate', undefined, 'must be given: it is the fundamental of the spectrum');
  }
  const { rms, peak } = pulseTrain(train);
  const { dutyCycle } = train;
  const list: Harmonic[] = [];
  for (let order = 1; order <= requireHarmonicCount(harmonics); order++) {
    const turns = order * dutyCycle;
    const height = peak * ((2 * Math.sin(Math.PI * (turns % 2))) / (Math.PI * order));
    // The middle of the pulse, about which it is even, lies at half its length.
    const phase = Math.PI / 2 - Math.PI * (turns % 2) + (height < 0 ? Math.PI : 0);
    list.push({ order, peak: Math.abs(height), phase });
  }
  return { fundamental: train.repetitionRate as number, mean: peak * dutyCycle, harmonics: list, rms };
}
