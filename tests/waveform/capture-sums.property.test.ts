import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom, nextNormal } from '../../src/numeric/index.js';
import { scanChannels } from '../../src/waveform/capture/scan-channels.js';
import { analyseCapture } from '../../src/waveform/index.js';
import { valueBetween } from '../generators.js';

/** Longest run of samples that equal the lowest or the highest, by looking at each. */
function longestFlatOf(samples: readonly number[]): number {
  let longest = 0;
  for (const end of [Math.min(...samples), Math.max(...samples)]) {
    let run = 0;
    for (const x of samples) {
      run = x === end ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
  }
  return longest;
}

describe('one pass over both channels', () => {
  it('finds ends, flat tops and sums as looking at each sample does, across the borders of its blocks', () => {
    const steps = fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(
        steps,
        steps,
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: -5, max: 5 }),
        (a, b, hold, shift) => {
          const spread = (list: readonly number[]) => list.flatMap((x) => new Array<number>(hold).fill(x + shift));
          const voltage = spread(a);
          const current = spread(b);
          const count = Math.min(voltage.length, current.length);
          const scan = scanChannels(voltage, current, count, ['voltage', 'current']);
          const seen = voltage.slice(0, count);
          expect(scan.voltage.lowest).toBe(Math.min(...seen));
          expect(scan.voltage.highest).toBe(Math.max(...seen));
          expect(scan.voltage.longestFlat).toBe(longestFlatOf(seen));
          expect(scan.current.longestFlat).toBe(longestFlatOf(current.slice(0, count)));
          expect(scan.voltage.mean).toBeCloseTo(seen.reduce((sum, x) => sum + x, 0) / count, 12);
          const { originV, originI } = scan.channels;
          const product = seen.reduce((sum, x, k) => sum + (x - originV) * ((current[k] as number) - originI), 0);
          expect(scan.sums.vi).toBeCloseTo(product, 8);
        },
      ),
    );
  });
});

describe('a window', () => {
  it('has the sums of its own samples, whether most of the capture lies inside it or outside', () => {
    const random = createRandom(7);
    // Cycles of exactly 40 samples from a zero to a zero, so that the window is known without interpolation.
    const cycle = Float64Array.from({ length: 40 }, (_, k) => Math.sin((2 * Math.PI * (k + 0.5)) / 40));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 4, max: 60 }),
        valueBetween(0, 50),
        (quiet, bursts, offset) => {
          const length = 400 + quiet;
          const voltage = new Float64Array(quiet + bursts * length);
          const current = new Float64Array(voltage.length);
          for (let k = 0; k < voltage.length; k++) {
            const since = k < quiet ? 400 : (k - quiet) % length;
            const v = since < 400 ? 300 * (cycle[since % 40] as number) : 0;
            voltage[k] = v + offset;
            current[k] = v / 200 + 0.01 * nextNormal(random);
          }
          const analysis = analyseCapture({ voltage, current, sampleInterval: 1e-8 });
          if (analysis.window.kind !== 'bursts') return;
          const { start, duration } = analysis.window;
          const from = Math.ceil(start / 1e-8);
          const to = Math.ceil((start + duration) / 1e-8);
          let product = 0;
          for (let k = from; k < to; k++) product += (voltage[k] as number) * (current[k] as number);
          // The window is a whole number of periods long, and so are the samples in it.
          expect(to - from).toBe(Math.round(duration / 1e-8));
          expect(Math.abs((analysis.activePower ?? 0) / (product / (duration / 1e-8)) - 1)).toBeLessThan(1e-10);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('keeps its digits beside a transient whose square outweighs it', () => {
    const voltage = Float64Array.from({ length: 60_000 }, (_, k) => Math.sin((2 * Math.PI * k) / 100));
    const quiet = analyseCapture({ voltage, sampleInterval: 1e-8, burstThreshold: 0.5 });
    voltage[3] = 3e3;
    const disturbed = analyseCapture({ voltage, sampleInterval: 1e-8, burstThreshold: 1e-4 });
    expect(disturbed.window.kind).toBe('cycles');
    expect(Math.abs((disturbed.voltage?.rms ?? 0) / (quiet.voltage?.rms ?? 1) - 1)).toBeLessThan(1e-6);
  });
});

describe('the phase', () => {
  it.each([
    ['few samples a cycle', 12.3, 600],
    ['many', 2500.7, 30],
    ['so many that nothing is kept from stretch to stretch', 20_000.3, 12],
  ])('is found with %s', (_, perCycle, cycles) => {
    const w = (2 * Math.PI) / perCycle;
    const count = Math.round(perCycle * cycles);
    const voltage = Float64Array.from({ length: count }, (_, k) => 0.5 + Math.sin(w * k + 0.7));
    const current = Float64Array.from({ length: count }, (_, k) => Math.sin(w * k));
    const { phase, window } = analyseCapture({ voltage, current, sampleInterval: 1e-8 });
    expect(window.kind).toBe('cycles');
    expect(Math.abs((phase ?? 9) - 0.7)).toBeLessThan(2e-4);
  });
});
