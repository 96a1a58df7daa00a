import type { QuantityKind } from './vocabulary.js';

/** Magnitudes of zero or more below and above the nominal; an absent side is unlimited. */
export interface ParsedSides {
  readonly below?: number;
  readonly above?: number;
}

/**
 * A tolerance as it was read from a text. It has the members that a tolerance of bands has,
 * and says what its absolute part is a value of, so that a caller can check it.
 */
export interface ParsedTolerance {
  /** Fraction of the nominal: 0.2 is ±20 %. */
  readonly relative?: number | ParsedSides;
  /** In the SI unit of `absoluteQuantity`: 5 is ±5 ohm. */
  readonly absolute?: number | ParsedSides;
  /** With both parts: the greater of both, or the sum of both, side by side. */
  readonly combine?: 'greater' | 'sum';
  /** A physical floor, in the SI unit of `absoluteQuantity`: a lower limit below it is raised to it. */
  readonly floor?: number;
  /** What `absolute` and `floor` are values of; absent where both are. */
  readonly absoluteQuantity?: QuantityKind;
}
