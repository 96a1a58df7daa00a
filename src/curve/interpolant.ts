import type { Columns } from './columns-of.js';
import { monotoneSlopes } from './monotone-slopes.js';

/**
 * How power is read between published points.
 *
 * - `log-log`: straight between points on logarithmic axes; exact for constant current, power and voltage
 * - `monotone-cubic`: monotone piecewise cubic on linear axes
 * - `monotone-cubic-log`: monotone piecewise cubic on logarithmic axes
 * - `linear`: straight between points on linear axes
 */
export type Interpolation = 'log-log' | 'monotone-cubic' | 'monotone-cubic-log' | 'linear';

/** A curve prepared for reading. */
export interface Interpolant extends Columns {
  readonly logarithmic: boolean;
  readonly cubic: boolean;
  /** Slope of the secant of each stretch, on the axes of the interpolation. */
  readonly secants: Float64Array;
  /** Slope at each knot; without cubics only the first and the last have a meaning. */
  readonly slopes: Float64Array;
  /** Index of the stretch in which a load lies. */
  readonly locate: (load: number) => number;
  /** Power at a load, from a knot along a slope on the axes of the interpolation. */
  readonly along: (knot: number, slope: number, load: number) => number;
  /** Power at a load of stretch `i`, never outside the powers of its two knots. */
  readonly power: (i: number, load: number) => number;
}

/** Position of a load between `a` and `b`, from 0 to 1. */
export const position = (load: number, a: number, b: number): number => (load - a) / (b - a);

/** The same on a logarithmic axis. */
export const logPosition = (load: number, a: number, b: number): number => Math.log(load / a) / Math.log(b / a);

/**
 * Cubic over a stretch of width `h` from its end values and end slopes, at position `t`, with `u` = 1 − t.
 * Both positions come in, so that a small power at either end keeps its digits.
 */
export const cubic = (p1: number, p2: number, h: number, m1: number, m2: number, t: number, u: number): number =>
  p1 * u * u * (1 + 2 * t) + p2 * t * t * (1 + 2 * u) + h * t * u * (m1 * u - m2 * t);

/** The same on logarithmic axes, as the logarithm of the power over that of the first knot, which rises by `rise`. */
export const cubicLog = (rise: number, h: number, m1: number, m2: number, t: number): number =>
  rise * t * t * (3 - 2 * t) + h * t * (1 - t) * (m1 * (1 - t) - m2 * t);

/** Prepares the reading of power between points. */
export function interpolant({ loads, powers }: Columns, interpolation: Interpolation): Interpolant {
  const logarithmic = interpolation.endsWith('log');
  const isCubic = interpolation.startsWith('m');
  const last = loads.length - 1;
  const distance = (values: Float64Array, i: number): number =>
    logarithmic ? Math.log(values[i + 1]! / values[i]!) : values[i + 1]! - values[i]!;
  const steps = new Float64Array(last).map((_, i) => distance(loads, i));
  const rises = new Float64Array(last).map((_, i) => distance(powers, i));
  const secants = rises.map((rise, i) => rise / steps[i]!);
  const slopes = isCubic ? monotoneSlopes(steps, secants) : loads.map((_, i) => secants[Math.min(i, last - 1)]!);

  // Equal parts of the range of loads, each with the first stretch that it touches: most parts lie in one stretch,
  // so that the search below has nothing left to guess, which is what a processor is slow at.
  const parts = 1024;
  const scale = (parts - 1) / (loads[last]! - loads[0]!);
  const partOf = (load: number): number => ((load - loads[0]!) * scale) | 0;
  const firstStretch = new Uint32Array(parts + 1);
  for (let i = 1; i < last; i++) firstStretch.fill(i, partOf(loads[i]!) + 1);

  const locate = (load: number): number => {
    const part = partOf(load);
    let low = firstStretch[part]!;
    let high = firstStretch[part + 1]! + 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (load < loads[middle]!) high = middle;
      else low = middle;
    }
    return low;
  };

  const along = (knot: number, slope: number, load: number): number => {
    const r = loads[knot]!;
    const p = powers[knot]!;
    return logarithmic ? p * (load / r) ** slope : p + slope * (load - r);
  };

  const power = (i: number, load: number): number => {
    const r1 = loads[i]!;
    const r2 = loads[i + 1]!;
    const p1 = powers[i]!;
    const p2 = powers[i + 1]!;
    if (load === r1) return p1;
    if (load === r2) return p2;
    const h = steps[i]!;
    const m1 = slopes[i]!;
    const m2 = slopes[i + 1]!;
    const value = !isCubic
      ? along(p1 < p2 ? i : i + 1, secants[i]!, load)
      : logarithmic
        ? p1 * Math.exp(cubicLog(rises[i]!, h, m1, m2, Math.log(load / r1) / h))
        : cubic(p1, p2, h, m1, m2, (load - r1) / h, (r2 - load) / h);
    // Rounding must not carry a monotone stretch past its knots. The product is negative only for such a value, so that
    // the processor has nothing to guess; asking which knot is higher would cost as much as the whole cubic.
    if ((value - p1) * (p2 - value) < 0) return Math.abs(value - p1) < Math.abs(value - p2) ? p1 : p2;
    return value;
  };

  return { loads, powers, logarithmic, cubic: isCubic, secants, slopes, locate, along, power };
}

/** The end point from which a load outside is reached, and the slope along which: 0 where the end power is held. */
export function endOf({ loads, slopes }: Interpolant, load: number, isHeld: boolean): [knot: number, slope: number] {
  const knot = load < loads[0]! ? 0 : loads.length - 1;
  return [knot, isHeld ? 0 : slopes[knot]!];
}
