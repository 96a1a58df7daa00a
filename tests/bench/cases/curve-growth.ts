import type { BenchCase } from '../bench-case.js';
import { manyLoads, monotoneCurve } from '../curve-data.js';
import { sumOf, versionOf } from '../inputs.js';

const parts = 100;

/** Time grows with the number of reads and no faster: a million at once against a hundred times ten thousand. */
export const benchCase: BenchCase = {
  name: 'monotone curve, growth with the number of reads',
  n: 1_000_000,
  goal: 1.25,
  contenders: () => {
    const loads = manyLoads();
    const curve = monotoneCurve();
    const size = loads.length / parts;
    const out = new Float64Array(loads.length);
    const version = versionOf('esu-limits');
    const inParts = (target: Float64Array): Float64Array => {
      for (let start = 0; start < loads.length; start += size) {
        curve.powersAt(loads.subarray(start, start + size), target.subarray(start, start + size));
      }
      return target;
    };
    return [
      {
        tool: 'esu-limits, at once',
        version,
        values: () => curve.powersAt(loads),
        run: () => sumOf(curve.powersAt(loads, out)),
      },
      {
        tool: 'esu-limits, in 100 parts',
        version,
        values: () => inParts(new Float64Array(loads.length)),
        run: () => sumOf(inParts(out)),
      },
    ];
  },
};
