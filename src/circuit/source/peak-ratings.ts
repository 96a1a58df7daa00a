import { fail, requireAtLeast, requireChoice, requirePositive, requirePositiveResult } from '../../checks/index.js';
import { neededRatingFormula } from '../../working/formulas/circuit-effects.js';
import { type SourceId, type Standing, type Step, step } from '../../working/index.js';

/** A part of the bench that the output puts under voltage. */
export type RatedPart = 'instrument' | 'load' | 'leads' | 'insulation';

/** By how much the rating of each part must exceed the expected peak voltage. */
export interface PeakRatingRule {
  /** Least rating over the expected peak, 1 or more, of each part. */
  readonly factors: Readonly<Record<RatedPart, number>>;
  readonly standing: Standing;
  readonly source: SourceId;
}

/**
 * A voltmeter is rated for 150 % of the expected peak: IEC 60601-2-2, from memory, so check your copy of the standard.
 * Every other part carries the peak itself.
 */
export const peakRatingRule: PeakRatingRule = {
  factors: { instrument: 1.5, load: 1, leads: 1, insulation: 1 },
  standing: 'from memory',
  source: 'iec-60601-2-2-memory',
};

/** An expected peak voltage, and what the parts that meet it are rated for. */
export interface PeakRatingsQuestion {
  /** Highest peak voltage that is expected, in volts, greater than 0: that of the open circuit, where it can occur. */
  readonly peakVoltage: number;
  /** Rating of each part, in volts peak, greater than 0; of a part that is not stated nothing is said. */
  readonly ratings: Readonly<Partial<Record<RatedPart, number>>>;
  /** Another rule than the one from memory. */
  readonly rule?: PeakRatingRule;
}

/** What one part is rated for, against what it needs. */
export interface PartRating {
  readonly part: RatedPart;
  /** In volts peak. */
  readonly rating: number;
  /** Least rating by the rule, in volts peak. */
  readonly neededRating: number;
  readonly sufficient: boolean;
}

/** Whether every part is rated for the expected peak voltage. */
export interface PeakRatings {
  readonly sufficient: boolean;
  /** Highest peak voltage for which every stated part is rated, in volts. */
  readonly permittedPeakVoltage: number;
  /** The part that sets it. */
  readonly weakest: RatedPart;
  readonly parts: readonly PartRating[];
  readonly standing: Standing;
  readonly working: readonly Step[];
}

/**
 * Whether instrument, load, leads and insulation are rated for a peak voltage, and for which they all are.
 *
 * @param question Expected peak voltage, ratings, rule
 * @returns A verdict for each part, the permitted peak voltage and the part that sets it, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `out-of-range` (a factor below 1), `missing-member` (no
 * rating), `unknown-choice` (another part), `result-out-of-range`
 * @source IEC 60601-2-2, rating of the voltmeter; from memory: check your copy of the standard
 * @accuracy One rounding
 * @example
 * ```ts
 * import { peakRatings } from 'esu-limits';
 * const { sufficient, weakest, permittedPeakVoltage } = peakRatings({
 *   peakVoltage: 1500,
 *   ratings: { instrument: 2100, insulation: 3000 },
 * });
 * [sufficient, weakest, permittedPeakVoltage]; // → [false, "instrument", 1400]
 * ```
 */
export function peakRatings(question: PeakRatingsQuestion): PeakRatings {
  const V_p = requirePositive(question.peakVoltage, 'peakVoltage');
  const { ratings, rule = peakRatingRule } = question;
  const working: Step[] = [];
  const parts: PartRating[] = [];
  let permittedPeakVoltage = Number.POSITIVE_INFINITY;
  let weakest: RatedPart | undefined;
  for (const part of Object.keys(ratings) as RatedPart[]) {
    requireChoice(part, `ratings.${part}`, Object.keys(peakRatingRule.factors) as RatedPart[]);
    if (ratings[part] === undefined) continue;
    const rating = requirePositive(ratings[part], `ratings.${part}`);
    const k = requireAtLeast(rule.factors[part], 1, `rule.factors.${part}`);
    const neededRating = requirePositiveResult(k * V_p, 'neededRating');
    working.push(step(neededRatingFormula, `least rating of the ${part}`, { k, V_p }, neededRating));
    parts.push({ part, rating, neededRating, sufficient: rating >= neededRating });
    if (rating / k < permittedPeakVoltage) {
      permittedPeakVoltage = rating / k;
      weakest = part;
    }
  }
  if (weakest === undefined) fail('missing-member', 'ratings', ratings, 'must state one rating at least');
  return {
    sufficient: parts.every(({ sufficient }) => sufficient),
    permittedPeakVoltage,
    weakest: weakest as RatedPart,
    parts,
    standing: rule.standing,
    working,
  };
}
