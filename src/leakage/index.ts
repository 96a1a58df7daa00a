export {
  assessLeakage,
  type DecidableLeakage,
  type LeakageFinding,
  type LeakageMeasurement,
} from './assess-leakage.js';
export { leakageCautions } from './cautions.js';
export { type ContactCurrentGuidance, contactCurrentGuidance } from './contact-current.js';
export { type LeadCapacitance, type LeadOnMetal, leadCapacitance } from './lead-capacitance.js';
export {
  type KnownLeakageLimit,
  type LeakageArrangement,
  type LeakageArrangementId,
  type LeakageElectrode,
  type LeakageLoading,
  type LeakagePlace,
  leakageArrangements,
  leakageLoadings,
} from './leakage-arrangements.js';
export { type LeakageConversion, leakageAtNominal, type NominalLeakage } from './leakage-at-nominal.js';
export type { LeakageInstrument, MeasuringResistor } from './leakage-budget.js';
export { type LeakageCondition, leakageConditions } from './leakage-conditions.js';
export { leakageFromStray, type StrayLeakage, type StrayPath } from './leakage-from-stray.js';
export { type LeakageHint, type LeakageHintInput, type LeakageHintWord, leakageHint } from './leakage-hint.js';
export {
  type LeakageLimit,
  type LeakageLimitBasis,
  type LeakageLimitQuestion,
  leakageLimit,
  type StatedLeakageLimit,
} from './leakage-limit.js';
export type { LeakageSource } from './leakage-source.js';
export { type StrayCapacitance, type StrayQuestion, strayFromLeakage } from './stray-from-leakage.js';
