// The API pages: one module for each entry of the package. `npm run api` writes them to docs/api.
import { readFileSync } from 'node:fs';

const { exports: subPaths } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));
const rooms = Object.keys(subPaths).flatMap((path) => /^\.\/([a-z]+)$/.exec(path)?.[1] ?? []);

export default {
  name: 'esu-limits',
  entryPoints: ['src/index.ts', ...rooms.map((room) => `src/${room}/index.ts`)],
  out: 'docs/api',
  readme: 'none',
  excludeInternal: true,
  disableSources: true,
  treatWarningsAsErrors: true,
  validation: { notExported: true, invalidLink: true, rewrittenLink: true, notDocumented: false },
  blockTags: [
    '@param',
    '@returns',
    '@throws',
    '@example',
    '@see',
    '@defaultValue',
    '@remarks',
    '@typeParam',
    '@deprecated',
    '@source',
    '@accuracy',
  ],
};
