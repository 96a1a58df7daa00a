import type * as z from 'zod/mini';
import type { CalculationErrorCode } from '../../checks/index.js';

/** What our issues say beyond zod's. */
export interface IssueDetails {
  readonly fault: CalculationErrorCode;
  readonly hint?: string;
}

/** Adds a fault to the issues of the value that is being read; `path` starts at that value. */
export type Report = (
  code: CalculationErrorCode,
  path: readonly PropertyKey[],
  received: unknown,
  requirement: string,
  hint?: string,
) => void;

/** A reporter into the issues of a payload of zod. */
export function reporter(issues: z.core.$ZodRawIssue[]): Report {
  return (fault, path, input, message, hint) => {
    const params: IssueDetails = hint === undefined ? { fault } : { fault, hint };
    // `continue`: checks of the objects around it still run, so that all faults are found at once.
    issues.push({ code: 'custom', input, path: [...path], message, params: { ...params }, continue: true });
  };
}
