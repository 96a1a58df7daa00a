import { requirePositive } from '../checks/index.js';
import { figuresOf, type WaveformFigures } from './waveform-figures.js';
import { requireWaveformQuantity, type WaveformScale } from './waveform-scale.js';

/**
 * Figures of a square wave that changes between plus and minus its peak: rms and average are the peak.
 *
 * @param wave Peak and quantity
 * @returns Rms, average, crest and form factor, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `unknown-choice`, `result-out-of-range`
 * @source Definition of the quantities
 * @accuracy Exact; the reading factor within 1 unit in the last place
 * @example
 * ```ts
 * import { squareWave } from 'esu-limits/waveform';
 * squareWave({ peak: 5 }).rms; // → 5
 * squareWave().averageRespondingFactor; // → 1.1107207345395915
 * ```
 */
export function squareWave(wave: WaveformScale = {}): WaveformFigures {
  const peak = requirePositive(wave.peak ?? 1, 'peak');
  const quantity = requireWaveformQuantity(wave.quantity);
  return figuresOf({ rms: peak, averageRectified: peak, peak, quantity, working: [] });
}
