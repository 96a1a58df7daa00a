import fc from 'fast-check';
import { coverageEllipse, jointEffectiveDegrees } from '../../../src/uncertainty/index.js';
import type { Step } from '../../../src/working/index.js';
import { valueBetween } from '../../generators.js';
import { stepOf } from '../step-of.js';
import type { Twins } from './twin.js';

// Close to 1 the factor is beyond all numbers.
const degrees = valueBetween(1.2, 200);
const level = valueBetween(0.5, 0.999);

/** Covariance matrices of two outputs, up to a correlation of 0.99: beyond, the short axis is what rounding leaves. */
const matrices = fc
  .record({ a: valueBetween(0.01, 20), b: valueBetween(0.01, 20), r: valueBetween(-0.99, 0.99) })
  .map(({ a, b, r }) => [
    [a * a, r * a * b],
    [r * a * b, b * b],
  ]);
const sources = fc.array(fc.record({ name: fc.constant('a'), covariance: matrices, degreesOfFreedom: degrees }), {
  minLength: 1,
  maxLength: 4,
});
const joint = sources.map(jointEffectiveDegrees);
/** The same, from its last step back: the sum over several sources is met, not only the first. */
const backwards = joint.map(({ working }) => ({ working: working.toReversed() }));
const ellipses = fc
  .record({ covariance: matrices, degreesOfFreedom: degrees, coverageProbability: level })
  .map(coverageEllipse);

const factor = (working: readonly Step[]): number => working[0]!.value;
const unit = [
  [1, 0],
  [0, 1],
];

export const twins: Twins = {
  'covariance-spread': stepOf('covariance-spread', joint),
  'joint-degrees-sum': stepOf('joint-degrees-sum', backwards),
  'joint-degrees': stepOf('joint-degrees', joint),
  'ellipse-factor': {
    fast: ({ p, nu }) =>
      factor(coverageEllipse({ covariance: unit, coverageProbability: p!, degreesOfFreedom: nu! }).working),
    symbols: { p: level, nu: degrees },
  },
  'ellipse-factor-normal': {
    fast: ({ p }) => factor(coverageEllipse({ covariance: unit, coverageProbability: p! }).working),
    symbols: { p: level },
  },
  'ellipse-major': stepOf('ellipse-major', ellipses),
  'ellipse-minor': stepOf('ellipse-minor', ellipses),
  'ellipse-angle': stepOf('ellipse-angle', ellipses),
};
