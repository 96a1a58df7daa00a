import { requirePositive, requirePositiveResult } from '../../checks/index.js';

/** A conductor at a frequency. */
export interface ConductorAtFrequency {
  /** Resistivity, in ohm metres, greater than 0: 1.68e-8 for copper at 20 °C. */
  readonly resistivity: number;
  /** Frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /** Relative permeability, greater than 0; 1 unless stated. */
  readonly relativePermeability?: number;
}

/** μ0, in henries per metre. */
const vacuumPermeability = 4e-7 * Math.PI;

/**
 * Depth in which the current density falls to 1/e: √(ρ/(πfμ)).
 *
 * @param conductor Resistivity, frequency, permeability
 * @returns Skin depth, in metres
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Diffusion of a sinusoidal field into a plane conductor
 * @accuracy Within 3 units in the last place
 * @example
 * ```ts
 * import { skinDepth } from 'esu-limits';
 * (skinDepth({ resistivity: 1.68e-8, frequency: 500e3 }) * 1e6).toFixed(1); // → "92.3"
 * ```
 */
export function skinDepth({ resistivity, frequency, relativePermeability = 1 }: ConductorAtFrequency): number {
  requirePositive(resistivity, 'resistivity');
  requirePositive(frequency, 'frequency');
  requirePositive(relativePermeability, 'relativePermeability');
  const mu = vacuumPermeability * relativePermeability;
  return requirePositiveResult(Math.sqrt(resistivity / (Math.PI * frequency * mu)), 'skinDepth');
}
