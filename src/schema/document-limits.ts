/** Limits that protect a program from documents made to exhaust it. */
export interface DocumentLimits {
  /** Longest text, in characters (UTF-16 code units); 67 108 864 (64 Mi) unless stated. */
  readonly maximumLength?: number;
  /** Deepest nesting of lists and objects; 64 unless stated. The documents of this library need 9. */
  readonly maximumDepth?: number;
}

export const defaultLimits: Required<DocumentLimits> = { maximumLength: 2 ** 26, maximumDepth: 64 };

/** Most values in one document, and most faults that are listed for one. */
export const mostValues = 10_000_000;
export const mostFaults = 1000;
