import { describe, expect, it } from 'vitest';
import { integratePanels } from '../../src/numeric/index.js';
import {
  bandLimitedReading,
  type DampedSine,
  dampedSine,
  dampedSineSpectrum,
  type GatedSine,
  gatedSineSpectrum,
  harmonicSum,
  pulseTrainSpectrum,
  type Spectrum,
  squareWaveSpectrum,
  triangleWave,
  triangleWaveSpectrum,
} from '../../src/waveform/index.js';
import { faultOf } from '../band/fault-of.js';

/** Fourier's coefficients by numerical integration of one period, over the time 0 to 1. */
function expectSpectrum(spectrum: Spectrum, course: (t: number) => number, bends: readonly number[]): void {
  const cuts = [...new Set([0, ...bends, 1, ...Array.from({ length: 400 }, (_, k) => k / 400)])].sort((a, b) => a - b);
  const over = (f: (t: number) => number) => integratePanels(f, cuts);
  expect(spectrum.mean ?? 0).toBeCloseTo(over(course), 10);
  expect(spectrum.rms).toBeCloseTo(Math.sqrt(over((t) => course(t) ** 2)), 10);
  for (const { order, peak, phase = 0 } of spectrum.harmonics) {
    const w = 2 * Math.PI * order;
    expect(peak * Math.sin(phase)).toBeCloseTo(2 * over((t) => course(t) * Math.cos(w * t)), 10);
    expect(peak * Math.cos(phase)).toBeCloseTo(2 * over((t) => course(t) * Math.sin(w * t)), 10);
  }
}

describe('spectra against numerical integration', () => {
  it('square, triangle, pulses', () => {
    expectSpectrum(squareWaveSpectrum({ frequency: 1, peak: 2 }, 9), (t) => (t < 0.5 ? 2 : -2), [0.5]);
    const triangle = (t: number) => (t < 0.25 ? 8 * t : t < 0.75 ? 4 - 8 * t : 8 * t - 8);
    expectSpectrum(triangleWaveSpectrum({ frequency: 1, peak: 2 }, 9), triangle, [0.25, 0.75]);
    const pulses = { dutyCycle: 0.3, peak: 2, repetitionRate: 1 };
    expectSpectrum(pulseTrainSpectrum(pulses, 12), (t) => (t < 0.3 ? 2 : 0), [0.3]);
  });

  it.each<[string, GatedSine]>([
    ['whole cycles', { dutyCycle: 0.25, peak: 3, frequency: 400e3, repetitionRate: 20e3 }],
    ['any gate', { dutyCycle: 0.337, frequency: 433e3, repetitionRate: 31e3, startPhase: 1.1 }],
  ])('gated sine: %s', (_, wave) => {
    const cycles = (wave.frequency as number) / (wave.repetitionRate as number);
    const course = (t: number) =>
      t < wave.dutyCycle ? (wave.peak ?? 1) * Math.sin(2 * Math.PI * cycles * t + (wave.startPhase ?? 0)) : 0;
    expectSpectrum(gatedSineSpectrum(wave, 30), course, [wave.dutyCycle]);
  });

  it.each<[string, DampedSine]>([
    ['dies out', { frequency: 500e3, timeConstant: 2e-6, repetitionRate: 30e3 }],
    ['does not', { frequency: 500e3, timeConstant: 20e-6, repetitionRate: 30e3, amplitude: 3 }],
  ])('damped sine that %s', (_, wave) => {
    const cycles = wave.frequency / wave.repetitionRate;
    const decay = 1 / (wave.timeConstant * wave.repetitionRate);
    const course = (t: number) => (wave.amplitude ?? 1) * Math.exp(-decay * t) * Math.sin(2 * Math.PI * cycles * t);
    expectSpectrum(dampedSineSpectrum(wave, 40), course, []);
  });

  it('a damped sine that overlaps has the rms value of its harmonics', () => {
    const wave: DampedSine = { frequency: 510e3, timeConstant: 2e-5, repetitionRate: 30e3, rest: 'overlaps' };
    const { rms } = dampedSine(wave);
    const { harmonics, mean = 0 } = dampedSineSpectrum(wave, 20_000);
    const square = harmonics.reduce((sum, { peak }) => sum + peak ** 2 / 2, mean ** 2);
    // What is beyond the list falls as 1/order³.
    expect(Math.sqrt(square) / rms).toBeCloseTo(1, 7);
  });

  it('the harmonics of a triangle add up to it', () => {
    const sum = harmonicSum(triangleWaveSpectrum({ frequency: 1 }, 199));
    expect(sum.rms).toBeCloseTo(triangleWave().rms, 7);
    expect(sum.averageRectified).toBeCloseTo(triangleWave().averageRectified, 5);
    expect(sum.peak).toBeGreaterThan(0.997);
    expect(sum.peak).toBeLessThan(1);
  });
});

