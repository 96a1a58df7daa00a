import { afterAll, describe, expect, it } from 'vitest';
import { type BundleSize, bundleSize } from './size/bundle-size.js';
import { all, sizeCases } from './size/size-cases.js';

const kilobyte = 1024;
const rows: (BundleSize & { readonly what: string })[] = [];

async function measure(what: string, source: string): Promise<BundleSize> {
  const size = await bundleSize(source);
  rows.push({ what, ...size });
  return size;
}

afterAll(() => {
  const lines = rows.map(({ what, minified, gzipped, packages }) =>
    [what.padEnd(66), `${minified}`.padStart(9), `${gzipped}`.padStart(9), ` ${packages.join(', ')}`].join(' '),
  );
  console.log(
    [`${'bundle, in bytes'.padEnd(66)}  minified      gzip  packages`, ...lines]
      .map((line) => line.trimEnd())
      .join('\n'),
  );
});

describe('size of what a user bundles', () => {
  it.each(sizeCases)('$what: at most $limit kB, and no package', async ({ what, limit, source }) => {
    const { gzipped, packages } = await measure(what, source);
    expect(gzipped).toBeLessThanOrEqual(limit * kilobyte);
    expect(packages).toEqual([]);
  });

  it.each(['units', 'procedure'])('%s depends on no package', async (room) => {
    const { packages } = await measure(room, all(room));
    expect(packages).toEqual([]);
  });

  it('the core entry depends on no package', async () => {
    const { packages } = await measure('esu-limits', "export * from './src/index.js';");
    expect(packages).toEqual([]);
  });

  it('report: its package is the CSV writer', async () => {
    const { packages } = await measure('report', all('report'));
    expect(packages).toEqual(['papaparse']);
  });

  it('schema: its packages are zod and the CSV reader', async () => {
    const { packages } = await measure('schema', all('schema'));
    expect(packages).toEqual(['papaparse', 'zod']);
  });
});

describe('the size check itself', () => {
  it('sees a package', async () => {
    const { packages } = await bundleSize("export { z } from 'zod';");
    expect(packages).toEqual(['zod']);
  });

  it('sees a package that is left outside the bundle', async () => {
    const { packages } = await bundleSize("export { z } from 'zod';", ['zod']);
    expect(packages).toEqual(['zod']);
  });

  it('drops what is not used', async () => {
    const one = await bundleSize("export { currentFromPower } from './src/index.js';");
    const everything = await bundleSize("export * from './src/index.js';");
    expect(one.gzipped).toBeLessThan(everything.gzipped / 4);
  });
});
