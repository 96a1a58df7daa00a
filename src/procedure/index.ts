export { assessReadings } from './assess-readings.js';
export type * from './bench.js';
export { cautions } from './cautions.js';
export { benchFaults, specificationFaults } from './check-specification.js';
export { usualTestLoads } from './choose-points.js';
export {
  decisionRuleText,
  type PlanDecisionRule,
  type PlanGlobalRisk,
  type PlanUncertaintyRatioRule,
} from './decision-rule.js';
export type * from './findings.js';
export { idealLimits, idealValue } from './ideal-value.js';
export { makeRecord, type RecordCheck, recomputeRecord } from './make-record.js';
export type * from './plan.js';
export { defaultPlanOptions, planVerification } from './plan-verification.js';
export {
  nearestPreferredLoad,
  type PreferredSeries,
  preferredLoads,
  preferredValues,
} from './preferred-loads.js';
export { probabilityText } from './probability-text.js';
export { type CapturedReading, readingFromCapture } from './reading-from-capture.js';
export type * from './readings.js';
export type * from './record.js';
export type * from './specification.js';
export { type RuleChoice, type RuleId, type StandardRule, standardRules } from './standard-rules.js';
