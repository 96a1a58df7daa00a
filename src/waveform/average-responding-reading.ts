import { requireNonNegative, requireResult } from '../checks/index.js';

/** Form factor of a sine, by which an average-responding instrument multiplies: π/(2√2). */
export const averageRespondingScale: number = Math.PI / (2 * Math.SQRT2);

/**
 * What an average-responding instrument, calibrated to show the rms value of a sine, shows for another waveform.
 *
 * @param averageRectified Mean of the absolute value, in volts or amperes, 0 or more
 * @returns The reading, in the same unit: the rms value only if the waveform is a sine or has its form factor
 * @throws CalculationError `not-a-number`, `negative`, `result-out-of-range`
 * @source Definition of the form factor; for a sine it is π/(2√2)
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { averageRespondingReading } from 'esu-limits/waveform';
 * averageRespondingReading(100); // → 111.07207345395915
 * ```
 */
export function averageRespondingReading(averageRectified: number): number {
  requireNonNegative(averageRectified, 'averageRectified');
  return requireResult(averageRespondingScale * averageRectified, 'reading');
}
