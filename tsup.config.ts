import { cpSync, readFileSync } from 'node:fs';
import { defineConfig } from 'tsup';

/** One entry for each room that the package gives out by a sub-path, and the core. */
const { exports: subPaths } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> };
const rooms = Object.keys(subPaths).flatMap((path) => /^\.\/([a-z]+)$/.exec(path)?.[1] ?? []);
const entry = Object.fromEntries([['index', 'src/index.ts'], ...rooms.map((room) => [room, `src/${room}/index.ts`])]);

export default defineConfig([
  {
    entry,
    format: ['esm', 'cjs'],
    target: 'es2022',
    platform: 'neutral',
    splitting: true,
    dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
    external: ['mathjs', 'zod', 'papaparse'],
    onSuccess: async () => cpSync('docs/json-schema', 'dist/json-schema', { recursive: true }),
  },
  {
    entry: { 'esu-limits.browser': 'src/browser.ts' },
    format: ['iife'],
    globalName: 'esuLimits',
    target: 'es2022',
    platform: 'browser',
    minify: true,
    noExternal: [/.*/],
    outExtension: () => ({ js: '.js' }),
  },
]);
