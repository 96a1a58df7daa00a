import { cpSync, existsSync } from 'node:fs';
import { defineConfig } from 'tsup';

/** One entry for the core, one for each room worth importing alone, and the two edges. */
const rooms = ['working', 'circuit', 'units', 'band', 'curve', 'uncertainty', 'procedure', 'report', 'schema', 'model'];

const entry = Object.fromEntries([
  ['index', 'src/index.ts'],
  ...rooms.map((room) => [room, `src/${room}/index.ts`]).filter(([, path]) => existsSync(path as string)),
]);

export default defineConfig([
  {
    entry,
    format: ['esm', 'cjs'],
    target: 'es2022',
    platform: 'neutral',
    splitting: true,
    dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
    external: ['mathjs', 'zod', 'papaparse'],
    onSuccess: async () => {
      if (existsSync('docs/json-schema')) cpSync('docs/json-schema', 'dist/json-schema', { recursive: true });
    },
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
