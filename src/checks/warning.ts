import type { CalculationErrorCode } from './codes.js';

/** A matter that is not fatal: it travels in the result, never on the console. */
export interface Warning {
  /** Code from the list, for programs. */
  readonly code: CalculationErrorCode;
  /** One sentence for a person. */
  readonly message: string;
}
