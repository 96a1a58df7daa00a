import type { Samples } from './capture.js';

/** What the crossings of a channel through its middle say; times in samples from the first. */
export interface Carrier {
  /** Samples in one cycle; 0 where no cycle is found. */
  readonly cycle: number;
  /** Crossings upwards: the second, which is the first that is sure, and the last. */
  readonly first: number;
  readonly last: number;
  /** Whole cycles between them, where there are no pauses. */
  readonly crossings: number;
  /** Longest stretch of neighbouring samples within the threshold. */
  readonly longestQuiet: number;
  /** Whether the channel goes through both thresholds at all; pulses of one sign do not. */
  readonly bothSigns: boolean;
}

/** Bins of intervals, each 5 % longer than the one before: the longest is beyond any capture. */
const ratio = Math.log(1.05);
const bins = 640;
/** Bins to each side of the fullest that count as the same interval. */
const near = 3;

/** How often intervals of each bin occur, and their sum. */
interface Histogram {
  readonly counts: Float64Array;
  readonly sums: Float64Array;
}

/**
 * The carrier of a channel, from the intervals between its crossings upwards: the most frequent interval, and the mean
 * of those near it. A crossing counts when the channel has been below the lower and then comes above the upper
 * threshold, so that noise makes none; its place is interpolated.
 */
export function findCarrier(samples: Samples, count: number, middle: number, threshold: number): Carrier {
  const cycles = emptyHistogram();
  const gaps = emptyHistogram();
  let below = false;
  let lastBelow = -1;
  let crossing = -1;
  let first = -1;
  let last = -1;
  let crossings = 0;
  let quiet = 0;
  let longestQuiet = 0;
  let before = (samples[0] as number) - middle;
  for (let k = 0; k < count; k++) {
    const x = (samples[k] as number) - middle;
    if (x <= threshold && x >= -threshold) {
      if (++quiet > longestQuiet) longestQuiet = quiet;
    } else quiet = 0;
    if (x < -threshold) {
      below = true;
      lastBelow = k;
    } else if (below) {
      // The last way up through the middle is the one that leads to the upper threshold.
      if (before <= 0 && x > 0) crossing = k - x / (x - before);
      if (x > threshold) {
        below = false;
        // A way up that takes more than half of the interval leads through a pause: the crossing in it means nothing,
        // and the one that begins the burst is where the rise to the threshold comes from.
        const throughPause = 2 * (k - lastBelow) > crossing - last && last >= 0;
        if (throughPause) crossing = k - x / (x - before);
        if (last >= 0) addInterval(throughPause ? gaps : cycles, crossing - last);
        // The very first crossing has no interval that would tell a pause: counting begins at the second.
        if (first >= 0) crossings++;
        else if (last >= 0) first = crossing;
        last = crossing;
      }
    }
    before = x;
  }
  const cycle = commonInterval(cycles) || commonInterval(gaps);
  return { cycle, first, last, crossings, longestQuiet, bothSigns: last >= 0 };
}

function emptyHistogram(): Histogram {
  return { counts: new Float64Array(bins), sums: new Float64Array(bins) };
}

function addInterval({ counts, sums }: Histogram, interval: number): void {
  const bin = Math.min(Math.max(Math.floor(Math.log(interval) / ratio), 0), bins - 1);
  counts[bin] = (counts[bin] as number) + 1;
  sums[bin] = (sums[bin] as number) + interval;
}

function commonInterval({ counts, sums }: Histogram): number {
  let fullest = 0;
  for (let bin = 1; bin < bins; bin++) if ((counts[bin] as number) > (counts[fullest] as number)) fullest = bin;
  let number = 0;
  let sum = 0;
  for (let bin = Math.max(fullest - near, 0); bin <= Math.min(fullest + near, bins - 1); bin++) {
    number += counts[bin] as number;
    sum += sums[bin] as number;
  }
  return number === 0 ? 0 : sum / number;
}
