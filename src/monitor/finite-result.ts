import { requireResult } from '../checks/index.js';

/** A result of which every number is finite, or an error that names the first member that is not. */
export function finiteResult<T>(result: T, path = 'result'): T {
  if (typeof result === 'number') requireResult(result, path);
  else if (typeof result === 'object' && result !== null) {
    for (const [name, member] of Object.entries(result)) finiteResult(member, `${path}.${name}`);
  }
  return result;
}
