import type { Band } from '../band/index.js';

/**
 * Where a value lies against its limits, its uncertainty counted: `no-verdict` where it reaches over a limit,
 * `not-stated` where there is none.
 */
export type Outcome = 'inside' | 'outside' | 'no-verdict' | 'not-stated';

/** The outcome of a value that may be off by an expanded uncertainty to either side. */
export function outcomeOf({ lower, upper }: Band, value: number, expanded: number): Outcome {
  if (lower === undefined && upper === undefined) return 'not-stated';
  const [low, high] = [lower ?? Number.NEGATIVE_INFINITY, upper ?? Number.POSITIVE_INFINITY];
  if (value - expanded >= low && value + expanded <= high) return 'inside';
  return value + expanded < low || value - expanded > high ? 'outside' : 'no-verdict';
}

/** The stretches about each limit in which a value gives no verdict. */
export function withoutVerdict({ lower, upper }: Band, expanded: number): readonly Band[] {
  return [lower, upper].flatMap((limit) =>
    limit === undefined ? [] : [{ lower: limit - expanded, upper: limit + expanded }],
  );
}
