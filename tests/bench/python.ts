import { spawn, spawnSync } from 'node:child_process';
import { createInterface } from 'node:readline';

const python = process.env['PYTHON'] ?? 'python3';

/** What is missing for a peer in Python, with the way to get it; undefined where all is there. */
export function missingModules(modules: readonly string[]): string | undefined {
  const { status } = spawnSync(python, ['-c', `import ${modules.join(', ')}`]);
  if (status === 0) return undefined;
  const packages = modules.map((name) => `python3-${name}`).join(' ');
  return `${python} with ${modules.join(' and ')} is missing (Debian: apt-get install ${packages}; or name another: PYTHON=…)`;
}

/** A process that answers one line for each line. */
export function conversation(program: string): { ask: (line: string) => Promise<string>; end: () => void } {
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
