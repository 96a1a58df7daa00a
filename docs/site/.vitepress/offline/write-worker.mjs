// Writes the service worker of a built site, with the list of files that it keeps at once.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const worker = new URL('./worker.js', import.meta.url);

/** Pages that are kept at once: what is needed at a bench. The others are kept when they are opened. */
const first = /^(index|programs|reference\/errors|guides\/[^/]+|worksheet\/index)\.html$/;
/** Scripts of other pages, and the index of the search, which is as large as all the rest. */
const later = /^assets\/((api|project|reference|notebooks?)_(?!errors)|chunks\/@localSearchIndex)/;

/** Writes `offline.js` into the folder of a built site. */
export function writeWorker(folder) {
  const all = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(join(folder, '/').length))
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name !== 'offline.js' && name !== '404.html')
    .sort();
  const files = all.filter((name) => (name.endsWith('.html') ? first.test(name) : !later.test(name)));
  // Any file that changes makes another version, so that no page of an old build outlives it.
  const hash = createHash('sha256');
  for (const name of all) hash.update(name).update(readFileSync(join(folder, name)));
  const kept = { version: hash.digest('hex').slice(0, 16), files };
  writeFileSync(join(folder, 'offline.js'), `const kept = ${JSON.stringify(kept)};\n\n${readFileSync(worker, 'utf8')}`);
}
