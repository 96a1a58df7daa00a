import { fail, requireFraction, requirePositive } from '../../checks/index.js';
import type { CurveReadingInput } from './curve-reading-budget.js';

/** What is read: a `LoadCurve`, or anything that gives a power at a load. */
export interface ReadableCurve {
  /** Power in watts at a load in ohms. */
  readonly powerAt: (load: number) => number;
  /** Lowest and highest load that may be read, in ohms; no limit unless stated. */
  readonly loads?: { readonly from: number; readonly to?: number };
}

/** A place on a published curve, with the errors of reading its points off a picture. */
export interface CurvePlace {
  /** The curve as it is used. */
  readonly curve: ReadableCurve;
  /** The load at which it is read, in ohms. */
  readonly load: number;
  /** Relative limits of the error with which the loads of the points were read off the picture. */
  readonly loadDigitising: number;
  /** Relative limits of the error with which the powers of the points were read off the picture. */
  readonly powerDigitising: number;
  /** The same points with other ways of interpolating, or other hands' readings of the same picture. */
  readonly others?: readonly ReadableCurve[];
}

/**
 * What `curveReadingBudget` needs, from the curve itself: the power, the slope over the loads that the digitising error
 * spans (1e-4 of the load to each side at least), and the powers of the other curves at the same load.
 *
 * @param place Curve, load in ohms, relative digitising errors, other curves
 * @returns Power in watts, slope d ln P / d ln R, digitising errors, powers of the others in watts
 * @throws CalculationError `not-positive`, `not-a-number`, `not-a-fraction`, `out-of-range` (an error of load of 1, or a
 * load at which the curve has no stretch); those of the curve, such as `load-outside-curve`
 * @source JCGM 100:2008, 5.1.3: a sensitivity found by varying an input
 * @example
 * ```ts
 * import { loadCurve } from 'esu-limits';
 * import { curveReading, curveReadingBudget } from 'esu-limits/uncertainty';
 * const points = [{ load: 100, power: 100 }, { load: 200, power: 200 }, { load: 400, power: 100 }];
 * const curve = loadCurve(points);
 * const others = [loadCurve(points, { interpolation: 'linear' })];
 * const read = curveReading({ curve, load: 300, loadDigitising: 0.01, powerDigitising: 0.02, others });
 * read.power.toFixed(2); // → "133.33"
 * read.slope.toFixed(3); // → "-1.000"
 * read.alternatives?.map((power) => power.toFixed(1)); // → ["150.0"]
 * curveReadingBudget(read).standardUncertainty.toFixed(2); // → "9.78"
 * ```
 */
export function curveReading(place: CurvePlace): CurveReadingInput {
  const { curve, load, loadDigitising, powerDigitising, others = [] } = place;
  requirePositive(load, 'load');
  requireFraction(loadDigitising, 'loadDigitising');
  requireFraction(powerDigitising, 'powerDigitising');
  if (loadDigitising === 1) fail('out-of-range', 'loadDigitising', loadDigitising, 'must be less than 1');
  const power = requirePositive(curve.powerAt(load), 'curve.powerAt(load)');
  const { from, to = Number.POSITIVE_INFINITY } = curve.loads ?? { from: 0 };
  const reach = Math.max(loadDigitising, 1e-4);
  // At an end of the curve there is only its inner side.
  const low = Math.max(load * (1 - reach), Math.min(load, from));
  const high = Math.min(load * (1 + reach), Math.max(load, to));
  if (!(low < high)) fail('out-of-range', 'load', load, 'must lie on a curve of some width');
  const powerLow = requirePositive(curve.powerAt(low), 'curve.powerAt');
  const powerHigh = requirePositive(curve.powerAt(high), 'curve.powerAt');
  return {
    power,
    slope: Math.log(powerHigh / powerLow) / Math.log(high / low),
    loadDigitising,
    powerDigitising,
    ...(others.length === 0 ? {} : { alternatives: others.map((other) => other.powerAt(load)) }),
  };
}
