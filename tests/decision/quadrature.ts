import type { NormalPrior, Prior } from '../../src/decision/prior.js';
import type { Range } from '../../src/decision/range.js';
import { integrate, logGamma, normalDensity, normalInterval, normalSurvival } from '../../src/numeric/index.js';

/*
 * The definitions, integrated adaptively: another way to the numbers that the room finds by closed forms and by panels.
 */

/** Density of a prior, from its definition. */
function densityOf(prior: Prior): (x: number) => number {
  switch (prior.kind) {
    case 'normal':
      return (x) => normalDensity((x - prior.mean) / prior.standardDeviation) / prior.standardDeviation;
    case 'rectangular':
      return (x) => (x < prior.lower || x > prior.upper ? 0 : 1 / (prior.upper - prior.lower));
    case 'gamma': {
      const shape = (prior.mean / prior.standardDeviation) ** 2;
      const scale = prior.mean / shape;
      const constant = logGamma(shape) + shape * Math.log(scale);
      return (x) => Math.exp((shape - 1) * Math.log(x) - x / scale - constant);
    }
  }
}

function over(f: (x: number) => number, from: number, to: number, breaks: readonly number[]): number {
  const breakpoints = [...new Set(breaks)].filter((x) => x > from && x < to).sort((a, b) => a - b);
  return integrate(f, from, to, { relative: 1e-11, breakpoints }).value;
}

/** Probability of a quantity in one range, its reading in another; both ranges finite. */
export function joint(prior: Prior, quantity: Range, reading: Range, u: number): number {
  const density = densityOf(prior);
  const edges = prior.kind === 'rectangular' ? [prior.lower, prior.upper] : [prior.mean];
  return over(
    (x) => density(x) * normalInterval((reading.from - x) / u, (reading.to - x) / u),
    quantity.from,
    quantity.to,
    [...edges, reading.from, reading.to],
  );
}

/** P(X > h and Y < k) of standard normal X and Y; `end` is √((1 − ρ)/(1 + ρ)). */
export function splitBy(h: number, k: number, end: number): number {
  const square = end * end;
  const rho = (1 - square) / (1 + square);
  const root = (2 * end) / (1 + square);
  const accepted = (x: number) => normalDensity(x) * normalSurvival((rho * x - k) / root);
  return over(accepted, h, Math.max(h, 0) + 40, [0, k / rho, h + root, h + 1, h + 4, Math.max(h, 0) + 8]);
}

/** Both risks of a normal prior, by their definition. */
export function riskBy(
  prior: NormalPrior,
  tolerance: Range,
  readings: Range,
  u: number,
): { readonly consumerRisk: number; readonly producerRisk: number } {
  const density = densityOf(prior);
  const wide = 12 * prior.standardDeviation + 12 * u + 2;
  // Far from the acceptance limits the integrand falls within a small part of u: stretches that double from there on.
  const flanks = [0.25, 0.5, 1, 2, 4, 8, 16].map((multiple) => multiple * u);
  const breaks = [tolerance.from, tolerance.to, readings.from, readings.to].flatMap((edge) => [
    edge,
    ...flanks.flatMap((flank) => [edge - flank, edge + flank]),
  ]);
  breaks.push(prior.mean);
  const rejected = (x: number) =>
    density(x) * (normalSurvival((readings.to - x) / u) + normalSurvival((x - readings.from) / u));
  const accepted = (x: number) => density(x) * normalInterval((readings.from - x) / u, (readings.to - x) / u);
  return {
    consumerRisk: over(accepted, -wide, tolerance.from, breaks) + over(accepted, tolerance.to, wide, breaks),
    producerRisk: over(rejected, tolerance.from, tolerance.to, breaks),
  };
}
