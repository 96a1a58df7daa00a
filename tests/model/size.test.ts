import { describe, expect, it } from 'vitest';
import { bundleSize } from '../size/bundle-size.js';

const kilobyte = 1024;

describe('size of the bundled room', () => {
  it('is at most 80 kB, of which all but 12 are the part of mathjs for plain numbers', async () => {
    const room = await bundleSize("export * from './src/model/index.js';");
    const mathjs = await bundleSize("export { math } from './src/model/math.js';");
    expect(room.gzipped).toBeLessThanOrEqual(80 * kilobyte);
    expect(room.gzipped - mathjs.gzipped).toBeLessThanOrEqual(12 * kilobyte);
  });

  it('holds neither the complex numbers nor the fractions of mathjs', async () => {
    const { packages } = await bundleSize("export * from './src/model/index.js';");
    expect(packages).toContain('mathjs');
    expect(packages).not.toContain('complex.js');
    expect(packages).not.toContain('fraction.js');
  });
});
