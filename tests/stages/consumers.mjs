// The packed tarball, used as three kinds of project use it: outside the repository, with nothing but its
// declared dependencies beside it.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { useInBrowser } from '../package/browser.mjs';
import { command, StageFailure } from './stage.mjs';

const consumers = 'tests/package/consumers';

export async function runConsumers(tally, { chromium, remedy }) {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'esu-limits-')));
  try {
    const installed = await tally.stage('package: pack and install', () => install(folder));
    if (!installed) return;
    await tally.stage('consumer: TypeScript project of ES modules', () => useFromTypeScript(folder));
    await tally.stage('consumer: CommonJS script', () => useFromCommonJs(folder));
    await tally.stage('consumer: bundle of one function', () => bundleOneFunction(folder));
    const browser = 'consumer: page in a browser';
    if (chromium) await tally.stage(browser, () => useInBrowser(folder, consumers, chromium));
    else tally.skip(browser, remedy);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Packs the package and unpacks it into node_modules, as an installation would, without the network. */
async function install(folder) {
  await command('npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', folder]);
  const { name, version } = JSON.parse(readFileSync('package.json', 'utf8'));
  await command('tar', ['-xzf', join(folder, `${name}-${version}.tgz`), '-C', folder]);
  const target = join(folder, 'node_modules', name);
  cpSync(join(folder, 'package'), target, { recursive: true });
  const { dependencies = {} } = JSON.parse(readFileSync(join(target, 'package.json'), 'utf8'));
  for (const dependency of Object.keys(dependencies)) link(dependency, folder);
}

function link(dependency, folder) {
  const place = join(folder, 'node_modules', dependency);
  mkdirSync(dirname(place), { recursive: true });
  symlinkSync(realpathSync(join('node_modules', dependency)), place, 'junction');
}

async function useFromTypeScript(folder) {
  const project = projectOf('typescript', folder);
  await command(process.execPath, [realpathSync('node_modules/typescript/bin/tsc'), '-p', '.'], { cwd: project });
  expectReport(await command(process.execPath, ['out/main.js'], { cwd: project }));
}

async function useFromCommonJs(folder) {
  const project = projectOf('commonjs', folder);
  expectReport(await command(process.execPath, ['main.js'], { cwd: project }));
}

/** A bundler leaves out what is not used, of the core's one file too: 1 kB is left. */
async function bundleOneFunction(folder) {
  const { outputFiles } = await build({
    stdin: { contents: "export { currentFromPower } from 'esu-limits';", resolveDir: folder },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
  });
  const bytes = gzipSync(outputFiles[0].contents).length;
  if (bytes > 1024) throw new StageFailure(`the bundle of one function has ${bytes} bytes`);
}

/** A copy of a consumer, with the documents that it reads. */
function projectOf(name, folder) {
  const project = join(folder, name);
  cpSync(join(consumers, name), project, { recursive: true });
  for (const document of ['sheet.json', 'bench.json']) cpSync(join(consumers, document), join(project, document));
  return project;
}

/** Each consumer prints what it computed; every kind of project must print the same. */
function expectReport(output) {
  const expected = readFileSync(join(consumers, 'expected.txt'), 'utf8').trim();
  if (output.trim() !== expected) throw new StageFailure(`expected\n${expected}\nbut the output was\n${output}`);
}
