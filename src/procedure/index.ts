export type * from './bench.js';
export { type Caution, cautions } from './cautions.js';
export type * from './findings.js';
export type * from './plan.js';
export type * from './readings.js';
export type * from './record.js';
export type * from './specification.js';
export { type RuleChoice, type RuleId, type StandardRule, standardRules } from './standard-rules.js';
