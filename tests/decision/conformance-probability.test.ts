import { describe, expect, it } from 'vitest';
import { conformanceProbability } from '../../src/decision/index.js';

describe('conformance probability', () => {
  it('keeps the digits of a small risk', () => {
    const { conforming, nonconforming } = conformanceProbability({ upper: 10 }, 0, 1);
    expect(conforming).toBe(1);
    // Upper tail of the normal distribution at 10: 7.6198530241605e-24
    expect(nonconforming / 7.6198530241605e-24).toBeCloseTo(1, 12);
  });

  it('keeps the digits of a small chance to conform, far outside', () => {
    // Lower tail at -10, and Student's t of 1 degree of freedom at -1000: atan(1/1000)/π.
    expect(conformanceProbability({ upper: 0 }, 10, 1).conforming / 7.6198530241605e-24).toBeCloseTo(1, 12);
    const { conforming } = conformanceProbability({ upper: 0 }, 1000, 1, { degreesOfFreedom: 1 });
    expect(conforming / (Math.atan(1 / 1000) / Math.PI)).toBeCloseTo(1, 13);
  });

  it.each([
    // Student's t of 2 degrees of freedom has the closed form 1/2 ± t/(2·√(2 + t²)).
    [2, 0.5 - 1 / (2 * Math.sqrt(3))],
    // Of 1 degree it is the Cauchy distribution.
    [1, 0.25],
  ])("follows Student's t of %d degrees of freedom", (degreesOfFreedom, outside) => {
    const { nonconforming } = conformanceProbability({ upper: 1 }, 0, 1, { degreesOfFreedom });
    expect(nonconforming).toBeCloseTo(outside, 14);
  });

  it('is a step at an uncertainty of 0, limits included', () => {
    expect(conformanceProbability({ upper: 1 }, 1, 0).conforming).toBe(1);
    expect(conformanceProbability({ upper: 1 }, 1.0000001, 0)).toEqual({
      conforming: 0,
      nonconforming: 1,
      below: 0,
      above: 1,
    });
    expect(conformanceProbability({ lower: 1 }, 0.9999999, 0)).toEqual({
      conforming: 0,
      nonconforming: 1,
      below: 1,
      above: 0,
    });
  });

  it.each([5e-324, 1e-308, 1e308])('is a number at an uncertainty of %d', (u) => {
    for (const degreesOfFreedom of ['infinite', 1, 2.5, 1e6] as const) {
      for (const value of [-1e300, -1, 0, 1, 1e300]) {
        const parts = Object.values(conformanceProbability({ lower: -1, upper: 1 }, value, u, { degreesOfFreedom }));
        for (const part of parts) expect(part >= 0 && part <= 1, `${value}: ${parts}`).toBe(true);
      }
    }
  });

  it('is certain without limits', () => {
    expect(conformanceProbability({}, 5, 1)).toEqual({ conforming: 1, nonconforming: 0, below: 0, above: 0 });
  });

  it.each([
    ['band-reversed', () => conformanceProbability({ lower: 2, upper: 1 }, 1, 1)],
    ['negative', () => conformanceProbability({ upper: 1 }, 1, -1)],
    ['not-a-number', () => conformanceProbability({ upper: 1 }, Number.NaN, 1)],
    ['not-a-number', () => conformanceProbability({ upper: 1 }, 1, Number.POSITIVE_INFINITY)],
    ['not-a-number', () => conformanceProbability({ upper: Number.NaN }, 1, 1)],
    ['not-positive', () => conformanceProbability({ upper: 1 }, 1, 1, { degreesOfFreedom: 0 })],
    ['not-positive', () => conformanceProbability({ upper: 1 }, 1, 1, { degreesOfFreedom: -3 })],
    ['not-a-number', () => conformanceProbability({ upper: 1 }, 1, 1, { degreesOfFreedom: Number.NaN })],
  ])('refuses with %s', (code, work) => {
    expect(work).toThrow(expect.objectContaining({ code }));
  });
});
