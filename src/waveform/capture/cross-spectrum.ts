import { block, type Channels } from './channel-sums.js';

/** Product of the spectra of both channels at one frequency, voltage times conjugate current. */
export interface CrossSpectrum {
  re: number;
  im: number;
}

/** Cosine and sine of the carrier at the samples of a stretch. */
interface Kernel {
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

/** Longest stretch, in samples, whose weighted cosines and sines are kept from one to the next. */
export const longestKept = 32_768;

/**
 * Gives the function that adds the cross spectrum of the samples from one to, but not with, another. Each stretch counts
 * by its own phase, so that it does not matter how exactly the carrier is known.
 *
 * @param carrier Radians for one sample
 */
export function stretchSpectrum(
  channels: Channels,
  carrier: number,
): (total: CrossSpectrum, from: number, to: number) => void {
  const kernel = newKernel(block);
  fill(kernel, block, carrier, 0, 0);
  return (total, from, to) => {
    const sums = { vRe: 0, vIm: 0, iRe: 0, iIm: 0 };
    for (let start = from; start < to; start += block) {
      // The kernel begins anew at each block: its sums are turned to where the carrier has got to.
      addTurned(sums, correlate(channels, kernel, start, Math.min(start + block, to)), carrier * (start - from));
    }
    addProduct(total, sums);
  };
}

/** The same for stretches of a continuous output, weighted by a raised cosine since they have no pause to end in. */
export function taperedSpectrum(
  channels: Channels,
  carrier: number,
): (total: CrossSpectrum, from: number, to: number) => void {
  let kept: { readonly length: number; readonly kernel: Kernel } | undefined;
  return (total, from, to) => {
    const length = to - from;
    const taper = (2 * Math.PI) / length;
    const sums = { vRe: 0, vIm: 0, iRe: 0, iIm: 0 };
    const size = length <= longestKept ? length : block;
    if (kept?.length !== length) {
      kept = { length, kernel: newKernel(size) };
      fill(kept.kernel, size, carrier, taper, 0);
    }
    for (let start = from; start < to; start += size) {
      const end = Math.min(start + size, to);
      if (size < length) fill(kept.kernel, end - start, carrier, taper, start - from);
      addTurned(sums, correlate(channels, kept.kernel, start, end), 0);
    }
    addProduct(total, sums);
  };
}

interface Spectra {
  vRe: number;
  vIm: number;
  iRe: number;
  iIm: number;
}

/** Adds spectra turned by an angle. */
function addTurned(sums: Spectra, { vRe, vIm, iRe, iIm }: Spectra, angle: number): void {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  sums.vRe += vRe * c + vIm * s;
  sums.vIm += vIm * c - vRe * s;
  sums.iRe += iRe * c + iIm * s;
  sums.iIm += iIm * c - iRe * s;
}

/** Voltage times conjugate current. */
function addProduct(total: CrossSpectrum, { vRe, vIm, iRe, iIm }: Spectra): void {
  total.re += vRe * iRe + vIm * iIm;
  total.im += vIm * iRe - vRe * iIm;
}

function newKernel(length: number): Kernel {
  return { cosine: new Float64Array(length), sine: new Float64Array(length) };
}

/**
 * Fills a kernel from a sample of its stretch on, weighted by 1 − cos of the taper where there is one. Each value is
 * turned on from the one before: over the longest kernel that costs four of sixteen digits.
 */
function fill({ cosine, sine }: Kernel, length: number, carrier: number, taper: number, from: number): void {
  const turnC = Math.cos(carrier);
  const turnS = Math.sin(carrier);
  const taperC = Math.cos(taper);
  const taperS = Math.sin(taper);
  let c = Math.cos(carrier * from);
  let s = Math.sin(carrier * from);
  let tc = Math.cos(taper * from);
  let ts = Math.sin(taper * from);
  for (let k = 0; k < length; k++) {
    const weight = taper === 0 ? 1 : 1 - tc;
    cosine[k] = weight * c;
    sine[k] = weight * s;
    const nextC = c * turnC - s * turnS;
    s = s * turnC + c * turnS;
    c = nextC;
    const nextT = tc * taperC - ts * taperS;
    ts = ts * taperC + tc * taperS;
    tc = nextT;
  }
}

/** Sums of both channels times e^(−jωk), k from the beginning of the kernel. */
function correlate(
  { voltage, current, originV, originI }: Channels,
  { cosine, sine }: Kernel,
  from: number,
  to: number,
): Spectra {
  let vRe = 0;
  let vIm = 0;
  let iRe = 0;
  let iIm = 0;
  for (let k = from, j = 0; k < to; k++, j++) {
    const x = (voltage[k] as number) - originV;
    const y = (current[k] as number) - originI;
    const c = cosine[j] as number;
    const s = sine[j] as number;
    vRe += x * c;
    vIm -= x * s;
    iRe += y * c;
    iIm -= y * s;
  }
  return { vRe, vIm, iRe, iIm };
}
