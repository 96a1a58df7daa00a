// The documentation site, built for a sub-path, with its links and in a real browser.
import { checkAccessibility } from '../site/accessible.mjs';
import { linkFaults } from '../site/links.mjs';
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
  const browser = 'site: pages in a browser';
  if (chromium) await tally.stage(browser, () => visitSite(folder, base, chromium));
  else tally.skip(browser, remedy);
  const accessible = 'site: axe on every page';
  if (chromium) await tally.stage(accessible, () => checkAccessibility(folder, base, chromium));
  else tally.skip(accessible, remedy);
  const worksheet = 'site: worksheet in a browser';
  if (chromium) await tally.stage(worksheet, () => tryWorksheet(folder, base, chromium));
  else tally.skip(worksheet, remedy);
}

async function checkLinks() {
  const { pages, links, faults } = linkFaults(folder, base);
  if (pages === 0 || links === 0) throw new StageFailure(`nothing to check: ${pages} pages, ${links} links`);
  if (faults.length > 0) throw new StageFailure(faults.join('\n'));
}
