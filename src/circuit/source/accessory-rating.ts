import { requireNonNegative, requirePositive } from '../../checks/index.js';
import { accessoryFactorFormula } from '../../working/formulas/circuit-effects.js';
import { type SourceId, type Standing, type Step, step } from '../../working/index.js';
import { requireCrestFactor } from '../require-crest-factor.js';

/** By which rule the rating of an accessory is compared with the peak voltage of a mode. */
export interface AccessoryVoltageRule {
  /** Peak voltage up to which the rating alone decides, in volts. */
  readonly threshold: number;
  /** Above it, y = (peak − offset)/divisor, but at most `maximum`; in volts. */
  readonly offset: number;
  /** In volts. */
  readonly divisor: number;
  readonly maximum: number;
  readonly standing: Standing;
  readonly source: SourceId;
}

/** The rule of IEC 60601-2-2, from memory: check your copy of the standard. */
export const accessoryVoltageRule: AccessoryVoltageRule = {
  threshold: 1600,
  offset: 400,
  divisor: 600,
  maximum: 6,
  standing: 'from memory',
  source: 'iec-60601-2-2-memory',
};

/** An accessory and the mode that it is to be used with. */
export interface AccessoryQuestion {
  /** Highest peak voltage of the mode, in volts, greater than 0. */
  readonly peakVoltage: number;
  /** Rated accessory voltage, in volts peak, greater than 0. */
  readonly accessoryRating: number;
  /** Crest factor of the mode, 1 or more. */
  readonly crestFactor: number;
  /** Another rule than the one from memory. */
  readonly rule?: AccessoryVoltageRule;
}

/** Whether the rating of an accessory is enough. */
export interface AccessoryVerdict {
  /** `not-shown` where the rating covers the peak but the crest factor is too low for the rating alone to decide. */
  readonly verdict: 'sufficient' | 'insufficient' | 'not-shown';
  /** The least crest factor with which the rating alone decides; absent up to the threshold. */
  readonly leastCrestFactor?: number;
  /** How well the rule is known. */
  readonly standing: Standing;
  readonly working: readonly Step[];
}

/**
 * Whether the rated voltage of an accessory is enough for a mode.
 *
 * @param question Peak voltage and crest factor of the mode, rating of the accessory
 * @returns Verdict, with the standing of the rule and the working
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `out-of-range` (a crest factor below 1)
 * @source IEC 60601-2-2, rated accessory voltage; from memory: check your copy of the standard
 * @example
 * ```ts
 * import { accessoryRating } from 'esu-limits';
 * accessoryRating({ peakVoltage: 4000, accessoryRating: 4500, crestFactor: 6.5 }).verdict; // → "sufficient"
 * accessoryRating({ peakVoltage: 4000, accessoryRating: 4500, crestFactor: 2 }).verdict; // → "not-shown"
 * ```
 */
export function accessoryRating(question: AccessoryQuestion): AccessoryVerdict {
  const V_p = requirePositive(question.peakVoltage, 'peakVoltage');
  const rating = requirePositive(question.accessoryRating, 'accessoryRating');
  const crestFactor = requireCrestFactor(question.crestFactor);
  const rule = question.rule ?? accessoryVoltageRule;
  const threshold = requirePositive(rule.threshold, 'rule.threshold');
  const V_o = requireNonNegative(rule.offset, 'rule.offset');
  const V_d = requirePositive(rule.divisor, 'rule.divisor');
  const y_m = requirePositive(rule.maximum, 'rule.maximum');
  const { standing } = rule;
  const covered = rating >= V_p;
  if (V_p <= threshold) return { verdict: covered ? 'sufficient' : 'insufficient', standing, working: [] };
  const y = Math.min((V_p - V_o) / V_d, y_m);
  const working = [step(accessoryFactorFormula, 'least crest factor', { V_p, V_o, V_d, y_m }, y)];
  const verdict = !covered ? 'insufficient' : y <= crestFactor ? 'sufficient' : 'not-shown';
  return { verdict, leastCrestFactor: y, standing, working };
}
