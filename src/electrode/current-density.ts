import { requireNonNegative, requirePositive, requireResult } from '../checks/index.js';

/** A current and the area that it goes through. */
export interface ElectrodeArea {
  /** Rms current, in amperes, 0 or more. */
  readonly current: number;
  /** Area in contact, in square metres, greater than 0: 100 cm² is 0.01. */
  readonly area: number;
}

/**
 * Mean current density under an electrode: I/A. At the edges it is higher.
 *
 * @param electrode Current and area
 * @returns Density, in amperes per square metre: 10 A/m² is 1 mA/cm²
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `result-out-of-range`
 * @source Definition of the mean current density
 * @accuracy One rounding
 * @example
 * ```ts
 * import { currentDensity } from 'esu-limits/electrode';
 * currentDensity({ current: 0.5, area: 0.01 }); // → 50
 * ```
 */
export function currentDensity({ current, area }: ElectrodeArea): number {
  requireNonNegative(current, 'current');
  requirePositive(area, 'area');
  return requireResult(current / area, 'density');
}
