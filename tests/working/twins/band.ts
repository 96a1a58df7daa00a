import fc from 'fast-check';
import {
  type Band,
  bandAround,
  impliedNominal,
  type NominalQuestion,
  roundBand,
  type Tolerance,
} from '../../../src/band/index.js';
import { current, power, resolution, toleranceFraction, valueBetween } from '../../generators.js';
import type { Twin, Twins } from './twin.js';

const nominal = valueBetween(10, 400);
const absolute = valueBetween(0.01, 5);

function limit(side: keyof Band, toleranceOf: (r: number, a: number) => Tolerance): Twin {
  return {
    fast: ({ N, r, a }) => bandAround(N!, toleranceOf(r!, a!))[side]!,
    symbols: { N: nominal, r: toleranceFraction(), a: absolute },
  };
}

const relative = (r: number): Tolerance => ({ relative: r });
const absoluteOnly = (_r: number, a: number): Tolerance => ({ absolute: a });
const sum = (r: number, a: number): Tolerance => ({ relative: r, absolute: a, combine: 'sum' });
const greater = (r: number, a: number): Tolerance => ({ relative: r, absolute: a, combine: 'greater' });

/** The nominal of a band of power by a known tolerance in power: read from one limit alone. */
function nominalFrom(side: keyof Band, toleranceOf: (r: number, a: number) => Tolerance): Twin {
  return {
    fast: ({ x, r, a }) =>
      impliedNominal({ [side]: x! }, { ...inPower, hypothesis: { tolerance: toleranceOf(r!, a!), in: 'power' } })
        .nominal.power,
    symbols: { x: nominal, r: toleranceFraction(), a: absolute },
  };
}

const inPower = { quantity: 'power', load: 100 } as const;

const lowerAndUpper = fc
  .record({ a: power(), b: power() })
  .map(({ a, b }) => ({ x_l: Math.min(a, b), x_u: Math.max(a, b) }));

function middle(hypothesis: NominalQuestion['hypothesis']): Twin {
  return {
    fast: ({ x_l, x_u }) => impliedNominal({ lower: x_l!, upper: x_u! }, { ...inPower, hypothesis }).nominal.power,
    inputs: lowerAndUpper,
  };
}

/** The value of the first step of a formula in the working of a band of power. */
function valueOfStep(band: Band, question: NominalQuestion, formula: string): number {
  const found = impliedNominal(band, question).working.find((step) => step.formula === formula);
  if (found === undefined) throw new Error(`No step ${formula} in the working.`);
  return found.value;
}

const known = (r: number): NominalQuestion => ({
  ...inPower,
  hypothesis: { tolerance: { relative: r }, in: 'power' },
});

/** A band whose limits lead back to the nominals x and y by a tolerance of 50 %: exactly, for both factors are exact. */
function bandOfNominals(x: number, y: number): Band {
  return { lower: x * 0.5, upper: y * 1.5 };
}

export const twins: Twins = {
  'limit-below-relative': limit('lower', relative),
  'limit-below-absolute': limit('lower', absoluteOnly),
  'limit-below-sum': limit('lower', sum),
  'limit-below-greater': limit('lower', greater),
  'limit-above-relative': limit('upper', relative),
  'limit-above-absolute': limit('upper', absoluteOnly),
  'limit-above-sum': limit('upper', sum),
  'limit-above-greater': limit('upper', greater),
  'limit-at-floor': {
    // Whole numbers, so that the limit before the floor is exactly x.
    fast: ({ x, f }) => bandAround(200, { absolute: 200 - x!, floor: f! }).lower!,
    symbols: { x: fc.integer({ min: -100, max: 100 }), f: fc.integer({ min: 0, max: 50 }) },
  },
  'rounded-up': {
    fast: ({ x, q }) => roundBand({ lower: x! }, q!).lower!,
    symbols: { x: fc.oneof(current(), power()), q: resolution() },
  },
  'rounded-down': {
    fast: ({ x, q }) => roundBand({ upper: x! }, q!).upper!,
    symbols: { x: fc.oneof(current(), power()), q: resolution() },
  },
  'rounded-to-nearest': {
    fast: ({ x, q }) => roundBand({ lower: x! }, q!, 'nearest').lower!,
    symbols: { x: fc.oneof(current(), power(), valueBetween(-10, 0)), q: resolution() },
  },
  'middle-of-limits': middle('symmetric-in-power'),
  'geometric-middle': middle('geometric'),
  'nominal-from-lower': nominalFrom('lower', relative),
  'nominal-from-lower-absolute': nominalFrom('lower', absoluteOnly),
  'nominal-from-lower-sum': nominalFrom('lower', sum),
  'nominal-from-lower-greater': nominalFrom('lower', greater),
  'nominal-from-upper': nominalFrom('upper', relative),
  'nominal-from-upper-absolute': nominalFrom('upper', absoluteOnly),
  'nominal-from-upper-sum': nominalFrom('upper', sum),
  'nominal-from-upper-greater': nominalFrom('upper', greater),
  'lowest-before-rounding': {
    fast: ({ x, q }) => valueOfStep({ lower: x! }, { ...known(0.2), resolution: q! }, 'lowest-before-rounding'),
    symbols: { x: valueBetween(1, 400), q: resolution() },
  },
  'highest-before-rounding': {
    fast: ({ x, q }) => valueOfStep({ lower: x! }, { ...known(0.2), resolution: q! }, 'highest-before-rounding'),
    symbols: { x: valueBetween(1, 400), q: resolution() },
  },
  'lowest-of-both': {
    fast: ({ x, y }) => valueOfStep(bandOfNominals(x!, y!), known(0.5), 'lowest-of-both'),
    symbols: { x: valueBetween(100, 150), y: valueBetween(100, 150) },
  },
  'highest-of-both': {
    fast: ({ x, y }) => valueOfStep(bandOfNominals(x!, y!), known(0.5), 'highest-of-both'),
    symbols: { x: valueBetween(100, 150), y: valueBetween(100, 150) },
  },
  'implied-tolerance-below': {
    fast: ({ N, x }) =>
      impliedNominal({ lower: x!, upper: N! + (N! - x!) }, { ...inPower, hypothesis: 'symmetric-in-power' })
        .toleranceInPower.below!,
    // Whole numbers, so that the middle is exactly N.
    inputs: fc
      .record({ N: fc.integer({ min: 101, max: 400 }), d: fc.integer({ min: 1, max: 100 }) })
      .map(({ N, d }) => ({ N, x: N - d })),
  },
  'implied-tolerance-above': {
    fast: ({ N, x }) =>
      impliedNominal({ lower: N! - (x! - N!), upper: x! }, { ...inPower, hypothesis: 'symmetric-in-power' })
        .toleranceInPower.above!,
    inputs: fc
      .record({ N: fc.integer({ min: 101, max: 400 }), d: fc.integer({ min: 1, max: 100 }) })
      .map(({ N, d }) => ({ N, x: N + d })),
  },
};