describe('a band-limited instrument', () => {
  const sine: Spectrum = { fundamental: 400e3, harmonics: [{ order: 1, peak: 2 }] };

  it('shows 1/√2 of a sine at its cutoff, whatever the order, at either end', () => {
    for (const order of [1, 2, 3, 5, 8]) {
      for (const band of [{ upperCutoff: 400e3 }, { lowerCutoff: 400e3 }]) {
        expect(bandLimitedReading(sine, { ...band, order }).readingFactor).toBeCloseTo(Math.SQRT1_2, 14);
      }
    }
  });

  it('turns a single pole by 45° at the cutoff, and each further pole by as much', () => {
    for (const order of [1, 2, 3, 4]) {
      const phase = (band: object) => bandLimitedReading(sine, { ...band, order }).spectrum.harmonics[0]?.phase;
      expect(phase({ upperCutoff: 400e3 })).toBeCloseTo((-order * Math.PI) / 4, 14);
      expect(phase({ lowerCutoff: 400e3 })).toBeCloseTo((order * Math.PI) / 4, 14);
    }
  });

  it('of one pole makes of a square wave what an RC network does', () => {
    // Rms value of a square wave behind RC, in closed form: √(1 − tanh(x)/x) is what is lost, x = T/(4RC).
    const upperCutoff = 2e6;
    const x = (2 * Math.PI * upperCutoff) / 1e6 / 4;
    const exact = Math.sqrt(1 - Math.tanh(x) / x);
    const { rms, highestRms, share } = bandLimitedReading(squareWaveSpectrum({ frequency: 1e6 }, 9999), {
      upperCutoff,
    });
    expect(rms).toBeLessThanOrEqual(exact);
    expect(highestRms).toBeGreaterThanOrEqual(exact);
    expect(highestRms - rms).toBeLessThan(1e-8);
    expect(share).toBeLessThan(1);
  });

  it('without a lower end reads the mean value too, and with one does not', () => {
    const train = pulseTrainSpectrum({ dutyCycle: 0.5, repetitionRate: 1000 }, 999);
    expect(bandLimitedReading(train, { upperCutoff: 1 }).rms).toBeCloseTo(0.5, 5);
    expect(bandLimitedReading(train, { lowerCutoff: 0.001 }).rms).toBeCloseTo(0.5, 3);
  });

  it('of a high order lets pass what is inside, and nothing else', () => {
    const reading = bandLimitedReading(squareWaveSpectrum({ frequency: 1 }, 99), { upperCutoff: 6, order: 20 });
    expect(reading.rms).toBeCloseTo((4 / Math.PI) * Math.sqrt((1 + 1 / 9 + 1 / 25) / 2), 3);
  });

  it.each<[string, () => unknown, string, string]>([
    ['no band', () => bandLimitedReading(sine, {}), 'missing-member', 'upperCutoff'],
    ['a cutoff of 0', () => bandLimitedReading(sine, { upperCutoff: 0 }), 'not-positive', 'upperCutoff'],
    ['an order of 0', () => bandLimitedReading(sine, { upperCutoff: 1, order: 0 }), 'out-of-range', 'order'],
    [
      'an empty spectrum',
      () => bandLimitedReading({ fundamental: 1, harmonics: [] }, { upperCutoff: 1 }),
      'not-positive',
      'harmonics',
    ],
    [
      'a stated rms value below that of the list',
      () => bandLimitedReading({ ...squareWaveSpectrum({ frequency: 1 }, 9), rms: 0.5 }, { upperCutoff: 1 }),
      'contradiction',
      'rms',
    ],
    [
      'harmonics that overflow',
      () => squareWaveSpectrum({ frequency: 1, peak: 1.7e308 }, 3),
      'result-out-of-range',
      'harmonics',
    ],
    ['no frequency', () => gatedSineSpectrum({ dutyCycle: 0.5 }, 3), 'missing-member', 'frequency'],
    ['no rate', () => pulseTrainSpectrum({ dutyCycle: 0.5 }, 3), 'missing-member', 'repetitionRate'],
    ['half a harmonic', () => squareWaveSpectrum({ frequency: 1 }, 1.5), 'not-an-integer', 'harmonics'],
    ['no harmonic', () => triangleWaveSpectrum({ frequency: 1 }, 0), 'out-of-range', 'harmonics'],
  ])('refuses %s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });
});
