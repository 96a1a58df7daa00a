export * from './band/index.js';
export * from './checks/index.js';
export * from './circuit/index.js';
export * from './curve/index.js';
export * from './decision/index.js';
export * from './electrode/index.js';
export * from './leakage/index.js';
export * from './monitor/index.js';
export * from './procedure/index.js';
export * from './uncertainty/index.js';
export * from './units/index.js';
export * from './waveform/index.js';
// The catalogue, with a title and the meaning of each symbol, loads from `esu-limits/working`: a calculation has no need of it.
export {
  type Caution,
  type Formula,
  type Source,
  type SourceId,
  type Standing,
  type Step,
  type StepNaming,
  sources,
  step,
  type UnitName,
} from './working/index.js';
