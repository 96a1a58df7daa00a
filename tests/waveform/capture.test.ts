import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadImpedance } from '../../src/circuit/index.js';
import { createRandom, nextNormal } from '../../src/numeric/index.js';
import { analyseCapture, type CaptureAnalysis, dampedSine, gatedSine } from '../../src/waveform/index.js';
import { faultOf } from '../band/fault-of.js';
import { valueBetween } from '../generators.js';

const twoPi = 2 * Math.PI;

function sampled(count: number, interval: number, course: (t: number) => number): Float64Array {
  return Float64Array.from({ length: count }, (_, k) => course(k * interval));
}

function expectWithin(actual: number | undefined, expected: number, relative: number): void {
  expect(actual).toBeDefined();
  expect(Math.abs((actual as number) / expected - 1)).toBeLessThan(relative);
}

const codes = ({ warnings }: CaptureAnalysis) => warnings.map(({ code }) => code);

/** Bursts of a damped sine from a time on, as the generator makes them, into a load with a phase. */
const burst = { frequency: 500e3, timeConstant: 3e-6, repetitionRate: 25e3, amplitude: 2000 };
const damped = (t: number, amplitude = burst.amplitude, phase = 0) => {
  const since = t - Math.floor(t * burst.repetitionRate) / burst.repetitionRate;
  return amplitude * Math.exp(-since / burst.timeConstant) * Math.sin(twoPi * burst.frequency * since + phase);
};

describe('a continuous output', () => {
  it('of any frequency, phase and length gives what went in', () => {
    fc.assert(
      fc.property(
        valueBetween(12, 200),
        valueBetween(12, 60),
        valueBetween(0, twoPi),
        valueBetween(-1.2, 1.2),
        (perCycle, cycles, start, phase) => {
          const interval = 1 / (500e3 * perCycle);
          const count = Math.ceil(perCycle * cycles);
          const angle = (t: number) => twoPi * 500e3 * t + start;
          const analysis = analyseCapture({
            voltage: sampled(count, interval, (t) => 300 * Math.sin(angle(t) + phase)),
            current: sampled(count, interval, (t) => 0.6 * Math.sin(angle(t))),
            sampleInterval: interval,
          });
          expect(analysis.window.kind).toBe('cycles');
          // Ends of the window lie between samples: their error falls with the square of the samples a cycle.
          const end = 1.5 / perCycle ** 2 / (cycles - 3);
          expectWithin(analysis.voltage?.rms, 300 / Math.SQRT2, end + 1e-6);
          expectWithin(analysis.current?.rms, 0.6 / Math.SQRT2, 4 * end + 1e-6);
          expect(Math.abs((analysis.activePower ?? 0) - 90 * Math.cos(phase))).toBeLessThan(90 * (8 * end + 1e-6));
          expectWithin(analysis.carrierFrequency, 500e3, 2 * end + 1e-6);
          expect(Math.abs((analysis.phase ?? 9) - phase)).toBeLessThan(2e-3);
          expect(analysis.voltage?.peak).toBeGreaterThan(300 * Math.cos(Math.PI / perCycle) - 1e-9);
          expect(analysis.repetitionRate).toBeUndefined();
          expect(codes(analysis)).toEqual([]);
        },
      ),
    );
  });

  it('keeps power factor and apparent power together', () => {
    const interval = 20e-9;
    const voltage = sampled(20_000, interval, (t) => 300 * Math.sin(twoPi * 433e3 * t));
    const current = sampled(20_000, interval, (t) => 0.6 * Math.sin(twoPi * 433e3 * t - 0.5));
    const {
      activePower = 0,
      apparentPower = 0,
      powerFactor,
      phase,
    } = analyseCapture({ voltage, current, sampleInterval: interval });
    expect(powerFactor).toBe(activePower / apparentPower);
    expect(powerFactor).toBeCloseTo(Math.cos(0.5), 5);
    expect(phase).toBeCloseTo(0.5, 5);
    expect(apparentPower).toBeCloseTo(90, 3);
  });

  it('is the same in single precision, in a plain array and by probe factors', () => {
    const interval = 25e-9;
    const voltage = sampled(10_000, interval, (t) => 3 * Math.sin(twoPi * 400e3 * t));
    const whole = analyseCapture({ voltage, sampleInterval: interval, voltageFactor: 100 });
    expectWithin(whole.voltage?.rms, 300 / Math.SQRT2, 1e-6);
    for (const samples of [Float32Array.from(voltage), [...voltage]]) {
      const other = analyseCapture({ voltage: samples, sampleInterval: interval, voltageFactor: -100 });
      expectWithin(other.voltage?.rms, whole.voltage?.rms ?? 0, 1e-6);
    }
  });
});

