import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { BenchCase } from '../bench-case.js';
import { knots, manyLoads, monotoneCurve } from '../curve-data.js';
import { sumOf, versionOf } from '../inputs.js';
import { conversation, missingModules } from '../python.js';

const folder = '.cache/bench';

export const benchCase: BenchCase = {
  name: 'monotone curve of 22 points, reads in columns',
  n: 1_000_000,
  goal: 0.8,
  missing: () => missingModules(['numpy', 'scipy']),
  contenders: async () => {
    mkdirSync(folder, { recursive: true });
    const loads = manyLoads();
    const curve = monotoneCurve();
    const out = new Float64Array(loads.length);
    writeFileSync(`${folder}/loads.f64`, loads);
    const { ask, end } = conversation('tests/bench/peers/pchip.py');
    const version = await ask(
      JSON.stringify({
        loads: knots.map(({ load }) => load),
        powers: knots.map(({ power }) => power),
        file: `${folder}/loads.f64`,
      }),
    );
    return [
      {
        tool: 'esu-limits',
        version: versionOf('esu-limits'),
        values: () => curve.powersAt(loads),
        run: () => sumOf(curve.powersAt(loads, out)),
      },
      {
        tool: 'SciPy PchipInterpolator',
        version,
        values: async () => {
          await ask(`values ${folder}/powers.f64`);
          const { buffer, byteOffset, length } = readFileSync(`${folder}/powers.f64`);
          return new Float64Array(buffer.slice(byteOffset, byteOffset + length));
        },
        timedRun: async () => {
          const [seconds, sum] = (await ask('run')).split(' ').map(Number);
          return { seconds: seconds!, sum: sum! };
        },
        end,
      },
    ];
  },
};
