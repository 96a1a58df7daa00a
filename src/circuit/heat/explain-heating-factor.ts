import { heatingFactorFormula } from '../../working/formulas/circuit-effects.js';
import type { ExplainedValue } from '../explain-conversion.js';
import { explained } from '../explained.js';
import { type ElectrodeCurrent, heatingFactor } from './heating-factor.js';

/**
 * `heatingFactor` with its working.
 *
 * @param activation Current and duration
 * @returns Heating factor, in A²·s, with its step
 * @throws CalculationError as `heatingFactor`
 * @source Definition of the heating factor
 * @example
 * ```ts
 * import { explainHeatingFactor } from 'esu-limits';
 * explainHeatingFactor({ current: 0.5, duration: 60 }).working[0]?.expression; // → "I^2 * t"
 * ```
 */
export function explainHeatingFactor(activation: ElectrodeCurrent): ExplainedValue {
  const { current: I, duration: t } = activation;
  return explained(heatingFactorFormula, 'heating factor', { I, t }, heatingFactor(activation));
}
