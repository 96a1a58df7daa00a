import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import type { BenchCase } from '../bench-case.js';
import { knots, manyLoads, monotoneCurve } from '../curve-data.js';
import { sumOf, versionOf } from '../inputs.js';

const folder = '.cache/bench';
const python = process.env['PYTHON'] ?? 'python3';

function missing(): string | undefined {
  const { status } = spawnSync(python, ['-c', 'import numpy, scipy']);
  if (status === 0) return undefined;
  return `${python} with numpy and scipy is missing (Debian: apt-get install python3-scipy; or name another: PYTHON=…)`;
}

/** A process that answers one line for each line. */
function conversation(program: string): { ask: (line: string) => Promise<string>; end: () => void } {
  const child = spawn(python, [program], { stdio: ['pipe', 'pipe', 'inherit'] });
  const answers = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  return {
    ask: async (line) => {
      child.stdin.write(`${line}\n`);
      const { value, done } = await answers.next();
      if (done) throw new Error(`${program} ended before it answered`);
      return value;
    },
    end: () => child.stdin.end(),
  };
}

export const benchCase: BenchCase = {
  name: 'monotone curve of 22 points, reads in columns',
  n: 1_000_000,
  goal: 0.8,
  missing,
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
