import { fail, requireFinite, requireFraction, requireNonNegative } from '../checks/index.js';
import type { Sides, Tolerance } from './tolerance.js';
import { type Side, sideOf } from './tolerance-side.js';

const sides: readonly Side[] = ['below', 'above'];

/** A tolerance that can be applied, or an error. */
export function checkTolerance(tolerance: Tolerance, path = 'tolerance'): void {
  const { relative, absolute, combine, floor } = tolerance;
  if (floor !== undefined) requireFinite(floor, `${path}.floor`);
  checkPart(relative, path, '.relative', requireFraction);
  checkPart(absolute, path, '.absolute', requireNonNegative);
  if (relative === undefined || absolute === undefined) {
    if (relative === absolute) fail('wrong-count', path, tolerance, 'must have a relative or an absolute part');
    return;
  }
  if (combine !== 'greater' && combine !== 'sum') {
    fail('unknown-choice', `${path}.combine`, combine, 'must be greater or sum where both parts are given');
  }
  for (const side of sides) {
    if ((sideOf(relative, side) === undefined) !== (sideOf(absolute, side) === undefined)) {
      fail('wrong-count', path, tolerance, `must state ${side} in both parts or in none; 0 adds nothing`);
    }
  }
}

function checkPart(
  part: number | Sides | undefined,
  path: string,
  member: string,
  check: (value: number, path: string) => number,
): void {
  // The common case first, and without making a text: one limit may be a call of millions.
  if (part === undefined || (typeof part === 'number' && part >= 0 && part <= 1)) return;
  if (typeof part !== 'object' || part === null) {
    check(part, path + member);
    return;
  }
  const stated = sides.filter((side) => part[side] !== undefined);
  if (stated.length === 0) fail('wrong-count', path + member, part, 'must state below, above or both');
  for (const side of stated) check(part[side] as number, `${path}${member}.${side}`);
}
