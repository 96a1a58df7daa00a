/** What the documentation says of a formula: the part that the core does not carry. */
export interface Prose {
  /** What the formula gives, as a title. */
  readonly title: string;
  /** Meaning of the result and of every input symbol. */
  readonly meanings: Readonly<Record<string, string>>;
  /** When it holds, what goes wrong, in a sentence or two. */
  readonly note?: string;
}
