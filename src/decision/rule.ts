import { fail, requireFraction, requireNonNegative } from '../checks/index.js';
import type { Prior } from './prior.js';
import type { UncertaintyRatioMethod } from './uncertainty-ratio-guard-band.js';

/** The acceptance limits are the tolerance limits: the risk is shared. */
export interface SimpleAcceptance {
  readonly kind: 'simple-acceptance';
}

/** The acceptance limits lie inside the tolerance by r·U. */
export interface GuardedAcceptance {
  readonly kind: 'guarded-acceptance';
  /** Guard band as a multiple r of the expanded uncertainty, 0 or more; 1 is usual. */
  readonly ratio: number;
}

/** The acceptance limits lie outside the tolerance by r·U: only a proven fault is rejected. */
export interface GuardedRejection {
  readonly kind: 'guarded-rejection';
  /** Guard band as a multiple r of the expanded uncertainty, 0 or more. */
  readonly ratio: number;
}

/** A value is accepted where the probability that the quantity does not conform is at most the risk. */
export interface SpecificConsumerRisk {
  readonly kind: 'specific-consumer-risk';
  /** Largest risk of an accepted value, greater than 0, at most 0.5. */
  readonly risk: number;
}

/** A value is rejected where the probability that the quantity conforms is at most the risk. */
export interface SpecificProducerRisk {
  readonly kind: 'specific-producer-risk';
  /** Largest risk of a rejected value, greater than 0, at most 0.5. */
  readonly risk: number;
}

/** The guard band, the same at both limits, is the least that keeps the global consumer's risk. */
export interface GlobalConsumerRisk {
  readonly kind: 'global-consumer-risk';
  /** Largest probability that an item does not conform and is accepted, greater than 0, less than 1. */
  readonly risk: number;
  /** What is known of the quantity before it is measured. */
  readonly prior: Prior;
}

/** The guard band follows from the test uncertainty ratio. */
export interface UncertaintyRatioRule {
  readonly kind: 'test-uncertainty-ratio';
  readonly method: UncertaintyRatioMethod;
  /** Nominal value, needed where there is one limit only. */
  readonly nominal?: number;
}

/** Pass, conditional pass, conditional fail or fail, with guard bands of r·U on both sides of each limit. */
export interface NonBinary {
  readonly kind: 'non-binary';
  /** Guard band as a multiple r of the expanded uncertainty, 0 or more; 1 is usual. */
  readonly ratio: number;
}

/** How acceptance limits follow from tolerance limits and uncertainty. */
export type DecisionRule =
  | SimpleAcceptance
  | GuardedAcceptance
  | GuardedRejection
  | SpecificConsumerRisk
  | SpecificProducerRisk
  | GlobalConsumerRisk
  | UncertaintyRatioRule
  | NonBinary;

/** The multiple r of the expanded uncertainty: there is no default, and outward has a rule of its own. */
export function requireRatio(ratio: number): number {
  if (!(ratio < 0)) return requireNonNegative(ratio, 'rule.ratio');
  const hint = 'For acceptance limits outside the tolerance choose the rule guarded-rejection.';
  return fail('negative', 'rule.ratio', ratio, 'must be 0 or more', hint);
}

/** A risk that a rule can hold. */
export function requireRisk(risk: number, most: number): number {
  requireFraction(risk, 'rule.risk');
  if (risk > 0 && risk <= most && risk < 1) return risk;
  const range = most < 1 ? `at most ${most}` : 'less than 1';
  return fail('out-of-range', 'rule.risk', risk, `must be greater than 0 and ${range}`);
}
