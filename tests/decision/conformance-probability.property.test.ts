import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conformanceProbability } from '../../src/decision/index.js';
import { anyBand, degreesOfFreedom, mirrored, real, twoSidedBand, widthOf } from './generators.js';

const place = () => fc.record({ band: anyBand(), at: real(-1, 2), ratio: real(0.001, 1), degrees: degreesOfFreedom() });

describe('conformance probability', () => {
  it('and its complement add to 1, and its sides to the complement', () => {
    fc.assert(
      fc.property(place(), ({ band, at, ratio, degrees }) => {
        const width = widthOf(band);
        const value = ((band.lower ?? band.upper) as number) + at * width;
        const found = conformanceProbability(band, value, ratio * width, { degreesOfFreedom: degrees });
        expect(found.conforming).toBeGreaterThanOrEqual(0);
        expect(found.conforming + found.nonconforming).toBeCloseTo(1, 13);
        expect(found.below + found.above).toBeCloseTo(found.nonconforming, 15);
      }),
    );
  });

  it('is the same under a mirror, with its sides exchanged', () => {
    fc.assert(
      fc.property(place(), ({ band, at, ratio, degrees }) => {
        const width = widthOf(band);
        const value = ((band.lower ?? band.upper) as number) + at * width;
        const options = { degreesOfFreedom: degrees };
        const here = conformanceProbability(band, value, ratio * width, options);
        const there = conformanceProbability(mirrored(band), -value, ratio * width, options);
        expect(there.below).toBe(here.above);
        expect(there.above).toBe(here.below);
        expect(Math.abs(there.conforming - here.conforming)).toBeLessThanOrEqual(1e-14 * here.conforming);
      }),
    );
  });

  it('with one limit is the limit of two, as the other moves away', () => {
    fc.assert(
      fc.property(twoSidedBand(), real(-0.5, 1), real(0.01, 0.2), ({ lower, upper }, at, ratio) => {
        const u = ratio * (upper - lower);
        const value = upper - at * (upper - lower);
        const far = conformanceProbability({ lower: upper - 1e6 * u, upper }, value, u);
        const single = conformanceProbability({ upper }, value, u);
        expect(far.nonconforming).toBeCloseTo(single.nonconforming, 15);
        expect(far.conforming).toBeCloseTo(single.conforming, 15);
      }),
    );
  });

  it('of a value inside one limit falls as the uncertainty grows', () => {
    fc.assert(
      fc.property(real(0.01, 5), real(0.01, 5), real(1.001, 3), degreesOfFreedom(), (inside, u, factor, degrees) => {
        const risk = (s: number) =>
          conformanceProbability({ upper: 0 }, -inside, s, { degreesOfFreedom: degrees }).nonconforming;
        expect(risk(u * factor)).toBeGreaterThanOrEqual(risk(u) * (1 - 4e-15));
      }),
    );
  });

  it('falls as the value moves out', () => {
    fc.assert(
      fc.property(real(-5, 5), real(0, 3), degreesOfFreedom(), (value, step, degrees) => {
        const at = (y: number) => conformanceProbability({ upper: 0 }, y, 1, { degreesOfFreedom: degrees });
        // Each is good to 2e-15 of itself.
        expect(at(value + step).conforming).toBeLessThanOrEqual(at(value).conforming * (1 + 4e-15));
        expect(at(value + step).nonconforming).toBeGreaterThanOrEqual(at(value).nonconforming * (1 - 4e-15));
      }),
    );
  });
});
