import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createRandom, fillNormal } from '../../src/numeric/index.js';
import { normalRows, samplerReport } from './sampler-report.js';

const committed = readFileSync(new URL('./sampler-quality.txt', import.meta.url), 'utf8');
const rows = committed.split('\n').slice(4).filter(Boolean);

describe('the samplers', () => {
  it.each(samplerReport(1_000_000, 101))('$sampler: $statistic', ({ observed, expected, probability }) => {
    expect(probability, `observed ${observed}, expected ${expected}`).toBeGreaterThan(1e-4);
  });

  const wrong: readonly (readonly [string, (z: number) => number])[] = [
    ['a mean of 0.01', (z) => z + 0.01],
    ['a standard deviation of 1.005', (z) => 1.005 * z],
    ['no values beyond the start of the tail', (z) => Math.max(-3.654, Math.min(3.654, z))],
    ['steps of 1/100', (z) => Math.round(z * 100) / 100],
    ['a gap about 0', (z) => z + 0.002 * Math.sign(z)],
  ];

  it.each(wrong)('would be found out with %s', (_, distort) => {
    const random = createRandom(101);
    const rows = normalRows(1_000_000, (target) => {
      fillNormal(random, target);
      target.forEach((z, i) => {
        target[i] = distort(z);
      });
    });
    expect(Math.min(...rows.map(({ probability }) => probability))).toBeLessThan(1e-6);
  });

  it('would be found out with neighbours that depend on one another', () => {
    const random = createRandom(101);
    let before = 0;
    const rows = normalRows(1_000_000, (target) => {
      fillNormal(random, target);
      target.forEach((z, i) => {
        before = 0.01 * before + Math.sqrt(1 - 0.0001) * z;
        target[i] = before;
      });
    });
    expect(rows.find(({ statistic }) => statistic === 'product of neighbours')?.probability).toBeLessThan(1e-6);
  });
});

describe('the committed report on 50 million draws', () => {
  it('holds in every row', () => {
    const chances = rows.map((line) => Number(line.trim().split(/\s+/).at(-1)));
    expect(chances.length).toBeGreaterThanOrEqual(30);
    expect(Math.min(...chances)).toBeGreaterThan(1e-4);
    expect(chances.filter((chance) => chance > 0.5).length).toBeGreaterThan(chances.length / 5);
  });

  it('has the rows that the script writes, on that many draws', () => {
    const names = samplerReport(20_000, 101).map(({ sampler, statistic }) => [sampler, statistic]);
    expect(rows.length).toBe(names.length);
    names.forEach(([sampler, statistic], i) => {
      expect(rows[i]).toContain(sampler);
      expect(rows[i]).toContain(statistic);
    });
    expect(rows[0]).toContain(' 50000000 ');
  });
});
