import { defineConfig } from 'tsup';

/** One entry for the core, one for each room worth importing alone, and the two edges. */
const entry = {
  index: 'src/index.ts',
  checks: 'src/checks/index.ts',
  working: 'src/working/index.ts',
  circuit: 'src/circuit/index.ts',
  units: 'src/units/index.ts',
  band: 'src/band/index.ts',
  curve: 'src/curve/index.ts',
  procedure: 'src/procedure/index.ts',
  report: 'src/report/index.ts',
  schema: 'src/schema/index.ts',
  model: 'src/model/index.ts',
};

export default defineConfig([
  {
    entry,
    format: ['esm', 'cjs'],
    target: 'es2022',
    platform: 'neutral',
    splitting: true,
    clean: true,
    dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
    external: ['mathjs', 'zod', 'papaparse'],
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
