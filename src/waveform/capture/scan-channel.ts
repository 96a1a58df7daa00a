import { fail } from '../../checks/index.js';
import type { Samples } from './capture.js';

/** What one pass over a channel finds. */
export interface ChannelScan {
  readonly mean: number;
  readonly lowest: number;
  readonly highest: number;
  /** Longest run of neighbouring samples at the lowest or the highest value. */
  readonly longestFlat: number;
}

/** Samples after which a partial sum is added up: it keeps rounding small without the cost of compensation. */
const block = 4096;

/**
 * Mean, ends and flat tops of the first samples of a channel.
 *
 * @throws CalculationError `not-a-number`, naming the first sample that is none
 */
export function scanChannel(samples: Samples, count: number, path: string): ChannelScan {
  let lowest = samples[0] as number;
  let highest = lowest;
  let runLow = 0;
  let runHigh = 0;
  let longestLow = 0;
  let longestHigh = 0;
  let total = 0;
  for (let from = 0; from < count; from += block) {
    const to = Math.min(from + block, count);
    let sum = 0;
    for (let k = from; k < to; k++) {
      const x = samples[k] as number;
      sum += x;
      if (x >= highest) {
        if (x > highest) {
          highest = x;
          longestHigh = 0;
          runHigh = 0;
        }
        if (++runHigh > longestHigh) longestHigh = runHigh;
      } else runHigh = 0;
      if (x <= lowest) {
        if (x < lowest) {
          lowest = x;
          longestLow = 0;
          runLow = 0;
        }
        if (++runLow > longestLow) longestLow = runLow;
      } else runLow = 0;
    }
    if (!Number.isFinite(sum)) refuseFirst(samples, from, to, path);
    total += sum;
  }
  return { mean: total / count, lowest, highest, longestFlat: Math.max(longestLow, longestHigh) };
}

function refuseFirst(samples: Samples, from: number, to: number, path: string): void {
  for (let k = from; k < to; k++) {
    const x: unknown = samples[k];
    if (typeof x !== 'number' || !Number.isFinite(x))
      fail('not-a-number', `${path}[${k}]`, x, 'must be a finite number');
  }
  fail(
    'result-out-of-range',
    path,
    'the sum of its samples',
    'must be within the range of numbers',
    'Check the units.',
  );
}
