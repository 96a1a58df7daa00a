import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { libraryVersion } from '../src/version.js';

it('the version that plans carry is the version of the package', () => {
  const manifest = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string };
  expect(libraryVersion).toBe(manifest.version);
});
