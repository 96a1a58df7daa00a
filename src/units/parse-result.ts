import { CalculationError, describe, type Fault } from '../checks/index.js';

/** A parsed value, or what is wrong with the text. */
export type ParseResult<T> = { readonly ok: true; readonly value: T } | Refusal;

/** The unhappy half of a result. */
export interface Refusal {
  readonly ok: false;
  readonly fault: Fault;
}

/** Refuses a text: the one place where results of this room turn unhappy. */
export function refuse(
  code: Fault['code'],
  path: string,
  received: unknown,
  requirement: string,
  hint?: string,
): Refusal {
  return {
    ok: false,
    fault: { code, path, received: describe(received), requirement, ...(hint === undefined ? {} : { hint }) },
  };
}

/** The value of a result, or its fault as an error. */
export function unwrap<T>(result: ParseResult<T>): T {
  if (result.ok) return result.value;
  throw new CalculationError(result.fault);
}

/** What a reader that throws returns, or the fault that it threw. */
export function attempt<T>(read: () => T): ParseResult<T> {
  try {
    return { ok: true, value: read() };
  } catch (thrown) {
    if (thrown instanceof CalculationError) return { ok: false, fault: thrown.faults[0] as Fault };
    throw thrown;
  }
}
