import { requirePositive } from '../checks/index.js';
import { sineAverageFormula, sineRmsFormula } from '../working/formulas/waveform.js';
import { step } from '../working/index.js';
import { figuresOf, type WaveformFigures } from './waveform-figures.js';
import { requireWaveformQuantity, type WaveformScale } from './waveform-scale.js';

/**
 * Figures of a continuous sine.
 *
 * @param wave Peak and quantity
 * @returns Rms, average, crest and form factor, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `unknown-choice`, `result-out-of-range`
 * @source Definition of the quantities, integrated over a cycle
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { sineWave } from 'esu-limits/waveform';
 * sineWave().crestFactor; // → 1.4142135623730951
 * sineWave({ peak: 400 }).rms; // → 282.84271247461896
 * ```
 */
export function sineWave(wave: WaveformScale = {}): WaveformFigures {
  const peak = requirePositive(wave.peak ?? 1, 'peak');
  const quantity = requireWaveformQuantity(wave.quantity);
  const rms = peak / Math.SQRT2;
  const averageRectified = (2 * peak) / Math.PI;
  const working = [
    step(sineRmsFormula, 'rms value', { x_p: peak }, rms),
    step(sineAverageFormula, 'average rectified value', { x_p: peak }, averageRectified),
  ];
  return figuresOf({ rms, averageRectified, peak, quantity, working });
}
