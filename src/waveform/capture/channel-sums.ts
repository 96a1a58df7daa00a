import type { Samples } from './capture.js';

/**
 * Both channels, and what is taken off each before it is squared: a value near its mean, so that no digit is lost.
 * Where one is absent the other stands in for it, and its sums are not used.
 */
export interface Channels {
  readonly voltage: Samples;
  readonly current: Samples;
  readonly originV: number;
  readonly originI: number;
}

/** Sums over a stretch, of both channels less their origins. */
export interface ChannelSums {
  v: number;
  i: number;
  vv: number;
  ii: number;
  vi: number;
}

export function noSums(): ChannelSums {
  return { v: 0, i: 0, vv: 0, ii: 0, vi: 0 };
}

/** Adds sums with a weight. */
export function addSums(total: ChannelSums, part: ChannelSums, weight: number): void {
  total.v += weight * part.v;
  total.i += weight * part.i;
  total.vv += weight * part.vv;
  total.ii += weight * part.ii;
  total.vi += weight * part.vi;
}

/** Samples after which a partial sum is added up: it keeps rounding small without the cost of compensation. */
export const block = 4096;

/** Sums from one sample up to, but not with, another. */
export function sumStretch({ voltage, current, originV, originI }: Channels, from: number, to: number): ChannelSums {
  const total = noSums();
  for (let start = from; start < to; start += block) {
    const end = Math.min(start + block, to);
    let v = 0;
    let i = 0;
    let vv = 0;
    let ii = 0;
    let vi = 0;
    for (let k = start; k < end; k++) {
      const x = (voltage[k] as number) - originV;
      const y = (current[k] as number) - originI;
      v += x;
      i += y;
      vv += x * x;
      ii += y * y;
      vi += x * y;
    }
    addSums(total, { v, i, vv, ii, vi }, 1);
  }
  return total;
}

/** Both channels at a place between samples, as sums of one. */
export function placeOf({ voltage, current, originV, originI }: Channels, time: number): ChannelSums {
  const v = valueAt(voltage, originV, time);
  const i = valueAt(current, originI, time);
  return { v, i, vv: v * v, ii: i * i, vi: v * i };
}

function valueAt(samples: Samples, origin: number, time: number): number {
  const k = Math.floor(time);
  const low = (samples[k] as number) - origin;
  if (time === k) return low;
  return low + (time - k) * ((samples[k + 1] as number) - origin - low);
}
