import type { BenchCase } from '../bench-case.js';
import { knots, manyLoads, monotoneCurve, slopesByHand } from '../curve-data.js';
import { sumOf, versionOf } from '../inputs.js';

const x = Float64Array.from(knots, ({ load }) => load);
const y = Float64Array.from(knots, ({ power }) => power);
const m = slopesByHand(x, y);

/** Binary search and cubic Hermite, as one would write it for this one job. */
function readByHand(loads: Float64Array, out: Float64Array): Float64Array {
  for (let k = 0; k < loads.length; k++) {
    const load = loads[k]!;
    let i = 0;
    let high = x.length - 1;
    while (high - i > 1) {
      const middle = (i + high) >> 1;
      if (load < x[middle]!) high = middle;
      else i = middle;
    }
    const h = x[i + 1]! - x[i]!;
    const t = (load - x[i]!) / h;
    const u = 1 - t;
    out[k] = y[i]! * u * u * (1 + 2 * t) + y[i + 1]! * t * t * (3 - 2 * t) + h * t * u * (m[i]! * u - m[i + 1]! * t);
  }
  return out;
}

export const benchCase: BenchCase = {
  name: 'monotone curve of 22 points, reads in columns',
  n: 1_000_000,
  goal: 1.5,
  contenders: () => {
    const loads = manyLoads();
    const curve = monotoneCurve();
    const out = new Float64Array(loads.length);
    return [
      {
        tool: 'esu-limits',
        version: versionOf('esu-limits'),
        values: () => curve.powersAt(loads),
        run: () => sumOf(curve.powersAt(loads, out)),
      },
      {
        tool: 'loop by hand',
        version: '',
        values: () => readByHand(loads, new Float64Array(loads.length)),
        run: () => sumOf(readByHand(loads, out)),
      },
    ];
  },
};
