import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitepress';
import { inkStyle } from './look/ink-style.js';
import { navigation, sidebar } from './look/navigation.js';
import { searchText } from './look/search-text.js';
import { writeWorker } from './offline/write-worker.mjs';

const source = fileURLToPath(new URL('../../../src/', import.meta.url));

/** Sub-path under which the site is served, such as `/esu-limits/`; the root when not given. */
const base = process.env.SITE_BASE ?? '/';

export default defineConfig({
  title: 'esu-limits',
  description: 'Test limits for electrosurgical generators, derived with their working.',
  lang: 'en-GB',
  base,
  cleanUrls: false,
  // A page is loaded when it is asked for: a phone at a bench has other uses for its line.
  router: { prefetchLinks: false },
  outDir: process.env.SITE_OUT ? resolve(process.env.SITE_OUT) : '../../.cache/site',
  cacheDir: '../../.cache/vitepress',
  // The notes for contributors belong to the folder, not to the site.
  srcExclude: ['README.md', '.generate/**'],
  head: [
    ['link', { rel: 'icon', type: 'image/svg+xml', href: `${base}icon.svg` }],
    ['meta', { name: 'referrer', content: 'no-referrer' }],
    ['style', {}, inkStyle()],
  ],
  buildEnd: ({ outDir }) => writeWorker(outDir),
  markdown: { math: true, theme: { light: 'github-light-high-contrast', dark: 'github-dark-high-contrast' } },
  themeConfig: {
    nav: navigation,
    sidebar,
    outline: { level: [2, 3], label: 'On this page' },
    search: { provider: 'local', options: { _render: searchText } },
    docFooter: { prev: 'Before', next: 'After' },
    externalLinkIcon: true,
    footer: {
      message: 'The maker’s instructions and the local rules come before anything printed here.',
    },
  },
  vite: {
    // Pages and live pieces import the package by its name and get the source.
    resolve: {
      alias: [
        { find: /^esu-limits$/, replacement: `${source}index.ts` },
        { find: /^esu-limits\/([a-z-]+)$/, replacement: `${source}$1/index.ts` },
      ],
    },
  },
});
