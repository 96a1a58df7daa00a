import { requirePositive } from '../checks/index.js';
import { type LoadCurve, loadCurve } from './load-curve.js';
import { type RegimeCurve, regimeCurve } from './regime-curve.js';

/**
 * The curve with every power multiplied by a factor, at the same loads: interpolation and rule beyond the points
 * stay, and so do the corner loads of a regime curve, whose current and voltage limits take the root of the factor.
 *
 * @param curve A curve of `loadCurve` or of `regimeCurve`
 * @param factor Ratio of the new power to the old, greater than 0
 * @returns A new curve of the same kind
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range`
 * @source Definition
 * @example
 * ```ts
 * import { loadCurve, scaleCurve } from 'esu-limits';
 * const full = loadCurve([{ load: 100, power: 300 }, { load: 500, power: 300 }]);
 * scaleCurve(full, 0.5).powerAt(200); // → 150
 * ```
 */
export function scaleCurve<C extends LoadCurve | RegimeCurve>(curve: C, factor: number): C;
export function scaleCurve(curve: LoadCurve | RegimeCurve, factor: number): LoadCurve | RegimeCurve {
  requirePositive(factor, 'factor');
  if ('points' in curve) {
    const points = curve.points.map(({ load, power }) => ({ load, power: power * factor }));
    return loadCurve(points, curve);
  }
  const { power, currentLimit, voltageLimit } = curve.limits;
  const root = Math.sqrt(factor);
  return regimeCurve({
    power: power * factor,
    ...(currentLimit === undefined ? {} : { currentLimit: currentLimit * root }),
    ...(voltageLimit === undefined ? {} : { voltageLimit: voltageLimit * root }),
  });
}
