import { fail, requirePositiveResult } from '../../checks/index.js';
import { choleskyFactor } from '../../numeric/index.js';
import {
  covarianceSpreadFormula,
  jointDegreesFormula,
  jointDegreesSumFormula,
} from '../../working/formulas/uncertainty.js';
import { type Step, step } from '../../working/index.js';
import { requireDegrees } from '../require-uncertainty.js';
import type { DegreesOfFreedom } from '../uncertain-input.js';
import type { CovarianceContribution } from './covariance-contributions.js';

/** Covariance matrix of one output or of two, with the degrees of freedom of it as a whole. */
export interface JointEffectiveDegrees {
  /** Sum of the contributions. */
  readonly covariance: readonly (readonly number[])[];
  /** Effective degrees of freedom; `infinite` where no contribution has finite ones, or all of them are 0. */
  readonly degreesOfFreedom: DegreesOfFreedom;
  readonly working: readonly Step[];
}

/**
 * Effective degrees of freedom of the covariance matrix of two outputs that belong together, such as resistance and
 * reactance, from independent contributions: the total-variance method. For one output it is the Welch–Satterthwaite
 * formula.
 *
 * Both outputs must be in one unit and of one kind, as the parts of a complex quantity are: the method adds their
 * variances up, and another unit for one of them would change the result.
 *
 * @param contributions Covariance matrices of independent sources with their degrees of freedom, such as
 * `covarianceContributions` gives
 * @returns Covariance matrix, effective degrees of freedom, one step for each number
 * @throws CalculationError `wrong-count`, `matrix-shape`, `not-a-number`, `not-symmetric`,
 * `not-positive-semidefinite`, `out-of-range` (degrees of freedom below 1), `result-out-of-range`
 * @source R. Willink and B. D. Hall, Metrologia 39 (2002) 361: the total-variance method
 * @example
 * ```ts
 * import {
 *   covarianceContributions, coverageEllipse, jointEffectiveDegrees, propagateAll, rectangularInput, simultaneousReadings,
 * } from 'esu-limits/uncertainty';
 * // A load at its working frequency, five sets of readings; the voltmeter is good to ±0.1 %.
 * const { inputs, correlations } = simultaneousReadings({
 *   V: [100.1, 99.9, 100.1, 99.8, 100.0],
 *   I: [0.3933, 0.3928, 0.3928, 0.3937, 0.3936],
 *   phi: [0.2456, 0.2438, 0.2468, 0.2428, 0.2433],
 * });
 * const meter = rectangularInput({ value: 1, halfWidth: 0.001 });
 * const load = propagateAll(
 *   {
 *     resistance: (x) => ((x.V * x.meter) / x.I) * Math.cos(x.phi),
 *     reactance: (x) => ((x.V * x.meter) / x.I) * Math.sin(x.phi),
 *   },
 *   { ...inputs, meter },
 *   { correlations },
 * );
 * const joint = jointEffectiveDegrees(covarianceContributions(load));
 * Number(joint.degreesOfFreedom).toFixed(2); // → "5.84"
 * coverageEllipse(joint).semiAxes.map((a) => a.toFixed(2)); // → ["1.18", "0.40"]
 * ```
 */
export function jointEffectiveDegrees(contributions: readonly CovarianceContribution[]): JointEffectiveDegrees {
  const size = contributions[0]?.covariance.length ?? 0;
  if (size === 0) fail('wrong-count', 'contributions', contributions, 'must hold at least one, with an output');
  contributions.forEach(({ covariance, degreesOfFreedom }, i) => {
    const path = `contributions[${i}].covariance`;
    if (covariance.length !== size || size > 2) {
      fail('matrix-shape', path, covariance, 'must be of one output, or of two, in every contribution');
    }
    choleskyFactor(covariance, path);
    requireDegrees(degreesOfFreedom, `contributions[${i}].degreesOfFreedom`);
  });
  const at = (row: number, column: number) =>
    contributions.reduce((sum, { covariance }) => sum + (covariance[row]?.[column] as number), 0);
  const places = Array.from({ length: size }, (_, i) => i);
  const covariance = places.map((row) => places.map((column) => at(row, column)));
  const working: Step[] = [];
  const spreadOf = ([first = [], second = []]: CovarianceContribution['covariance'], name: string): number => {
    const [V_11 = 0, V_12 = 0] = first;
    const V_22 = second[1] ?? 0;
    const w = 2 * V_11 * V_11 + V_11 * V_22 + V_12 * V_12 + 2 * V_22 * V_22;
    working.push(step(covarianceSpreadFormula, name, { V_11, V_12, V_22 }, w));
    return w;
  };
  const W = spreadOf(covariance, 'all sources');
  if (places.some((i) => covariance[i]?.[i] !== 0)) requirePositiveResult(W, 'covariance');
  let S = 0;
  for (const source of contributions) {
    const { name, degreesOfFreedom: nu } = source;
    if (nu === 'infinite') continue;
    const w = spreadOf(source.covariance, name);
    const inputs = { S_0: S, w, nu };
    S += w / nu;
    working.push(step(jointDegreesSumFormula, `sources up to ${name}`, inputs, S));
  }
  const degreesOfFreedom = W / S;
  if (!Number.isFinite(degreesOfFreedom)) return { degreesOfFreedom: 'infinite', covariance, working };
  working.push(step(jointDegreesFormula, 'effective degrees of freedom', { W, S }, degreesOfFreedom));
  return { degreesOfFreedom, covariance, working };
}
