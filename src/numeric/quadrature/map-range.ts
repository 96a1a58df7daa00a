/** A variable t in which a range is finite. */
export interface RangeMap {
  /** The variable x that belongs to t. */
  readonly place: (t: number) => number;
  /** dx/dt. */
  readonly stretch: (t: number) => number;
  /** The t that belongs to x, infinite x included. */
  readonly inverse: (x: number) => number;
}

/**
 * The variable of integration for a range: x itself where it is finite; x = t/(1 − t²) for the whole line;
 * x = from + t/(1 − t) or x = to − t/(1 − t), from the finite end, for a half line.
 */
export function mapRange(from: number, to: number): RangeMap {
  if (Number.isFinite(from) && Number.isFinite(to)) {
    return { place: (t) => t, stretch: () => 1, inverse: (x) => x };
  }
  if (Number.isFinite(from)) {
    return {
      place: (t) => from + t / (1 - t),
      stretch: (t) => 1 / ((1 - t) * (1 - t)),
      inverse: (x) => (x === to ? 1 : (x - from) / (1 + (x - from))),
    };
  }
  if (Number.isFinite(to)) {
    return {
      place: (t) => to + t / (1 + t),
      stretch: (t) => 1 / ((1 + t) * (1 + t)),
      inverse: (x) => (x === from ? -1 : (x - to) / (1 + (to - x))),
    };
  }
  return {
    place: (t) => t / (1 - t * t),
    stretch: (t) => (1 + t * t) / ((1 - t * t) * (1 - t * t)),
    inverse: (x) => (Number.isFinite(x) ? (2 * x) / (1 + Math.sqrt(1 + 4 * x * x)) : Math.sign(x)),
  };
}
