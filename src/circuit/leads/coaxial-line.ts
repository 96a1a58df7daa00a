import { fail, requireAtLeast, requirePositive } from '../../checks/index.js';
import { type LineConstants, lineConstants } from './line.js';

/** A round conductor within another. */
export interface CoaxialConductors {
  /** Diameter of the inner conductor, in metres, greater than 0. */
  readonly innerDiameter: number;
  /** Diameter of the hollow of the outer one, in metres: more than that of the inner. */
  readonly outerDiameter: number;
  /** Relative permittivity of what is between them, 1 or more; 1 (air) unless stated. */
  readonly relativePermittivity?: number;
}

/**
 * Inductance and capacitance of a coaxial line: L' = (μ0/2π)·ln(b/a), C' = 2πε/ln(b/a).
 *
 * @param line Diameters, permittivity
 * @returns Constants by length, with the current at the surfaces, as at radio frequencies
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range` (diameters, a permittivity below 1),
 * `result-out-of-range`
 * @source Electrostatics of two coaxial cylinders
 * @accuracy Within 4 units in the last place
 * @example
 * ```ts
 * import { coaxialLine } from 'esu-limits';
 * const line = coaxialLine({ innerDiameter: 0.9e-3, outerDiameter: 3.15e-3, relativePermittivity: 2.25 });
 * line.characteristicImpedance.toFixed(2); // → "50.08"
 * ```
 */
export function coaxialLine(line: CoaxialConductors): LineConstants {
  const { innerDiameter, outerDiameter, relativePermittivity = 1 } = line;
  requirePositive(innerDiameter, 'innerDiameter');
  requirePositive(outerDiameter, 'outerDiameter');
  requireAtLeast(relativePermittivity, 1, 'relativePermittivity');
  if (outerDiameter <= innerDiameter) {
    fail('out-of-range', 'outerDiameter', outerDiameter, `must be more than the inner diameter, ${innerDiameter}`);
  }
  // By the gap, so that a thin one keeps its digits.
  return lineConstants(Math.log1p((outerDiameter - innerDiameter) / innerDiameter), relativePermittivity);
}
