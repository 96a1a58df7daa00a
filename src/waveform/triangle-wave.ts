import { requirePositive } from '../checks/index.js';
import { triangleAverageFormula, triangleRmsFormula } from '../working/formulas/waveform.js';
import { step } from '../working/index.js';
import { figuresOf, type WaveformFigures } from './waveform-figures.js';
import { requireWaveformQuantity, type WaveformScale } from './waveform-scale.js';

/**
 * Figures of a triangle or a sawtooth between plus and minus its peak, of any slopes.
 *
 * @param wave Peak and quantity
 * @returns Rms, average, crest and form factor, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `unknown-choice`, `result-out-of-range`
 * @source Definition of the quantities, integrated over a cycle
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { triangleWave } from 'esu-limits/waveform';
 * triangleWave({ peak: 2 }).averageRectified; // → 1
 * triangleWave().formFactor; // → 1.1547005383792517
 * ```
 */
export function triangleWave(wave: WaveformScale = {}): WaveformFigures {
  const peak = requirePositive(wave.peak ?? 1, 'peak');
  const quantity = requireWaveformQuantity(wave.quantity);
  const rms = peak / Math.sqrt(3);
  const averageRectified = peak / 2;
  const working = [
    step(triangleRmsFormula, 'rms value', { x_p: peak }, rms),
    step(triangleAverageFormula, 'average rectified value', { x_p: peak }, averageRectified),
  ];
  return figuresOf({ rms, averageRectified, peak, quantity, working });
}
