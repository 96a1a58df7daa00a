// Named stages, and how they are counted.
import { spawn } from 'node:child_process';

/** Thrown by a stage that fails: the message is what a person should read. */
export class StageFailure extends Error {}

/** Runs a program; what it says is shown only when it fails. Resolves with its standard output. */
export function command(program, args, options = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, {
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
      ...options,
    });
    let output = '';
    let all = '';
    child.stdout.on('data', (text) => {
      output += text;
      all += text;
    });
    child.stderr.on('data', (text) => {
      all += text;
    });
    child.on('error', (error) => reject(new StageFailure(`${program}: ${error.message}`)));
    child.on('close', (code) => {
      if (code === 0) resolve(output);
      else reject(new StageFailure(`${all.trimEnd()}\n${program} ${args.join(' ')}: exit code ${code}`));
    });
  });
}

/** Counts of passed, failed and skipped over all stages. */
export class Tally {
  passed = 0;
  failed = 0;
  skipped = 0;
  #failures = [];

  /** Runs one stage, which counts as one; true when it passed. */
  async stage(name, work) {
    const start = performance.now();
    try {
      await work();
      this.passed += 1;
      console.log(`ok       ${name} (${seconds(start)})`);
      return true;
    } catch (error) {
      if (!(error instanceof StageFailure)) console.log(error.stack);
      this.fail(`${name} (${seconds(start)})`, error.message);
      return false;
    }
  }

  /** Runs one stage that reports its own counts: `{ passed, failed, skipped, message? }`. */
  async counted(name, work) {
    const start = performance.now();
    const counts = await work();
    this.passed += counts.passed;
    this.failed += counts.failed;
    this.skipped += counts.skipped;
    if (counts.failed > 0) this.#failures.push(name);
    const verdict = counts.failed > 0 ? 'FAILED  ' : 'ok      ';
    const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
    console.log(`${verdict} ${name}: ${counts.passed} passed, ${counts.failed} failed${skipped} (${seconds(start)})`);
    if (counts.message) console.log(indent(counts.message));
  }

  fail(name, message = '') {
    this.failed += 1;
    this.#failures.push(name);
    console.log(`FAILED   ${name}`);
    if (message) console.log(indent(message));
  }

  skip(name, remedy) {
    this.skipped += 1;
    console.log(`SKIPPED  ${name}`);
    console.log(indent(remedy));
  }

  summary() {
    return this.#failures.length === 0 ? 'Every stage passed.' : `Failed: ${this.#failures.join('; ')}`;
  }
}

export function closingLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

function seconds(start) {
  return `${((performance.now() - start) / 1000).toFixed(1)} s`;
}

function indent(text) {
  return text.replaceAll(/^/gm, '         ');
}
