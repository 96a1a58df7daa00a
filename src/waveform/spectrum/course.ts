import type { Spectrum } from './spectrum.js';

/** The course of a sum of harmonics over one turn, x from 0 to 2π, with what bounds it. */
export interface Course {
  readonly value: (x: number) => number;
  readonly slope: (x: number) => number;
  /** Integral from 0 to x. */
  readonly integral: (x: number) => number;
  /** No slope is steeper. */
  readonly steepest: number;
  /** No second derivative is larger. */
  readonly mostBent: number;
  readonly highestOrder: number;
}

/** Course, slope and integral of a sum of harmonics. */
export function courseOf({ mean = 0, harmonics }: Spectrum): Course {
  const parts = harmonics
    .filter(({ peak }) => peak > 0)
    // Whole turns of a phase would swallow the place in the cycle.
    .map(({ order, peak, phase = 0 }) => ({ order, peak, phase: phase % (2 * Math.PI), start: Math.cos(phase) }));
  const sum = (term: (part: (typeof parts)[number]) => number): number => {
    let total = 0;
    for (const part of parts) total += term(part);
    return total;
  };
  return {
    value: (x) => mean + sum(({ order, peak, phase }) => peak * Math.sin(order * x + phase)),
    slope: (x) => sum(({ order, peak, phase }) => peak * order * Math.cos(order * x + phase)),
    integral: (x) =>
      mean * x + sum(({ order, peak, phase, start }) => (peak / order) * (start - Math.cos(order * x + phase))),
    steepest: sum(({ order, peak }) => peak * order),
    mostBent: sum(({ order, peak }) => peak * order * order),
    highestOrder: parts.reduce((highest, { order }) => Math.max(highest, order), 1),
  };
}
