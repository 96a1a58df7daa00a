import { requireResult } from '../checks/index.js';
import { requireDutyCycle } from './require-duty-cycle.js';

/**
 * Crest factor of a gated sine whose gate covers whole half-cycles: √(2/D).
 *
 * @param dutyCycle Share of the time in which the gate is open, above 0 and at most 1
 * @returns Crest factor, √2 or more
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `not-positive`, `result-out-of-range`
 * @source Definition of the crest factor
 * @accuracy Two roundings: within 1 unit in the last place
 * @example
 * ```ts
 * import { crestFactorOfGatedSine } from 'esu-limits/waveform';
 * crestFactorOfGatedSine(0.5); // → 2
 * crestFactorOfGatedSine(0.06); // → 5.773502691896258
 * ```
 */
export function crestFactorOfGatedSine(dutyCycle: number): number {
  return requireResult(Math.sqrt(2 / requireDutyCycle(dutyCycle)), 'crestFactor');
}
