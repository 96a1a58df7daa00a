// The unit, property, published-value, architecture, size and snippet tests, counted from vitest's own report.
import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';

const report = '.cache/vitest.json';

export async function runVitest() {
  // An old report must not be counted when vitest dies before it writes a new one.
  rmSync(report, { force: true });
  const code = await new Promise((resolve) => {
    const args = ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
    const child = spawn('npx', args, { stdio: ['ignore', 'inherit', 'inherit'], shell: process.platform === 'win32' });
    child.on('error', () => resolve(1));
    child.on('close', (exit) => resolve(exit ?? 1));
  });
  return countsOf(code);
}

function countsOf(code) {
  let result;
  try {
    result = JSON.parse(readFileSync(report, 'utf8'));
  } catch (error) {
    return { passed: 0, failed: 1, skipped: 0, message: `vitest left no report (exit code ${code}): ${error.message}` };
  }
  const passed = result.numPassedTests;
  const skipped = result.numPendingTests + result.numTodoTests;
  // A file that does not load has no failed test, and an error outside a test has none either.
  const brokenFiles = result.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  const failed = result.numFailedTests + brokenFiles.length;
  if (failed === 0 && code !== 0) {
    return { passed, failed: 1, skipped, message: `vitest ended with exit code ${code} beside its passing tests` };
  }
  if (passed === 0 && failed === 0) return { passed, failed: 1, skipped, message: 'vitest ran no test' };
  return { passed, failed, skipped };
}
