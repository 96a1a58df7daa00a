import { requireInteger } from '../../checks/index.js';
import type { QuadratureRule } from './gauss-legendre.js';

/** Rules once computed: they depend on nothing but the count. */
const rules = new Map<number, QuadratureRule>();

/**
 * Gauss–Hermite rule for the mean of a function of a standard normal variable: Σ weightᵢ·f(nodeᵢ) is E f(Z), exact for
 * polynomials of degree 2·count − 1. The weights add to 1.
 *
 * It is for smooth functions: one that steps over less than the distance of the nodes needs panels instead.
 *
 * @param count Number of nodes, 1 to 200
 * @source NIST DLMF 3.5(v), 18.9.1 with the polynomials Heₙ; zeros by Newton's method
 */
export function gaussHermite(count: number): QuadratureRule {
  const known = rules.get(count);
  if (known !== undefined) return known;
  const rule = computeRule(requireInteger(count, 'count', 1, 200));
  rules.set(count, rule);
  return rule;
}

function computeRule(count: number): QuadratureRule {
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  // Zeros are at least π/√count apart and lie below √(4·count + 2): steps of a third of that cannot miss one.
  const step = 1 / Math.sqrt(count);
  let high = Math.sqrt(4 * count + 2);
  for (let found = 0; found < Math.floor(count / 2); high -= step) {
    if (orthonormal(count, high).value * orthonormal(count, high - step).value > 0) continue;
    const node = zeroNear(count, high - step / 2);
    const { value, before } = orthonormal(count, node);
    // The node is rounded; far out the weight at the zero itself differs by many units in the last place.
    const rest = -value / (Math.sqrt(count) * before);
    nodes[found] = -node;
    nodes[count - 1 - found] = node;
    weights[found] = weights[count - 1 - found] = (1 - 2 * node * rest) / (count * before * before);
    found++;
  }
  if (count % 2 === 1) weights[(count - 1) / 2] = 1 / (count * orthonormal(count, 0).before ** 2);
  return { nodes, weights };
}

/** Newton's method; the derivative of the polynomial is √count times the one before it. */
function zeroNear(count: number, start: number): number {
  let x = start;
  for (let round = 0; round < 20; round++) {
    const { value, before } = orthonormal(count, x);
    const change = value / (Math.sqrt(count) * before);
    x -= change;
    if (Math.abs(change) < 1e-15 * x) break;
  }
  return x;
}

/** Heₙ(x)/√(n!), and the one before it. */
function orthonormal(count: number, x: number): { readonly value: number; readonly before: number } {
  let before = 0;
  let value = 1;
  for (let n = 1; n <= count; n++) {
    const next = (x * value - Math.sqrt(n - 1) * before) / Math.sqrt(n);
    before = value;
    value = next;
  }
  return { value, before };
}
