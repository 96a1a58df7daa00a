import { fail, requireFinite } from '../checks/index.js';
import type { DegreesOfFreedom } from './uncertain-input.js';

/** Degrees of freedom of 1 or more, or `infinite`. */
export function requireDegrees(value: DegreesOfFreedom, path: string): DegreesOfFreedom {
  if (value === 'infinite') return value;
  requireFinite(value, path);
  if (value < 1) fail('out-of-range', path, value, "must be 1 or more, or 'infinite'");
  return value;
}

/** A probability strictly between 0 and 1; a percentage gets a hint. */
export function requireLevel(value: number, path: string): number {
  requireFinite(value, path);
  if (value > 0 && value < 1) return value;
  const hint = value > 1 && value <= 100 ? `If ${value} % is meant, give ${value / 100}.` : undefined;
  return fail('not-a-fraction', path, value, 'must be between 0 and 1', hint);
}
