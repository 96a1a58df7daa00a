// The built site in a real browser: no error in the console, no request off the site, live pieces that answer,
// phone width without sideways scrolling, dark mode.
import { chromium as playwright } from 'playwright-core';
import { chromiumFlags } from '../package/chromium.mjs';
import { StageFailure } from '../stages/stage.mjs';
import { open, pagesOf } from './open-page.mjs';
import { serveSite } from './serve.mjs';

const phone = { width: 375, height: 740 };
const desk = { width: 1280, height: 900 };

/** Visits the pages; throws a StageFailure that lists everything that is wrong. */
export async function visitSite(folder, base, executablePath) {
  const { server, address } = await serveSite(folder, base);
  const browser = await playwright.launch({ executablePath, args: chromiumFlags });
  const faults = [];
  try {
    const page = await browser.newPage({ viewport: desk });
    watch(page, address, faults);
    await livePiece(page, address, faults);
    for (const name of pagesOf(folder)) await visit(page, `${address}${name}`, name, faults);
    await darkMode(page, address, faults);
  } finally {
    await browser.close();
    server.close();
  }
  if (faults.length > 0) throw new StageFailure(faults.join('\n'));
}

function watch(page, address, faults) {
  const { origin } = new URL(address);
  page.on('pageerror', (error) => faults.push(`${page.url()}: ${error}`));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(`${page.url()}: ${message.text()}`);
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !url.startsWith('data:')) faults.push(`${page.url()}: asks for ${url}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`${page.url()}: ${response.status()} for ${response.url()}`);
  });
}

/** A typed power moves the limits; what is no power says why; markup stays text. */
async function livePiece(page, address, faults) {
  await page.goto(address, { waitUntil: 'networkidle' });
  const piece = page.locator('.live').first();
  const power = piece.getByLabel('Published power');
  const expectText = async (text, what) => {
    const shown = await piece.textContent();
    if (!shown.includes(text)) faults.push(`live piece, ${what}: expected “${text}” in\n${shown}`);
  };
  await expectText('460 mA to 525 mA', 'at the start');
  await expectText('inside', 'at the start');
  await power.fill('60 W');
  await expectText('325 mA to 371 mA', 'at 60 W');
  await expectText('outside', 'at 60 W');
  await power.fill('60 A');
  await expectText('must be', 'for a unit of another quantity');
  if ((await power.getAttribute('aria-invalid')) !== 'true') faults.push('live piece: a bad field is not marked');
  await power.fill('<img src=x onerror=alert(1)>');
  await expectText('<img', 'for markup');
  if ((await piece.locator('img').count()) > 0) faults.push('live piece: typed markup became an element');
}

async function visit(page, url, name, faults) {
  await page.setViewportSize(desk);
  await open(page, url);
  if ((await page.locator('h1').count()) !== 1) faults.push(`${name}: not one heading of the first level`);
  const failed = await page.locator('.live-faults').count();
  if (failed > 0) faults.push(`${name}: a live piece starts with a fault`);
  await page.setViewportSize(phone);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  if (over > 1) faults.push(`${name}: ${over} pixels wider than a phone`);
}

/** The page is dark where the reader asks for dark, with text that stays legible. */
async function darkMode(page, address, faults) {
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto(address, { waitUntil: 'networkidle' });
  const [paper, ink] = await page.evaluate(() => {
    const body = getComputedStyle(document.body);
    return [body.backgroundColor, body.color].map((text) => text.match(/\d+/g).slice(0, 3).map(Number));
  });
  const lightness = ([r, g, b]) => 0.2126 * r + 0.7152 * g + 0.0722 * b;
  if (!(lightness(paper) < 60 && lightness(ink) > 180)) faults.push(`dark mode: text ${ink} on ${paper}`);
}
