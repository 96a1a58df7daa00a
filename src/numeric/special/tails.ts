/** Both parts of a probability: they add to 1, and each is good to full relative accuracy where it is small. */
export interface Tails {
  /** Probability of a smaller value. */
  readonly lower: number;
  /** Probability of a greater value. */
  readonly upper: number;
}

/** Both tails from the lower one. */
export function tailsFromLower(lower: number): Tails {
  const inside = Math.min(1, lower);
  return { lower: inside, upper: 1 - inside };
}

/** Both tails from the upper one. */
export function tailsFromUpper(upper: number): Tails {
  const inside = Math.min(1, upper);
  return { lower: 1 - inside, upper: inside };
}
