/** A variable t in which a range is finite. */
export interface RangeMap {
  /** The t of the lower limit. */
  readonly start: number;
  /** The t of the upper limit. */
  readonly end: number;
  /** The variable x that belongs to t. */
  readonly place: (t: number) => number;
  /** dx/dt. */
  readonly stretch: (t: number) => number;
}

/**
 * The variable of integration for a range: x itself where it is finite; x = t/(1 − t²) for the whole line;
 * x = from + t/(1 − t) or x = to + t/(1 + t), t < 0, for a half line.
 */
export function mapRange(from: number, to: number): RangeMap {
  if (Number.isFinite(from) && Number.isFinite(to)) {
    return { start: from, end: to, place: (t) => t, stretch: () => 1 };
  }
  if (Number.isFinite(from)) {
    return { start: 0, end: 1, place: (t) => from + t / (1 - t), stretch: (t) => 1 / ((1 - t) * (1 - t)) };
  }
  if (Number.isFinite(to)) {
    return { start: -1, end: 0, place: (t) => to + t / (1 + t), stretch: (t) => 1 / ((1 + t) * (1 + t)) };
  }
  return {
    start: -1,
    end: 1,
    place: (t) => t / (1 - t * t),
    stretch: (t) => (1 + t * t) / ((1 - t * t) * (1 - t * t)),
  };
}
