// Every internal link and anchor of a built site, from its files. Nothing may point at another site's file for the
// page itself to work: scripts, styles, pictures.
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';

/** Faults of all pages in a folder, one line each; `base` is the path under which the site is served. */
export function linkFaults(folder, base) {
  const files = new Set(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(folder.length + 1)),
  );
  const pages = [...files].filter((name) => name.endsWith('.html')).sort();
  const texts = new Map(pages.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
  const anchors = new Map(pages.map((name) => [name, anchorsOf(texts.get(name))]));
  const faults = [];
  let links = 0;
  for (const page of pages) {
    // The page of a missing address is served at any depth.
    if (page === '404.html') continue;
    for (const { tag, target } of targetsOf(texts.get(page))) {
      links += 1;
      const fault = faultOf(tag, target, { page, base, files, anchors });
      if (fault) faults.push(`${page}: ${target}: ${fault}`);
    }
  }
  for (const name of files) {
    if (!name.endsWith('.css')) continue;
    for (const [, target] of readFileSync(join(folder, name), 'utf8').matchAll(/url\(["']?(https?:[^"')]+)/g)) {
      faults.push(`${name}: ${target}: a style needs another site`);
    }
  }
  return { pages: pages.length, links, faults };
}

function faultOf(tag, target, { page, base, files, anchors }) {
  if (/^(mailto|data):/.test(target)) return undefined;
  if (/^(https?:)?\/\//.test(target)) return tag === 'a' ? undefined : 'the page needs another site';
  const [path = '', anchor] = target.split('#');
  if (path.startsWith('/') && !path.startsWith(base)) return `leads out of ${base}`;
  const inside = path.startsWith('/') ? path.slice(base.length) : posix.join(posix.dirname(page), path);
  const file = path === '' ? page : fileFor(posix.normalize(inside), files);
  if (file === undefined) return 'no such file';
  if (anchor === undefined || anchor === '' || !file.endsWith('.html')) return undefined;
  return anchors.get(file).has(decodeURIComponent(anchor)) ? undefined : 'no such anchor';
}

function fileFor(path, files) {
  const plain = path === '.' ? '' : path.replace(/\/$/, '');
  const candidates = [plain, plain === '' ? 'index.html' : `${plain}/index.html`, `${plain}.html`];
  return candidates.find((name) => files.has(name));
}

function targetsOf(html) {
  const tags = html.replace(/<script\b[^>]*>[\s\S]*?<\/script>/g, (script) => script.slice(0, script.indexOf('>') + 1));
  return [...tags.matchAll(/<([a-z]+)\b[^>]*?\s(?:href|src)="([^"]*)"/g)].map(([, tag, target]) => ({
    tag,
    target: target.replaceAll('&amp;', '&'),
  }));
}

function anchorsOf(html) {
  return new Set([...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id.replaceAll('&amp;', '&')));
}
