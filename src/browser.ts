export { type CodeEntry, codeList } from './checks/index.js';
export * from './decision/index.js';
export * from './electrode/index.js';
export * from './index.js';
export * from './leakage/index.js';
export * from './monitor/index.js';
export * from './procedure/index.js';
export * from './report/index.js';
// units/ has a type of this name too; a script in a page sees neither.
export type { ParseResult } from './schema/index.js';
export * from './schema/index.js';
export * from './uncertainty/index.js';
export * from './waveform/index.js';
export { catalogue } from './working/index.js';
