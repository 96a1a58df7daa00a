import { explainConversion } from '../circuit/index.js';
import type { CurveReading } from './curve.js';
import { explainLoadCurve } from './explain-load-curve.js';
import { explainRegimes } from './explain-regimes.js';
import type { LoadCurve } from './load-curve.js';
import type { RegimeCurve } from './regime-curve.js';

/**
 * Reads a curve at a load, and says which stretch answered and by which steps: the twin of `powerAt`, `currentAt` and
 * `voltageAt`.
 *
 * @param curve A load curve or a regime curve
 * @param load Load, in ohms
 * @returns Power in watts, rms current in amperes and rms voltage in volts at the load, with stretch and working
 * @throws CalculationError as `powerAt` of the curve
 * @source As the curve; Ohm's law and Joule's law
 * @accuracy As the reading functions of the curve
 * @example
 * ```ts
 * import { explainReading, regimeCurve } from 'esu-limits';
 * const curve = regimeCurve({ power: 300, currentLimit: 2, voltageLimit: 600 });
 * const reading = explainReading(curve, 2000);
 * reading.power; // → 180
 * reading.stretch; // → { index: 2, from: 1200, kind: 'constant-voltage' }
 * reading.working[0]?.expression; // → 'min(I^2 * R, P_max, V^2 / R)'
 * ```
 */
export function explainReading(curve: LoadCurve | RegimeCurve, load: number): CurveReading {
  const power = curve.powerAt(load);
  const explained = 'points' in curve ? explainLoadCurve(curve, load, power) : explainRegimes(curve, load, power);
  const current = explainConversion(power, { from: 'power', to: 'current', load });
  const voltage = explainConversion(power, { from: 'power', to: 'voltage', load });
  return {
    load,
    power,
    current: current.value,
    voltage: voltage.value,
    ...explained,
    working: [...explained.working, ...current.working, ...voltage.working],
  };
}
