import FFT from 'fft.js';
import { describe, expect, it } from 'vitest';
import {
  analyseCapture,
  dampedSineSpectrum,
  gatedSineSpectrum,
  pulseTrainSpectrum,
  type Spectrum,
  squareWaveSpectrum,
  triangleWaveSpectrum,
} from '../../src/waveform/index.js';

// fft.js, a general-purpose library, is what the spectra are compared with here.
const size = 4096;
/** Half a turn of the transform beyond 128 whole ones: of the harmonics that fall on a bin, none is left without its pair. */
const listed = 128.5 * size;

interface Bins {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Bins 0 to size/2 of the discrete transform, over its size. */
function transformed(samples: ArrayLike<number>): Bins {
  const fft = new FFT(size);
  const out = fft.createComplexArray();
  fft.realTransform(out, Array.from(samples));
  const bins = size / 2 + 1;
  return {
    re: Float64Array.from({ length: bins }, (_, k) => (out[2 * k] ?? 0) / size),
    im: Float64Array.from({ length: bins }, (_, k) => (out[2 * k + 1] ?? 0) / size),
  };
}

/** What sampling makes of a spectrum: each harmonic falls on the bin of its order less whole turns of the transform. */
function folded({ mean = 0, harmonics }: Spectrum): Bins {
  const re = new Float64Array(size / 2 + 1);
  const im = new Float64Array(size / 2 + 1);
  re[0] = mean;
  for (const { order, peak, phase = 0 } of harmonics) {
    // peak·sin(nx + φ) has the coefficient (peak/2)·(sin φ − j·cos φ) at n and its conjugate at −n.
    for (const sign of [1, -1]) {
      const bin = (((sign * order) % size) + size) % size;
      if (bin > size / 2) continue;
      re[bin] = (re[bin] ?? 0) + (peak / 2) * Math.sin(phase);
      im[bin] = (im[bin] ?? 0) - sign * (peak / 2) * Math.cos(phase);
    }
  }
  return { re, im };
}

function largestDifference(a: Bins, b: Bins): number {
  let largest = 0;
  for (let k = 0; k <= size / 2; k++) {
    largest = Math.max(largest, Math.hypot((a.re[k] ?? 0) - (b.re[k] ?? 0), (a.im[k] ?? 0) - (b.im[k] ?? 0)));
  }
  return largest;
}

/** One period; at a step the middle of its two sides, to which a Fourier series converges. */
const sampledPeriod = (course: (t: number) => number) =>
  Float64Array.from({ length: size }, (_, k) => course(k / size));

describe('spectra against a fast Fourier transform of the sampled course', () => {
  const w = 2 * Math.PI;
  // What lies beyond the list. The harmonics of a step of height h are h/(πn) each, of two such steps 2h/(πn): a pair
  // that falls on the bin k leaves 2k·h/(πn²), and all pairs beyond at most h/(π·listed). Without steps there is less.
  const steps = (height: number) => (1.01 * height) / (Math.PI * listed);
  const bends = 2e-8;
  it.each<[string, Spectrum, (t: number) => number, number]>([
    [
      'square',
      squareWaveSpectrum({ frequency: 1, peak: 2 }, listed),
      (t) => (t === 0 || t === 0.5 ? 0 : t < 0.5 ? 2 : -2),
      steps(4),
    ],
    [
      'triangle',
      triangleWaveSpectrum({ frequency: 1, peak: 2 }, listed),
      (t) => (t < 0.25 ? 8 * t : t < 0.75 ? 4 - 8 * t : 8 * t - 8),
      bends,
    ],
    [
      'pulses',
      pulseTrainSpectrum({ dutyCycle: 0.25, peak: 2, repetitionRate: 1 }, listed),
      (t) => (t === 0 || t === 0.25 ? 1 : t < 0.25 ? 2 : 0),
      steps(2),
    ],
    [
      'gated sine of whole cycles',
      gatedSineSpectrum({ dutyCycle: 0.25, peak: 3, frequency: 400e3, repetitionRate: 20e3 }, listed),
      (t) => (t < 0.25 ? 3 * Math.sin(w * 20 * t) : 0),
      bends,
    ],
    [
      'damped sine that dies out',
      dampedSineSpectrum({ frequency: 500e3, timeConstant: 2e-6, repetitionRate: 25e3 }, listed),
      (t) => Math.exp(-20 * t) * Math.sin(w * 20 * t),
      bends,
    ],
  ])('%s', (_, spectrum, course, beyond) => {
    expect(largestDifference(transformed(sampledPeriod(course)), folded(spectrum))).toBeLessThan(beyond);
  });
});

describe('a capture against a fast Fourier transform', () => {
  it('has the powers and the phase that the bins have', () => {
    const cycles = 61;
    const angle = (k: number) => (2 * Math.PI * cycles * k) / size;
    // A third harmonic in the current, which the voltage has not: it carries no power.
    const voltage = Float64Array.from({ length: size }, (_, k) => 300 * Math.sin(angle(k) + 0.4));
    const current = Float64Array.from(
      { length: size },
      (_, k) => 0.6 * Math.sin(angle(k)) + 0.05 * Math.sin(3 * angle(k) + 1),
    );
    const v = transformed(voltage);
    const i = transformed(current);
    const cross = (k: number) => ({
      re: 2 * ((v.re[k] ?? 0) * (i.re[k] ?? 0) + (v.im[k] ?? 0) * (i.im[k] ?? 0)),
      im: 2 * ((v.im[k] ?? 0) * (i.re[k] ?? 0) - (v.re[k] ?? 0) * (i.im[k] ?? 0)),
    });
    let power = 0;
    let square = 0;
    for (let k = 1; k < size / 2; k++) {
      power += cross(k).re;
      square += 2 * ((i.re[k] ?? 0) ** 2 + (i.im[k] ?? 0) ** 2);
    }
    const analysis = analyseCapture({ voltage, current, sampleInterval: 30e-9 });
    expect(Math.abs((analysis.activePower ?? 0) / power - 1)).toBeLessThan(1e-4);
    expect(Math.abs((analysis.current?.rms ?? 0) / Math.sqrt(square) - 1)).toBeLessThan(1e-4);
    const { re, im } = cross(cycles);
    expect(Math.abs((analysis.phase ?? 9) - Math.atan2(im, re))).toBeLessThan(1e-4);
  });
});
