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
  const extremesV = new Extremes(voltage[0] as number, originV);
  const extremesI = new Extremes(current[0] as number, originI);
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
    extremesV.take(voltage, start, end, lowV, highV);
    extremesI.take(current, start, end, lowI, highI);
    addSums(sums, { v, i, vv, ii, vi }, 1);
  }
  return {
    channels: { voltage, current, originV, originI },
    voltage: extremesV.scan(originV + sums.v / count),
    current: extremesI.scan(originI + sums.i / count),
    sums,
  };
}

/** The ends of a channel, and how long it stays at them. */
class Extremes {
  private lowest: number;
  private highest: number;
  private lastLow = -1;
  private lastHigh = -1;
  private runLow = 0;
  private runHigh = 0;
  private longestLow = 0;
  private longestHigh = 0;

  constructor(
    first: number,
    private readonly origin: number,
  ) {
    this.lowest = first;
    this.highest = first;
  }

  /** Takes the samples of a block, which all lie between a lowest and a highest distance from the origin. */
  take(samples: Samples, start: number, end: number, low: number, high: number): void {
    if (low > this.lowest - this.origin && high < this.highest - this.origin) return;
    for (let k = start; k < end; k++) {
      const x = samples[k] as number;
      if (x >= this.highest) this.takeHigh(x, k);
      if (x <= this.lowest) this.takeLow(x, k);
    }
  }

  private takeHigh(x: number, k: number): void {
    if (x > this.highest) {
      this.highest = x;
      this.longestHigh = 0;
      this.runHigh = 0;
    }
    this.runHigh = this.lastHigh === k - 1 ? this.runHigh + 1 : 1;
    this.lastHigh = k;
    if (this.runHigh > this.longestHigh) this.longestHigh = this.runHigh;
  }

  private takeLow(x: number, k: number): void {
    if (x < this.lowest) {
      this.lowest = x;
      this.longestLow = 0;
      this.runLow = 0;
    }
    this.runLow = this.lastLow === k - 1 ? this.runLow + 1 : 1;
    this.lastLow = k;
    if (this.runLow > this.longestLow) this.longestLow = this.runLow;
  }

  scan(mean: number): ChannelScan {
    const longestFlat = Math.max(this.longestLow, this.longestHigh);
    return { mean, lowest: this.lowest, highest: this.highest, longestFlat };
  }
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
