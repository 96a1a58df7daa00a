/** A lower and an upper limit; an absent side is unlimited. */
export interface Band {
  readonly lower?: number;
  readonly upper?: number;
}
