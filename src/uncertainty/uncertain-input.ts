/** Degrees of freedom: a number of 1 or more, or `infinite` (JSON has no infinity). */
export type DegreesOfFreedom = number | 'infinite';

/**
 * Distribution of an input, in the unit of the input. Where a width is a half-width, the distribution is symmetric
 * about the value of the input.
 */
export type Distribution =
  | { readonly kind: 'normal' }
  | { readonly kind: 'rectangular'; readonly halfWidth: number }
  | { readonly kind: 'triangular'; readonly halfWidth: number }
  | { readonly kind: 'arcsine'; readonly halfWidth: number }
  /** `shape` is the width of the top over the width of the base: 0 is triangular, 1 is rectangular. */
  | { readonly kind: 'trapezoidal'; readonly halfWidth: number; readonly shape: number }
  /** A rectangle whose limits are each known only to ±`inexactness`. */
  | { readonly kind: 'curvilinear-trapezoid'; readonly halfWidth: number; readonly inexactness: number }
  /** Scaled and shifted t-distribution of a series of readings. */
  | { readonly kind: 'student-t'; readonly scale: number; readonly degreesOfFreedom: number };

/** One uncertain input of a measurement model: plain data, made by the functions of this room. */
export interface UncertainInput {
  /** Best estimate, in the unit of the quantity. */
  readonly value: number;
  /** Standard uncertainty, in the same unit, 0 or more. */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: DegreesOfFreedom;
  /** Type A: from a series of readings. Type B: from anything else. */
  readonly type: 'A' | 'B';
  readonly distribution: Distribution;
  /** What the input is, for the budget. */
  readonly description?: string;
  /** Unit, for the budget. */
  readonly unit?: string;
}

/** What a budget prints of an input beyond its numbers. */
export interface InputNaming {
  readonly description?: string;
  readonly unit?: string;
}

/** Completes an input with its naming; members that are absent stay absent. */
export function inputOf(
  value: number,
  standardUncertainty: number,
  distribution: Distribution,
  naming: InputNaming | undefined,
  degreesOfFreedom: DegreesOfFreedom = 'infinite',
  type: 'A' | 'B' = 'B',
): UncertainInput {
  // Most inputs of a calculation have no naming, and a spread costs more than the rest.
  if (naming === undefined) return { value, standardUncertainty, degreesOfFreedom, type, distribution };
  return {
    value,
    standardUncertainty,
    degreesOfFreedom,
    type,
    distribution,
    ...(naming.description === undefined ? {} : { description: naming.description }),
    ...(naming.unit === undefined ? {} : { unit: naming.unit }),
  };
}
