import { fail, requireFraction, requireResult } from '../checks/index.js';
import type { FoilContact } from './contact-impedance.js';

/**
 * The contact of a foil after part of its area has come off: the resistance rises, the capacitance falls with the area.
 *
 * What lies in series is left as it is: tissue under the rest of the foil in truth rises too.
 *
 * @param contact Contact of the whole foil
 * @param lostArea Part of the area that has come off, a fraction from 0 to below 1
 * @returns Contact of the rest
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `out-of-range` (all of it), `result-out-of-range`
 * @source Resistance and capacitance of an even contact in proportion to its area
 * @example
 * ```ts
 * import { contactAfterLoss } from 'esu-limits/electrode';
 * contactAfterLoss({ resistance: 30, capacitance: 10e-9 }, 0.5); // → { "resistance": 60, "capacitance": 5e-9 }
 * ```
 */
export function contactAfterLoss(contact: FoilContact, lostArea: number): FoilContact {
  requireFraction(lostArea, 'lostArea');
  if (lostArea === 1) fail('out-of-range', 'lostArea', lostArea, 'must be below 1: nothing would be left');
  const left = 1 - lostArea;
  const { resistance, capacitance } = contact;
  return {
    ...contact,
    ...(resistance === undefined ? {} : { resistance: requireResult(resistance / left, 'resistance') }),
    ...(capacitance === undefined ? {} : { capacitance: requireResult(capacitance * left, 'capacitance') }),
  };
}
