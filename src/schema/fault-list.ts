import { CalculationError, type CalculationErrorCode, describe, type Fault } from '../checks/index.js';
import { mostFaults } from './document-limits.js';

/** A value that was read, or everything that is wrong with the input. */
export type ParseResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Makes a fault. */
export function faultOf(
  code: CalculationErrorCode,
  path: string,
  received: unknown,
  requirement: string,
  hint?: string,
): Fault {
  return { code, path, received: describe(received), requirement, ...(hint === undefined ? {} : { hint }) };
}

/** The unhappy result; a list without end is cut, and says so. */
export function failure(faults: readonly Fault[]): { readonly ok: false; readonly faults: readonly Fault[] } {
  if (faults.length <= mostFaults) return { ok: false, faults };
  const last = faultOf('too-many-faults', '', 'more faults', `further faults than these ${mostFaults} are not listed`);
  return { ok: false, faults: [...faults.slice(0, mostFaults), last] };
}

/** The value of a result, or one error with all its faults. */
export function unwrap<T>(result: ParseResult<T>): T {
  if (result.ok) return result.value;
  throw new CalculationError(result.faults[0] as Fault, result.faults.slice(1));
}
