/** What is known of the quantity before it is measured: a normal distribution. */
export interface NormalPrior {
  readonly kind: 'normal';
  /** Mean, in the unit of the band. */
  readonly mean: number;
  /** Standard deviation, in the unit of the band, greater than 0. */
  readonly standardDeviation: number;
}

/** What is known of the quantity before it is measured: limits, and nothing between them. */
export interface RectangularPrior {
  readonly kind: 'rectangular';
  /** Least possible value, in the unit of the band. */
  readonly lower: number;
  /** Greatest possible value, above `lower`. */
  readonly upper: number;
}

/** What is known of a quantity that cannot be negative, before it is measured: a gamma distribution. */
export interface GammaPrior {
  readonly kind: 'gamma';
  /** Mean, in the unit of the band, greater than 0. */
  readonly mean: number;
  /** Standard deviation, in the unit of the band, greater than 0. */
  readonly standardDeviation: number;
}

/** What is known of the quantity before it is measured. */
export type Prior = NormalPrior | RectangularPrior | GammaPrior;
