/** How far a value may lie below and above its nominal: magnitudes of zero or more; an absent side is unlimited. */
export interface Sides {
  readonly below?: number;
  readonly above?: number;
}

/**
 * A tolerance: a relative part, an absolute part, or both with the rule that joins them.
 * A number stands for both sides. JSON-safe.
 */
export interface Tolerance {
  /** Fraction of the nominal: 0.2 is ±20 %. */
  readonly relative?: number | Sides;
  /** In the unit of the nominal: 5 with a resistance is ±5 ohm. */
  readonly absolute?: number | Sides;
  /** Needed when both parts are given: the greater of both, or the sum of both, side by side. */
  readonly combine?: 'greater' | 'sum';
  /** A physical floor, such as 0 for a resistance: a lower limit below it is raised to it. */
  readonly floor?: number;
}
