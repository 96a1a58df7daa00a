import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import type { BenchCase } from '../bench-case.js';

const samples = 10_000_000;
const repeats = 5;
const folder = '.cache/bench';

/** Runs a trace with a hundred alarms in a fresh process, and says by how much the most that it has held has grown. */
const program = `
import { monitorStates } from 'esu-limits/monitor';
const resistance = new Float64Array(${samples}).fill(50);
for (let k = 0; k < 100; k++) resistance.fill(200, k * ${samples / 100} + 5000, k * ${samples / 100} + 6000);
globalThis.gc();
const before = process.resourceUsage().maxRSS;
const rise = { fraction: 0.4, baseline: 'tracked', timeConstant: 60 };
const monitor = { kind: 'contact-quality', upper: { resistance: 135 }, rise, alarmDelay: 0.5, releaseDelay: 1 };
const { alarms } = monitorStates(monitor, { interval: 0.01, resistance });
const megabytes = (process.resourceUsage().maxRSS - before) / 1024;
console.log(JSON.stringify({ megabytes, count: alarms.length }));
`;

function memoryOnce(): number {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--expose-gc', `${folder}/monitor-once.mjs`], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  const answer = JSON.parse(stdout) as { megabytes: number; count: number };
  if (answer.count !== 100) throw new Error(stdout);
  return answer.megabytes;
}

export const benchCase: BenchCase = {
  name: 'states of a monitor',
  n: samples,
  measure: async () => {
    mkdirSync(folder, { recursive: true });
    writeFileSync(`${folder}/monitor-once.mjs`, program);
    return [
      {
        what: 'memory beyond the input',
        unit: 'MB',
        samples: Array.from({ length: repeats }, memoryOnce),
        goal: (8 * samples) / 2 ** 20 / 10,
      },
    ];
  },
};
