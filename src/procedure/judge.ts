import { type Band, contains } from '../band/index.js';
import { type Conformance, decisionWord } from '../decision/index.js';
import { type DisplayUnit, formatBand } from '../units/index.js';
import type { PlanDecisionRule } from './decision-rule.js';
import type { ReasonCode, Verdict } from './findings.js';
import { probabilityText } from './probability-text.js';

/** A value to be judged by the rule of the plan. */
export interface JudgedValue {
  readonly rule: PlanDecisionRule;
  readonly limits: Band;
  /** Limits of acceptance; absent where the rule cannot be applied. */
  readonly acceptance?: Band | null;
  readonly failing?: Band;
  readonly value: number;
  /** Whether a value inside counts as close to a limit. */
  readonly isClose: boolean;
}

/** Verdict and reason by the rule of the plan. */
export function judge(judged: JudgedValue): { readonly verdict: Verdict; readonly reason: ReasonCode } {
  const { rule, limits, acceptance, failing, value, isClose } = judged;
  const beyond = limits.lower !== undefined && value < limits.lower ? 'below-lower' : 'above-upper';
  const isInside = contains(limits, value);
  const inside = isClose ? 'close-to-limit' : 'inside';
  if (rule.kind === 'simple-acceptance') {
    return isInside ? { verdict: 'pass', reason: inside } : { verdict: 'fail', reason: beyond };
  }
  if (acceptance === undefined) return { verdict: 'not judged', reason: 'no-decision' };
  const between = { tolerance: limits, acceptance, ...(failing === undefined ? {} : { failing }) };
  switch (decisionWord(value, between)) {
    case 'accept':
    case 'pass':
      return { verdict: 'pass', reason: isInside ? inside : 'outside-in-guard-band' };
    case 'conditional-pass':
      return { verdict: 'pass', reason: 'conditional-pass' };
    case 'conditional-fail':
      return { verdict: 'fail', reason: 'conditional-fail' };
    default:
      return { verdict: 'fail', reason: isInside ? 'in-guard-band' : beyond };
  }
}

/** Acceptance limits of a plan, as `judge` takes them. */
export function acceptanceOf(
  planned: { readonly acceptance?: Band | null; readonly failing?: Band } | undefined,
): Pick<JudgedValue, 'acceptance' | 'failing'> {
  if (planned?.acceptance === undefined) return {};
  const { acceptance, failing } = planned;
  return { acceptance, ...(failing === undefined ? {} : { failing }) };
}

/** What is accepted, in words. */
export function acceptedText(acceptance: Band | null | undefined, unit: DisplayUnit): string {
  return acceptance ? `${formatBand(acceptance, unit)} is accepted` : 'no reading is accepted';
}

/** What the end of a sentence says of a reason. */
export interface ReasonDetails {
  /** Whether the value lies below the expected one. */
  readonly isLow: boolean;
  readonly accepted: string;
  readonly conformance: Conformance | undefined;
}

/** The reason as the end of a sentence. */
export function reasonText(reason: ReasonCode, { isLow, accepted, conformance }: ReasonDetails): string {
  const sure = conformance === undefined ? '' : `; probability that it conforms: ${probabilityText(conformance)}`;
  switch (reason) {
    case 'close-to-limit':
      return `inside, close to the ${isLow ? 'lower' : 'upper'} limit${sure}`;
    case 'below-lower':
      return 'below the lower limit. Check connections and neutral electrode before anything else';
    case 'above-upper':
      return 'above the upper limit';
    case 'in-guard-band':
      return `inside the limits, but too close for the uncertainty: ${accepted}${sure}`;
    case 'outside-in-guard-band':
      return `outside the limits, but by less than the guard band: not rejected${sure}`;
    case 'conditional-pass':
      return `inside the limits, but not by the guard band: conditional pass${sure}`;
    case 'conditional-fail':
      return `outside the limits, but not by the guard band: conditional fail${sure}`;
    case 'no-decision':
      return 'the decision rule of the plan cannot be applied: the uncertainty of this reading is not known';
    default:
      return 'inside';
  }
}
