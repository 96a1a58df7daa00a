import { requirePositiveResult } from '../../checks/index.js';
import { halfPermeability } from './straight-wire-inductance.js';

/** Permittivity of vacuum, in farads per metre. */
export const vacuumPermittivity = 8.8541878128e-12;

/** Constants of a pair of conductors, by length. */
export interface LineConstants {
  /** In henries per metre, of both conductors together. */
  readonly inductance: number;
  /** In farads per metre. */
  readonly capacitance: number;
  /** Characteristic impedance, in ohms. */
  readonly characteristicImpedance: number;
  /** In metres a second. */
  readonly velocity: number;
}

/** The constants that follow from the logarithm in which the geometry enters: L' = (μ0/2π)·n, C' = 2πε/n. */
export function lineConstants(n: number, relativePermittivity: number): LineConstants {
  const inductance = requirePositiveResult(halfPermeability * n, 'inductance');
  const capacitance = requirePositiveResult(
    (2 * Math.PI * vacuumPermittivity * relativePermittivity) / n,
    'capacitance',
  );
  return {
    inductance,
    capacitance,
    characteristicImpedance: Math.sqrt(inductance / capacitance),
    velocity: 1 / Math.sqrt(inductance * capacitance),
  };
}
