import { requireChoice, requirePositive, type Warning } from '../checks/index.js';

/**
 * A guard band that follows from the test uncertainty ratio:
 * - `managed-risk`: M·U with M = 1.04 − exp(0.38·ln TUR − 0.54), for at most 2 % of false accepts whatever the spread
 * of the items;
 * - `root-sum-square`: acceptance limits √(1 − 1/TUR²) times the tolerance;
 * - `whole-below-four`: U itself up to a ratio of 4, none above;
 * - `relaxed-below-four`: acceptance limits 1.25 − 1/TUR times the tolerance up to a ratio of 4, none above.
 */
export type UncertaintyRatioMethod = 'managed-risk' | 'root-sum-square' | 'whole-below-four' | 'relaxed-below-four';

/** A guard band by the test uncertainty ratio, as plain ratios. */
export interface UncertaintyRatioGuardBand {
  /** Guard band as a multiple of the expanded uncertainty, 0 or more. */
  readonly multiplier: number;
  /** What the formula itself gives: negative where it would put the acceptance limits outside the tolerance. */
  readonly formulaMultiplier: number;
  /** Acceptance limits as a part of the tolerance, both counted from its middle; below 0 nothing can be accepted. */
  readonly acceptanceFraction: number;
  readonly warnings: readonly Warning[];
}

/**
 * Guard band that follows from the test uncertainty ratio alone.
 *
 * @param testUncertaintyRatio Ratio as `testUncertaintyRatio` gives it, greater than 0
 * @param method How the guard band follows from it
 * @returns The guard band in expanded uncertainties, and the acceptance limits as a part of the tolerance. With
 * `root-sum-square` below a ratio of 1 the guard band is wider than the tolerance
 * @throws CalculationError `not-a-number`, `not-positive`, `unknown-choice`
 * @source M. Dobbert (2008) for `managed-risk`; the others as collected in public uncertainty calculators
 * @example
 * ```ts
 * import { uncertaintyRatioGuardBand } from 'esu-limits/decision';
 * uncertaintyRatioGuardBand(2.5, 'managed-risk').multiplier.toFixed(9); // → "0.214535914"
 * uncertaintyRatioGuardBand(2.5, 'whole-below-four').acceptanceFraction; // → 0.6
 * ```
 */
export function uncertaintyRatioGuardBand(
  testUncertaintyRatio: number,
  method: UncertaintyRatioMethod,
): UncertaintyRatioGuardBand {
  const ratio = requirePositive(testUncertaintyRatio, 'testUncertaintyRatio');
  requireChoice(method, 'method', ['managed-risk', 'root-sum-square', 'whole-below-four', 'relaxed-below-four']);
  const formulaMultiplier = multiplierBy(ratio, method);
  const multiplier = Math.max(0, formulaMultiplier);
  return {
    multiplier,
    formulaMultiplier,
    acceptanceFraction: 1 - multiplier / ratio,
    warnings: formulaMultiplier < 0 && method === 'managed-risk' ? [clampedWarning(ratio)] : [],
  };
}

function multiplierBy(ratio: number, method: UncertaintyRatioMethod): number {
  switch (method) {
    case 'managed-risk':
      return managedRiskMultiplier(ratio);
    case 'root-sum-square':
      // Below 1 the root does not exist: one step beyond the middle says that nothing can be accepted.
      return ratio < 1 ? 1 : 1 / (ratio + Math.sqrt((ratio - 1) * (ratio + 1)));
    case 'whole-below-four':
      return ratio > 4 ? 0 : 1;
    case 'relaxed-below-four':
      return 1 - ratio / 4;
  }
}

/** M of the managed-risk formula, as it is. */
export function managedRiskMultiplier(ratio: number): number {
  return 1.04 - Math.exp(0.38 * Math.log(ratio) - 0.54);
}

function clampedWarning(ratio: number): Warning {
  return {
    code: 'guard-band-clamped',
    message: `At a test uncertainty ratio of ${ratio.toPrecision(3)} the formula gives a negative guard band, which would accept readings outside the tolerance: it counts as 0.`,
  };
}
