import { fail } from '../../checks/index.js';
import { gaussWeights, kronrodNodes, kronrodWeights } from './kronrod-rule.js';
import type { RangeMap } from './map-range.js';

/** A stretch of the range, in the mapped variable, with its integral. */
export interface Stretch {
  readonly map: RangeMap;
  readonly from: number;
  readonly to: number;
  readonly value: number;
  /** Estimate of the absolute error. */
  readonly error: number;
}

/**
 * The 21-point rule on one stretch, and its error from the difference to the 10-point rule inside it: that difference is
 * the error of the lesser rule, so it is damped by the power that QUADPACK found to hold, but never below rounding.
 */
export function kronrodStretch(f: (x: number) => number, map: RangeMap, from: number, to: number): Stretch {
  const centre = (from + to) / 2;
  const half = (to - from) / 2;
  const at = (t: number): number => {
    const x = map.place(t);
    const value = f(x);
    if (!Number.isFinite(value)) fail('function-not-finite', 'f', value, `must be finite at x = ${x}`);
    return value * map.stretch(t);
  };
  const values = new Float64Array(21);
  values[0] = at(centre);
  let kronrod = kronrodWeights[0] * (values[0] as number);
  let gauss = 0;
  let size = Math.abs(kronrod);
  for (let j = 1; j <= 10; j++) {
    const offset = half * (kronrodNodes[j] as number);
    const left = at(centre - offset);
    const right = at(centre + offset);
    values[2 * j - 1] = left;
    values[2 * j] = right;
    const weight = kronrodWeights[j] as number;
    kronrod += weight * (left + right);
    size += weight * (Math.abs(left) + Math.abs(right));
    if (j % 2 === 1) gauss += (gaussWeights[(j - 1) / 2] as number) * (left + right);
  }
  let spread = 0;
  for (let i = 0; i <= 20; i++) {
    spread += (kronrodWeights[(i + 1) >> 1] as number) * Math.abs((values[i] as number) - kronrod / 2);
  }
  const difference = Math.abs(kronrod - gauss);
  const damped = spread === 0 ? difference : spread * Math.min(1, ((200 * difference) / spread) ** 1.5);
  return { map, from, to, value: kronrod * half, error: Math.max(Math.min(damped, difference), 1e-15 * size) * half };
}
