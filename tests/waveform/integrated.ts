import { integrate } from '../../src/numeric/index.js';

/** Figures of one period of a waveform by numerical integration: an independent way to each of them. */
export interface IntegratedFigures {
  readonly rms: number;
  readonly averageRectified: number;
  /** Largest absolute value at any of very many places. */
  readonly sampledPeak: number;
}

/**
 * Integrates a course over its period, from one of its bends to the next.
 *
 * @param course The waveform, over the time 0 to 1 of one period
 * @param bends Places inside (0, 1) where it steps, or passes through 0
 */
export function integratedFigures(course: (t: number) => number, bends: readonly number[]): IntegratedFigures {
  const breakpoints = [...new Set(bends)].filter((t) => t > 0 && t < 1).sort((a, b) => a - b);
  const options = { relative: 1e-12, absolute: 1e-300, maximumEvaluations: 2_000_000, breakpoints };
  const square = integrate((t) => course(t) ** 2, 0, 1, options).value;
  const averageRectified = integrate((t) => Math.abs(course(t)), 0, 1, options).value;
  let sampledPeak = 0;
  const count = 200_000;
  for (let k = 0; k < count; k++) sampledPeak = Math.max(sampledPeak, Math.abs(course((k + 0.5) / count)));
  return { rms: Math.sqrt(square), averageRectified, sampledPeak };
}

/** Places where sin(2π·cycles·t + phase) passes through 0 for t from 0 to 1. */
export function zerosOfSine(cycles: number, phase: number): number[] {
  const zeros: number[] = [];
  for (let k = Math.ceil(phase / Math.PI); ; k++) {
    const t = (k * Math.PI - phase) / (2 * Math.PI * cycles);
    if (t >= 1) return zeros;
    if (t > 0) zeros.push(t);
  }
}
