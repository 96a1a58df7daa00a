import { fail } from '../checks/index.js';
import type { CurvePoint } from './curve.js';
import { requireMagnitude } from './curve-from.js';

/** Points as columns: loads in ohms, rising strictly, and powers in watts. */
export interface Columns {
  readonly loads: Float64Array;
  readonly powers: Float64Array;
}

/** The points of a curve as columns of loads and powers, checked: positive numbers, loads rising strictly. */
export function columnsOf(points: readonly CurvePoint[]): Columns {
  if (!Array.isArray(points)) fail('wrong-type', 'points', points, 'must be an array of points');
  const count = points.length;
  if (count < 2) fail('wrong-count', 'points', points, 'must be two points or more');
  const loads = new Float64Array(count);
  const powers = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const path = `points[${i}].`;
    const load = requireMagnitude(points[i]?.load, `${path}load`);
    if (load <= loads[i - 1]!) {
      fail('not-ascending', `${path}load`, load, `must be greater than the load before it, ${loads[i - 1]}`);
    }
    loads[i] = load;
    powers[i] = requireMagnitude(points[i]?.power, `${path}power`);
  }
  return { loads, powers };
}
