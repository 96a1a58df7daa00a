import { fail, requireFinite, requireNonNegative, requireResult } from '../checks/index.js';

/** Two results and the uncertainties of both, with the names of their members for an error. */
export interface ScoreInput {
  readonly value: number;
  readonly reference: number;
  readonly uncertainty: readonly [member: string, amount: number];
  readonly referenceUncertainty: readonly [member: string, amount: number];
}

/** Difference of two results over the root of the sum of the squares of their uncertainties. */
export function scoreOf({ value, reference, uncertainty, referenceUncertainty }: ScoreInput): number {
  requireFinite(value, 'value');
  requireFinite(reference, 'reference');
  for (const [member, amount] of [uncertainty, referenceUncertainty]) requireNonNegative(amount, member);
  const together = Math.hypot(uncertainty[1], referenceUncertainty[1]);
  if (together === 0) fail('not-positive', uncertainty[0], 0, 'must be greater than 0, or that of the reference');
  return requireResult((value - reference) / together, 'score');
}

/**
 * Whether a score is at most a limit. What rounding makes of decimal readings counts as on the limit: 10.05 − 10.00 is a
 * little more than 0.05.
 */
export function isAtMost(
  score: number,
  limit: number,
  { value, reference }: { value: number; reference: number },
): boolean {
  const rounding = (Number.EPSILON * (Math.abs(value) + Math.abs(reference))) / Math.abs(value - reference) || 0;
  return Math.abs(score) <= limit * (1 + rounding + 4 * Number.EPSILON);
}
