import { fail, requireFinite } from '../checks/index.js';

/** A crest factor, which is 1 or more, or an error. */
export function requireCrestFactor(value: number): number {
  requireFinite(value, 'crestFactor');
  if (value < 1) fail('out-of-range', 'crestFactor', value, 'must be 1 or more: no peak lies below its rms value');
  return value;
}
