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
  if (!(from < to)) return 0;
  const isAny = u === 0 || (reading.from === Number.NEGATIVE_INFINITY && reading.to === Number.POSITIVE_INFINITY);
  if (isAny && prior.between !== undefined) return prior.between(from, to);
  const peak = Math.min(to, Math.max(from, isAny ? prior.peak(undefined, u) : pulledPeak(prior, reading, u)));
  const shape = prior.about(peak);
  const readings = isAny ? undefined : readingsAbout(peak, reading, u);
  const end = (x: number) => x - peak;
  return Math.min(1, sideOf(shape, readings, u, -1, end(from)) + sideOf(shape, readings, u, 1, end(to)));
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
  /** Next place, in direction, where a panel must end. */
  readonly stop: (t: number, direction: 1 | -1) => number;
}

function readingsAbout(place: number, { from, to }: Range, u: number): Readings {
  const toLower = (place - from) / u;
  const toUpper = (to - place) / u;
  const moved = (t: number) => t / u;
  const place0 = (m: number) => m * u;
  const borders = [-toLower - zone, -toLower + zone, toUpper - zone, toUpper + zone].map(place0);
  const near = zone * (1 + 1e-9);
  const probability =
    from === Number.NEGATIVE_INFINITY
      ? (t: number) => normalSurvival(moved(t) - toUpper)
      : to === Number.POSITIVE_INFINITY
        ? (t: number) => normalSurvival(-toLower - moved(t))
        : (t: number) => normalInterval(-toLower - moved(t), toUpper - moved(t));
  return {
    probability,
    pull: (t) => Math.max(0, moved(t) - toUpper) + Math.min(0, moved(t) + toLower),
    stop: (t, direction) => {
      const m = moved(t);
      let stop = direction * Number.POSITIVE_INFINITY;
      if (Math.abs(m + toLower) <= near || Math.abs(m - toUpper) <= near) {
        stop = place0(m + direction * stride);
      }
      for (const border of borders) {
        if (direction * (border - t) > 0 && direction * (stop - border) > 0) stop = border;
      }
      return stop;
    },
  };
}

/** The integral from the peak (t = 0) to one end. */
function sideOf(shape: LocalShape, readings: Readings | undefined, u: number, direction: 1 | -1, end: number): number {
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
      slope += pull / u;
      if (pull !== 0) bend += 1 / (u * u);
    }
    const steepness = Math.max(0, direction * slope);
    const width = (2 * fallOfPanel) / (steepness + Math.sqrt(steepness * steepness + 2 * bend * fallOfPanel));
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
