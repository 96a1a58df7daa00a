import { fail, requireNonNegative, requirePositive, requirePositiveResult, requireResult } from '../checks/index.js';
import { impedanceMagnitudeFormula, phaseOfLoadFormula } from '../working/formulas/circuit.js';
import {
  capacitivePartFormula,
  seriesReactanceFormula,
  seriesResistanceFormula,
} from '../working/formulas/circuit-effects.js';
import { resistancesInSeriesFormula } from '../working/formulas/electrode.js';
import { reactanceOfCapacitanceFormula } from '../working/formulas/leakage.js';
import { type Step, step } from '../working/index.js';

/** The contact of one foil: resistance and capacitance side by side, and what lies in series with both. */
export interface FoilContact {
  /** In ohms, greater than 0; absent where the contact does not conduct. This, `capacitance` or both. */
  readonly resistance?: number;
  /** In farads, greater than 0; none unless stated. */
  readonly capacitance?: number;
  /** Resistance in series that belongs to this foil alone, such as tissue or lead, in ohms, 0 or more; 0 unless stated. */
  readonly seriesResistance?: number;
}

/** Impedance of a contact at one frequency. */
export interface ContactImpedance {
  /** Series resistance, in ohms. */
  readonly resistance: number;
  /** Series reactance, in ohms: 0 or negative, as it is capacitive. */
  readonly reactance: number;
  /** Magnitude, in ohms. */
  readonly impedance: number;
  /** Phase of the voltage ahead of the current, in radians: 0 or negative. */
  readonly phase: number;
  readonly working: readonly Step[];
}

/**
 * Impedance of the contact of a foil: R_t + R/(1 + jωRC), or R_t + 1/(jωC) where it does not conduct.
 *
 * @param contact Resistance, capacitance and what is in series with them
 * @param frequency In hertz, greater than 0
 * @returns Resistance, reactance, magnitude and phase, with the working
 * @throws CalculationError `missing-member` (neither resistance nor capacitance), `not-a-number`, `not-positive`,
 * `negative`, `result-out-of-range`
 * @source Impedance of R and C for a sinusoidal quantity
 * @accuracy Within 5 units in the last place of the magnitude
 * @example
 * ```ts
 * import { contactImpedance } from 'esu-limits/electrode';
 * const contact = contactImpedance({ resistance: 30, capacitance: 10e-9, seriesResistance: 40 }, 500e3);
 * [contact.resistance.toFixed(2), contact.reactance.toFixed(2), contact.impedance.toFixed(2)];
 * // → ["55.89", "-14.97", "57.86"]
 * ```
 */
export function contactImpedance(contact: FoilContact, frequency: number): ContactImpedance {
  const R_t = requireNonNegative(contact.seriesResistance ?? 0, 'seriesResistance');
  const f = requirePositive(frequency, 'frequency');
  const { R_c, X, working } = ofContact(contact, f);
  const R = requireResult(R_c + R_t, 'resistance');
  if (R_t > 0) working.push(step(resistancesInSeriesFormula, 'resistance of contact and series', { R_c, R_t }, R));
  const impedance = requirePositiveResult(Math.hypot(R, X), 'impedance');
  const phase = Math.atan2(X, R);
  working.push(
    step(impedanceMagnitudeFormula, 'magnitude of the contact impedance', { R, X }, impedance),
    step(phaseOfLoadFormula, 'phase of the voltage ahead of the current', { X, R }, phase),
  );
  return { resistance: R, reactance: X, impedance, phase, working };
}

interface ContactParts {
  readonly R_c: number;
  readonly X: number;
  readonly working: Step[];
}

function ofContact({ resistance, capacitance }: FoilContact, f: number): ContactParts {
  if (resistance === undefined && capacitance === undefined) {
    fail('missing-member', 'resistance', resistance, 'must be given, or the capacitance, or both');
  }
  const C = capacitance === undefined ? 0 : requirePositive(capacitance, 'capacitance');
  if (resistance === undefined) {
    const X = requireResult(-1 / (2 * Math.PI * f * C), 'reactance');
    return { R_c: 0, X, working: [step(reactanceOfCapacitanceFormula, 'reactance of the contact', { f, C }, X)] };
  }
  const R = requirePositive(resistance, 'resistance');
  if (C === 0) return { R_c: R, X: 0, working: [] };
  const x = requireResult(2 * Math.PI * f * R * C, 'capacitance');
  const R_c = requirePositiveResult(R / (1 + x * x), 'resistance');
  const X = requireResult(R * -(x / (1 + x * x)), 'reactance');
  const working = [
    step(capacitivePartFormula, 'resistance over the reactance of the capacitance', { f, R, C }, x),
    step(seriesResistanceFormula, 'resistance that the contact shows in series', { R, x }, R_c, { symbol: 'R_c' }),
    step(seriesReactanceFormula, 'reactance that the contact shows in series', { R, x, y: 0 }, X, { symbol: 'X' }),
  ];
  return { R_c, X, working };
}
