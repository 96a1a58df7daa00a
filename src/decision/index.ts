export { acceptanceBand } from './acceptance-band.js';
export { type Capability, capability } from './capability.js';
export { type Conformance, type ConformanceOptions, conformanceProbability } from './conformance-probability.js';
export { type Decision, type DecisionInput, decide } from './decide.js';
export { type DecisionLimits, type DecisionWord, decisionWord } from './decision-word.js';
export { type EnNumber, type EnNumberInput, enNumber } from './en-number.js';
export { type AcceptanceLimits, type AcceptanceOptions, explainAcceptanceBand } from './explain-acceptance-band.js';
export { type GlobalRisk, type GlobalRiskInput, globalRisk } from './global-risk.js';
export type { MeasurementUncertainty } from './measurement.js';
export type { GammaPrior, NormalPrior, Prior, RectangularPrior } from './prior.js';
export { priorFromReliability, type ReliabilityOptions } from './prior-from-reliability.js';
export type {
  DecisionRule,
  GlobalConsumerRisk,
  GuardedAcceptance,
  GuardedRejection,
  NonBinary,
  SimpleAcceptance,
  SpecificConsumerRisk,
  SpecificProducerRisk,
  UncertaintyRatioRule,
} from './rule.js';
export { testUncertaintyRatio, type UncertaintyRatioOptions } from './test-uncertainty-ratio.js';
export { type TwoPercentAnswer, type TwoPercentQuestion, twoPercentRule } from './two-percent-rule.js';
export {
  type UncertaintyRatioGuardBand,
  type UncertaintyRatioMethod,
  uncertaintyRatioGuardBand,
} from './uncertainty-ratio-guard-band.js';
export { type WorstRisk, type WorstRiskInput, worstConsumerRisk } from './worst-consumer-risk.js';
export { type ZetaScore, type ZetaScoreInput, zetaScore } from './zeta-score.js';
