import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import type { BenchCase } from '../bench-case.js';
import { samples } from '../capture-data.js';

const repeats = 5;
const folder = '.cache/bench';
const megabytesOfInput = (2 * 8 * samples) / 2 ** 20;

/** Analyses once in a fresh process, and says by how much the most that it has held has grown beyond the input. */
const program = `
import { analyseCapture } from 'esu-limits/waveform';
const voltage = new Float64Array(${samples});
const current = new Float64Array(${samples});
for (let k = 0; k < ${samples}; k++) {
  const t = k % 2000;
  voltage[k] = t < 400 ? 1000 * Math.sin(0.0628 * t) : 0;
  current[k] = voltage[k] / 500;
}
globalThis.gc();
const before = process.resourceUsage().maxRSS;
const { activePower, window } = analyseCapture({ voltage, current, sampleInterval: 20e-9 });
const megabytes = (process.resourceUsage().maxRSS - before) / 1024;
console.log(JSON.stringify({ megabytes, activePower, count: window.count }));
`;

function memoryOnce(): number {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--expose-gc', `${folder}/capture-once.mjs`], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  const answer = JSON.parse(stdout) as { megabytes: number; activePower: number; count: number };
  // A fifth of the time at 1000²/(2·500) W.
  if (!(Math.abs(answer.activePower - 200) < 1) || answer.count !== samples / 2000 - 2) throw new Error(stdout);
  return answer.megabytes;
}

export const benchCase: BenchCase = {
  name: 'capture of two channels',
  n: samples,
  measure: async () => {
    mkdirSync(folder, { recursive: true });
    writeFileSync(`${folder}/capture-once.mjs`, program);
    return [
      {
        what: 'memory beyond the input',
        unit: 'MB',
        samples: Array.from({ length: repeats }, memoryOnce),
        goal: megabytesOfInput / 10,
      },
    ];
  },
};
