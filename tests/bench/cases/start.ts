import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import type { BenchCase } from '../bench-case.js';

const rounds = 15;
const tries = 9;
const folder = '.cache/bench';

/** Seconds that a Node process takes from its start to its end. */
function secondsOf(file: string): number {
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, [file], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${file}: ${stderr}`);
  return Number(process.hrtime.bigint() - start) / 1e9;
}

function programs(extension: 'mjs' | 'cjs', text: string): { empty: string; core: string } {
  mkdirSync(folder, { recursive: true });
  const files = { empty: `${folder}/start-empty.${extension}`, core: `${folder}/start-core.${extension}` };
  writeFileSync(files.empty, '');
  writeFileSync(files.core, text);
  return files;
}

/** The two take turns; each sample is the difference of the quickest of some starts, which nothing disturbed. */
function differences({ empty, core }: { empty: string; core: string }): number[] {
  secondsOf(empty);
  secondsOf(core);
  return Array.from({ length: rounds }, () => {
    let base = Number.POSITIVE_INFINITY;
    let whole = Number.POSITIVE_INFINITY;
    for (let i = 0; i < tries; i++) {
      base = Math.min(base, secondsOf(empty));
      whole = Math.min(whole, secondsOf(core));
    }
    return whole - base;
  });
}

export const benchCase: BenchCase = {
  name: 'start beyond an empty Node process',
  n: 1,
  measure: async () => [
    {
      what: 'import of the core',
      unit: 's',
      samples: differences(
        programs('mjs', "import { currentFromPower } from 'esu-limits';\nif (currentFromPower(4, 1) !== 2) throw 0;\n"),
      ),
      goal: 0.01,
    },
    {
      what: 'require of the core',
      unit: 's',
      samples: differences(
        programs(
          'cjs',
          "const { currentFromPower } = require('esu-limits');\nif (currentFromPower(4, 1) !== 2) throw 0;\n",
        ),
      ),
      goal: 0.01,
    },
  ],
};
