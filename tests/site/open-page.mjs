// Pages of the built site, and how one is opened.
import { readdirSync } from 'node:fs';

/** Every page but the API, of which one stands for all: they differ in nothing that a browser does. */
export function pagesOf(folder) {
  return readdirSync(folder, { recursive: true })
    .map((name) => String(name).replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.html') && name !== '404.html')
    .filter((name) => !name.startsWith('api/') || name === 'api/band.html')
    .sort();
}

/** Opens a page and waits until its pieces answer: the first paint comes from the server's text. */
export async function open(page, url) {
  await page.goto(url, { waitUntil: 'load' });
  await page.waitForFunction(() => document.querySelector('#app')?.__vue_app__ !== undefined);
}
