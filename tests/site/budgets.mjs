// What the site costs a reader: bytes of script of the first page, and time until the worksheet is usable on a slow
// processor, as a multiple of the time that an empty page takes, so that the machine cancels out.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { chromium as playwright } from 'playwright-core';
import { chromiumFlags } from '../package/chromium.mjs';
import { StageFailure } from '../stages/stage.mjs';
import { serveSite } from './serve.mjs';

const mostScript = 200_000;
const slowdown = 4;
const runs = 5;

/** Measures and throws a StageFailure where a budget is exceeded; resolves with the figures in a sentence each. */
export async function keepBudgets(folder, base, executablePath) {
  const { server, address } = await serveSite(folder, base);
  const empty = await serveEmptyPage();
  const browser = await playwright.launch({ executablePath, args: chromiumFlags });
  try {
    const script = await scriptOfFirstPage(browser, address);
    // At most so many times an empty page: 13 is 2 s where that takes 150 ms. With the example, its plan is made too.
    const cases = {
      'an empty page': { url: empty.address, selector: 'p', times: [] },
      'the worksheet, nothing typed yet': {
        url: `${address}worksheet/`,
        selector: '.ws-toolbar button',
        most: 13,
        times: [],
      },
      'the worksheet with the example': {
        url: `${address}worksheet/`,
        selector: '.ws-point input',
        saved: exampleEntries(),
        most: 22,
        times: [],
      },
    };
    // Interleaved, so that a machine that slows down slows all of them.
    for (let run = 0; run < runs; run += 1) {
      for (const one of Object.values(cases)) one.times.push(await timeUntilUsable(browser, one));
    }
    return report(script, cases);
  } finally {
    await browser.close();
    server.close();
    empty.server.close();
  }
}

function report(script, cases) {
  const [[, reference], ...others] = Object.entries(cases);
  const least = median(reference.times);
  const lines = [`first page: ${script.bytes} bytes of script in ${script.files} files, as sent`];
  const faults = [];
  if (script.files === 0) faults.push('first page: no script was loaded');
  if (script.bytes > mostScript) faults.push(`first page: ${script.bytes} bytes of script, more than ${mostScript}`);
  lines.push(
    `usable with the processor ${slowdown} times slower, median of ${runs}: an empty page ${Math.round(least)} ms`,
  );
  for (const [name, { times, most }] of others) {
    const ratio = median(times) / least;
    lines.push(`${name}: ${Math.round(median(times))} ms, ${ratio.toFixed(1)} times an empty page`);
    if (ratio > most) faults.push(`${name}: ${ratio.toFixed(1)} times an empty page, more than ${most}`);
  }
  if (faults.length > 0) throw new StageFailure([...faults, ...lines].join('\n'));
  return lines;
}

/** Bytes of script that cross the line for the first page, compressed as a server sends them. */
async function scriptOfFirstPage(browser, address) {
  const context = await browser.newContext();
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  const scripts = new Set();
  let bytes = 0;
  session.on('Network.responseReceived', ({ requestId, response }) => {
    if (new URL(response.url).pathname.endsWith('.js')) scripts.add(requestId);
  });
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    if (scripts.has(requestId)) bytes += encodedDataLength;
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  await context.close();
  return { bytes, files: scripts.size };
}

/** Milliseconds from the start of the navigation until an element is there, painted, and the page answers. */
async function timeUntilUsable(browser, { url, selector, saved }) {
  const context = await browser.newContext({ serviceWorkers: 'allow' });
  const page = await context.newPage();
  await page.addInitScript(watchFor, { selector, saved });
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.goto(url);
  const handle = await page.waitForFunction(() => globalThis.usableAt, undefined, { timeout: 60_000 });
  const time = await handle.jsonValue();
  await context.close();
  return time;
}

/** Runs in the page before anything of its own. */
function watchFor({ selector, saved }) {
  if (saved !== undefined) localStorage.setItem('esu-limits/worksheet', saved);
  const look = (observer) => {
    if (globalThis.usableAt !== undefined || document.querySelector(selector) === null) return;
    observer?.disconnect();
    requestAnimationFrame(() =>
      setTimeout(() => {
        globalThis.usableAt = performance.now();
      }),
    );
  };
  const observer = new MutationObserver(() => look(observer));
  observer.observe(document, { childList: true, subtree: true });
}

function exampleEntries() {
  const read = (name) => readFileSync(`examples/workshop/${name}.json`, 'utf8');
  return JSON.stringify({ version: 1, entries: { specification: read('specification'), bench: read('bench') } });
}

function serveEmptyPage() {
  const server = createServer((_request, response) => {
    response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' });
    response.end(
      '<!doctype html><html lang="en"><link rel="icon" href="data:,"><title>Empty</title><p>Empty</p></html>',
    );
  });
  return new Promise((resolve) =>
    server.listen(0, '127.0.0.1', () => resolve({ server, address: `http://127.0.0.1:${server.address().port}/` })),
  );
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}
