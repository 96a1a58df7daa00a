import { resistanceAtTemperatureFormula } from '../../working/formulas/circuit-effects.js';
import type { ExplainedValue } from '../explain-conversion.js';
import { explained } from '../explained.js';
import { type ResistanceDrift, resistanceAtTemperature } from './resistance-at-temperature.js';

/**
 * `resistanceAtTemperature` with its working.
 *
 * @param drift Resistance, coefficient, rise
 * @returns Resistance, in ohms, with its step
 * @throws CalculationError as `resistanceAtTemperature`
 * @source Definition of the temperature coefficient
 * @example
 * ```ts
 * import { explainResistanceAtTemperature } from 'esu-limits';
 * const drift = { resistance: 500, coefficient: 100e-6, rise: 80 };
 * explainResistanceAtTemperature(drift).working[0]?.expression; // → "R * (1 + alpha * T)"
 * ```
 */
export function explainResistanceAtTemperature(drift: ResistanceDrift): ExplainedValue {
  const { resistance: R, coefficient: alpha, rise: T } = drift;
  return explained(resistanceAtTemperatureFormula, 'resistance', { R, alpha, T }, resistanceAtTemperature(drift));
}
