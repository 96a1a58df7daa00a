import { requirePositive, requireResult } from '../../checks/index.js';
import {
  capacitivePartFormula,
  currentMethodErrorFormula,
  inductivePartFormula,
  productMethodErrorFormula,
  tangentOfPhaseFormula,
  voltageMethodErrorFormula,
} from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';
import { type LoadAtFrequency, partsOf, requireLoad } from './load-with-strays.js';

/** By how much a power that is reckoned from rms values exceeds the true one, relative to the true one. */
export interface PowerError {
  /** Of I²·R with the current into the load: (ωRC)². */
  readonly fromCurrent: number;
  /** Of V²/R with the voltage across the load: (ωL/R)² without a capacitance. */
  readonly fromVoltage: number;
  /** Of V·I: the apparent power. */
  readonly fromProduct: number;
  readonly working: readonly Step[];
}

/**
 * Errors of the three ways to reckon the power of a load with strays, which all take it for a pure resistance.
 *
 * @param load Resistance, strays and frequency
 * @returns Relative errors: reckoned over true power, less 1
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `result-out-of-range`
 * @source Impedance of R, L and C for a sinusoidal quantity; the true power is that in the resistance
 * @accuracy Within 1e-15 (relative) unless inductance and capacitance cancel
 * @example
 * ```ts
 * import { powerErrorFromStrays } from 'esu-limits';
 * const error = powerErrorFromStrays({ resistance: 50, seriesInductance: 1e-6, frequency: 1e6 });
 * [error.fromCurrent, error.fromVoltage.toFixed(6), error.fromProduct.toFixed(6)]; // → [0, "0.015791", "0.007865"]
 * ```
 */
export function powerErrorFromStrays(load: LoadAtFrequency): PowerError {
  const checked = requireLoad(load);
  const f = requirePositive(load.frequency, 'frequency');
  const { R, L, C } = checked;
  const { y, x } = partsOf(checked, f);
  const fromCurrent = requireResult(x * x, 'fromCurrent');
  const fromVoltage = y === 0 ? 0 : requireResult(y * (y * (1 + x * x) - 2 * x), 'fromVoltage');
  const t = y * (1 + x * x) - x;
  const fromProduct = requireResult((t * t) / (1 + Math.sqrt(1 + t * t)), 'fromProduct');
  const working = [
    step(inductivePartFormula, 'reactance of the inductance over the resistance', { f, L, R }, y),
    step(capacitivePartFormula, 'resistance over the reactance of the capacitance', { f, R, C }, x),
    step(currentMethodErrorFormula, 'error of the power from the current', { x }, fromCurrent),
    step(voltageMethodErrorFormula, 'error of the power from the voltage', { x, y }, fromVoltage),
    step(tangentOfPhaseFormula, 'tangent of the phase', { x, y }, t),
    step(productMethodErrorFormula, 'error of the product of voltage and current', { t }, fromProduct),
  ];
  return { fromCurrent, fromVoltage, fromProduct, working };
}
