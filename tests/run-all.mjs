// Everything that must pass, in order: `npm test`. A stage that fails does not stop the next ones,
// unless they need what it makes. The closing line counts what the runners themselves reported.
import { chromiumPath, chromiumRemedy } from './package/chromium.mjs';
import { runConsumers } from './stages/consumers.mjs';
import { runExamples } from './stages/examples.mjs';
import { runNotebooks } from './stages/notebooks.mjs';
import { runSite } from './stages/site.mjs';
import { closingLine, command, Tally } from './stages/stage.mjs';
import { runVitest } from './stages/vitest.mjs';

const tally = new Tally();

await tally.stage('types', () => command('npm', ['run', '--silent', 'types']));
await tally.stage('lint', () => command('npm', ['run', '--silent', 'lint']));
const built = await tally.stage('build', () => command('npm', ['run', '--silent', 'build']));
await tally.counted('vitest', runVitest);
await tally.stage('published checks', () => command('npm', ['run', '--silent', 'checks']));
await tally.stage('dead code', () => command('npm', ['run', '--silent', 'knip']));
await tally.stage('API pages', () => command('npm', ['run', '--silent', 'api']));

if (built) {
  await runExamples(tally);
  await runNotebooks(tally);
  await tally.stage('package: publint', () => command('npm', ['run', '--silent', 'publint']));
  await tally.stage('package: types for every importer', () => command('npm', ['run', '--silent', 'attw']));
  await runConsumers(tally, { chromium: chromiumPath(), remedy: chromiumRemedy });
  await runSite(tally, { chromium: chromiumPath(), remedy: chromiumRemedy });
} else {
  tally.fail('examples, notebooks, package checks, consumers and site: not run, because the build failed');
}

console.log(`\n${tally.summary()}`);
console.log(closingLine(tally));
process.exitCode = tally.failed > 0 ? 1 : 0;
