import { fail } from '../checks/index.js';
import { gaussLegendre, normalInterval, normalSurvival } from '../numeric/index.js';
import type { LocalShape, PriorShape } from './prior-shape.js';
import type { Range } from './range.js';

/** Largest fall of the logarithm of the integrand over one panel; with this many nodes a panel is then good to 1e-14. */
const fallOfPanel = 12;
const nodesOfPanel = 20;
/** Where the bound of the integrand has fallen by exp(−36), the rest is below rounding. */
const fallOfTail = 36;
/** Around an edge of the readings, in standard uncertainties: here the probability of a reading changes. */
const zone = 8;
/** Widest panel there, in standard uncertainties. */
const stride = 4.5;

/**
 * Probability that the quantity lies in one range and its reading in another:
 * ∫ prior density · P(reading in range | quantity) over the range of the quantity.
 *
 * The integrand has one peak, whose place is known in closed form from an upper bound of the integrand. Panels are laid
 * from there outwards, each as wide as the fall of the bound allows, until the bound has fallen below rounding. All
 * terms are positive and the tails come from survival functions, so that a small result keeps its digits. Places are
 * counted from the peak, so that a narrow one far from 0 keeps them too.
 */
export function jointProbability(prior: PriorShape, quantity: Range, reading: Range, u: number): number {
  // An exact reading is the quantity itself.
  const limits = u === 0 ? reading : quantity;
  const from = Math.max(prior.from, quantity.from, limits.from);
  const to = Math.min(prior.to, quantity.to, limits.to);
  if (!(from < to && reading.from < reading.to)) return 0;
  const isAny = u === 0 || (reading.from === Number.NEGATIVE_INFINITY && reading.to === Number.POSITIVE_INFINITY);
  if (isAny && prior.between !== undefined) return prior.between(from, to);
  const peak = Math.min(to, Math.max(from, isAny ? prior.peak(undefined, u) : pulledPeak(prior, reading, u)));
  const shape = prior.about(peak);
  const readings = isAny ? undefined : readingsAbout(peak, reading, u, shape.isLogarithmic);
  const end = (x: number) => (shape.isLogarithmic ? Math.log(x / peak) : x - peak);
  return Math.min(1, sideOf(shape, readings, -1, end(from)) + sideOf(shape, readings, 1, end(to)));
}

function pulledPeak(prior: PriorShape, { from, to }: Range, u: number): number {
  const own = prior.peak(undefined, u);
  return own < from ? prior.peak(from, u) : own > to ? prior.peak(to, u) : own;
}

/** The readings, seen from values of the quantity that are counted from a place. */
interface Readings {
  /** Probability of a reading in the range. */
  readonly probability: (t: number) => number;
  /** Distance of the quantity from the range, in standard uncertainties, signed; 0 inside. */
  readonly pull: (t: number) => number;
  /** Derivative of the quantity by t, in standard uncertainties. */
  readonly rate: (t: number) => number;
  /** Next place, in direction, where a panel must end. */
  readonly stop: (t: number, direction: 1 | -1) => number;
}

function readingsAbout(place: number, { from, to }: Range, u: number, isLogarithmic: boolean): Readings {
  const lower = (from - place) / u;
  const upper = (to - place) / u;
  const scale = (isLogarithmic ? place : 1) / u;
  /** How far the quantity is from the place, in standard uncertainties; and the t of such a distance. */
  const moved = isLogarithmic ? (t: number) => scale * Math.expm1(t) : (t: number) => scale * t;
  const reached = isLogarithmic ? (m: number) => Math.log1p(Math.max(-1, m / scale)) : (m: number) => m / scale;
  const borders = [lower - zone, lower + zone, upper - zone, upper + zone].map(reached);
  const near = zone * (1 + 1e-9);
  const probability =
    from === Number.NEGATIVE_INFINITY
      ? (t: number) => normalSurvival(moved(t) - upper)
      : to === Number.POSITIVE_INFINITY
        ? (t: number) => normalSurvival(lower - moved(t))
        : (t: number) => normalInterval(lower - moved(t), upper - moved(t));
  return {
    probability,
    pull: (t) => Math.max(0, moved(t) - upper) + Math.min(0, moved(t) - lower),
    rate: isLogarithmic ? (t) => scale * Math.exp(t) : () => scale,
    stop: (t, direction) => {
      const m = moved(t);
      let stop = direction * Number.POSITIVE_INFINITY;
      if (Math.abs(m - lower) <= near || Math.abs(m - upper) <= near) stop = reached(m + direction * stride);
      for (const border of borders) {
        if (direction * (border - t) > 0 && direction * (stop - border) > 0) stop = border;
      }
      return stop;
    },
  };
}

/** The integral from the peak (t = 0) to one end. */
function sideOf(shape: LocalShape, readings: Readings | undefined, direction: 1 | -1, end: number): number {
  const bound = (t: number) => shape.exponent(t) + (readings === undefined ? 0 : 0.5 * readings.pull(t) ** 2);
  const lowest = bound(0) + fallOfTail;
  const { nodes, weights } = gaussLegendre(nodesOfPanel);
  let sum = 0;
  let t = 0;
  for (let panels = 0; t !== end; panels++) {
    let slope = shape.slope(t);
    let bend = shape.bend(t);
    if (readings !== undefined) {
      const pull = readings.pull(t);
      const rate = readings.rate(t);
      slope += pull * rate;
      if (pull !== 0) bend += rate * rate + (shape.isLogarithmic ? Math.max(0, pull * rate) : 0);
    }
    const steepness = Math.max(0, direction * slope);
    let width = (2 * fallOfPanel) / (steepness + Math.sqrt(steepness * steepness + 2 * bend * fallOfPanel));
    // The logarithmic variable bends the density itself: panels grow as they leave the peak.
    if (shape.isLogarithmic) width = Math.min(width, Math.max(1.5, Math.abs(t)));
    let next = t + direction * width;
    const stop = readings?.stop(t, direction);
    if (stop !== undefined && direction * (next - stop) > 0) next = stop;
    if (direction * (next - end) > 0) next = end;
    const half = (next - t) / 2;
    let panel = 0;
    for (let i = 0; i < nodesOfPanel; i++) {
      const place = t + half * (1 + (nodes[i] as number));
      const weight = (weights[i] as number) * shape.weight(place);
      panel += readings === undefined ? weight : weight * readings.probability(place);
    }
    sum += Math.abs(half) * panel;
    t = next;
    if (bound(t) > lowest) break;
    if (panels > 2000 || Number.isNaN(t)) fail('not-converged', 'probability', sum, 'the integral was not found');
  }
  return sum;
}
