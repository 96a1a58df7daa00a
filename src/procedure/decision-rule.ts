import type { Band } from '../band/index.js';
import { CalculationError, type Fault, fail } from '../checks/index.js';
import {
  type DecisionRule,
  explainAcceptanceBand,
  type GuardedAcceptance,
  type GuardedRejection,
  type NonBinary,
  priorFromReliability,
  type SimpleAcceptance,
  type SpecificConsumerRisk,
  type SpecificProducerRisk,
  type UncertaintyRatioMethod,
} from '../decision/index.js';
import { percentText } from './percent-text.js';

/** Decision rules that a plan can be made with: they speak of every point alike. */
export type PlanDecisionRule =
  | SimpleAcceptance
  | GuardedAcceptance
  | GuardedRejection
  | SpecificConsumerRisk
  | SpecificProducerRisk
  | NonBinary
  | PlanUncertaintyRatioRule
  | PlanGlobalRisk;

/** The guard band follows from the test uncertainty ratio of each point. */
export interface PlanUncertaintyRatioRule {
  readonly kind: 'test-uncertainty-ratio';
  readonly method: UncertaintyRatioMethod;
}

/** The guard band is the least that keeps the global consumer's risk at each point. */
export interface PlanGlobalRisk {
  readonly kind: 'global-consumer-risk';
  /** Largest probability that a point does not conform and is accepted, greater than 0, less than 1. */
  readonly risk: number;
  /** Part of the points that conform before they are measured, greater than 0, less than 1: from the workshop's own history. */
  readonly reliability: number;
}

/** The rule of a plan as the rule of one point. */
export function ruleAt(rule: PlanDecisionRule, limits: Band, nominal: number): DecisionRule {
  // Two limits have a middle of their own; a single one needs the nominal.
  const isTwoSided = limits.lower !== undefined && limits.upper !== undefined;
  switch (rule.kind) {
    case 'test-uncertainty-ratio':
      return isTwoSided ? rule : { ...rule, nominal };
    case 'global-consumer-risk': {
      const { risk, reliability } = rule;
      const prior = priorFromReliability(limits, reliability, isTwoSided ? {} : { mean: nominal });
      return { kind: 'global-consumer-risk', risk, prior };
    }
    default:
      return rule;
  }
}

/** Refuses a rule with a member that cannot be, whatever the point: tried on limits that are far apart. */
export function checkDecisionRule(rule: PlanDecisionRule, path: string): void {
  if (rule.kind === 'global-consumer-risk') {
    const { reliability } = rule;
    if (!(reliability > 0 && reliability < 1)) {
      fail('out-of-range', `${path}.reliability`, reliability, 'must be greater than 0 and less than 1');
    }
  }
  const limits = { lower: -1, upper: 1 };
  try {
    explainAcceptanceBand(limits, ruleAt(rule, limits, 0), { expandedUncertainty: 0.01, coverageFactor: 2 });
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    const [first, ...rest] = error.faults.map((fault) => ({ ...fault, path: fault.path.replace(/^rule/, path) }));
    throw new CalculationError(first as Fault, rest);
  }
}

/** A rule in words, for sheets. */
export function decisionRuleText(rule: PlanDecisionRule): string {
  const times = (ratio: number): string => (ratio === 1 ? 'U' : `${ratio} U`);
  switch (rule.kind) {
    case 'simple-acceptance':
      return 'simple acceptance: the limits themselves decide, and the risk is shared';
    case 'guarded-acceptance':
      return `guarded acceptance: accepted inside the limits by ${times(rule.ratio)} or more`;
    case 'guarded-rejection':
      return `guarded rejection: rejected outside the limits by more than ${times(rule.ratio)}`;
    case 'specific-consumer-risk':
      return `accepted where the probability of not conforming is at most ${percentText(rule.risk)}`;
    case 'specific-producer-risk':
      return `rejected where the probability of conforming is at most ${percentText(rule.risk)}`;
    case 'non-binary':
      return `four statements, with guard bands of ${times(rule.ratio)} on both sides of each limit`;
    case 'test-uncertainty-ratio':
      return `guard band by the test uncertainty ratio, method ${rule.method}`;
    case 'global-consumer-risk':
      return `at most ${percentText(rule.risk)} of all points accepted though not conforming, where ${percentText(rule.reliability)} conform`;
  }
}
