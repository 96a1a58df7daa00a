import { describe, expect, it } from 'vitest';
import {
  gaussHermite,
  gaussLegendre,
  integrate,
  integratePanels,
  normalDensity,
  normalSurvival,
} from '../../src/numeric/index.js';
import { faultOf } from '../band/fault-of.js';
import fixture from './fixtures/quadrature.json' with { type: 'json' };

const rules = [
  ...Object.entries(fixture.legendre).map(([count, rows]) => ({ name: 'Legendre', count: Number(count), rows })),
  ...Object.entries(fixture.hermite).map(([count, rows]) => ({ name: 'Hermite', count: Number(count), rows })),
];

describe('the rules', () => {
  it.each(rules)('of Gauss and $name with $count nodes are those of 40 digits', ({ name, count, rows }) => {
    const { nodes, weights } = name === 'Legendre' ? gaussLegendre(count) : gaussHermite(count);
    expect([nodes.length, weights.length]).toEqual([count, count]);
    rows.forEach((row, k) => {
      const i = Math.floor(count / 2) + k;
      const [node, nodeRest, weight, weightRest] = row as [number, number, number, number];
      expect(Math.abs((nodes[i] as number) - node - nodeRest)).toBeLessThanOrEqual(3e-16 * Math.max(1, node));
      expect(Math.abs((weights[i] as number) / weight - 1 - weightRest / weight)).toBeLessThan(1e-14);
      expect((nodes[count - 1 - i] as number) + (nodes[i] as number)).toBe(0);
      expect(weights[count - 1 - i]).toBe(weights[i]);
    });
  });

  it('give moments of the normal distribution exactly', () => {
    const { nodes, weights } = gaussHermite(10);
    const moment = (power: number) => nodes.reduce((sum, x, i) => sum + (weights[i] as number) * x ** power, 0);
    expect(moment(0)).toBeCloseTo(1, 14);
    expect(moment(4)).toBeCloseTo(3, 13);
    expect(moment(6)).toBeCloseTo(15, 12);
    expect(moment(3)).toBeCloseTo(0, 14);
  });

  it('refuse a count that is none', () => {
    expect(faultOf(() => gaussLegendre(0))).toMatchObject({ code: 'out-of-range', path: 'count' });
    expect(faultOf(() => gaussHermite(1.5))).toMatchObject({ code: 'not-an-integer', path: 'count' });
    expect(faultOf(() => gaussHermite(500))).toMatchObject({ code: 'out-of-range', path: 'count' });
  });
});

