export { type CatalogueEntry, catalogue } from './catalogue.js';
export type { Caution } from './caution.js';
export type { Formula, UnitName } from './formula.js';
export type { Prose } from './prose/prose.js';
export { type Source, type SourceId, sources } from './sources.js';
export type { Standing } from './standing.js';
export { type Step, type StepNaming, step } from './step.js';
