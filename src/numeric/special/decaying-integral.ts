import { gaussLegendre } from '../quadrature/gauss-legendre.js';

/**
 * ∫ exp(exponent(s)) ds over [0, reach], for an exponent that starts at 0, falls all the way and has reached about −40
 * at the end: 32 Gauss–Legendre nodes take such a smooth decay to full accuracy, whatever its scale.
 */
export function decayingIntegral(exponent: (s: number) => number, reach: number): number {
  const { nodes, weights } = gaussLegendre(32);
  const half = reach / 2;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    sum += (weights[i] as number) * Math.exp(exponent(half * (1 + (nodes[i] as number))));
  }
  return half * sum;
}

/** Smallest s > 0 with slope·s + curvature·s²/2 = drop·(1 + stretch·s): where a decay surely has fallen by `drop`. */
export function decayReach(slope: number, curvature: number, stretch: number, drop = 40): number {
  const a = curvature / 2 + slope * stretch;
  const b = slope - drop * stretch;
  const root = Math.sqrt(b * b + 4 * a * drop);
  return b > 0 ? (2 * drop) / (b + root) : (root - b) / (2 * a);
}
