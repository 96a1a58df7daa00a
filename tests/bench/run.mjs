// `npm run bench [-- words of case names] [--json] [--peers] [--keep]`: each case in a process of its own, against the
// built package. Ends with exit code 1 when a goal is missed or values differ. `--keep` runs the peers too, and writes
// all rows, with the machine and the versions, to docs/benchmark.json, from which the site makes its table.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus, loadavg } from 'node:os';
import { basename } from 'node:path';
import { buildSync } from 'esbuild';
import { tableOf } from './table.mjs';

const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const asJson = process.argv.includes('--json');
const keep = process.argv.includes('--keep');
const peers = 'tests/bench/peers';
const folders = keep ? ['tests/bench/cases', peers] : [process.argv.includes('--peers') ? peers : 'tests/bench/cases'];
const { version } = JSON.parse(readFileSync('package.json', 'utf8'));

if (!existsSync('dist/index.js')) {
  console.error('The built package is measured: run `npm run build` first.');
  process.exit(1);
}

const files = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.ts') && words.every((word) => name.includes(word)))
    .sort()
    .map((name) => `${folder}/${name}`),
);
const rows = [];
let broken = false;
for (const name of files) {
  if (!asJson) console.error(`… ${basename(name)}`);
  const result = spawnSync(process.execPath, ['--expose-gc', bundleOf(name)], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    env: { ...process.env, ESU_LIMITS_VERSION: version },
  });
  process.stderr.write(result.stderr);
  if (result.status === 0) rows.push(...JSON.parse(result.stdout));
  else broken = true;
}
const [load] = loadavg();
const cores = availableParallelism();
const isBusy = load > cores + 1;
if (isBusy) {
  console.error(`The machine was busy (load ${load.toFixed(1)} on ${cores} cores): do not rely on these times.`);
}
console.log(asJson ? JSON.stringify(rows, null, 2) : tableOf(rows));
if (keep && (broken || isBusy || words.length > 0)) {
  console.error('Nothing is kept: a kept run has every case, and a machine that does nothing else.');
  process.exitCode = 1;
} else if (keep) {
  const kept = {
    machine: `${cores} cores, ${cpus()[0]?.model.trim()}`,
    versions: `esu-limits ${version}, Node ${process.versions.node}`,
    date: new Date().toISOString().slice(0, 10),
    rows,
  };
  writeFileSync('docs/benchmark.json', `${JSON.stringify(kept, null, 2)}\n`);
}
if (broken || files.length === 0 || rows.some((row) => row.met === false)) process.exitCode = 1;

/** The case and the harness as one file; the package itself and its peers stay outside, as installed. */
function bundleOf(name) {
  const outfile = `.cache/bench/${basename(name, '.ts')}.mjs`;
  buildSync({
    stdin: {
      contents: `import { benchCase } from './${name}';
import { runCase } from './tests/bench/harness.ts';
process.stdout.write(JSON.stringify(await runCase(benchCase)));`,
      resolveDir: '.',
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    tsconfigRaw: {},
    outfile,
  });
  return outfile;
}
