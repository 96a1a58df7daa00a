import { fail, requirePositiveResult, requireResult } from '../../checks/index.js';
import { choleskyFactor } from '../../numeric/index.js';
import {
  ellipseAngleFormula,
  ellipseFactorFormula,
  ellipseFactorNormalFormula,
  ellipseMajorFormula,
  ellipseMinorFormula,
} from '../../working/formulas/uncertainty.js';
import { type Step, step } from '../../working/index.js';
import { requireDegrees, requireLevel } from '../require-uncertainty.js';
import type { DegreesOfFreedom } from '../uncertain-input.js';

/** What an elliptical coverage region is made from. */
export interface CoverageEllipseInput {
  /** Covariance matrix of two outputs. */
  readonly covariance: readonly (readonly number[])[];
  /** Effective degrees of freedom of the matrix, greater than 1; `infinite` unless stated. */
  readonly degreesOfFreedom?: DegreesOfFreedom;
  /** Coverage probability as a fraction; 0.95 unless stated. */
  readonly coverageProbability?: number;
}

/** An elliptical coverage region about the estimates of two outputs. */
export interface CoverageEllipse {
  /** k: the region is (η − y)ᵀ·U⁻¹·(η − y) ≤ k². */
  readonly coverageFactor: number;
  readonly coverageProbability: number;
  readonly degreesOfFreedom: DegreesOfFreedom;
  /** Half the long axis and half the short one, in the unit of the outputs. */
  readonly semiAxes: readonly [number, number];
  /** From the axis of the first output to the long axis, rad, from −π/2 to π/2. */
  readonly angle: number;
  readonly working: readonly Step[];
}

/**
 * Elliptical coverage region of two outputs, such as resistance and reactance: it holds both at once with the stated
 * probability, where two intervals of that probability would not.
 *
 * @param input Covariance matrix, degrees of freedom, coverage probability
 * @returns Coverage factor, half axes and direction of the ellipse, one step for each
 * @throws CalculationError `matrix-shape`, `not-a-number`, `not-symmetric`, `not-positive-semidefinite`,
 * `out-of-range` (degrees of freedom 1 or below), `not-a-fraction`, `result-out-of-range`
 * @source JCGM 102:2011, 6.5; for finite degrees of freedom Hotelling's T², k² = 2ν/(ν − 1)·F(2, ν − 1)
 * @example
 * ```ts
 * import { coverageEllipse } from 'esu-limits/uncertainty';
 * const covariance = [[4, 0], [0, 9]];
 * coverageEllipse({ covariance }).coverageFactor.toFixed(4); // → "2.4477"
 * const { semiAxes, angle } = coverageEllipse({ covariance, degreesOfFreedom: 9 });
 * semiAxes.map((a) => a.toFixed(3)); // → ["9.502", "6.335"]
 * angle.toFixed(4); // → "1.5708"
 * ```
 */
export function coverageEllipse({
  covariance,
  degreesOfFreedom = 'infinite',
  coverageProbability: p = 0.95,
}: CoverageEllipseInput): CoverageEllipse {
  if (covariance.length !== 2) fail('matrix-shape', 'covariance', covariance, 'must be of two outputs');
  choleskyFactor(covariance, 'covariance');
  requireDegrees(degreesOfFreedom, 'degreesOfFreedom');
  requireLevel(p, 'coverageProbability');
  const [[V_11, V_12], [, V_22]] = covariance as [[number, number], [number, number]];
  const entries = { V_11, V_12, V_22 };
  const working: Step[] = [];
  let k: number;
  const double = -2 * Math.log(1 - p);
  if (degreesOfFreedom === 'infinite') {
    k = Math.sqrt(double);
    working.push(step(ellipseFactorNormalFormula, 'coverage factor', { p }, k));
  } else {
    const nu = degreesOfFreedom;
    if (nu === 1) fail('out-of-range', 'degreesOfFreedom', nu, 'must be greater than 1 for a region of two outputs');
    k = requireResult(Math.sqrt(nu * Math.expm1(double / (nu - 1))), 'coverageFactor');
    working.push(step(ellipseFactorFormula, 'coverage factor', { p, nu }, k));
  }
  const found = { coverageFactor: k, coverageProbability: p, degreesOfFreedom };
  if (V_11 === 0 && V_22 === 0) return { ...found, semiAxes: [0, 0], angle: 0, working };
  requirePositiveResult((V_11 + V_22) ** 2, 'semiAxes');
  const a = requireResult(
    k * Math.sqrt((V_11 + V_22) / 2 + Math.sqrt(((V_11 - V_22) / 2) ** 2 + V_12 ** 2)),
    'semiAxes',
  );
  const b = (k ** 2 * Math.sqrt(Math.max(V_11 * V_22 - V_12 ** 2, 0))) / a;
  const angle = Math.atan2(2 * V_12, V_11 - V_22) / 2;
  working.push(
    step(ellipseMajorFormula, 'half the long axis', { k, ...entries }, a),
    step(ellipseMinorFormula, 'half the short axis', { k, a, ...entries }, b),
    step(ellipseAngleFormula, 'direction of the long axis', entries, angle),
  );
  return { ...found, semiAxes: [a, b], angle, working };
}
