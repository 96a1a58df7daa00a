import type { Samples } from './capture.js';

/** Sums over a stretch, of both channels less their middles. */
export interface ChannelSums {
  v: number;
  i: number;
  vv: number;
  ii: number;
  vi: number;
  /** Sum of the products of the two spectra at the carrier, voltage times conjugate current. */
  crossRe: number;
  crossIm: number;
}

/** Both channels, the first samples of which are summed; an absent one stands for nothing but zeros. */
export interface Channels {
  readonly voltage: Samples | undefined;
  readonly current: Samples | undefined;
  readonly middleV: number;
  readonly middleI: number;
  /** Radians of the carrier for one sample; 0 for none. */
  readonly carrier: number;
}

export function noSums(): ChannelSums {
  return { v: 0, i: 0, vv: 0, ii: 0, vi: 0, crossRe: 0, crossIm: 0 };
}

export function addSums(total: ChannelSums, part: ChannelSums): void {
  total.v += part.v;
  total.i += part.i;
  total.vv += part.vv;
  total.ii += part.ii;
  total.vi += part.vi;
  total.crossRe += part.crossRe;
  total.crossIm += part.crossIm;
}

/** Samples after which a partial sum is added up and the turning of the carrier is set right. */
const block = 512;

/**
 * Sums from one sample to another. The spectra at the carrier are taken over the whole stretch: from pause to pause a
 * load's impedance is exactly the quotient of the two, however the burst rings. A `tapered` stretch is weighted by a
 * raised cosine, for cycles that have no pause to end in.
 */
export function sumStretch(channels: Channels, from: number, to: number, tapered: boolean): ChannelSums {
  const { voltage, current, middleV, middleI, carrier } = channels;
  const total = noSums();
  const withSpectrum = carrier > 0 && voltage !== undefined && current !== undefined;
  let vRe = 0;
  let vIm = 0;
  let iRe = 0;
  let iIm = 0;
  const taper = (2 * Math.PI) / (to - from);
  const turnC = Math.cos(carrier);
  const turnS = Math.sin(carrier);
  const taperC = Math.cos(taper);
  const taperS = Math.sin(taper);
  for (let start = from; start < to; start += block) {
    const end = Math.min(start + block, to);
    let v = 0;
    let vv = 0;
    if (voltage !== undefined) {
      for (let k = start; k < end; k++) {
        const x = (voltage[k] as number) - middleV;
        v += x;
        vv += x * x;
      }
    }
    let i = 0;
    let ii = 0;
    if (current !== undefined) {
      for (let k = start; k < end; k++) {
        const x = (current[k] as number) - middleI;
        i += x;
        ii += x * x;
      }
    }
    let vi = 0;
    if (voltage !== undefined && current !== undefined) {
      for (let k = start; k < end; k++) vi += ((voltage[k] as number) - middleV) * ((current[k] as number) - middleI);
    }
    total.v += v;
    total.i += i;
    total.vv += vv;
    total.ii += ii;
    total.vi += vi;
    if (!withSpectrum) continue;
    // Cosine and sine of carrier and taper are turned on from sample to sample, and set right at each block.
    let c = Math.cos(carrier * (start - from));
    let s = Math.sin(carrier * (start - from));
    let tc = Math.cos(taper * (start - from));
    let ts = Math.sin(taper * (start - from));
    for (let k = start; k < end; k++) {
      const weight = tapered ? 1 - tc : 1;
      const x = weight * ((voltage[k] as number) - middleV);
      const y = weight * ((current[k] as number) - middleI);
      vRe += x * c;
      vIm -= x * s;
      iRe += y * c;
      iIm -= y * s;
      const nextC = c * turnC - s * turnS;
      s = s * turnC + c * turnS;
      c = nextC;
      const nextT = tc * taperC - ts * taperS;
      ts = ts * taperC + tc * taperS;
      tc = nextT;
    }
  }
  total.crossRe = vRe * iRe + vIm * iIm;
  total.crossIm = vIm * iRe - vRe * iIm;
  return total;
}

/** Adds the two channels at a place between samples, with a weight: the end of a stretch of whole cycles. */
export function addPlace(total: ChannelSums, channels: Channels, time: number, weight: number): void {
  const v = valueAt(channels.voltage, channels.middleV, time);
  const i = valueAt(channels.current, channels.middleI, time);
  total.v += weight * v;
  total.i += weight * i;
  total.vv += weight * v * v;
  total.ii += weight * i * i;
  total.vi += weight * v * i;
}

function valueAt(samples: Samples | undefined, middle: number, time: number): number {
  if (samples === undefined) return 0;
  const k = Math.floor(time);
  const low = (samples[k] as number) - middle;
  if (time === k) return low;
  return low + (time - k) * ((samples[k + 1] as number) - middle - low);
}
