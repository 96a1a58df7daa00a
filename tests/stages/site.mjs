// The documentation site, built for a sub-path, with its links and in a real browser.
import { checkAccessibility } from '../site/accessible.mjs';
import { keepBudgets } from '../site/budgets.mjs';
import { linkFaults } from '../site/links.mjs';
import { tryOffline } from '../site/offline.mjs';
import { visitSite } from '../site/pages.mjs';
import { tryWorksheet } from '../site/worksheet-steps.mjs';
import { command, StageFailure } from './stage.mjs';

const base = '/sub/path/';
const folder = '.cache/site-test';

export async function runSite(tally, { chromium, remedy }) {
  const environment = { ...process.env, SITE_BASE: base, SITE_OUT: folder };
  const built = await tally.stage('site: pages from data, API, build', () =>
    command('npm', ['run', '--silent', 'docs'], { env: environment }),
  );
  if (!built) return;
  await tally.stage('site: links and anchors', checkLinks);
  const visits = {
    'site: pages in a browser': () => visitSite(folder, base, chromium),
    'site: axe on every page': () => checkAccessibility(folder, base, chromium),
    'site: worksheet in a browser': () => tryWorksheet(folder, base, chromium),
    'site: without a network': () => tryOffline(folder, base, chromium),
    'site: bytes and times': async () => print(await keepBudgets(folder, base, chromium)),
  };
  for (const [name, visit] of Object.entries(visits)) {
    if (chromium) await tally.stage(name, visit);
    else tally.skip(name, remedy);
  }
}

function print(lines) {
  for (const line of lines) console.log(`         ${line}`);
}

async function checkLinks() {
  const { pages, links, faults } = linkFaults(folder, base);
  if (pages === 0 || links === 0) throw new StageFailure(`nothing to check: ${pages} pages, ${links} links`);
  if (faults.length > 0) throw new StageFailure(faults.join('\n'));
}
