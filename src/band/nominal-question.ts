import type { Quantity } from '../circuit/index.js';
import type { Tolerance } from './tolerance.js';

/** A tolerance that the band is taken to have, in a quantity. */
export interface KnownTolerance {
  readonly tolerance: Tolerance;
  /** Quantity of which the tolerance is stated. */
  readonly in: Quantity;
}

/**
 * How the limits are taken to lie around their nominal: in the middle of the current, the power or the voltage
 * (at one load the first and the last are the same), in the geometric middle (the same in all three),
 * or by a known tolerance.
 */
export type NominalHypothesis =
  | 'symmetric-in-current'
  | 'symmetric-in-power'
  | 'symmetric-in-voltage'
  | 'geometric'
  | KnownTolerance;

/** What is asked of a band of unknown nominal. */
export interface NominalQuestion {
  /** Quantity of the band. */
  readonly quantity: Quantity;
  /** Load to which the band belongs, in ohms. */
  readonly load: number;
  readonly hypothesis: NominalHypothesis;
  /** Step of the last printed digit, in the unit of the band: the limits are then read as rounded to nearest. */
  readonly resolution?: number;
}
