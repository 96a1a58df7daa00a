import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearTicks } from '../../src/report/picture/linear-ticks.js';
import { monitorTracePicture } from '../../src/report/picture/monitor-trace-picture.js';
import { thinned } from '../../src/report/picture/thinned.js';
import type { TracePicture } from '../../src/report/picture/trace-picture.js';

const picture: TracePicture = {
  title: 'Trace 1',
  description: 'An alarm must stand.',
  time: [0, 10, 20],
  resistance: [60, 170, Number.POSITIVE_INFINITY],
  end: 30,
  thresholds: [
    { label: 'upper limit', value: 150, lower: 142, upper: 158 },
    { label: 'lower limit', value: 10 },
  ],
  expected: [{ since: 10, from: 12, to: 30, label: 'upper' }],
  noted: [{ from: 13.4, to: 30 }],
  late: [{ from: 12, to: 13.4, label: '1.4 s late' }],
};

describe('the picture of a trace', () => {
  it('names every threshold, every alarm and what is late in words', () => {
    const svg = monitorTracePicture(picture, { id: 'a' });
    for (const text of [
      'upper limit',
      '150 Ω (142–158)',
      'lower limit',
      '10 Ω',
      '60 Ω',
      '170 Ω',
      'open',
      '1.4 s late',
    ]) {
      expect(svg).toContain(`>${text}<`);
    }
    expect(svg).toContain('fill:url(#a-hatch)');
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('draws any trace without a number that is none', () => {
    const trace = fc.array(
      fc.record({
        gap: fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        resistance: fc.oneof(fc.double({ min: 0, max: 1e9, noNaN: true }), fc.constant(Number.POSITIVE_INFINITY)),
      }),
      { minLength: 1, maxLength: 80 },
    );
    fc.assert(
      fc.property(trace, fc.boolean(), (samples, withLimits) => {
        let now = 0;
        const time = samples.map(({ gap }) => {
          now += gap;
          return now;
        });
        const resistance = samples.map((sample) => sample.resistance);
        const drawn = { ...picture, time, resistance, end: now, thresholds: withLimits ? picture.thresholds : [] };
        expect(monitorTracePicture(drawn, { id: 'a' })).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 200 },
    );
  });

  it('of a long trace stays small, and keeps every spike', () => {
    const time = Array.from({ length: 200_000 }, (_, i) => i / 100);
    const resistance = time.map((_, i) => (i === 123_456 ? 190 : 60 + (i % 7)));
    const svg = monitorTracePicture({ ...picture, time, resistance, end: 2000 }, { id: 'a' });
    expect(svg.length).toBeLessThan(100_000);
    const spiky = resistance.map((value, i) => (i > 100_000 && i < 110_000 ? 955 : value));
    expect(monitorTracePicture({ ...picture, time, resistance: spiky, end: 2000 }, { id: 'a' })).toContain('>↑ 955 Ω<');
    const alone = monitorTracePicture({ ...picture, time: [0], resistance: [190], end: 2000 }, { id: 'a' });
    const top = /M56 ([\d.]+)L592/.exec(alone)?.[1] as string;
    expect(svg).toContain(` ${top}`);
  });
});

describe('thinned', () => {
  it('holds each value until the next', () => {
    expect(
      thinned(
        [
          [0, 5],
          [10, 7],
          [20, 7],
        ],
        30,
      ),
    ).toEqual([
      [0, 5],
      [10, 5],
      [10, 7],
      [20, 7],
      [30, 7],
    ]);
    expect(thinned([], 30)).toEqual([]);
  });

  it('keeps first, lowest, highest and last of a column', () => {
    const many = [3, 9, 4, 1, 5, 6].map((y, i) => [i / 10, y] as const);
    const heights = new Set(thinned(many, 1).map(([, y]) => y));
    expect(heights).toEqual(new Set([3, 1, 9, 6]));
  });
});

describe('linearTicks', () => {
  it('gives round values, as decimals are meant', () => {
    expect(linearTicks(0, 75, 8)).toEqual([0, 10, 20, 30, 40, 50, 60, 70]);
    expect(linearTicks(0, 0.7, 8)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(linearTicks(12.5, 13.1, 4)).toEqual([12.6, 12.8, 13]);
    expect(linearTicks(5, 5, 4)).toEqual([5]);
  });

  it('gives at most as many as asked for, all inside', () => {
    const range = fc.record({
      from: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      span: fc.double({ min: 1e-3, max: 1e9, noNaN: true }),
      most: fc.integer({ min: 2, max: 12 }),
    });
    fc.assert(
      fc.property(range, ({ from, span, most }) => {
        const ticks = linearTicks(from, from + span, most);
        expect(ticks.length).toBeLessThanOrEqual(most + 1);
        for (const tick of ticks) {
          expect(tick).toBeGreaterThanOrEqual(from - 1e-6 * span);
          expect(tick).toBeLessThanOrEqual(from + span + 1e-6 * span);
        }
      }),
    );
  });
});
