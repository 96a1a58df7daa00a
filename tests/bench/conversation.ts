import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import type { Contender } from './bench-case.js';

/** Where peers and cases leave what they exchange. */
const folder = '.cache/bench';
const python = process.env['PYTHON'] ?? 'python3';

/** What Python lacks for a peer, with the way to get it. */
export function missingInPython(...modules: readonly string[]): string | undefined {
  const { status } = spawnSync(python, ['-c', `import ${modules.join(', ')}`]);
  if (status === 0) return undefined;
  const packages = modules.map((name) => `python3-${name}`).join(' ');
  return `${python} with ${modules.join(', ')} is missing (Debian: apt-get install ${packages}; or name another: PYTHON=…)`;
}

/** Numbers in a file that the peer reads as 64-bit values; its path. */
export function numbersFile(name: string, values: Float64Array): string {
  mkdirSync(folder, { recursive: true });
  const path = `${folder}/${name}.f64`;
  writeFileSync(path, values);
  return path;
}

/**
 * A peer that is a Python program: it reads a line of JSON, answers its version, and from then on answers one line for
 * each line. `values FILE` writes its results to FILE, `run` answers seconds and sum.
 */
export async function pythonContender(tool: string, program: string, setup: object): Promise<Contender> {
  const child = spawn(python, [program], { stdio: ['pipe', 'pipe', 'inherit'] });
  const answers = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const ask = async (line: string): Promise<string> => {
    child.stdin.write(`${line}\n`);
    const { value, done } = await answers.next();
    if (done) throw new Error(`${program} ended before it answered`);
    return value;
  };
  const version = await ask(JSON.stringify(setup));
  return {
    tool,
    version,
    values: async () => {
      const path = numbersFile('answers', new Float64Array());
      await ask(`values ${path}`);
      const { buffer, byteOffset, length } = readFileSync(path);
      return new Float64Array(buffer.slice(byteOffset, byteOffset + length));
    },
    timedRun: async () => {
      const [seconds, sum] = (await ask('run')).split(' ').map(Number);
      return { seconds: seconds!, sum: sum! };
    },
    end: () => child.stdin.end(),
  };
}
