import type { Samples } from './capture.js';

/** What the crossings of a channel through its middle say; times in samples from the first. */
export interface Carrier {
  /** Samples in one cycle; 0 where no cycle is found. */
  readonly cycle: number;
  /** Crossings upwards: the second, which is the first that is sure, and the last; -1 where there is none. */
  readonly first: number;
  readonly last: number;
  /** Whole cycles between them, where there are no pauses. */
  readonly crossings: number;
  /** Longest stretch of neighbouring samples within the threshold. */
  readonly longestQuiet: number;
  /** Mean change from sample to sample where the channel crosses upwards, in units of the threshold; 0 where it never does. */
  readonly slope: number;
}

/** Bins of intervals, each 5 % longer than the one before: the longest is beyond any capture. */
const ratio = Math.log(1.05);
const bins = 640;
/** Bins to each side of the fullest that count as the same interval. */
const near = 3;

/** How often intervals of each bin occur, and after these their sums. */
type Histogram = Float64Array;

/** Between which values a channel counts as quiet. */
export interface Level {
  readonly middle: number;
  /** Distance from the middle. */
  readonly threshold: number;
}

/** What is looked for besides, and when to stop. */
export interface CarrierSearch {
  /** Ends the search after so many intervals; never unless stated. */
  readonly enough?: number;
  /** The value that counts as a crossing; the middle unless stated. Between bursts it is the level of the pauses. */
  readonly zero?: number;
  /** Neighbouring samples within the threshold that make a pause. */
  readonly pause?: number;
  /** Receives each pause, in the order of time: its first sample, and the first after it or the number of samples. */
  readonly onPause?: (from: number, to: number) => void;
}

/**
 * The carrier of a channel, from the intervals between its crossings upwards: the most frequent interval, and the mean
 * of those near it. A crossing counts when the channel has been below the lower and then comes above the upper
 * threshold, so that noise makes none; its place is interpolated.
 */
export function findCarrier(
  samples: Samples,
  count: number,
  { middle, threshold }: Level,
  { enough = Number.POSITIVE_INFINITY, zero = middle, pause = Number.POSITIVE_INFINITY, onPause }: CarrierSearch,
): Carrier {
  const cycles = emptyHistogram();
  const gaps = emptyHistogram();
  const up = middle + threshold;
  const down = middle - threshold;
  const halves = emptyHistogram();
  let lastBelow = -1;
  let lastAbove = -1;
  let turned = -1;
  let first = -1;
  let last = -1;
  let crossings = 0;
  let rise = 0;
  let longestQuiet = 0;
  let k = 0;
  while (k < count && crossings < enough) {
    const quietFrom = k;
    // Four at a time: most of a capture with pauses is quiet.
    for (; k + 3 < count; k += 4) {
      if ((samples[k] as number) > up || (samples[k] as number) < down) break;
      if ((samples[k + 1] as number) > up || (samples[k + 1] as number) < down) break;
      if ((samples[k + 2] as number) > up || (samples[k + 2] as number) < down) break;
      if ((samples[k + 3] as number) > up || (samples[k + 3] as number) < down) break;
    }
    while (k < count && (samples[k] as number) <= up && (samples[k] as number) >= down) k++;
    if (k - quietFrom > longestQuiet) longestQuiet = k - quietFrom;
    if (k - quietFrom >= pause) onPause?.(quietFrom, k);
    if (k === count) break;
    if ((samples[k] as number) < down) {
      if (lastAbove >= 0) {
        let after = k;
        while ((samples[after - 1] as number) < zero) after--;
        const crossing = crossingBefore(samples, after, zero);
        addHalf(halves, turned, crossing, k - lastAbove);
        turned = crossing;
        lastAbove = -1;
      }
      while (k < count && (samples[k] as number) < down) k++;
      lastBelow = k - 1;
      continue;
    }
    if (lastBelow >= 0) {
      // A way up that takes more than half of the interval leads through a pause: the crossing in it means nothing,
      // and the one that begins the burst is where the rise to the threshold comes from. Elsewhere the last way up
      // through the middle is the one that leads to the upper threshold.
      let after = k;
      while ((samples[after - 1] as number) > zero) after--;
      const straight = crossingBefore(samples, after, zero);
      addHalf(halves, turned, straight, k - lastBelow);
      turned = straight;
      const throughPause = last >= 0 && 2 * (k - lastBelow) > straight - last;
      // A rise that is hardly one leads anywhere: not further back than the channel has been below.
      const crossing = throughPause ? Math.max(crossingBefore(samples, k, zero), lastBelow) : straight;
      rise += (samples[after] as number) - (samples[after - 1] as number);
      if (last >= 0) addInterval(throughPause ? gaps : cycles, crossing - last);
      // The very first crossing has no interval that would tell a pause: counting begins at the second.
      if (first >= 0) crossings++;
      else if (last >= 0) first = crossing;
      last = crossing;
      lastBelow = -1;
    }
    while (k < count && (samples[k] as number) > up) k++;
    lastAbove = k - 1;
  }
  const whole = commonInterval(cycles) || commonInterval(gaps);
  // Bursts of hardly more than a cycle go up only once, and what lies between two of them is no cycle.
  const fromHalves = 2 * commonInterval(halves);
  const cycle = 2 * longestQuiet > whole && fromHalves > 0 && fromHalves < whole / 4 ? fromHalves : whole;
  return { cycle, first, last, crossings, longestQuiet, slope: rise / (crossings + 2) / threshold };
}

/** Where the straight line through a sample and the one before it goes through a value. */
export function crossingBefore(samples: Samples, after: number, zero: number): number {
  const x = (samples[after] as number) - zero;
  return after - x / ((samples[after] as number) - (samples[after - 1] as number));
}

/** Adds the interval between crossings in opposite directions, unless most of it is the way through the middle. */
function addHalf(halves: Histogram, before: number, crossing: number, way: number): void {
  if (before >= 0 && 2 * way <= crossing - before) addInterval(halves, crossing - before);
}

function emptyHistogram(): Histogram {
  return new Float64Array(2 * bins);
}

function addInterval(histogram: Histogram, interval: number): void {
  const bin = Math.min(Math.max(Math.floor(Math.log(interval) / ratio), 0), bins - 1);
  histogram[bin] = (histogram[bin] as number) + 1;
  histogram[bin + bins] = (histogram[bin + bins] as number) + interval;
}

function commonInterval(histogram: Histogram): number {
  let fullest = 0;
  for (let bin = 1; bin < bins; bin++) {
    if ((histogram[bin] as number) > (histogram[fullest] as number)) fullest = bin;
  }
  let number = 0;
  let sum = 0;
  for (let bin = Math.max(fullest - near, 0); bin <= Math.min(fullest + near, bins - 1); bin++) {
    number += histogram[bin] as number;
    sum += histogram[bin + bins] as number;
  }
  return number && sum / number;
}
