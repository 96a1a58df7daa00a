import type { Samples } from './capture.js';
import type { Level } from './find-carrier.js';

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
}

/** A tally, and what takes the pauses of a channel, in the order of time. */
export interface TallyOfBursts {
  readonly tally: BurstTally;
  readonly onPause: (from: number, to: number) => void;
}

/**
 * Counts each burst that has a pause before it.
 *
 * @param between Receives the first samples of two bursts that follow each other
 */
export function tallyBursts(
  samples: Samples,
  count: number,
  level: Level,
  between: (from: number, to: number) => void,
): TallyOfBursts {
  const tally: BurstTally = { begun: 0, first: -1, last: -1, firstSample: -1, lastSample: -1, active: 0 };
  const onPause = (from: number, to: number): void => {
    // A pause to the end of the capture begins no burst, and whether the one before it is followed is not known.
    if (to === count) return;
    const time = to - passes(samples, to, to - 1, level);
    if (tally.begun === 0) {
      tally.first = time;
      tally.firstSample = to;
    } else {
      tally.active += from - 1 + passes(samples, from - 1, from, level) - tally.last;
      between(tally.lastSample, to);
    }
    tally.begun++;
    tally.last = time;
    tally.lastSample = to;
  };
  return { tally, onPause };
}

/** Share of the way from a sample above the threshold to its neighbour within it at which the threshold lies. */
function passes(samples: Samples, above: number, within: number, { middle, threshold }: Level): number {
  const x = (samples[above] as number) - middle;
  const sign = x > 0 ? 1 : -1;
  const high = sign * x;
  const low = sign * ((samples[within] as number) - middle);
  return (high - threshold) / (high - low);
}
