import { type Band, checkBand } from '../band/index.js';
import { fail, requireFinite } from '../checks/index.js';

/** `accept` or `reject`; of the rule `non-binary` one of the four statements of ILAC-G8:2019. */
export type DecisionWord = 'accept' | 'reject' | 'pass' | 'conditional-pass' | 'conditional-fail' | 'fail';

/** Limits that a decision is made with, as `explainAcceptanceBand` gives them. */
export interface DecisionLimits {
  /** Tolerance limits; one may be absent. */
  readonly tolerance: Band;
  /** Acceptance limits; `null` where no reading is accepted. */
  readonly acceptance: Band | null;
  /** Only of the rule `non-binary`: readings outside fail. */
  readonly failing?: Band;
}

/**
 * The word for a value between limits that are known already, such as those of a worksheet.
 *
 * A value within 1e-12 (relative) of a limit counts as on it, and the limits themselves are inside.
 *
 * @param value Measured value, in the unit of the limits
 * @param limits Tolerance and acceptance limits; with `failing` the four words of a non-binary statement
 * @returns The decision
 * @throws CalculationError `not-a-number`, `band-reversed`, `no-limits`
 * @source ILAC-G8:09/2019, 4.2
 * @example
 * ```ts
 * import { decisionWord } from 'esu-limits/decision';
 * const tolerance = { lower: 240, upper: 360 };
 * decisionWord(352, { tolerance, acceptance: { lower: 252, upper: 348 } }); // → "reject"
 * decisionWord(352, { tolerance, acceptance: tolerance }); // → "accept"
 * ```
 */
export function decisionWord(value: number, { tolerance, acceptance, failing }: DecisionLimits): DecisionWord {
  requireFinite(value, 'value');
  if (tolerance.lower === undefined && tolerance.upper === undefined) {
    fail('no-limits', 'tolerance', tolerance, 'must have a limit');
  }
  checkBand(tolerance, 'tolerance');
  const isAccepted = acceptance !== null && isWithin(acceptance, value);
  if (failing === undefined) return isAccepted ? 'accept' : 'reject';
  if (isAccepted) return 'pass';
  if (isWithin(tolerance, value)) return 'conditional-pass';
  return isWithin(failing, value) ? 'conditional-fail' : 'fail';
}

/** Inside a band, limits included; binary fractions of a reading that is meant to be on a limit do not put it outside. */
export function isWithin({ lower, upper }: Band, value: number): boolean {
  const isBeyond = (excess: number, limit: number) => excess > 1e-12 * Math.max(Math.abs(limit), Math.abs(value));
  return !(
    (lower !== undefined && isBeyond(lower - value, lower)) ||
    (upper !== undefined && isBeyond(value - upper, upper))
  );
}
