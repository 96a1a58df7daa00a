// Every page in light and dark, at desk and phone width, as axe sees it.
import { chromium as playwright } from 'playwright-core';
import { chromiumFlags } from '../package/chromium.mjs';
import { StageFailure } from '../stages/stage.mjs';
import { axeFindings } from './axe.mjs';
import { open, pagesOf } from './open-page.mjs';
import { serveSite } from './serve.mjs';

// Colours are looked at in all four; what depends on the width alone, once at each. Pages made from data are long, and
// their colours are those of the others: they are looked at twice.
const looks = [
  { width: 1280, height: 900, colorScheme: 'light' },
  { width: 1280, height: 900, colorScheme: 'dark', only: ['color-contrast'] },
  { width: 390, height: 844, colorScheme: 'dark' },
  { width: 390, height: 844, colorScheme: 'light', only: ['color-contrast'] },
];
const atOnce = 2;

/** Runs axe on the pages; throws a StageFailure that lists what it finds. Resolves with the number of pages. */
export async function checkAccessibility(folder, base, executablePath) {
  const { server, address } = await serveSite(folder, base);
  const browser = await playwright.launch({ executablePath, args: chromiumFlags });
  const names = pagesOf(folder);
  const waiting = [...names];
  const faults = [];
  const work = async () => {
    const page = await browser.newPage();
    for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) {
      faults.push(...(await findingsOf(page, address, name)));
    }
  };
  try {
    await Promise.all(Array.from({ length: atOnce }, work));
  } finally {
    await browser.close();
    server.close();
  }
  if (names.length === 0) throw new StageFailure('no page was looked at');
  if (faults.length > 0) throw new StageFailure(faults.join('\n'));
  return names.length;
}

async function findingsOf(page, address, name) {
  await open(page, `${address}${name}`);
  const found = [];
  const isWritten = !/^(reference|api|project)\//.test(name);
  for (const { width, height, colorScheme, only } of looks) {
    if (only !== undefined && !isWritten) continue;
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ colorScheme });
    // Colours change gradually.
    await page.waitForTimeout(600);
    const findings = await axeFindings(page, only === undefined ? {} : { only });
    found.push(...findings.map((finding) => `${name}, ${colorScheme}, ${width} pixels wide: ${finding}`));
  }
  return found;
}
