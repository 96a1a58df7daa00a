import type { BenchCase } from '../bench-case.js';
import { missingInPython, numbersFile, pythonContender } from '../conversation.js';
import { knots, manyLoads, monotoneCurve } from '../curve-data.js';
import { sumOf, versionOf } from '../inputs.js';

export const benchCase: BenchCase = {
  name: 'monotone curve of 22 points, reads in columns',
  n: 1_000_000,
  goal: 0.8,
  missing: () => missingInPython('numpy', 'scipy'),
  contenders: async () => {
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
      await pythonContender('SciPy PchipInterpolator', 'tests/bench/peers/pchip.py', {
        loads: knots.map(({ load }) => load),
        powers: knots.map(({ power }) => power),
        file: numbersFile('loads', loads),
      }),
    ];
  },
};
