import { fail, requireResult } from '../checks/index.js';
import { courseOf } from './spectrum/course.js';
import { extremeOf, rectifiedMeanOf } from './spectrum/course-figures.js';
import { requireSpectrum } from './spectrum/require-spectrum.js';
import { meanSquareOf, type Spectrum } from './spectrum/spectrum.js';
import { figuresOf, type WaveformFigures, type WaveformQuantity } from './waveform-figures.js';
import { requireWaveformQuantity } from './waveform-scale.js';

/**
 * Figures of a sum of harmonics: rms by Parseval's theorem, peak and average from its course.
 *
 * @param spectrum Mean value and harmonics with peak and phase; a stated `rms` of more than the list is not used
 * @param quantity What the waveform is the course of; `voltage` unless stated
 * @returns Rms, average, peak, crest and form factor, with the working
 * @throws CalculationError `not-a-number`, `not-positive` (nothing in the list), `negative`, `not-an-integer`,
 * `out-of-range`, `duplicate`, `unknown-choice`, `result-out-of-range`
 * @source Parseval's theorem; definition of the quantities
 * @accuracy Peak and average within 1e-10 (relative); rms within 1e-14
 * @example
 * ```ts
 * import { harmonicSum } from 'esu-limits/waveform';
 * const wave = { fundamental: 400e3, harmonics: [{ order: 1, peak: 100 }, { order: 3, peak: 20 }] };
 * harmonicSum(wave).rms; // → 72.11102550927978
 * harmonicSum(wave).peak.toFixed(6); // → "87.092969"
 * ```
 */
export function harmonicSum(spectrum: Spectrum, quantity?: WaveformQuantity): WaveformFigures {
  requireSpectrum(spectrum);
  const checked = requireWaveformQuantity(quantity);
  const square = requireResult(meanSquareOf(spectrum), 'rms');
  if (!(square > 0)) fail('not-positive', 'harmonics', square, 'must hold at least one of a peak above 0');
  const course = courseOf(spectrum);
  return figuresOf({
    rms: Math.sqrt(square),
    averageRectified: rectifiedMeanOf(course),
    peak: extremeOf(course),
    quantity: checked,
    working: [],
  });
}