describe('integrate', () => {
  const infinity = Number.POSITIVE_INFINITY;

  it.each<[string, (x: number) => number, number, number, number]>([
    ['x² from 0 to 3', (x) => x * x, 0, 3, 9],
    ['1/(1 + x²) over the line', (x) => 1 / (1 + x * x), -infinity, infinity, Math.PI],
    ['exp(−x) from 0', (x) => Math.exp(-x), 0, infinity, 1],
    ['exp(x) to 0', (x) => Math.exp(x), -infinity, 0, 1],
    ['√x from 0 to 1', Math.sqrt, 0, 1, 2 / 3],
    ['ln x from 0 to 1', Math.log, 0, 1, -1],
    ['1/√x from 0 to 1', (x) => 1 / Math.sqrt(x), 0, 1, 2],
    ['cos 50x from 0 to 1', (x) => Math.cos(50 * x), 0, 1, Math.sin(50) / 50],
    ['a normal density of width 0.02 over 0 to 1', (x) => normalDensity((x - 0.3) / 0.02) / 0.02, 0, 1, 1],
    ['limits exchanged', (x) => x, 2, 0, -2],
    ['a half line that ends far from 0', (x) => Math.exp(x - 1000), -infinity, 1000, 1],
  ])('%s', (_, f, from, to, exact) => {
    const { value, error, evaluations } = integrate(f, from, to, { relative: 1e-11 });
    expect(Math.abs(value - exact)).toBeLessThanOrEqual(1e-11 * Math.abs(exact));
    expect(Math.abs(value - exact)).toBeLessThanOrEqual(Math.max(error, 4e-15 * Math.abs(exact)));
    expect(evaluations % 21).toBe(0);
  });

  it('finds a step by itself, and cheaper where it is named', () => {
    const step = (x: number) => (x < 0.3333 ? 1 : 2);
    const blind = integrate(step, 0, 1);
    const named = integrate(step, 0, 1, { breakpoints: [0.3333] });
    expect(blind.value).toBeCloseTo(1.6667, 9);
    expect(named.value).toBeCloseTo(1.6667, 14);
    expect(named.evaluations).toBe(42);
    expect(blind.evaluations).toBeGreaterThan(200);
  });

  it('finds a far narrow peak on an infinite range where it is named', () => {
    const peak = (x: number) => normalDensity((x - 5000) / 0.01) / 0.01;
    const named = integrate(peak, -infinity, infinity, { breakpoints: [4999.9, 5000, 5000.1] });
    expect(named.value).toBeCloseTo(1, 10);
  });

  it('of a range of no width is 0', () => {
    expect(integrate(Math.exp, 2, 2)).toEqual({ value: 0, error: 0, evaluations: 0 });
  });

  it('ends with an error where it cannot converge', () => {
    const fault = faultOf(() => integrate((x) => 1 / x, 0, 1));
    expect(fault).toMatchObject({ code: 'not-converged', path: 'integral' });
    expect(faultOf(() => integrate(Math.sqrt, 0, 1, { maximumEvaluations: 21 }))).toMatchObject({
      code: 'not-converged',
    });
    expect(
      faultOf(() => integrate((x) => Math.sin(1 / x) / x, 0, 1, { maximumEvaluations: 2000 })).requirement,
    ).toMatch(/after \d+ evaluations/);
  });

  it('says where the integrand is not finite', () => {
    const fault = faultOf(() => integrate((x) => (x > 0.9 ? Number.NaN : x), 0, 1));
    expect(fault.code).toBe('function-not-finite');
    expect(fault.requirement).toMatch(/^must be finite at x = 0\.9\d+$/);
  });

  it.each([
    [Number.NaN, 1, {}, 'not-a-number', 'from'],
    [0, Number.NaN, {}, 'not-a-number', 'to'],
    [0, 1, { breakpoints: [0.5, 0.5] }, 'not-ascending', 'breakpoints[2]'],
    [0, 1, { breakpoints: [2] }, 'not-ascending', 'breakpoints[2]'],
    [0, 1, { relative: -1 }, 'negative', 'relative'],
  ])('refuses %s to %s with %j', (from, to, options, code, path) => {
    expect(faultOf(() => integrate((x) => x, from, to, options))).toMatchObject({ code, path });
  });
});

describe('risk integrals, normal density times normal tail', () => {
  const cases = fixture.risk.map((row) => row as [number, number, number, number, number]);

  it.each(cases)(
    'limit %s, acceptance %s, spread %s: adaptive within 1e-10, far fewer than 300 evaluations',
    (...row) => {
      const [limit, acceptance, spread, exact, rest] = row;
      const f = (x: number) => normalDensity(x) * normalSurvival((x - acceptance) / spread);
      const { value, evaluations } = integrate(f, limit, Number.POSITIVE_INFINITY, { relative: 1e-10 });
      expect(Math.abs(value / exact - 1 - rest / exact)).toBeLessThan(1e-13);
      expect(evaluations).toBeLessThan(300);
    },
  );

  it.each(cases)('limit %s, acceptance %s, spread %s: fixed panels within 1e-13', (...row) => {
    const [limit, acceptance, spread, exact, rest] = row;
    const f = (x: number) => normalDensity(x) * normalSurvival((x - acceptance) / spread);
    // Panels grow from the limit; where readings above it are accepted, the step of the tail is a cut too.
    const cuts = [0, 2, 5, 10].map((k) => limit + k * Math.min(1, spread));
    const further =
      acceptance > limit ? [acceptance - 3 * spread, acceptance, acceptance + 3 * spread, acceptance + 8 * spread] : [];
    const all = [...new Set([...cuts, ...further])].filter((x) => x >= limit).sort((a, b) => a - b);
    expect(Math.abs(integratePanels(f, all) / exact - 1 - rest / exact)).toBeLessThan(1e-13);
  });
});
