export { type BandFormatOptions, formatBand } from './format-band.js';
export type { DisplayUnit, FormatOptions } from './format-options.js';
export { formatQuantity } from './format-quantity.js';
export { formatTolerance, type ToleranceFormatOptions } from './format-tolerance.js';
export { type ParsedBand, parseBand, safeParseBand } from './parse-band.js';
export {
  parseCapacitance,
  parseCurrent,
  parseFraction,
  parseFrequency,
  parseInductance,
  parseLength,
  parsePeakCurrent,
  parsePeakVoltage,
  parsePower,
  parseResistance,
  parseTemperature,
  parseTime,
  parseVoltage,
} from './parse-kinds.js';
export { parseQuantity } from './parse-quantity.js';
export type { ParseResult, Refusal } from './parse-result.js';
export { parseTolerance, safeParseTolerance, type ToleranceOptions } from './parse-tolerance.js';
export type { ParsedSides, ParsedTolerance } from './parsed-tolerance.js';
export { type ParsedQuantity, type QuantityOptions, safeParseQuantity } from './safe-parse-quantity.js';
export {
  formVocabulary,
  type PrefixSymbol,
  prefixVocabulary,
  type QuantityForm,
  type QuantityKind,
  type SiUnit,
  type UnitEntry,
  unitVocabulary,
} from './vocabulary.js';
