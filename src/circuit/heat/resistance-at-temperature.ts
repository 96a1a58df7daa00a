import { requireFinite, requirePositive, requirePositiveResult } from '../../checks/index.js';

/** A resistor whose resistance changes evenly with temperature. */
export interface ResistanceDrift {
  /** Resistance at the reference temperature, in ohms, greater than 0. */
  readonly resistance: number;
  /** Temperature coefficient, in 1/K, of either sign: from the maker's sheet, since tables disagree for the alloys. */
  readonly coefficient: number;
  /** Temperature above the reference temperature, in kelvins; negative when colder. */
  readonly rise: number;
}

/**
 * Resistance of a load that has warmed: R·(1 + α·ΔT).
 *
 * @param drift Resistance, coefficient, rise
 * @returns Resistance, in ohms
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range` (none is left)
 * @source Definition of the temperature coefficient
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { resistanceAtTemperature } from 'esu-limits';
 * resistanceAtTemperature({ resistance: 500, coefficient: 100e-6, rise: 80 }); // → 504
 * ```
 */
export function resistanceAtTemperature({ resistance, coefficient, rise }: ResistanceDrift): number {
  requirePositive(resistance, 'resistance');
  requireFinite(coefficient, 'coefficient');
  requireFinite(rise, 'rise');
  return requirePositiveResult(resistance * (1 + coefficient * rise), 'resistance');
}
