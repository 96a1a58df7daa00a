import { requireChoice, requireFinite, requireNonNegative, requirePositive, requireResult } from '../checks/index.js';
import { reactanceOfCapacitanceFormula } from '../working/formulas/leakage.js';
import { type Step, step } from '../working/index.js';

/**
 * What a leakage comes through, seen from the measuring resistor.
 *
 * - `constant-current`: a path of much higher impedance than the measuring resistor
 * - `capacitance`: a constant voltage behind a stray capacitance
 * - `impedance`: a constant voltage behind a resistance and a reactance (negative when capacitive; 0 unless stated)
 * - `unknown`: the highest leakage that any of these gives is used
 */
export type LeakageSource =
  | { readonly kind: 'constant-current' }
  | {
      readonly kind: 'capacitance';
      /** In farads, greater than 0. */
      readonly capacitance: number;
      /** Carrier frequency, in hertz, greater than 0. */
      readonly frequency: number;
    }
  | {
      readonly kind: 'impedance';
      /** In ohms, 0 or more. */
      readonly resistance: number;
      /** In ohms. */
      readonly reactance?: number;
    }
  | { readonly kind: 'unknown' };

/** Impedance of a path, with its step where it had to be worked out. */
export interface SourceImpedance {
  readonly R_s: number;
  readonly X_s: number;
  readonly working: readonly Step[];
}

/** The impedance of a path that has one: a constant current and an unknown path have none. */
export function impedanceOf(source: LeakageSource): SourceImpedance | undefined {
  requireChoice(source.kind, 'source.kind', ['constant-current', 'capacitance', 'impedance', 'unknown']);
  if (source.kind === 'impedance') {
    const { resistance, reactance = 0 } = source;
    return {
      R_s: requireNonNegative(resistance, 'source.resistance'),
      X_s: requireFinite(reactance, 'source.reactance'),
      working: [],
    };
  }
  if (source.kind !== 'capacitance') return undefined;
  const C = requirePositive(source.capacitance, 'source.capacitance');
  const f = requirePositive(source.frequency, 'source.frequency');
  const X_s = requireResult(-1 / (2 * Math.PI * f * C), 'source.capacitance');
  const label = 'reactance of the path';
  return { R_s: 0, X_s, working: [step(reactanceOfCapacitanceFormula, label, { f, C }, X_s, { symbol: 'X_s' })] };
}
