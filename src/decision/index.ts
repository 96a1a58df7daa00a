export { type Conformance, conformanceProbability } from './conformance-probability.js';
export { type GlobalRisk, type GlobalRiskInput, globalRisk } from './global-risk.js';
export type { NormalPrior, Prior, RectangularPrior } from './prior.js';
