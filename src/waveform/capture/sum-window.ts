import type { Samples } from './capture.js';
import { addSums, type ChannelSums, type Channels, placeOf, sumStretch } from './channel-sums.js';
import { type CrossSpectrum, longestKept, stretchSpectrum, taperedSpectrum } from './cross-spectrum.js';
import { type Carrier, findCarrier, type Level } from './find-carrier.js';
import { type BurstTally, tallyBursts } from './tally-bursts.js';

/** Sums over a window; times in samples. */
export interface WindowSums {
  readonly kind: 'bursts' | 'cycles' | 'record';
  readonly start: number;
  readonly length: number;
  /** Bursts or cycles; of a record the bursts that begin in it. */
  readonly count: number;
  readonly sums: ChannelSums;
  /** At the carrier; zero where it was not wanted. */
  readonly spectrum: CrossSpectrum;
  /** Of bursts. */
  readonly tally?: BurstTally;
}

/** A window, and the carrier; none for a channel that does not change. */
export interface WindowFound {
  readonly window: WindowSums;
  readonly carrier?: Carrier | undefined;
}

/** A capture whose samples are all summed already. */
export interface SummedCapture {
  readonly channels: Channels;
  readonly count: number;
  readonly all: ChannelSums;
  /** Whether the cross spectrum is wanted. */
  readonly withSpectrum: boolean;
}

/** Intervals that tell the carrier well enough to know what a pause is. */
const enough = 256;
/** Cycles of quiet that make a pause. */
const pauseCycles = 1.25;
/** Cycles of a continuous output that are taken together for the phase, and the fewest where cycles are long. */
const cyclesTogether = 64;
const fewestTogether = 4;

/** Samples of bursts that all count for the phase, and the share of those beyond: a quarter of a million tells it far better than any probe. */
const countedForPhase = 1 << 18;
const shareBeyond = 1 / 16;

/**
 * Whole bursts of a capture with pauses, whole cycles of a continuous one, or else the whole record; with the carrier.
 *
 * Bursts and cycles are told apart on one of the channels.
 */
export function sumWindow(capture: SummedCapture, detecting: Samples, level: Level): WindowFound {
  const { channels, count } = capture;
  const { cycle, last: lastRise, longestQuiet } = findCarrier(detecting, count, level, { enough });
  const turn = cycle > 0 && capture.withSpectrum ? (2 * Math.PI) / cycle : 0;
  const spectrum = { re: 0, im: 0 };
  const addSpectrum = stretchSpectrum(channels, turn);
  let seen = 0;
  let counted = 0;
  const { tally, onPause } = tallyBursts(detecting, count, level, Math.ceil(cycle / 4) || 1, (from, to) => {
    if (turn > 0 && counted <= countedForPhase + shareBeyond * seen) {
      addSpectrum(spectrum, from, to);
      counted += to - from;
    }
    seen += to - from;
  });
  const pause = Math.max(Math.ceil(pauseCycles * cycle), 3);
  // A single cycle tells no pause from a crossing; pulses of one sign have no crossings to be told from.
  const zero = longestQuiet >= pause ? levelOfPauses(capture, detecting, level, pause) : level.middle;
  // A channel that goes through both thresholds, as pulses of one sign do not, and has no cycle.
  const noCycle = lastRise >= 0 && cycle === 0;
  const search = noCycle ? {} : { zero, pause, onPause };
  const carrier = findCarrier(detecting, count, level, search);
  if (noCycle) return { window: sumRecord(capture, 0), carrier };
  if (carrier.longestQuiet < pause) {
    const window = carrier.crossings > 0 ? sumCycles(capture, carrier) : sumRecord(capture, carrier.cycle);
    return { window, carrier };
  }
  const { begun, first, last, firstSample, lastSample } = tally;
  if (begun < 2) return { window: { ...sumRecord(capture, carrier.cycle), count: begun }, carrier };
  const sums = sumWithin(capture, firstSample, lastSample);
  return {
    window: { kind: 'bursts', start: first, length: last - first, count: begun - 1, sums, spectrum, tally },
    carrier,
  };
}

/**
 * Mean of the pauses at the beginning of a capture. Bursts that ring off have another mean, and each of their cycles
 * would cross that a little later than the one before.
 */
function levelOfPauses({ count }: SummedCapture, detecting: Samples, level: Level, pause: number): number {
  let sum = 0;
  let quiet = 0;
  const onPause = (from: number, to: number): void => {
    for (let k = from; k < to; k++) sum += (detecting[k] as number) - level.middle;
    quiet += to - from;
  };
  findCarrier(detecting, count, level, { enough, pause, onPause });
  return quiet === 0 ? level.middle : level.middle + sum / quiet;
}

/** Whole cycles of a continuous output, from crossing to crossing, by the trapezoidal rule with its broken ends. */
function sumCycles(capture: SummedCapture, { first, last, crossings, cycle }: Carrier): WindowSums {
  const { channels, withSpectrum } = capture;
  const from = Math.ceil(first);
  const to = Math.floor(last);
  const sums = sumWithin(capture, from, to + 1);
  // The sum has the weights 1; the ends take ½ and half of the broken piece beside them.
  for (const [place, weight] of [
    [from, from - first - 1],
    [to, last - to - 1],
    [first, from - first],
    [last, last - to],
  ] as const) {
    addSums(sums, placeOf(channels, place), weight / 2);
  }
  const spectrum = { re: 0, im: 0 };
  if (withSpectrum) {
    const add = taperedSpectrum(channels, (2 * Math.PI) / cycle);
    const together = Math.max(Math.min(cyclesTogether, Math.floor(longestKept / cycle)), fewestTogether);
    const stretch = Math.max(Math.round(cycle * together), 1);
    for (let start = from; start <= to; ) {
      // No short stretch is left over at the end: its taper would let the ends through.
      const end = to + 1 - start < 2 * stretch ? to + 1 : start + stretch;
      add(spectrum, start, end);
      start = end;
    }
  }
  return { kind: 'cycles', start: first, length: last - first, count: crossings, sums, spectrum };
}

/** Everything that was sampled, each sample for its interval. */
export function sumRecord({ channels, count, all, withSpectrum }: SummedCapture, cycle: number): WindowSums {
  const spectrum = { re: 0, im: 0 };
  if (withSpectrum && cycle > 0) stretchSpectrum(channels, (2 * Math.PI) / cycle)(spectrum, 0, count);
  return { kind: 'record', start: 0, length: count, count: 0, sums: all, spectrum };
}

/** Sums from one sample up to, but not with, another: by what lies outside, where that is less and costs no digits. */
function sumWithin({ channels, count, all }: SummedCapture, from: number, to: number): ChannelSums {
  if (2 * (to - from) >= count) {
    const sums = { ...all };
    addSums(sums, sumStretch(channels, 0, from), -1);
    addSums(sums, sumStretch(channels, to, count), -1);
    if (sums.vv > all.vv / 8 && sums.ii > all.ii / 8) return sums;
  }
  return sumStretch(channels, from, to);
}
