import { requirePositive } from '../checks/index.js';
import { pulseAverageFormula, pulseRmsFormula } from '../working/formulas/waveform.js';
import { step } from '../working/index.js';
import { requireDutyCycle } from './require-duty-cycle.js';
import { figuresOf, type WaveformFigures } from './waveform-figures.js';
import { type BurstLoad, requireBurst, requireWaveformQuantity, type WaveformScale } from './waveform-scale.js';

/** Rectangular pulses of one sign, with pauses at 0 between them. */
export interface PulseTrain extends WaveformScale, BurstLoad {
  /** Length of a pulse over the time from one to the next, above 0 and at most 1. */
  readonly dutyCycle: number;
}

/**
 * Figures of a train of rectangular pulses.
 *
 * @param train Duty cycle, peak, quantity; repetition rate and load where the energy of a pulse is wanted
 * @returns Rms, average, crest and form factor, energy of a pulse, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `not-a-fraction`, `unknown-choice`, `missing-member`,
 * `result-out-of-range`
 * @source Definition of the quantities, integrated over a period
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { pulseTrain } from 'esu-limits/waveform';
 * pulseTrain({ dutyCycle: 0.25 }).crestFactor; // → 2
 * pulseTrain({ dutyCycle: 0.25, peak: 100, repetitionRate: 1000, load: 50 }).burstEnergy; // → 0.05
 * ```
 */
export function pulseTrain(train: PulseTrain): WaveformFigures {
  const D = requireDutyCycle(train.dutyCycle);
  const peak = requirePositive(train.peak ?? 1, 'peak');
  const quantity = requireWaveformQuantity(train.quantity);
  const burst = requireBurst(train);
  const rms = peak * Math.sqrt(D);
  const averageRectified = peak * D;
  const working = [
    step(pulseRmsFormula, 'rms value', { x_p: peak, D }, rms),
    step(pulseAverageFormula, 'average rectified value', { x_p: peak, D }, averageRectified),
  ];
  return figuresOf({ rms, averageRectified, peak, quantity, dutyCycle: D, burst, working });
}
