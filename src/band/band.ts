/** A lower and an upper limit; an absent side is unlimited. */
export interface Band {
  readonly lower?: number;
  readonly upper?: number;
}

/** A band from limits of which each may be absent. */
export function bandOf(lower: number | undefined, upper: number | undefined): Band {
  return lower === undefined
    ? upper === undefined
      ? {}
      : { upper }
    : upper === undefined
      ? { lower }
      : { lower, upper };
}
