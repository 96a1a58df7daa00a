import type { CaptureAnalysis } from 'esu-limits/waveform';
import { uniform } from './inputs.js';

/** Samples of each channel of the large capture. */
export const samples = 10_000_000;
export const sampleInterval = 20e-9;

/** Bursts of a damped sine into 500 Ω, 40 µs apart, each channel with noise of its own that stays below the threshold. */
export function largeCapture(count: number = samples): { voltage: Float64Array; current: Float64Array } {
  const one = Math.round(40e-6 / sampleInterval);
  const burst = Float64Array.from({ length: one }, (_, k) => {
    const t = k * sampleInterval;
    return 2000 * Math.exp(-t / 3e-6) * Math.sin(2 * Math.PI * 500e3 * t);
  });
  const noise = uniform(9973, 3);
  const voltage = new Float64Array(count);
  const current = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    const v = burst[k % one] as number;
    voltage[k] = v + 20 * ((noise[k % 9973] as number) - 0.5);
    current[k] = v / 500 + 0.04 * ((noise[(k + 3001) % 9973] as number) - 0.5);
  }
  return { voltage, current };
}

/** Rms and peak of both channels, active power, rate and duty of the bursts. */
export function figuresOf(analysis: CaptureAnalysis): number[] {
  const { voltage, current, activePower, repetitionRate, dutyCycle } = analysis;
  return [
    voltage?.rms,
    current?.rms,
    voltage?.peak,
    current?.peak,
    activePower,
    repetitionRate,
    dutyCycle,
    analysis.window.count,
  ].map((value) => value ?? Number.NaN);
}
