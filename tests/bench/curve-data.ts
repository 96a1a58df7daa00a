import { type LoadCurve, loadCurve } from 'esu-limits';
import { logUniform } from './inputs.js';

const ratedLoad = 500;
const ratedPower = 300;

/** Twenty-two points of an invented output: power rises to the rated load, is flat about it, then falls. */
export const knots = Array.from({ length: 22 }, (_, i) => {
  const load = 20 * 250 ** (i / 21);
  const x = Math.log(load / ratedLoad);
  return { load, power: ratedPower / (1 + 0.35 * x * x) };
});

/** A million loads within the points. */
export function manyLoads(count = 1_000_000): Float64Array {
  return logUniform(count, knots[0]!.load, knots.at(-1)!.load);
}

export function monotoneCurve(): LoadCurve {
  return loadCurve(knots, { interpolation: 'monotone-cubic' });
}

/** Slopes at the knots, by the harmonic mean that Fritsch and Butland weight with the widths; written by hand. */
export function slopesByHand(x: Float64Array, y: Float64Array): Float64Array {
  const last = x.length - 1;
  const h = Float64Array.from({ length: last }, (_, i) => x[i + 1]! - x[i]!);
  const d = h.map((width, i) => (y[i + 1]! - y[i]!) / width);
  const end = (h0: number, h1: number, d0: number, d1: number): number => {
    const m = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    if (m * d0 <= 0) return 0;
    return d0 * d1 < 0 && Math.abs(m) > 3 * Math.abs(d0) ? 3 * d0 : m;
  };
  return x.map((_, i) => {
    if (i === 0) return end(h[0]!, h[1]!, d[0]!, d[1]!);
    if (i === last) return end(h[last - 1]!, h[last - 2]!, d[last - 1]!, d[last - 2]!);
    const [before, after] = [d[i - 1]!, d[i]!];
    if (before * after <= 0) return 0;
    const [w1, w2] = [2 * h[i]! + h[i - 1]!, h[i]! + 2 * h[i - 1]!];
    return (w1 + w2) / (w1 / before + w2 / after);
  });
}
