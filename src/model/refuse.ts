import { fail } from '../checks/index.js';

/** The error for everything that an expression must not hold. */
export function refuse(expression: unknown, requirement: string, hint?: string): never {
  return fail('expression-refused', 'expression', expression, requirement, hint);
}
