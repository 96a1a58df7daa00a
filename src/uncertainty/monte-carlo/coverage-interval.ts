import { selectRanks } from '../../numeric/index.js';

/** Limits of a coverage interval. */
export interface CoverageInterval {
  readonly lower: number;
  readonly upper: number;
}

/** Number of values that an interval spans: pM, rounded to the nearest whole number. */
function span(count: number, probability: number): number {
  const exact = probability * count;
  const nearest = Math.round(exact);
  // p·M of a decimal p is whole on paper more often than in binary.
  return Math.abs(exact - nearest) < 1e-9 * count ? nearest : Math.floor(exact + 0.5);
}

/**
 * Probabilistically symmetric coverage interval of values, which are rearranged in place.
 *
 * @source JCGM 101:2008, 7.7.2
 */
export function symmetricInterval(values: Float64Array, probability: number): CoverageInterval {
  const q = Math.min(values.length - 1, span(values.length, probability));
  const r = Math.floor((values.length - q + 1) / 2);
  // Ranks of the standard start at 1.
  const [lower, upper] = selectRanks(values, [r - 1, r + q - 1]) as [number, number];
  return { lower, upper };
}

/**
 * Shortest coverage interval of values, which are rearranged in place.
 *
 * @source JCGM 101:2008, 7.7.4 (5.3.4)
 */
export function shortestInterval(values: Float64Array, probability: number): CoverageInterval {
  const count = values.length;
  const q = Math.min(count - 1, span(count, probability));
  const tail = count - q;
  if (2 * tail < count) {
    // Only the two tails need to be in order.
    selectRanks(values, [tail - 1, q]);
    values.subarray(0, tail).sort();
    values.subarray(q).sort();
  } else {
    values.sort();
  }
  let best = 0;
  let width = Number.POSITIVE_INFINITY;
  for (let r = 0; r < tail; r++) {
    const here = (values[r + q] as number) - (values[r] as number);
    if (here < width) {
      width = here;
      best = r;
    }
  }
  return { lower: values[best] as number, upper: values[best + q] as number };
}
