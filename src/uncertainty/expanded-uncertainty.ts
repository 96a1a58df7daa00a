import { requireChoice, requireNonNegative } from '../checks/index.js';
import { studentTUpperQuantile } from '../numeric/index.js';
import { requireDegrees, requireLevel } from './require-uncertainty.js';
import type { DegreesOfFreedom } from './uncertain-input.js';

/** What an expanded uncertainty is made from. */
export interface ExpansionInput {
  /** Combined standard uncertainty, 0 or more. */
  readonly standardUncertainty: number;
  /** Effective degrees of freedom; `infinite` unless stated. */
  readonly degreesOfFreedom?: DegreesOfFreedom;
  /** Coverage probability as a fraction; 0.95 unless stated. */
  readonly coverageProbability?: number;
  /** `exact` (default) takes the degrees as they are; `truncated` takes the next lower whole number. */
  readonly degreesRule?: 'exact' | 'truncated';
}

/** An expanded uncertainty with what it stands on. */
export interface ExpandedUncertainty {
  readonly expandedUncertainty: number;
  readonly coverageFactor: number;
  readonly coverageProbability: number;
  /** Degrees of freedom that were used. */
  readonly degreesOfFreedom: DegreesOfFreedom;
}

/**
 * Expanded uncertainty U = k·u, with k from the t-distribution of the effective degrees of freedom.
 *
 * @param input Standard uncertainty, degrees of freedom, coverage probability
 * @returns U, k, the coverage probability, and the degrees of freedom that were used
 * @throws CalculationError `not-a-number`, `negative`, `not-a-fraction`, `out-of-range`
 * @source JCGM 100:2008, G.3 and G.4
 * @accuracy k to within 1e-14 relative
 * @example
 * ```ts
 * import { expandedUncertainty } from 'esu-limits/uncertainty';
 * expandedUncertainty({ standardUncertainty: 1, degreesOfFreedom: 19 }).coverageFactor.toFixed(12); // → "2.093024054408"
 * expandedUncertainty({ standardUncertainty: 1 }).coverageFactor.toFixed(12); // → "1.959963984540"
 * ```
 */
export function expandedUncertainty(input: ExpansionInput): ExpandedUncertainty {
  const {
    standardUncertainty,
    degreesOfFreedom = 'infinite',
    coverageProbability = 0.95,
    degreesRule = 'exact',
  } = input;
  requireNonNegative(standardUncertainty, 'standardUncertainty');
  requireDegrees(degreesOfFreedom, 'degreesOfFreedom');
  requireLevel(coverageProbability, 'coverageProbability');
  if (degreesRule !== 'exact') requireChoice(degreesRule, 'degreesRule', ['exact', 'truncated']);
  const used =
    degreesOfFreedom === 'infinite' || degreesRule === 'exact' ? degreesOfFreedom : Math.floor(degreesOfFreedom);
  const coverageFactor = studentTUpperQuantile(
    (1 - coverageProbability) / 2,
    used === 'infinite' ? Number.POSITIVE_INFINITY : used,
  );
  return {
    expandedUncertainty: coverageFactor * standardUncertainty,
    coverageFactor,
    coverageProbability,
    degreesOfFreedom: used,
  };
}
