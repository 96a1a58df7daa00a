import { gaussLegendre } from './gauss-legendre.js';

/**
 * Integral by a fixed Gauss–Legendre rule on each panel between consecutive cuts: no error estimate, and the least cost
 * where the caller knows the scale of the integrand.
 *
 * @param f The integrand: smooth within each panel
 * @param cuts Ends of the panels, ascending and finite
 * @param count Nodes for each panel; 20 take a panel of four standard deviations of a normal density to full accuracy
 */
export function integratePanels(f: (x: number) => number, cuts: readonly number[], count = 20): number {
  const { nodes, weights } = gaussLegendre(count);
  let sum = 0;
  for (let i = 1; i < cuts.length; i++) {
    const from = cuts[i - 1] as number;
    const half = ((cuts[i] as number) - from) / 2;
    let panel = 0;
    for (let j = 0; j < count; j++) panel += (weights[j] as number) * f(from + half * (1 + (nodes[j] as number)));
    sum += half * panel;
  }
  return sum;
}
