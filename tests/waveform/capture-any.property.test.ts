import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseCapture } from '../../src/waveform/index.js';

/** Paths of values in a result that are no finite numbers. */
function unsound(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (value === undefined) return [`${path}: undefined`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) => unsound(member, `${path}.${key}`));
}

const sample = fc.oneof(
  fc.integer({ min: -3, max: 3 }),
  fc.double({ min: -10, max: 10, noNaN: true }),
  fc.constantFrom(0, 1, -1, 0.1, 0.1000001, -0.1, 5),
);
/** Stretches that stay, stretches that go to and fro, and single samples. */
const samples = fc
  .array(
    fc.oneof(
      fc.tuple(sample, fc.integer({ min: 1, max: 30 })).map(([x, n]) => new Array<number>(n).fill(x)),
      fc
        .tuple(sample, sample, fc.integer({ min: 1, max: 12 }))
        .map(([x, y, n]) => new Array(n).fill([x, y]).flat() as number[]),
      sample.map((x) => [x]),
    ),
    { minLength: 1, maxLength: 20 },
  )
  .map((parts) => parts.flat())
  .filter(({ length }) => length > 1);

describe('any capture', () => {
  it('has figures that are numbers, in the order that they must have', () => {
    fc.assert(
      fc.property(
        samples,
        fc.option(samples, { nil: undefined }),
        fc.constantFrom('none' as const, 'mean' as const),
        fc.constantFrom(0.05, 0.1, 0.5, 0.9),
        (voltage, current, removeOffset, burstThreshold) => {
          const analysis = analyseCapture({
            voltage,
            ...(current && { current }),
            sampleInterval: 1e-8,
            removeOffset,
            burstThreshold,
            load: 50,
          });
          expect(unsound(analysis)).toEqual([]);
          const count = Math.min(voltage.length, current?.length ?? voltage.length);
          const { window, dutyCycle = 0, apparentPower = 0, activePower = 0 } = analysis;
          expect(window.start).toBeGreaterThanOrEqual(0);
          expect(window.duration).toBeGreaterThan(0);
          expect(window.start + window.duration).toBeLessThanOrEqual(count * 1e-8 * (1 + 1e-12));
          expect(dutyCycle).toBeGreaterThanOrEqual(0);
          expect(dutyCycle).toBeLessThanOrEqual(1 + 1e-12);
          // The broken ends of a window of a few samples may say otherwise.
          if (window.kind === 'record') expect(Math.abs(activePower)).toBeLessThanOrEqual(apparentPower + 1e-12);
        },
      ),
      { numRuns: 3000 },
    );
  });
});
