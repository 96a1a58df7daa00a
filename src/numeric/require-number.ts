import { fail } from '../checks/index.js';

/** A number, infinity included: what a limit of an interval may be. */
export function requireNumber(value: number, path: string): number {
  if (typeof value !== 'number' || Number.isNaN(value))
    fail('not-a-number', path, value, 'must be a number or infinite');
  return value;
}
