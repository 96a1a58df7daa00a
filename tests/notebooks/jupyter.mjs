// Runs a notebook headless: Jupyter's client for Python with the Deno kernel from node_modules. Nothing is installed,
// nothing is written outside a folder for temporary files, and no kernel of the user is taken in its place.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { command } from '../stages/stage.mjs';
import { shownExpression } from './cell-value.mjs';
import { linesOf, readNotebook, textOf } from './notebook-file.mjs';

const executor = fileURLToPath(new URL('execute.py', import.meta.url));

/** What a run of the notebooks needs and this machine lacks, as a sentence; undefined where nothing is missing. */
export function missingForNotebooks() {
  if (pythonPath() === undefined) {
    return 'Not run: no Python with jupyter_client was found. Debian: apt-get install python3-jupyter-client; elsewhere: pip install jupyter-client, and PYTHON=/path/to/python npm test where it is not the first python3';
  }
  if (denoPath() === undefined) {
    return 'Not run: the Deno kernel does not start. `npm ci` installs it as an optional part of the package deno, for Linux with glibc, macOS and Windows';
  }
  return undefined;
}

/** The notebook as a fresh execution leaves it; rejects when a cell fails. */
export async function executeNotebook(path) {
  const notebook = readNotebook(path);
  const folder = mkdtempSync(join(tmpdir(), 'esu-limits-notebook-'));
  try {
    const kernel = join(folder, 'data', 'kernels', 'deno');
    mkdirSync(kernel, { recursive: true });
    writeFileSync(join(kernel, 'kernel.json'), JSON.stringify(kernelSpecification(), null, 2));
    const sources = notebook.cells.filter(isCode).map((cell) => textOf(cell.source));
    const cells = sources.map((source) => ({ source, shows: shownExpression(source) !== undefined }));
    const input = join(folder, 'cells.json');
    writeFileSync(input, JSON.stringify(cells));
    const answer = await command(pythonPath(), [executor, resolve(dirname(path)), input], { env: environment(folder) });
    return withOutputs(notebook, JSON.parse(answer));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function withOutputs(notebook, shown) {
  let count = 0;
  const cells = notebook.cells.map((cell) => {
    if (!isCode(cell)) return cell;
    count += 1;
    const { cell_type, id, metadata, source } = cell;
    const outputs = shown[count - 1].map(outputOf);
    return { cell_type, execution_count: count, id, metadata, outputs, source };
  });
  return { ...notebook, cells };
}

/** A message of the kernel as a notebook keeps it. */
function outputOf([output_type, { name, text, data, metadata = {}, execution_count }]) {
  if (output_type === 'stream') return { name, output_type, text: linesOf(text) };
  const lines = Object.fromEntries(Object.entries(data).map(([type, value]) => [type, linesOf(value)]));
  if (output_type === 'display_data') return { data: lines, metadata, output_type };
  return { data: lines, execution_count, metadata, output_type };
}

function isCode({ cell_type }) {
  return cell_type === 'code';
}

function kernelSpecification() {
  return {
    argv: [denoPath(), 'jupyter', '--kernel', '--conn', '{connection_file}'],
    display_name: 'Deno',
    language: 'typescript',
    env: { NO_COLOR: '1' },
  };
}

function environment(folder) {
  return {
    ...process.env,
    NO_COLOR: '1',
    DENO_DIR: join(folder, 'deno'),
    DENO_NO_UPDATE_CHECK: '1',
    JUPYTER_PATH: join(folder, 'data'),
    JUPYTER_DATA_DIR: join(folder, 'data'),
    JUPYTER_CONFIG_DIR: join(folder, 'config'),
    JUPYTER_RUNTIME_DIR: join(folder, 'runtime'),
  };
}

/** A Python that has Jupyter's client: Debian's own is tried too, where another stands before it. */
function pythonPath() {
  const candidates = [process.env.PYTHON, 'python3', '/usr/bin/python3', 'python'].filter(Boolean);
  return candidates.find(
    (python) => spawnSync(python, ['-c', 'import jupyter_client'], { stdio: 'ignore' }).status === 0,
  );
}

/** Where the program of the package `deno` lies on this machine; it says so itself. */
function denoPath() {
  let launcher;
  try {
    launcher = createRequire(import.meta.url).resolve('deno/bin.cjs');
  } catch {
    return undefined;
  }
  const args = [launcher, 'eval', 'console.log(Deno.execPath())'];
  const env = { ...process.env, NO_COLOR: '1', DENO_NO_UPDATE_CHECK: '1' };
  const { status, stdout } = spawnSync(process.execPath, args, { encoding: 'utf8', env });
  return status === 0 ? stdout.trim() : undefined;
}
