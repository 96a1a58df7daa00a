import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { linkFaults } from './links.mjs';

describe('the link check of the built site', () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'links-'));
    mkdirSync(join(folder, 'guides'));
    writeFileSync(join(folder, 'guides/one.html'), '<h2 id="there">There</h2><script src="/base/a.js"></script>');
    writeFileSync(join(folder, 'a.js'), '');
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  const faultsOf = (html: string) => {
    writeFileSync(join(folder, 'index.html'), html);
    return linkFaults(folder, '/base/').faults;
  };

  it.each([
    '/base/',
    '/base/guides/one.html',
    '/base/guides/one',
    'guides/one.html#there',
    './guides/one.html',
    '#here',
    'https://example.org/',
  ])('accepts %s', (target) => {
    expect(faultsOf(`<p id="here"><a class="x" href="${target}">a</a>`)).toEqual([]);
  });

  it.each([
    ['/base/guides/two.html', 'no such file'],
    ['/guides/one.html', 'leads out of /base/'],
    ['guides/one.html#nowhere', 'no such anchor'],
    ['#nowhere', 'no such anchor'],
  ])('refuses %s: %s', (target, fault) => {
    expect(faultsOf(`<a href="${target}">a</a>`)).toEqual([`index.html: ${target}: ${fault}`]);
  });

  it('refuses what the page needs from another site', () => {
    const target = 'https://example.org/font.woff2';
    expect(faultsOf(`<link rel="preload" href="${target}">`)).toEqual([
      `index.html: ${target}: the page needs another site`,
    ]);
    writeFileSync(join(folder, 'a.css'), `@font-face{src:url(${target})}`);
    expect(faultsOf('<p>')).toEqual([`a.css: ${target}: a style needs another site`]);
  });

  it('counts what it looked at', () => {
    faultsOf('<a href="#a">a</a><i id="a">');
    expect(linkFaults(folder, '/base/')).toEqual({ pages: 2, links: 2, faults: [] });
  });
});
