import type { Samples } from './capture.js';
import { crossingBefore, type Level } from './find-carrier.js';

/** What is known of the bursts so far; times in samples, between which they are interpolated. */
export interface BurstTally {
  /** Bursts that have begun. */
  begun: number;
  /** Where the first begins and the last one does: -1 before there is any. */
  first: number;
  last: number;
  /** First sample of each above the threshold. */
  firstSample: number;
  lastSample: number;
  /** Samples with an output, of all bursts but the last. */
  active: number;
  /** Changes from sample to sample over the threshold, in units of it: at all beginnings, and at all ends but the last. */
  rise: number;
  fall: number;
  /** Lowest of the last crests of all bursts but the last, in the same unit. */
  crest: number;
}

/** A tally, and what takes the pauses of a channel, in the order of time. */
export interface TallyOfBursts {
  readonly tally: BurstTally;
  readonly onPause: (from: number, to: number) => void;
}

/**
 * Counts each burst that has a pause before it.
 *
 * @param quarter Samples in a quarter of a cycle: the last crest lies within it of the end
 * @param between Receives the first samples of two bursts that follow each other
 */
export function tallyBursts(
  samples: Samples,
  count: number,
  level: Level,
  quarter: number,
  between: (from: number, to: number) => void,
): TallyOfBursts {
  const tally: BurstTally = {
    begun: 0,
    first: -1,
    last: -1,
    firstSample: -1,
    lastSample: -1,
    active: 0,
    rise: 0,
    fall: 0,
    crest: Number.POSITIVE_INFINITY,
  };
  const { middle, threshold } = level;
  /** Where the channel goes through the threshold before a sample, on the side of one that is above it. */
  const passes = (after: number, above: number): number =>
    crossingBefore(samples, after, middle + ((samples[above] as number) > middle ? threshold : -threshold));
  const change = (after: number): number =>
    Math.abs((samples[after] as number) - (samples[after - 1] as number)) / threshold;
  const onPause = (from: number, to: number): void => {
    // A pause to the end of the capture begins no burst, and whether the one before it is followed is not known.
    if (to === count) return;
    const time = passes(to, to);
    if (tally.begun === 0) {
      tally.first = time;
      tally.firstSample = to;
    } else {
      let crest = 0;
      for (let k = Math.max(from - quarter, 0); k < from; k++) {
        crest = Math.max(crest, Math.abs((samples[k] as number) - middle));
      }
      tally.crest = Math.min(tally.crest, crest / threshold);
      tally.fall += change(from);
      tally.active += passes(from, from - 1) - tally.last;
      between(tally.lastSample, to);
    }
    tally.rise += change(to);
    tally.begun++;
    tally.last = time;
    tally.lastSample = to;
  };
  return { tally, onPause };
}
