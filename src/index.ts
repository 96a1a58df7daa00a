export * from './band/index.js';
// The list of codes, with cause and remedy, loads from `esu-limits/checks`: an error carries its own hint.
export {
  atPath,
  CalculationError,
  type CalculationErrorCode,
  describe,
  type Fault,
  fail,
  faultText,
  joinPath,
  nearName,
  requireAscending,
  requireAtLeast,
  requireChoice,
  requireFinite,
  requireFraction,
  requireInteger,
  requireNonNegative,
  requirePositive,
  requirePositiveResult,
  requireResult,
  type Warning,
} from './checks/index.js';
export * from './circuit/index.js';
export * from './curve/index.js';
export * from './units/index.js';
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
