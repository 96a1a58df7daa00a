// The site without a network, once it was loaded; and a new build takes the place of the old.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium as playwright } from 'playwright-core';
import { writeWorker } from '../../docs/site/.vitepress/offline/write-worker.mjs';
import { chromiumFlags } from '../package/chromium.mjs';
import { StageFailure } from '../stages/stage.mjs';
import { open } from './open-page.mjs';
import { serveSite } from './serve.mjs';

/** Loads the site, takes the server away, uses it, and lets a changed build follow; throws a StageFailure. */
export async function tryOffline(built, base, executablePath) {
  const folder = mkdtempSync(join(tmpdir(), 'esu-limits-site-'));
  cpSync(built, folder, { recursive: true });
  const browser = await playwright.launch({ executablePath, args: chromiumFlags });
  const faults = [];
  const expect = (holds, what) => {
    if (!holds) faults.push(what);
  };
  let site = await serveSite(folder, base);
  try {
    const context = await browser.newContext();
    const { origin, port } = new URL(site.address);
    // Requests of the worker are among those of the context.
    context.on('request', (request) => {
      const url = request.url();
      expect(url.startsWith(origin) || /^(data|blob|about):/.test(url), `asks for ${url}`);
    });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    page.on('pageerror', (error) => faults.push(String(error)));
    await open(page, site.address);
    const [before] = await keptIn(page, (names) => names.length === 1);

    await stop(site.server);
    await openWithout(page, site.address, expect);
    await openWithout(page, `${site.address}guides/uncertainty.html`, expect);
    await openWithout(page, `${site.address}worksheet/`, expect);
    await page.getByRole('button', { name: 'Load the example' }).click();
    await page.getByLabel('Reading, point 2', { exact: true }).fill('0.87 A');
    const verdict = (await page.locator('[data-final]').textContent()).trim();
    expect(verdict === 'FAIL', `without a network the worksheet says ${verdict}`);

    changeBuild(folder);
    site = await serveSite(folder, base, Number(port));
    await open(page, site.address);
    expect(await isChanged(page), 'with the network the old build is shown');
    const [after] = await keptIn(page, (names) => names.length === 1 && names[0] !== before);
    await stop(site.server);
    await openWithout(page, site.address, expect);
    expect(await isChanged(page), 'without a network the old build is back');
    expect(after !== before, 'the new build has the name of the old');
  } catch (error) {
    faults.push(String(error));
  } finally {
    await browser.close();
    await stop(site.server);
    rmSync(folder, { recursive: true, force: true });
  }
  if (faults.length > 0) throw new StageFailure(faults.join('\n'));
}

/** What a later build would do: another first page, and the worker that belongs to it. */
function changeBuild(folder) {
  const path = join(folder, 'index.html');
  writeFileSync(path, readFileSync(path, 'utf8').replace('<html ', '<html data-build="later" '));
  writeWorker(folder);
}

function isChanged(page) {
  return page.evaluate(() => document.documentElement.dataset.build === 'later');
}

async function openWithout(page, address, expect) {
  await open(page, address);
  expect((await page.locator('h1').count()) === 1, `${address} does not open without a network`);
}

/** Names of the caches, once a worker is in charge and they are as they should be. */
async function keptIn(page, isReady) {
  const until = Date.now() + 60_000;
  for (;;) {
    const names = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      return registration?.active?.state === 'activated' && navigator.serviceWorker.controller ? caches.keys() : [];
    });
    if (isReady(names)) return names;
    if (Date.now() > until) throw new Error(`the caches are ${names.join(', ') || 'not there'}`);
    await page.waitForTimeout(100);
  }
}

function stop(server) {
  return new Promise((resolve) => {
    server.close(resolve);
    server.closeAllConnections();
  });
}
