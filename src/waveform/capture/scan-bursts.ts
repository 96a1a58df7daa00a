import type { Samples } from './capture.js';

/** How bursts are told from pauses; times in samples. */
export interface BurstRule {
  readonly middle: number;
  readonly threshold: number;
  /** Neighbouring samples within the threshold that make a pause. */
  readonly pause: number;
}

/** Receives what is found, in the order of time. */
export interface BurstListener {
  /** A burst after a pause: its first sample above the threshold, and the place where it passes the threshold. */
  readonly begins: (sample: number, time: number) => void;
  /** Its last place above the threshold, once the pause after it is long enough. */
  readonly ends: (time: number) => void;
}

/** Goes through a channel and reports each burst that has a pause before it. */
export function scanBursts(samples: Samples, count: number, rule: BurstRule, listener: BurstListener): void {
  const { middle, threshold, pause } = rule;
  let quiet = 0;
  let inBurst = false;
  let lastAbove = -1;
  for (let k = 0; k < count; k++) {
    const x = (samples[k] as number) - middle;
    if (x <= threshold && x >= -threshold) {
      quiet++;
      if (inBurst && quiet >= pause) {
        inBurst = false;
        listener.ends(lastAbove + passes(samples, lastAbove, lastAbove + 1, middle, threshold));
      }
    } else {
      if (quiet >= pause) {
        inBurst = true;
        listener.begins(k, k - passes(samples, k, k - 1, middle, threshold));
      }
      quiet = 0;
      lastAbove = k;
    }
  }
}

/** Share of the way from a sample above the threshold to its neighbour within it at which the threshold lies. */
function passes(samples: Samples, above: number, within: number, middle: number, threshold: number): number {
  const x = (samples[above] as number) - middle;
  const sign = x > 0 ? 1 : -1;
  const high = sign * x;
  const low = sign * ((samples[within] as number) - middle);
  return (high - threshold) / (high - low);
}
