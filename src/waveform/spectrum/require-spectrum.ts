import { fail, requireFinite, requireInteger, requireNonNegative, requirePositive } from '../../checks/index.js';
import type { Spectrum } from './spectrum.js';

/** Far above any instrument: 2^20 harmonics. */
export const highestOrder = 1_048_576;

/** A spectrum whose values are sound and whose orders are each there once, or an error. */
export function requireSpectrum(spectrum: Spectrum): Spectrum {
  requirePositive(spectrum.fundamental, 'fundamental');
  requireFinite(spectrum.mean ?? 0, 'mean');
  if (spectrum.rms !== undefined) requireNonNegative(spectrum.rms, 'rms');
  const seen = new Set<number>();
  spectrum.harmonics.forEach(({ order, peak, phase = 0 }, i) => {
    requireInteger(order, `harmonics[${i}].order`, 1, highestOrder);
    requireNonNegative(peak, `harmonics[${i}].peak`);
    requireFinite(phase, `harmonics[${i}].phase`);
    if (seen.has(order)) fail('duplicate', `harmonics[${i}].order`, order, 'must be there only once');
    seen.add(order);
  });
  return spectrum;
}

/** How many harmonics are wanted. */
export function requireHarmonicCount(count: number): number {
  return requireInteger(count, 'harmonics', 1, highestOrder);
}
