import type { Prose } from './prose.js';

const knots = {
  R1: 'load of the published point below',
  P1: 'power of the published point below',
  R2: 'load of the published point above',
  P2: 'power of the published point above',
};
const positions = {
  t: 'position of the load between the two points, from the lower one',
  u: 'position of the load between the two points, from the upper one',
};
const cubicSlopes = {
  m1: 'slope of the monotone cubic at the point below',
  m2: 'slope of the monotone cubic at the point above',
};
const along = {
  P: 'power in the load',
  R: 'load',
  R1: 'load of the point from which the power is reckoned',
  P1: 'power of that point',
};
const limits = {
  P: 'power in the load',
  R: 'load',
  I: 'current limit of the generator, rms',
  P_max: 'power limit of the generator',
  V: 'voltage limit of the generator, rms',
};

/** Prose of the formulas of curve/, by formula identifier. */
export const curveProse: Readonly<Record<string, Prose>> = {
  'curve-exponent': {
    title: 'Slope between two published points on logarithmic axes',
    meanings: { m: 'exponent: 1 for constant current, 0 for constant power, −1 for constant voltage', ...knots },
  },
  'curve-power-law': {
    title: 'Power along a line on logarithmic axes',
    meanings: { ...along, m: 'exponent; 0 where the power of an end point is held' },
    note: 'Exact where the generator holds current, power or voltage constant. Beyond the published points it is used only where that is asked for by name: nothing published supports it there.',
  },
  'curve-slope': {
    title: 'Slope between two published points',
    meanings: { m: 'slope', ...knots },
  },
  'curve-line': {
    title: 'Power along a line on linear axes',
    meanings: { ...along, m: 'slope; 0 where the power of an end point is held' },
    note: 'Beyond the published points it is used only where that is asked for by name: nothing published supports it there.',
  },
  'curve-position': {
    title: 'Position of a load between two published points',
    meanings: {
      t: 'position, from 0 to 1',
      R: 'load',
      Ra: 'load of the point from which the position is counted',
      Rb: 'load of the other point',
    },
  },
  'curve-log-position': {
    title: 'Position of a load between two published points on a logarithmic axis',
    meanings: {
      t: 'position, from 0 to 1',
      R: 'load',
      Ra: 'load of the point from which the position is counted',
      Rb: 'load of the other point',
    },
  },
  'curve-monotone-cubic': {
    title: 'Power between two published points, monotone cubic',
    meanings: { P: 'power in the load', ...knots, ...cubicSlopes, ...positions },
    note: 'Between two points the curve neither rises above the higher nor falls below the lower one. Slope at a point: weighted harmonic mean of the two neighbouring secants, 0 where they differ in sign; at an end, the one-sided three-point formula, held to 0 or to three times the end secant.',
  },
  'curve-monotone-cubic-log': {
    title: 'Power between two published points, monotone cubic on logarithmic axes',
    meanings: { P: 'power in the load', ...knots, ...cubicSlopes, t: positions.t },
    note: 'As the monotone cubic, with the logarithm of power against the logarithm of load: the slopes are exponents.',
  },
  'curve-three-regimes': {
    title: 'Power of a generator that limits current, power and voltage',
    meanings: limits,
    note: 'The smallest of the three governs: current at low loads, voltage at high loads.',
  },
  'curve-current-and-power': {
    title: 'Power of a generator that limits current and power',
    meanings: { P: limits.P, R: limits.R, I: limits.I, P_max: limits.P_max },
  },
  'curve-power-and-voltage': {
    title: 'Power of a generator that limits power and voltage',
    meanings: { P: limits.P, R: limits.R, P_max: limits.P_max, V: limits.V },
  },
  'curve-sweep-deviation': {
    title: 'Relative deviation of a measured power from the reference',
    meanings: { d: 'relative deviation', P: 'measured power', P_ref: 'power of the reference curve at the same load' },
  },
};
