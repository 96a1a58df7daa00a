import { fail, requireAtLeast, requireNonNegative, requirePositive, requirePositiveResult } from '../checks/index.js';
import { leadCapacitanceFormula, wireOverPlaneFormula } from '../working/formulas/leakage.js';
import { type Step, step } from '../working/index.js';

/** A lead that lies along metal. */
export interface LeadOnMetal {
  /** Length along the metal, in metres, greater than 0. */
  readonly length: number;
  /** Diameter of the conductor, in metres, greater than 0. */
  readonly conductorDiameter: number;
  /** Diameter over the insulation, in metres, not below that of the conductor. */
  readonly insulationDiameter: number;
  /** Distance between insulation and metal, in metres; 0 (it lies on the metal) unless stated. */
  readonly gap?: number;
  /** Relative permittivity of the insulation, 1 or more. */
  readonly relativePermittivity: number;
}

/** Bounds of the capacitance between a lead and the metal under it. */
export interface LeadCapacitance {
  /** With air all around, in farads: an earthed plane gives no less. */
  readonly lower: number;
  /** With the material of the insulation all around, in farads: an earthed plane gives no more. */
  readonly upper: number;
  readonly working: readonly Step[];
}

const vacuumPermittivity = 8.8541878128e-12;

/**
 * Bounds of the capacitance between a lead and the flat metal that it lies along: 2πε·l/acosh(2h/d).
 *
 * The insulation fills part of the space around the conductor, so that the capacitance lies between that with air and
 * that with the insulation's material everywhere. Metal on more sides, a coil of the lead or a second conductor beside it
 * add to it.
 *
 * @param lead Length, diameters, gap, permittivity
 * @returns Lowest and highest capacitance, with the steps
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `out-of-range`, `result-out-of-range`
 * @source Electrostatics of a cylinder over a plane
 * @accuracy Within 4 units in the last place, where the conductor does not nearly touch the metal
 * @example
 * ```ts
 * import { leadCapacitance } from 'esu-limits/leakage';
 * const lead = { length: 3, conductorDiameter: 1e-3, insulationDiameter: 3e-3, relativePermittivity: 3 };
 * const { lower, upper } = leadCapacitance(lead);
 * [(lower * 1e12).toFixed(1), (upper * 1e12).toFixed(1)]; // → ["94.7", "284.0"]
 * ```
 */
export function leadCapacitance(lead: LeadOnMetal): LeadCapacitance {
  const l = requirePositive(lead.length, 'length');
  const d = requirePositive(lead.conductorDiameter, 'conductorDiameter');
  const insulation = requireAtLeast(lead.insulationDiameter, d, 'insulationDiameter');
  const gap = requireNonNegative(lead.gap ?? 0, 'gap');
  const permittivity = requireAtLeast(lead.relativePermittivity, 1, 'relativePermittivity');
  const h = insulation / 2 + gap;
  if (!(2 * h > d)) {
    fail('out-of-range', 'insulationDiameter', insulation, 'must be more than the conductor: bare metal would touch');
  }
  const working: Step[] = [];
  const bound = (epsilon_r: number, end: 'lower' | 'upper'): number => {
    const byLength = (2 * Math.PI * vacuumPermittivity * epsilon_r) / Math.acosh((2 * h) / d);
    const C_l = requirePositiveResult(byLength, 'capacitance');
    const C = requirePositiveResult(C_l * l, 'capacitance');
    const where = end === 'lower' ? 'with air around' : 'with insulation around';
    working.push(
      step(wireOverPlaneFormula, `capacitance by length, ${where}`, { epsilon_r, h, d }, C_l),
      step(leadCapacitanceFormula, `capacitance of the lead, ${where}`, { C_l, l }, C, { symbol: `C_${end}` }),
    );
    return C;
  };
  return { lower: bound(1, 'lower'), upper: bound(permittivity, 'upper'), working };
}
