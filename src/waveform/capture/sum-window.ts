import type { Samples } from './capture.js';
import { addPlace, addSums, type ChannelSums, type Channels, noSums, sumStretch } from './channel-sums.js';
import type { Carrier } from './find-carrier.js';
import { type BurstRule, scanBursts } from './scan-bursts.js';

/** Sums over a window; times in samples. */
export interface WindowSums {
  readonly kind: 'bursts' | 'cycles' | 'record';
  readonly start: number;
  readonly length: number;
  /** Bursts or cycles; 0 for a record. */
  readonly count: number;
  readonly sums: ChannelSums;
  /** Sums over the whole samples from `from` up to, but not with, `to`: all that the window holds but its broken ends. */
  readonly covered: { readonly from: number; readonly to: number; readonly sums: ChannelSums };
  /** Samples in which there was an output, for bursts. */
  readonly active: number;
  /** Bursts that have begun in the capture. */
  readonly begun: number;
}

/** Cycles of a continuous output that are taken together for the phase. */
const cyclesTogether = 64;

/** Whole bursts, where there are two beginnings at least; the whole record where there is one or none. */
export function sumBursts(channels: Channels, detecting: Samples, count: number, rule: BurstRule): WindowSums {
  const sums = noSums();
  let first = -1;
  let last = -1;
  let firstSample = -1;
  let lastSample = -1;
  let begun = 0;
  let active = 0;
  let activeBefore = 0;
  scanBursts(detecting, count, rule, {
    begins: (sample, time) => {
      begun++;
      if (first < 0) {
        first = time;
        firstSample = sample;
      } else addSums(sums, sumStretch(channels, lastSample, sample, false));
      activeBefore = active;
      last = time;
      lastSample = sample;
    },
    ends: (time) => {
      if (last >= 0) active += time - last;
    },
  });
  if (begun < 2) return { ...sumRecord(channels, count), begun };
  // What the last burst has added lies outside the window, which ends where it begins.
  const covered = { from: firstSample, to: lastSample, sums };
  return {
    kind: 'bursts',
    start: first,
    length: last - first,
    count: begun - 1,
    sums,
    covered,
    active: activeBefore,
    begun,
  };
}

/** Whole cycles of a continuous output, from crossing to crossing, by the trapezoidal rule with its broken ends. */
export function sumCycles(channels: Channels, { first, last, crossings, cycle }: Carrier): WindowSums {
  const from = Math.ceil(first);
  const to = Math.floor(last);
  const sums = noSums();
  const stretch = Math.max(Math.round(cycle * cyclesTogether), 1);
  for (let start = from; start <= to; ) {
    // No short stretch is left over at the end: its taper would let the ends through.
    const end = to + 1 - start < 2 * stretch ? to + 1 : start + stretch;
    addSums(sums, sumStretch(channels, start, end, true));
    start = end;
  }
  const covered = { from, to: to + 1, sums: { ...sums } };
  // The sum has the weights 1; the ends take ½ and half of the broken piece beside them.
  addPlace(sums, channels, from, (from - first - 1) / 2);
  addPlace(sums, channels, to, (last - to - 1) / 2);
  addPlace(sums, channels, first, (from - first) / 2);
  addPlace(sums, channels, last, (last - to) / 2);
  return { kind: 'cycles', start: first, length: last - first, count: crossings, sums, covered, active: 0, begun: 0 };
}

/** Everything that was sampled, each sample for its interval. */
export function sumRecord(channels: Channels, count: number): WindowSums {
  const sums = sumStretch(channels, 0, count, false);
  const covered = { from: 0, to: count, sums };
  return { kind: 'record', start: 0, length: count, count: 0, sums, covered, active: 0, begun: 0 };
}

/** The same sums for a capture of which a window is already summed. */
export function sumAll(channels: Channels, count: number, { covered }: WindowSums): ChannelSums {
  const sums = { ...covered.sums };
  addSums(sums, sumStretch(channels, 0, covered.from, false));
  addSums(sums, sumStretch(channels, covered.to, count, false));
  return sums;
}
