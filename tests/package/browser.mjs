// The browser bundle of the installed package, in a page under a content security policy without `eval`.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { chromium as playwright } from 'playwright-core';
import { StageFailure } from '../stages/stage.mjs';
import { chromiumFlags } from './chromium.mjs';

export async function useInBrowser(folder, consumers, executablePath) {
  const expected = readFileSync(join(consumers, 'expected.txt'), 'utf8').trim();
  const server = await serve({
    '/': ['text/html', readFileSync(join(consumers, 'browser/page.html'))],
    '/page.js': ['text/javascript', readFileSync(join(consumers, 'browser/page.js'))],
    '/sheet.json': ['application/json', readFileSync(join(consumers, 'sheet.json'))],
    '/bench.json': ['application/json', readFileSync(join(consumers, 'bench.json'))],
    '/esu-limits.browser.js': [
      'text/javascript',
      readFileSync(join(folder, 'node_modules/esu-limits/dist/esu-limits.browser.js')),
    ],
  });
  const browser = await playwright.launch({ executablePath, args: chromiumFlags });
  try {
    const page = await browser.newPage();
    const faults = [];
    page.on('pageerror', (error) => faults.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
    await page.goto(`http://127.0.0.1:${server.address().port}/`);
    await page.waitForSelector('#report[data-done]', { timeout: 20_000 }).catch(() => {
      faults.push('the script did not come to its end');
    });
    const text = (await page.locator('#report').textContent()).trim();
    if (faults.length > 0) throw new StageFailure(`the page reported\n${faults.join('\n')}`);
    if (text !== expected) throw new StageFailure(`expected\n${expected}\nbut the page shows\n${text}`);
  } finally {
    await browser.close();
    server.close();
  }
}

function serve(files) {
  const policy = "default-src 'none'; script-src 'self'; connect-src 'self'";
  const server = createServer((request, response) => {
    const file = files[request.url];
    if (!file) {
      // The browser asks for an icon by itself.
      response.writeHead(request.url === '/favicon.ico' ? 204 : 404).end();
      return;
    }
    response.writeHead(200, { 'content-type': `${file[0]}; charset=utf-8`, 'content-security-policy': policy });
    response.end(file[1]);
  });
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}
