export { type Conformance, type ConformanceOptions, conformanceProbability } from './conformance-probability.js';
export { type GlobalRisk, type GlobalRiskInput, globalRisk } from './global-risk.js';
export type { GammaPrior, NormalPrior, Prior, RectangularPrior } from './prior.js';
