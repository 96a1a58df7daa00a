import { fail } from '../../checks/index.js';
import type { Samples } from './capture.js';
import { addSums, type ChannelSums, type Channels, noSums } from './channel-sums.js';

/** Samples that are taken together: few, so that few are looked at twice for the ends. */
const block = 1024;

/** What one pass over a channel finds. */
export interface ChannelScan {
  readonly mean: number;
  readonly lowest: number;
  readonly highest: number;
  /** Longest run of neighbouring samples at the lowest or the highest value. */
  readonly longestFlat: number;
}

/** What one pass over both channels finds. */
export interface Scan {
  readonly channels: Channels;
  readonly voltage: ChannelScan;
  readonly current: ChannelScan;
  /** Sums of all samples. */
  readonly sums: ChannelSums;
}

/**
 * Ends and flat tops of the first samples of both channels, and the sums of all of them.
 *
 * @throws CalculationError `not-a-number`, naming the first sample that is none
 */
export function scanChannels(
  voltage: Samples,
  current: Samples,
  count: number,
  paths: readonly [string, string],
): Scan {
  const originV = meanOfFirst(voltage, count, paths[0]);
  const originI = meanOfFirst(current, count, paths[1]);
  const bottomV = trackEnd(voltage, originV, -1);
  const topV = trackEnd(voltage, originV, 1);
  const bottomI = trackEnd(current, originI, -1);
  const topI = trackEnd(current, originI, 1);
  const sums = noSums();
  for (let start = 0; start < count; start += block) {
    const end = Math.min(start + block, count);
    let v = 0;
    let i = 0;
    let vv = 0;
    let ii = 0;
    let vi = 0;
    let lowV = 0;
    let highV = 0;
    let lowI = 0;
    let highI = 0;
    for (let k = start; k < end; k++) {
      const x = (voltage[k] as number) - originV;
      const y = (current[k] as number) - originI;
      v += x;
      i += y;
      vv += x * x;
      ii += y * y;
      vi += x * y;
      if (x > highV) highV = x;
      else if (x < lowV) lowV = x;
      if (y > highI) highI = y;
      else if (y < lowI) lowI = y;
    }
    if (!Number.isFinite(v + vv)) refuseFirst(voltage, start, end, paths[0]);
    if (!Number.isFinite(i + ii)) refuseFirst(current, start, end, paths[1]);
    bottomV.take(start, end, lowV);
    topV.take(start, end, highV);
    bottomI.take(start, end, lowI);
    topI.take(start, end, highI);
    addSums(sums, { v, i, vv, ii, vi }, 1);
  }
  return {
    channels: { voltage, current, originV, originI },
    voltage: scanOf(originV + sums.v / count, bottomV, topV),
    current: scanOf(originI + sums.i / count, bottomI, topI),
    sums,
  };
}

/** One end of a channel and how long it stays there: the highest value, or with the sign -1 the lowest. */
function trackEnd(samples: Samples, origin: number, sign: 1 | -1): End {
  let best = sign * (samples[0] as number);
  let last = -1;
  let run = 0;
  let longest = 0;
  return {
    take: (start, end, distance) => {
      if (sign * distance < best - sign * origin) return;
      for (let k = start; k < end; k++) {
        const x = sign * (samples[k] as number);
        if (x < best) continue;
        if (x > best) longest = run = 0;
        best = x;
        run = last === k - 1 ? run + 1 : 1;
        last = k;
        if (run > longest) longest = run;
      }
    },
    value: () => sign * best,
    longest: () => longest,
  };
}

interface End {
  /** Takes the samples of a block, none of which lies further from the origin on this side. */
  readonly take: (start: number, end: number, distance: number) => void;
  readonly value: () => number;
  readonly longest: () => number;
}

function scanOf(mean: number, low: End, high: End): ChannelScan {
  return {
    mean,
    lowest: low.value(),
    highest: high.value(),
    longestFlat: Math.max(low.longest(), high.longest()),
  };
}

/** Near the mean of the whole, and known before the whole is gone through. */
function meanOfFirst(samples: Samples, count: number, path: string): number {
  const end = Math.min(block, count);
  let sum = 0;
  for (let k = 0; k < end; k++) sum += samples[k] as number;
  if (!Number.isFinite(sum)) refuseFirst(samples, 0, end, path);
  return sum / end;
}

function refuseFirst(samples: Samples, from: number, to: number, path: string): void {
  for (let k = from; k < to; k++) {
    const x: unknown = samples[k];
    if (typeof x !== 'number' || !Number.isFinite(x)) {
      fail('not-a-number', `${path}[${k}]`, x, 'must be a finite number');
    }
  }
  fail('result-out-of-range', path, 'its sum', 'must be within the range of numbers', 'Check the units.');
}
