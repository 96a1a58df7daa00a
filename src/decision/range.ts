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
