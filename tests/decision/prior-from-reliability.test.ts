import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Band } from '../../src/band/index.js';
import { globalRisk, priorFromReliability, type ReliabilityOptions } from '../../src/decision/index.js';
import { real, twoSidedBand } from './generators.js';

const band = { lower: 240, upper: 360 };

describe('prior from a reliability', () => {
  it('has the reliability that it was made from', () => {
    fc.assert(
      fc.property(twoSidedBand(), real(0.01, 0.999999), (tolerance, reliability) => {
        const prior = priorFromReliability(tolerance, reliability);
        const risk = globalRisk({ band: tolerance, acceptance: tolerance, prior, standardUncertainty: 0 });
        expect(Math.abs(risk.inToleranceProbability - reliability)).toBeLessThanOrEqual(1e-12);
      }),
    );
  });

  it('as observed by measurements is accepted as often as was observed', () => {
    fc.assert(
      fc.property(twoSidedBand(), real(0.5, 0.99), real(0.001, 0.1), (tolerance, reliability, ratio) => {
        const observedWith = ratio * (tolerance.upper - tolerance.lower);
        const prior = priorFromReliability(tolerance, reliability, { observedWith });
        const risk = globalRisk({ band: tolerance, acceptance: tolerance, prior, standardUncertainty: observedWith });
        expect(risk.acceptanceProbability).toBeCloseTo(reliability, 11);
        expect(prior.standardDeviation).toBeLessThan(priorFromReliability(tolerance, reliability).standardDeviation);
      }),
    );
  });

  it.each([[{ upper: 360 }], [{ lower: 240 }]])('with the single limit of %o needs the mean', (single: Band) => {
    const prior = priorFromReliability(single, 0.9, { mean: 300 });
    const risk = globalRisk({ band: single, acceptance: single, prior, standardUncertainty: 0 });
    expect(risk.inToleranceProbability).toBeCloseTo(0.9, 13);
    expect(() => priorFromReliability(single, 0.9)).toThrow(
      expect.objectContaining({ code: 'missing-member', path: 'mean' }),
    );
  });

  it.each<readonly [string, string, Band, number, ReliabilityOptions]>([
    ['not-a-fraction', 'inToleranceProbability', band, 95, {}],
    ['not-a-fraction', 'inToleranceProbability', band, -0.1, {}],
    ['out-of-range', 'inToleranceProbability', band, 1, {}],
    ['out-of-range', 'inToleranceProbability', band, 0, {}],
    ['out-of-range', 'inToleranceProbability', { upper: 360 }, 0.5, { mean: 300 }],
    ['not-a-number', 'inToleranceProbability', band, Number.NaN, {}],
    ['negative', 'observedWith', band, 0.9, { observedWith: -1 }],
    ['contradiction', 'observedWith', band, 0.9, { observedWith: 40 }],
    ['contradiction', 'mean', band, 0.9, { mean: 290 }],
    ['not-positive', 'band: its width', { upper: 360 }, 0.9, { mean: 360 }],
    ['not-positive', 'band: its width', { lower: 5, upper: 5 }, 0.9, {}],
    ['no-limits', 'band', {}, 0.9, { mean: 300 }],
    ['band-reversed', 'band.lower', { lower: 2, upper: 1 }, 0.9, {}],
  ])('is refused with %s at %s', (code, path, tolerance, reliability, options) => {
    expect(() => priorFromReliability(tolerance, reliability, options)).toThrow(
      expect.objectContaining({ code, path }),
    );
  });

  it('hints that a percentage is no fraction', () => {
    expect(() => priorFromReliability(band, 95)).toThrow(
      expect.objectContaining({ hint: 'If 95 % is meant, give 0.95.' }),
    );
  });
});
