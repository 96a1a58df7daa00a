import { describe, expect, it } from 'vitest';
import type { Check } from './checks/check.js';
import { checks } from './checks/index.js';
import { runCheck } from './checks/run-checks.js';

describe('published values', () => {
  it.each(checks.map((check) => [check.id, check] as const))('%s', (_, check) => {
    const { computed, published, difference, tolerance, held } = runCheck(check);
    expect(held, `${computed} differs from ${published} by ${difference}, more than ${tolerance}`).toBe(true);
  });

  it('are named once each, with source, standing and tolerance', () => {
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
    for (const { id, source, title, tolerance, published } of checks) {
      expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(source).toMatch(/\S/);
      expect(title).toMatch(/\S/);
      expect(tolerance).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(published)).toBe(true);
    }
  });
});

describe('the comparison itself', () => {
  const check: Check = {
    id: 'example',
    room: 'circuit',
    title: 'example',
    source: 'definition',
    standing: 'derived',
    published: 0.7,
    unit: '1',
    tolerance: 0.05,
    compute: () => 0.75,
  };

  it.each([
    [0.7499999, true],
    [0.6500001, true],
    [0.7500001, false],
    [0.6499999, false],
    [Number.NaN, false],
    [Number.POSITIVE_INFINITY, false],
  ])('of %d with 0.7 ± 0.05: %s', (computed, held) => {
    expect(runCheck({ ...check, compute: () => computed }).held).toBe(held);
  });
});