describe('bursts', () => {
  const interval = 20e-9;

  it('that die out have the figures of the closed form, wherever the capture begins and ends', () => {
    const closed = dampedSine({ ...burst, load: 500 });
    fc.assert(
      fc.property(valueBetween(0, 40e-6), fc.integer({ min: 7000, max: 30_000 }), (from, count) => {
        const voltage = sampled(count, interval, (t) => damped(from + t));
        const current = voltage.map((value) => value / 500);
        const analysis = analyseCapture({ voltage, current, sampleInterval: interval });
        expect(analysis.window.kind).toBe('bursts');
        expectWithin(analysis.voltage?.rms, closed.rms, 1e-3);
        expectWithin(analysis.activePower, closed.rms ** 2 / 500, 2e-3);
        expectWithin(analysis.repetitionRate, 25e3, 1e-4);
        expectWithin(analysis.burstEnergy, closed.burstEnergy ?? 0, 2e-3);
        expectWithin(analysis.carrierFrequency, 500e3, 5e-3);
        expect(analysis.powerFactor).toBeCloseTo(1, 12);
        expect(analysis.phase).toBeCloseTo(0, 10);
      }),
      { numRuns: 40 },
    );
  });

  it('are told from each other however fast they die out, with their carrier', () => {
    fc.assert(
      fc.property(
        valueBetween(0.55, 5),
        valueBetween(350e3, 600e3),
        valueBetween(15e3, 25e3),
        (cycles, frequency, rate) => {
          const wave = { frequency, timeConstant: cycles / frequency, repetitionRate: rate, amplitude: 1000 };
          const course = (t: number) => {
            const since = t - Math.floor(t * rate) / rate;
            return 1000 * Math.exp(-since / wave.timeConstant) * Math.sin(twoPi * frequency * since);
          };
          const analysis = analyseCapture({
            voltage: sampled(40_000, 10e-9, (t) => course(t + 3e-6)),
            sampleInterval: 10e-9,
          });
          expect(analysis.window.kind).toBe('bursts');
          expectWithin(analysis.repetitionRate, rate, 1e-4);
          expectWithin(analysis.carrierFrequency, frequency, 2e-3);
          expectWithin(analysis.voltage?.rms, dampedSine(wave).rms, 1e-3);
          expect(codes(analysis)).toEqual([]);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('have the true peak and crest factor', () => {
    const closed = dampedSine(burst);
    const analysis = analyseCapture({ voltage: sampled(40_000, 5e-9, damped), sampleInterval: 5e-9 });
    expectWithin(analysis.voltage?.peak, closed.peak, 1e-4);
    expectWithin(analysis.voltage?.crestFactor, closed.crestFactor, 1e-3);
  });

  it('of a gated sine have its duty cycle', () => {
    const wave = { dutyCycle: 0.2, frequency: 400e3, repetitionRate: 20e3, peak: 900 };
    const course = (t: number) => {
      const since = t - Math.floor(t * 20e3) / 20e3;
      return since < 10e-6 ? 900 * Math.sin(twoPi * 400e3 * since) : 0;
    };
    const analysis = analyseCapture({ voltage: sampled(50_000, 10e-9, course), sampleInterval: 10e-9, load: 300 });
    const closed = gatedSine({ ...wave, load: 300 });
    expectWithin(analysis.voltage?.rms, closed.rms, 1e-3);
    // From threshold to threshold: a tenth of the peak is reached 1/63 of a cycle inside of either end.
    expect(analysis.dutyCycle).toBeCloseTo(0.2 - (20e3 * 2 * Math.asin(0.1)) / (twoPi * 400e3), 4);
    expectWithin(analysis.burstEnergy, closed.burstEnergy ?? 0, 2e-3);
    expectWithin(analysis.carrierFrequency, 400e3, 1e-4);
    // The first of ten has no pause before it, and what follows the beginning of the last may not be whole.
    expect(analysis.window.count).toBe(8);
    expect(analysis.phase).toBeUndefined();
  });

  it('of one sign are pulses, without a carrier', () => {
    const course = (t: number) => (t * 20e3 - Math.floor(t * 20e3) < 0.05 ? 100 : 0);
    const analysis = analyseCapture({ voltage: sampled(50_001, 10e-9, course), sampleInterval: 10e-9, load: 50 });
    expect(analysis.window).toMatchObject({ kind: 'bursts', count: 9 });
    expect(analysis.carrierFrequency).toBeUndefined();
    expectWithin(analysis.repetitionRate, 20e3, 1e-4);
    expect(analysis.dutyCycle).toBeCloseTo(0.05, 3);
    expectWithin(analysis.burstEnergy, (100 ** 2 / 50) * 2.5e-6, 5e-3);
    // Their tops are flat, which cannot be told from clipping.
    expect(codes(analysis)).toEqual(['capture-clipped']);
  });

  it('of a single cycle each are found by their rate', () => {
    const course = (t: number) => {
      const since = t - Math.floor(t * 20e3) / 20e3;
      return since < 2e-6 ? 100 * Math.sin(twoPi * 500e3 * since) : 0;
    };
    const analysis = analyseCapture({ voltage: sampled(50_000, 10e-9, course), sampleInterval: 10e-9 });
    expectWithin(analysis.voltage?.rms, 100 * Math.sqrt(0.04 / 2), 1e-2);
  });

  it('show the phase of the load at the carrier, however they ring', () => {
    // Series R and L driven by the current: v = R·i + L·di/dt, exactly.
    const [R, L] = [50, 4e-6];
    const w = twoPi * burst.frequency;
    const slope = (t: number) => {
      const since = t - Math.floor(t * burst.repetitionRate) / burst.repetitionRate;
      const decay = Math.exp(-since / burst.timeConstant);
      return 5 * decay * (w * Math.cos(w * since) - Math.sin(w * since) / burst.timeConstant);
    };
    const current = sampled(100_000, 4e-9, (t) => damped(t + 30e-6, 5));
    const voltage = sampled(100_000, 4e-9, (t) => R * damped(t + 30e-6, 5) + L * slope(t + 30e-6));
    const { phase } = analyseCapture({ voltage, current, sampleInterval: 4e-9 });
    const expected = loadImpedance({ resistance: R, seriesInductance: L, frequency: burst.frequency }).phase;
    expect(Math.abs((phase ?? 9) - expected)).toBeLessThan(0.01);
  });

  it('keep their figures under noise and with jitter from burst to burst', () => {
    const random = createRandom(20_261);
    const count = 500_000;
    const voltage = new Float64Array(count);
    const starts: number[] = [];
    for (let t = 10e-6; t < count * interval; t += 40e-6 * (1 + 0.02 * nextNormal(random))) starts.push(t);
    for (const start of starts) {
      for (let k = Math.ceil(start / interval); k < Math.min(start / interval + 1900, count); k++) {
        voltage[k] = damped((k * interval - start) % 40e-6);
      }
    }
    const current = voltage.map((value) => value / 500 + 0.01 * nextNormal(random));
    for (let k = 0; k < count; k++) voltage[k] = (voltage[k] as number) + 10 * nextNormal(random);
    const analysis = analyseCapture({ voltage, current, sampleInterval: interval });
    const closed = dampedSine({ ...burst, load: 500 });
    // The noise of 10 V adds in square to the rms value.
    expectWithin(analysis.voltage?.rms, Math.hypot(closed.rms, 10), 3e-3);
    expectWithin(analysis.activePower, closed.rms ** 2 / 500, 6e-3);
    expectWithin(
      analysis.repetitionRate,
      (starts.length - 1) / ((starts.at(-1) as number) - (starts[0] as number)),
      1e-3,
    );
    expectWithin(analysis.carrierFrequency, 500e3, 1e-2);
    expect(analysis.window.count).toBe(starts.length - 1);
  });

  it('add up to the energy of the capture', () => {
    const voltage = sampled(100_000, interval, (t) => damped(t + 30e-6));
    const { energy, burstEnergy = 0 } = analyseCapture({ voltage, sampleInterval: interval, load: 500 });
    // 2 ms hold 50 bursts.
    expectWithin(energy, 50 * burstEnergy, 1e-3);
    let sum = 0;
    for (const value of voltage) sum += (value * value) / 500;
    expectWithin(energy, sum * interval, 1e-12);
  });
});

describe('edges', () => {
  const interval = 1e-8;

  it('of a sine are as steep as it is at its zero line, in units of the threshold', () => {
    const voltage = sampled(20_000, interval, (t) => 300 * Math.sin(twoPi * 5e5 * t + 0.3));
    const { edges } = analyseCapture({ voltage, sampleInterval: interval, burstThreshold: 0.2 });
    expect(Object.keys(edges ?? {})).toEqual(['crossing']);
    expectWithin(edges?.crossing, (twoPi * 5e5 * interval) / 0.2, 1e-3);
  });

  it('of bursts are as steep as these are at the threshold, with the last crest, whatever the factor of the probe', () => {
    const voltage = sampled(20_000, interval, (t) => damped(t + 7e-6));
    const { edges, voltage: figures } = analyseCapture({ voltage, sampleInterval: interval, voltageFactor: -10 });
    const mean = (figures?.mean ?? 0) / -10;
    const threshold = 0.1 * ((figures?.peak ?? 0) / 10 - mean);
    const slope = (t: number) => ((damped(t + 1e-9) - damped(t - 1e-9)) / 2e-9) * interval;
    const crests = Array.from({ length: 20 }, (_, k) => {
      const t = (k + 0.5) / 1e6;
      return Math.abs(damped(t) - mean) / threshold;
    });
    const last = crests.findLastIndex((crest) => crest > 1.05);
    // A line between two samples is as steep as the course between them, and the first rises from the zero line.
    expectWithin(edges?.begin, slope(threshold / slope(1e-9) / 1e8) / threshold, 0.1);
    // The crest of a damped sine lies before the middle of its half-cycle, and is a little higher there.
    expectWithin(edges?.crest, crests[last] as number, 0.03);
    expect(edges?.end).toBeGreaterThan(0);
    expect(edges?.end).toBeLessThan((edges?.begin ?? 0) / 3);
  });

  it('of pulses are as steep as they are high; a channel at rest has none', () => {
    const voltage = sampled(10_000, interval, (t) => ((t * 5e4) % 1 < 0.06 ? 50 : 0));
    const { edges } = analyseCapture({ voltage, sampleInterval: interval });
    const threshold = 0.1 * (50 - 3);
    expect(edges?.crossing).toBe(0);
    expectWithin(edges?.begin, 50 / threshold, 1e-3);
    expectWithin(edges?.end, 50 / threshold, 1e-3);
    expectWithin(edges?.crest, 47 / threshold, 1e-3);
    expect(analyseCapture({ voltage: new Float64Array(50).fill(2), sampleInterval: interval })).not.toHaveProperty(
      'edges',
    );
  });
});

describe('an offset', () => {
  const interval = 20e-9;
  const voltage = sampled(20_000, interval, (t) => 40 + 300 * Math.sin(twoPi * 433e3 * t));
  const current = sampled(20_000, interval, (t) => 0.1 + 0.6 * Math.sin(twoPi * 433e3 * t));
  const analysed = (removeOffset?: 'none' | 'mean' | { voltage: number; current: number }) =>
    analyseCapture({ voltage, current, sampleInterval: interval, ...(removeOffset ? { removeOffset } : {}) });

  it('stays unless it is removed by name', () => {
    for (const whole of [analysed(), analysed('none')]) {
      expectWithin(whole.voltage?.rms, Math.hypot(40, 300 / Math.SQRT2), 1e-5);
      expectWithin(whole.activePower, 94, 1e-5);
      expectWithin(whole.voltage?.mean, 40, 1e-4);
    }
  });

  it('goes with the mean, or as stated', () => {
    for (const without of [analysed('mean'), analysed({ voltage: 40, current: 0.1 })]) {
      expectWithin(without.voltage?.rms, 300 / Math.SQRT2, 1e-5);
      expectWithin(without.activePower, 90, 1e-4);
      expect(Math.abs(without.voltage?.mean ?? 9)).toBeLessThan(0.01);
      expectWithin(without.voltage?.peak, 300, 1e-2);
    }
  });

  it('does not change peak to peak', () => {
    expect(analysed('mean').voltage?.peakToPeak).toBe(analysed().voltage?.peakToPeak);
  });
});

describe('what is to be doubted', () => {
  const interval = 20e-9;
  const sine =
    (amplitude: number, f = 400e3) =>
    (t: number) =>
      amplitude * Math.sin(twoPi * f * t);

  it('a channel that is cut off', () => {
    const clipped = sampled(10_000, interval, (t) => Math.min(sine(100)(t), 90));
    expect(codes(analyseCapture({ voltage: clipped, sampleInterval: interval }))).toEqual(['capture-clipped']);
    const fine = sampled(10_000, interval, sine(100));
    const converter = { voltage: { lowest: -100, highest: 99.99 } };
    expect(codes(analyseCapture({ voltage: fine, sampleInterval: interval, converter }))).toEqual(['capture-clipped']);
    // Eight bits leave some samples in the last step of a crest: that is no clipping.
    const stepped = fine.map((value) => Math.round(value));
    expect(codes(analyseCapture({ voltage: stepped, sampleInterval: interval }))).toEqual([]);
  });

  it('few samples a cycle, and an alias', () => {
    const few = analyseCapture({ voltage: sampled(1000, 380e-9, sine(100)), sampleInterval: 380e-9 });
    expect(codes(few)).toEqual(['few-samples']);
    expect(few.warnings[0]?.message).toContain('6.6 samples');
    const capture = { voltage: sampled(5000, 1e-6, sine(100, 1.043e6)), sampleInterval: 1e-6 };
    expect(codes(analyseCapture(capture))).toEqual([]);
    const alias = analyseCapture({ ...capture, expectedCarrier: 1e6 });
    expect(codes(alias)).toEqual(['capture-aliased']);
    expectWithin(alias.carrierFrequency, 43e3, 1e-4);
  });

  it('few bursts, one burst, none', () => {
    const few = analyseCapture({
      voltage: sampled(5000, interval, (t) => damped(t + 30e-6)),
      sampleInterval: interval,
    });
    expect(codes(few)).toEqual(['few-bursts']);
    expect(few.window).toMatchObject({ kind: 'bursts', count: 2 });
    const one = analyseCapture({
      voltage: sampled(1500, interval, (t) => damped(t + 30e-6)),
      sampleInterval: interval,
      load: 500,
    });
    expect(codes(one)).toEqual(['few-bursts']);
    expect(one.window.kind).toBe('record');
    expect(one.repetitionRate).toBeUndefined();
    expectWithin(one.energy, dampedSine({ ...burst, load: 500 }).burstEnergy ?? 0, 1e-3);
    const none = analyseCapture({
      voltage: new Float64Array(100).fill(3),
      current: new Float64Array(100),
      sampleInterval: 1,
    });
    expect(codes(none)).toEqual(['no-carrier']);
    expect(none).toMatchObject({ voltage: { rms: 3, mean: 3, peakToPeak: 0 }, activePower: 0, apparentPower: 0 });
    expect(none.current).toEqual({ rms: 0, mean: 0, peak: 0, peakToPeak: 0 });
    expect(none.powerFactor).toBeUndefined();
    expect(none.carrierFrequency).toBeUndefined();
  });

  it('a capture of two cycles, and of less', () => {
    const voltage = sampled(260, interval, sine(100));
    const short = analyseCapture({ voltage, sampleInterval: interval });
    expect(codes(short)).toEqual(['few-bursts']);
    expect(short.window.kind).toBe('record');
    expectWithin(short.voltage?.rms, Math.sqrt(voltage.reduce((sum, x) => sum + x * x, 0) / 260), 1e-13);
    const shorter = analyseCapture({ voltage: sampled(60, interval, sine(100)), sampleInterval: interval });
    expect(codes(shorter)).toEqual(['no-carrier']);
  });

  it('channels of different lengths', () => {
    const voltage = sampled(5000, interval, sine(100));
    const current = sampled(4000, interval, sine(1));
    const analysis = analyseCapture({ voltage, current, sampleInterval: interval });
    expect(codes(analysis)).toEqual(['lengths-differ']);
    expectWithin(analysis.activePower, 50, 1e-5);
  });

  it('a probe that is turned round, and one that is said to be', () => {
    const voltage = sampled(5000, interval, sine(100));
    const current = sampled(5000, interval, sine(-1));
    const turned = analyseCapture({ voltage, current, sampleInterval: interval });
    expect(codes(turned)).toEqual(['power-negative']);
    const right = analyseCapture({ voltage, current, sampleInterval: interval, currentFactor: -1 });
    expect(codes(right)).toEqual([]);
    expect(right.activePower).toBe(-(turned.activePower as number));
    expect(right.phase).toBeCloseTo(0, 10);
  });
});

describe('bad input', () => {
  const voltage = [0, 1, 0, -1];
  it.each<[string, () => unknown, string, string]>([
    ['no channel', () => analyseCapture({ sampleInterval: 1 }), 'wrong-count', ''],
    ['an interval of 0', () => analyseCapture({ voltage, sampleInterval: 0 }), 'not-positive', 'sampleInterval'],
    ['one sample', () => analyseCapture({ voltage: [1], sampleInterval: 1 }), 'wrong-count', 'voltage'],
    ['a short channel', () => analyseCapture({ voltage, current: [], sampleInterval: 1 }), 'wrong-count', 'current'],
    ['NaN', () => analyseCapture({ voltage: [0, 1, Number.NaN], sampleInterval: 1 }), 'not-a-number', 'voltage[2]'],
    [
      'an infinite sample',
      () => analyseCapture({ current: [0, -1 / 0], sampleInterval: 1 }),
      'not-a-number',
      'current[1]',
    ],
    [
      'text',
      () => analyseCapture({ voltage: '123' as unknown as number[], sampleInterval: 1 }),
      'wrong-type',
      'voltage',
    ],
    [
      'a factor of 0',
      () => analyseCapture({ voltage, sampleInterval: 1, voltageFactor: 0 }),
      'out-of-range',
      'voltageFactor',
    ],
    [
      'a current probe of factor 0',
      () => analyseCapture({ current: voltage, sampleInterval: 1, currentFactor: 0 }),
      'out-of-range',
      'currentFactor',
    ],
    [
      'a missing value, as JSON writes NaN',
      () => analyseCapture({ voltage: [0, 1, null as unknown as number, -1], sampleInterval: 1 }),
      'not-a-number',
      'voltage[2]',
    ],
    [
      'a hole',
      () => analyseCapture({ current: new Array<number>(3), sampleInterval: 1 }),
      'not-a-number',
      'current[0]',
    ],
    [
      'a number in quotation marks, far into the capture',
      () =>
        analyseCapture({
          voltage: [...new Float64Array(3000), '5' as unknown as number],
          sampleInterval: 1,
        }),
      'not-a-number',
      'voltage[3000]',
    ],
    [
      'integers of 64 bits',
      () => analyseCapture({ voltage: new BigInt64Array(4) as unknown as Float64Array, sampleInterval: 1 }),
      'wrong-type',
      'voltage',
    ],
    [
      'no offset by name',
      () => analyseCapture({ voltage, sampleInterval: 1, removeOffset: null as unknown as 'mean' }),
      'unknown-choice',
      'removeOffset',
    ],
    [
      'an interval that makes a capture longer than numbers are',
      () => analyseCapture({ voltage, sampleInterval: 1e308 }),
      'result-out-of-range',
      'duration',
    ],
    ['a load of 0', () => analyseCapture({ voltage, sampleInterval: 1, load: 0 }), 'not-positive', 'load'],
    [
      'a threshold of 0',
      () => analyseCapture({ voltage, sampleInterval: 1, burstThreshold: 0 }),
      'out-of-range',
      'burstThreshold',
    ],
    [
      'a threshold in percent',
      () => analyseCapture({ voltage, sampleInterval: 1, burstThreshold: 10 }),
      'not-a-fraction',
      'burstThreshold',
    ],
    [
      'an unknown offset',
      () => analyseCapture({ voltage, sampleInterval: 1, removeOffset: 'all' as 'mean' }),
      'unknown-choice',
      'removeOffset',
    ],
    [
      'a range turned round',
      () => analyseCapture({ voltage, sampleInterval: 1, converter: { voltage: { lowest: 1, highest: 0 } } }),
      'band-reversed',
      'converter.voltage.lowest',
    ],
  ])('%s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });
});

describe('a large capture', () => {
  it('is read where it lies: the memory does not grow with it', () => {
    const count = 4_000_000;
    const voltage = sampled(count, 20e-9, damped);
    const current = voltage.map((value) => value / 500);
    analyseCapture({
      voltage: voltage.subarray(0, 10_000),
      current: current.subarray(0, 10_000),
      sampleInterval: 20e-9,
    });
    const before = process.memoryUsage();
    const analysis = analyseCapture({ voltage, current, sampleInterval: 20e-9 });
    const after = process.memoryUsage();
    expect(analysis.window.count).toBe(1998);
    expect(after.arrayBuffers - before.arrayBuffers).toBeLessThan(0.01 * count * 16);
    expect(after.heapUsed - before.heapUsed).toBeLessThan(0.1 * count * 16);
  });
});
