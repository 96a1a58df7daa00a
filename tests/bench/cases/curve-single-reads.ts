import type { BenchCase } from '../bench-case.js';
import { manyLoads, monotoneCurve } from '../curve-data.js';
import { versionOf } from '../inputs.js';

/** A read by itself is checked by itself: what that costs beside the column form. */
export const benchCase: BenchCase = {
  name: 'monotone curve of 22 points, one read a call',
  n: 1_000_000,
  goal: 1.5,
  contenders: () => {
    const loads = manyLoads();
    const curve = monotoneCurve();
    const out = new Float64Array(loads.length);
    return [
      {
        tool: 'esu-limits, one a call',
        version: versionOf('esu-limits'),
        values: () => loads.map((load) => curve.powerAt(load)),
        run: () => {
          let sum = 0;
          for (let i = 0; i < loads.length; i++) sum += curve.powerAt(loads[i]!);
          return sum;
        },
      },
      {
        tool: 'esu-limits, columns',
        version: versionOf('esu-limits'),
        values: () => curve.powersAt(loads),
        run: () => {
          let sum = 0;
          const powers = curve.powersAt(loads, out);
          for (let i = 0; i < powers.length; i++) sum += powers[i]!;
          return sum;
        },
      },
    ];
  },
};
