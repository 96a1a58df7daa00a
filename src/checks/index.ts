export { atPath, joinPath } from './at-path.js';
export { CalculationError, describe, type Fault, faultText } from './calculation-error.js';
export { type CalculationErrorCode, type CodeEntry, codeList } from './codes.js';
export { nearName } from './near-name.js';
export {
  fail,
  isFullNumber,
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
} from './require.js';
export type { Warning } from './warning.js';
