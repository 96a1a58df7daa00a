import { fail, requireAtLeast, requirePositive } from '../../checks/index.js';
import { type LineConstants, lineConstants } from './line.js';

/** Two parallel round wires. */
export interface TwoWires {
  /** Distance of their axes, in metres: more than a diameter. */
  readonly spacing: number;
  /** Diameter of each, in metres, greater than 0. */
  readonly diameter: number;
  /** Relative permittivity of what is between and around them, 1 or more; 1 (air) unless stated. */
  readonly relativePermittivity?: number;
}

/**
 * Inductance and capacitance of two parallel wires: L' = (μ0/π)·acosh(D/2a), C' = πε/acosh(D/2a).
 *
 * @param wires Spacing, diameter, permittivity
 * @returns Constants by length, with the current at the surface, as at radio frequencies
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range` (wires that touch, a permittivity below 1),
 * `result-out-of-range`
 * @source Electrostatics of two parallel cylinders
 * @accuracy Within 5 units in the last place, for any gap
 * @example
 * ```ts
 * import { twoWireLine } from 'esu-limits';
 * const { inductance, capacitance } = twoWireLine({ spacing: 20e-3, diameter: 1e-3 });
 * [(inductance * 1e6).toFixed(4), (capacitance * 1e12).toFixed(3)]; // → ["1.4753", "7.542"]
 * ```
 */
export function twoWireLine({ spacing, diameter, relativePermittivity = 1 }: TwoWires): LineConstants {
  requirePositive(spacing, 'spacing');
  requirePositive(diameter, 'diameter');
  requireAtLeast(relativePermittivity, 1, 'relativePermittivity');
  if (spacing <= diameter) {
    fail('out-of-range', 'spacing', spacing, `must be more than the diameter, ${diameter}: the wires would touch`);
  }
  // acosh(D/d) by the gap, so that wires that nearly touch keep their digits.
  const n = 4 * Math.asinh(Math.sqrt((spacing - diameter) / (2 * diameter)));
  return lineConstants(n, relativePermittivity);
}
