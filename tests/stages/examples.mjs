// Every program under examples/ runs against the built package, which it imports by name.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { command } from './stage.mjs';

export async function runExamples(tally) {
  const programs = existsSync('examples') ? programsIn('examples') : [];
  if (programs.length === 0) tally.fail('examples', 'no examples/**/*.mjs found');
  for (const program of programs) {
    await tally.stage(`example: ${program}`, () => command(process.execPath, [program]));
  }
}

function programsIn(folder) {
  return readdirSync(folder, { recursive: true })
    .map((name) => join(folder, name))
    .filter((path) => path.endsWith('.mjs') && !/[\\/](out|node_modules)[\\/]/.test(path))
    .sort();
}
