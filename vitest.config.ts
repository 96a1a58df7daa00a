import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const source = fileURLToPath(new URL('./src/', import.meta.url));

export default defineConfig({
  resolve: {
    // Tests and snippets import the package by its name and get the source.
    alias: [
      { find: /^esu-limits$/, replacement: `${source}index.ts` },
      { find: /^esu-limits\/([a-z-]+)$/, replacement: `${source}$1/index.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 30_000,
    coverage: { include: ['src/**'], reportsDirectory: 'coverage' },
  },
});
