import { fail, requireResult } from '../../checks/index.js';
import { choleskyFactor } from '../../numeric/index.js';
import { correlationMatrix } from '../correlation.js';
import type { Contribution, Propagated } from '../propagate.js';
import type { PropagatedTogether } from '../propagate-all.js';
import type { DegreesOfFreedom } from '../uncertain-input.js';

/** What one source brings to the covariance matrix of several outputs; sources are independent of one another. */
export interface CovarianceContribution {
  /** The input, or the correlated inputs that count as one source. */
  readonly name: string;
  /** Symmetric and positive semidefinite, a row for each output. */
  readonly covariance: readonly (readonly number[])[];
  readonly degreesOfFreedom: DegreesOfFreedom;
}

/**
 * Splits the covariance matrix of propagated outputs into what each independent source brings. Inputs that are
 * correlated, directly or through others, count as one source, and must have the same degrees of freedom: those of one
 * series of simultaneous readings, or infinite.
 *
 * @param together Outputs of `propagateAll`
 * @returns One contribution for each source, rows in the order of the outputs
 * @throws CalculationError `out-of-range` (correlated inputs with different degrees of freedom),
 * `result-out-of-range`
 * @source JCGM 102:2011, 6.2: the law of propagation U_y = C·U_x·Cᵀ, source by source
 * @example
 * ```ts
 * import { covarianceContributions, normalInput, propagateAll } from 'esu-limits/uncertainty';
 * const input = (value: number) => normalInput({ value, standardUncertainty: 1, degreesOfFreedom: 9 });
 * const both = propagateAll({ sum: (x) => x.a + x.b, difference: (x) => x.a - x.b }, { a: input(1), b: input(2) });
 * covarianceContributions(both)[1]?.covariance.map((row) => row.map((v) => v.toFixed(3)).join(' '));
 * // → ["1.000 -1.000", "-1.000 1.000"]
 * ```
 */
export function covarianceContributions({ outputs }: PropagatedTogether): readonly CovarianceContribution[] {
  const results = Object.values(outputs);
  const { contributions: inputs, correlations } = results[0] as Propagated;
  const { names, rows } = correlationMatrix(
    inputs.map(({ name }) => name),
    correlations,
  );
  return groupsOf(rows).map((members) => {
    const { degreesOfFreedom } = inputs[members[0] as number] as Contribution;
    for (const i of members) {
      const { name, degreesOfFreedom: own } = inputs[i] as Contribution;
      if (own !== degreesOfFreedom) {
        fail(
          'out-of-range',
          `inputs.${name}.degreesOfFreedom`,
          own,
          `must be ${degreesOfFreedom}, as correlated inputs`,
        );
      }
    }
    // By a factor of the correlations the matrix is a sum of squares: rounding makes no variance negative.
    const factor = choleskyFactor(members.map((i) => members.map((j) => (rows[i] as readonly number[])[j] as number)));
    const columns = results.map(({ contributions }) =>
      Array.from({ length: factor.rank }, (_, r) =>
        members.reduce(
          (sum, i, k) => sum + (contributions[i] as Contribution).contribution * (factor.rows[k]?.[r] as number),
          0,
        ),
      ),
    );
    const covariance = columns.map((a) =>
      columns.map((b) =>
        requireResult(
          a.reduce((sum, x, r) => sum + x * (b[r] as number), 0),
          'covariance',
        ),
      ),
    );
    return { name: members.map((i) => names[i]).join(', '), covariance, degreesOfFreedom };
  });
}

/** Indices of the inputs that hang together by correlations. */
function groupsOf(rows: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const left = new Set(rows.keys());
  const groups: number[][] = [];
  for (const start of left) {
    const group = [start];
    left.delete(start);
    // Grows while it is walked through.
    for (const i of group) {
      for (const j of left) {
        if (rows[i]?.[j] !== 0) {
          group.push(j);
          left.delete(j);
        }
      }
    }
    groups.push(group.sort((a, b) => a - b));
  }
  return groups;
}
