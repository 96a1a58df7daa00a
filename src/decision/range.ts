import type { Band } from '../band/index.js';

/** A range of values; an end may be infinite. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** A band as a range. */
export function rangeOf({ lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY }: Band): Range {
  return { from: lower, to: upper };
}

/** A range as a band: an infinite end is no limit. */
export function bandOfRange({ from, to }: Range): Band {
  const lower = Number.isFinite(from) ? { lower: from } : {};
  return Number.isFinite(to) ? { ...lower, upper: to } : lower;
}
