// Writes the pages that are made from data, before the site is built: `npm run docs`. None of them is committed.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { accuracyPage } from './accuracy-page.js';
import { writeApiPages } from './api-pages.js';
import { checkPage } from './check-page.js';
import { errorPage } from './error-page.js';
import { formulaPages } from './formula-pages.js';
import { notebookPages } from './notebook-pages.js';
import { projectPages } from './project-pages.js';

const site = fileURLToPath(new URL('../', import.meta.url));

for (const folder of ['reference', 'project', 'notebooks']) rmSync(site + folder, { recursive: true, force: true });
const pages = new Map<string, string>([
  ...formulaPages(),
  ...projectPages(),
  ...notebookPages(),
  ['reference/checks.md', checkPage()],
  ['reference/errors.md', errorPage()],
  ['reference/accuracy.md', await accuracyPage()],
]);
for (const [path, content] of pages) {
  mkdirSync(dirname(site + path), { recursive: true });
  writeFileSync(site + path, content);
}
await writeApiPages();
