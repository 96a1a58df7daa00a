import { gaussLegendre, normalDensity, normalInterval } from '../numeric/index.js';

/** One over 10¹⁷: what is less than this part of another number does not change it. */
const rounding = 1e-17;
/** Where the integrand has fallen by exp(−33) from its peak, the rest is below rounding. */
const fallOfTail = 33;
/** Fall of the logarithm of the integrand and ratio of the ends of one panel, at most. */
const fallOfPanel = 18;
const ratioOfPanel = 5;
const nodesOfPanel = 16;
const leastGap = 1e-140;

/**
 * P(X > h and Y < k) for standard normal X and Y of correlation ρ ≥ 0.
 *
 * With ρ its derivative is minus the bivariate density, and at ρ = 1 it is P(h < X < k), or 0 where k ≤ h. Hence it is
 * that, plus the integral of the density from ρ to 1. With s = tan(½·arccos ρ) the integral is
 * 1/π · ∫ exp(−a(1 + 1/s²) − b(1 + s²))/(1 + s²) ds from 0, a = (h − k)²/8, b = (h + k)²/8: positive terms only, so
 * that a small result keeps its digits, and nothing dearer than an exponential in them.
 *
 * @param h Limit of X
 * @param gap h − k: the caller knows it better than the difference of two rounded numbers
 * @param end √((1 − ρ)/(1 + ρ))
 * @param beside What the result is to be taken from: where it would be lost there, the integral is spared
 * @source R. L. Plackett, Biometrika 41 (1954) 351: the derivative by ρ
 */
export function normalSplit(h: number, gap: number, end: number, beside = 0): number {
  const sum = 2 * h - gap;
  // A gap whose square would fade is none: the panels would have nowhere to end.
  const a = Math.abs(gap) < leastGap ? 0 : (gap * gap) / 8;
  const b = (sum * sum) / 8;
  return between(h, gap, sum / 2) + (Math.exp(-a - b) * integral(a, b, end, beside)) / Math.PI;
}

/** P(h < X < k), where k > h. */
function between(h: number, gap: number, middle: number): number {
  if (gap >= 0) return 0;
  if (gap * Math.max(1, Math.abs(middle)) < -0.003) return normalInterval(h, h - gap);
  return -gap * normalDensity(middle) * (1 + (gap * gap * (middle * middle - 1)) / 24);
}

/** ∫ exp(−a/s² − b·s²)/(1 + s²) ds from 0 to `end`: one peak, and panels over the stretch where it matters. */
function integral(a: number, b: number, end: number, beside: number): number {
  const exponent = (s: number) => (a === 0 ? 0 : a / (s * s)) + b * s * s;
  const peak = a === 0 ? 0 : Math.min(end, (a / b) ** 0.25);
  const least = exponent(peak);
  // Also where it is no number: an end whose square is 0.
  if (!(least < 750) || Math.exp(-a - b - least) * end < rounding * beside) return 0;
  const reach = least + fallOfTail;
  const root = reach + Math.sqrt(Math.max(0, reach * reach - 4 * a * b));
  const low = Math.sqrt((2 * a) / root);
  const high = Math.min(end, Math.sqrt(root / (2 * b)));
  const fall = exponent(low) + exponent(high) - 2 * least;
  const decades = low > 0 ? Math.log(high / low) / Math.log(ratioOfPanel) : 0;
  const panels = Math.max(1, Math.ceil(Math.max(fall / fallOfPanel, decades)));
  const ratio = (high / low) ** (1 / panels);
  const { nodes, weights } = gaussLegendre(nodesOfPanel);
  let sum = 0;
  let from = low;
  for (let panel = 1; panel <= panels; panel++) {
    const to = panel === panels ? high : low > 0 ? from * ratio : (high * panel) / panels;
    const half = (to - from) / 2;
    let part = 0;
    for (let i = 0; i < nodesOfPanel; i++) {
      const s = from + half * (1 + (nodes[i] as number));
      const square = s * s;
      part += ((weights[i] as number) * Math.exp(-a / square - b * square)) / (1 + square);
    }
    sum += half * part;
    from = to;
  }
  return sum;
}
