import type { Stretch } from './curve.js';
import type { Interpolant } from './interpolant.js';

/**
 * What is constant between two points: the exponent of a log–log stretch says it, within 0.02 of 1, 0 or −1.
 * On other curves only a flat stretch is named, since current or voltage is constant along no part of them.
 */
export function kindOfStretch(inner: Interpolant, i: number): Stretch['kind'] {
  const isPowerLaw = inner.logarithmic && !inner.cubic;
  const exponent = inner.powers[i] === inner.powers[i + 1] ? 0 : isPowerLaw ? inner.secants[i]! : Number.NaN;
  if (Math.abs(exponent - 1) <= 0.02) return 'constant-current';
  if (Math.abs(exponent) <= 0.02) return 'constant-power';
  if (Math.abs(exponent + 1) <= 0.02) return 'constant-voltage';
  return 'between';
}
