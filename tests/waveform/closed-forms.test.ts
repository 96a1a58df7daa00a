import { describe, expect, it } from 'vitest';
import {
  averageRespondingReading,
  crestFactorOfGatedSine,
  type DampedSine,
  dampedSine,
  type GatedSine,
  gatedSine,
  harmonicSum,
  pulseTrain,
  type Spectrum,
  sineWave,
  squareWave,
  triangleWave,
  type WaveformFigures,
} from '../../src/waveform/index.js';
import { faultOf } from '../band/fault-of.js';
import { type IntegratedFigures, integratedFigures, zerosOfSine } from './integrated.js';

function expectFigures(figures: WaveformFigures, integrated: IntegratedFigures): void {
  expect(Math.abs(figures.rms / integrated.rms - 1)).toBeLessThan(1e-9);
  expect(Math.abs(figures.averageRectified / integrated.averageRectified - 1)).toBeLessThan(1e-9);
  // No sample lies above the peak, and the nearest lies close below it.
  expect(integrated.sampledPeak).toBeLessThanOrEqual(figures.peak * (1 + 1e-12));
  expect(integrated.sampledPeak).toBeGreaterThan(figures.peak * (1 - 1e-4));
  expect(figures.crestFactor).toBeCloseTo(figures.peak / figures.rms, 12);
}

describe('closed forms against numerical integration', () => {
  it('sine, square and triangle', () => {
    expectFigures(
      sineWave({ peak: 3 }),
      integratedFigures((t) => 3 * Math.sin(2 * Math.PI * t), [0.5]),
    );
    expectFigures(
      squareWave({ peak: 3 }),
      integratedFigures((t) => (t < 0.3 ? 3 : -3), [0.3]),
    );
    const triangle = (t: number) => (t < 0.2 ? 3 - 30 * t : -3 + 7.5 * (t - 0.2));
    expectFigures(triangleWave({ peak: 3 }), integratedFigures(triangle, [0.1, 0.2, 0.6]));
  });

  it('pulses', () => {
    expectFigures(
      pulseTrain({ dutyCycle: 0.3, peak: 5 }),
      integratedFigures((t) => (t < 0.3 ? 5 : 0), [0.3]),
    );
  });

  it.each<[string, GatedSine]>([
    ['whole half-cycles', { dutyCycle: 0.25, frequency: 400e3, repetitionRate: 20e3 }],
    ['a quarter of a cycle at the end', { dutyCycle: 0.25, frequency: 405e3, repetitionRate: 20e3 }],
    ['any end, any start', { dutyCycle: 0.137, frequency: 433e3, repetitionRate: 31e3, startPhase: 1.1 }],
    ['a negative start phase', { dutyCycle: 0.5, frequency: 433e3, repetitionRate: 131e3, startPhase: -2.3 }],
    ['less than a half-cycle, with its crest', { dutyCycle: 0.2, frequency: 2e5, repetitionRate: 1e5, startPhase: 1 }],
    ['less than a half-cycle, no crest', { dutyCycle: 0.05, frequency: 2e5, repetitionRate: 1e5, startPhase: 0.2 }],
    ['a short gate across a zero', { dutyCycle: 0.1, frequency: 2e5, repetitionRate: 1e5, startPhase: 2.9 }],
    ['always open, cut at its end', { dutyCycle: 1, frequency: 250e3, repetitionRate: 100e3 }],
  ])('gated sine: %s', (_, wave) => {
    const cycles = (wave.frequency as number) / (wave.repetitionRate as number);
    const phase = wave.startPhase ?? 0;
    const course = (t: number) => (t < wave.dutyCycle ? Math.sin(2 * Math.PI * cycles * t + phase) : 0);
    expectFigures(gatedSine(wave), integratedFigures(course, [...zerosOfSine(cycles, phase), wave.dutyCycle]));
  });

  it('a gate of whole half-cycles gives the figures of whole half-cycles', () => {
    const whole = gatedSine({ dutyCycle: 0.06, peak: 800 });
    const counted = gatedSine({ dutyCycle: 0.06, peak: 800, frequency: 500e3, repetitionRate: 10e3 });
    expect(Math.abs(counted.rms / whole.rms - 1)).toBeLessThan(1e-14);
    expect(Math.abs(counted.averageRectified / whole.averageRectified - 1)).toBeLessThan(1e-14);
    expect(counted.peak).toBe(800);
    expect(whole.crestFactor).toBeCloseTo(crestFactorOfGatedSine(0.06), 14);
  });

  const damped: [string, DampedSine][] = [
    ['bursts that die out', { frequency: 500e3, timeConstant: 2e-6, repetitionRate: 30e3 }],
    ['a rest of a twentieth', { frequency: 500e3, timeConstant: 10e-6, repetitionRate: 33e3 }],
    ['hardly any decay', { frequency: 510e3, timeConstant: 1e-3, repetitionRate: 40e3 }],
    ['no half-cycle that is not damped', { frequency: 300e3, timeConstant: 3e-7, repetitionRate: 40e3 }],
    ['one cycle a burst', { frequency: 40e3, timeConstant: 30e-6, repetitionRate: 40e3 }],
  ];

  it.each(damped)('damped sine that restarts: %s', (_, wave) => {
    const { frequency, timeConstant, repetitionRate } = wave;
    const cycles = frequency / repetitionRate;
    const decay = 1 / (repetitionRate * timeConstant);
    const course = (t: number) => Math.exp(-decay * t) * Math.sin(2 * Math.PI * cycles * t);
    const figures = dampedSine(wave);
    expectFigures(figures, integratedFigures(course, zerosOfSine(cycles, 0)));
    expect(figures.remainder).toBeCloseTo(Math.exp(-decay), 14);
  });

  it.each(damped)('damped sine that overlaps: %s', (_, wave) => {
    const { frequency, timeConstant, repetitionRate } = wave;
    const cycles = frequency / repetitionRate;
    const decay = 1 / (repetitionRate * timeConstant);
    // The sum itself, over as many earlier bursts as still count.
    const earlier = Math.ceil(40 / decay);
    const overlapping = (t: number) => {
      let sum = 0;
      for (let k = earlier; k >= 0; k--) sum += Math.exp(-decay * (t + k)) * Math.sin(2 * Math.PI * cycles * (t + k));
      return sum;
    };
    const figures = dampedSine({ ...wave, rest: 'overlaps' });
    // It is one damped sine again, of another height and phase: found here from two values of the sum.
    const first = overlapping(0);
    const quarter = 1 / (4 * cycles);
    const second = overlapping(quarter) * Math.exp(decay * quarter);
    const height = Math.hypot(first, second);
    const phase = Math.atan2(first, second);
    const course = (t: number) => height * Math.exp(-decay * t) * Math.sin(2 * Math.PI * cycles * t + phase);
    expect(course(0.37)).toBeCloseTo(overlapping(0.37), 9);
    expectFigures(figures, integratedFigures(course, zerosOfSine(cycles, phase)));
  });

  it('bursts that die out are the same whichever way the rest goes', () => {
    const wave = { frequency: 1e6, timeConstant: 1e-6, repetitionRate: 20e3 };
    const { rms, peak, averageRectified, warnings } = dampedSine(wave);
    const overlapping = dampedSine({ ...wave, rest: 'overlaps' });
    expect(overlapping.rms / rms).toBeCloseTo(1, 14);
    expect(overlapping.peak / peak).toBeCloseTo(1, 14);
    expect(overlapping.averageRectified / averageRectified).toBeCloseTo(1, 14);
    expect([...warnings, ...overlapping.warnings]).toEqual([]);
  });

  it('bursts that do not die out are said so', () => {
    const wave = { frequency: 500e3, timeConstant: 10e-6, repetitionRate: 30e3 };
    expect(dampedSine(wave).warnings).toEqual([
      {
        code: 'burst-not-over',
        message: 'A burst has kept 3.57 % of its amplitude when the next begins; it ends there.',
      },
    ]);
    expect(dampedSine({ ...wave, rest: 'overlaps' }).warnings[0]?.message).toContain('goes on below the next one');
  });

  const third = { order: 3, peak: 0.4, phase: 0.7 };
  it.each<[string, Spectrum]>([
    ['one', { fundamental: 1, harmonics: [{ order: 1, peak: 2 }] }],
    ['two', { fundamental: 1, harmonics: [{ order: 1, peak: 1 }, third] }],
    ['two with a mean', { fundamental: 1, mean: 0.3, harmonics: [{ order: 1, peak: 1 }, third] }],
    ['only a high one', { fundamental: 1, harmonics: [{ order: 17, peak: 1, phase: 0.2 }] }],
    ['a course that touches 0', { fundamental: 1, mean: 1, harmonics: [{ order: 1, peak: 1 }] }],
    ['three', { fundamental: 1, harmonics: [{ order: 2, peak: 1 }, third, { order: 11, peak: 0.9, phase: -2 }] }],
  ])('sum of harmonics: %s', (_, spectrum) => {
    const course = (t: number) =>
      spectrum.harmonics.reduce(
        (sum, { order, peak, phase = 0 }) => sum + peak * Math.sin(2 * Math.PI * order * t + phase),
        spectrum.mean ?? 0,
      );
    const bends: number[] = [];
    for (let k = 0; k < 4000; k++) {
      let [low, high] = [k / 4000, (k + 1) / 4000];
      if (course(low) > 0 === course(high) > 0) continue;
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        if (course(middle) > 0 === course(low) > 0) low = middle;
        else high = middle;
      }
      bends.push(low);
    }
    expectFigures(harmonicSum(spectrum), integratedFigures(course, bends));
  });
});

describe('crest factors of the trade', () => {
  // Thieme, textbook of gastrointestinal endoscopy, chapter 7: 5 to 7 for coagulation of 6 % duty.
  it('coagulation of 6 % duty', () => {
    expect(crestFactorOfGatedSine(0.06)).toBeGreaterThan(5);
    expect(crestFactorOfGatedSine(0.06)).toBeLessThan(7);
  });
});

describe('energy and readings', () => {
  it('the energies of all bursts of a second are the power', () => {
    const burst = { repetitionRate: 25e3, load: 500 };
    const gated = gatedSine({ dutyCycle: 0.2, peak: 1200, ...burst });
    expect(gated.burstEnergy).toBeCloseTo(gated.rms ** 2 / 500 / 25e3, 15);
    const current = dampedSine({ frequency: 5e5, timeConstant: 2e-6, amplitude: 6, quantity: 'current', ...burst });
    expect(current.burstEnergy).toBeCloseTo((current.rms ** 2 * 500) / 25e3, 15);
    expect(pulseTrain({ dutyCycle: 0.2 }).burstEnergy).toBeUndefined();
  });

  it('an average-responding instrument is right for a sine only', () => {
    expect(sineWave().averageRespondingFactor).toBeCloseTo(1, 15);
    for (const figures of [
      squareWave(),
      triangleWave(),
      gatedSine({ dutyCycle: 0.06 }),
      pulseTrain({ dutyCycle: 0.5 }),
    ]) {
      expect(figures.averageRespondingFactor * figures.rms).toBeCloseTo(
        averageRespondingReading(figures.averageRectified),
        14,
      );
      expect(Math.abs(figures.averageRespondingFactor - 1)).toBeGreaterThan(0.03);
    }
    // Of 6 % duty it shows a quarter: the square root of the duty cycle.
    expect(gatedSine({ dutyCycle: 0.06 }).averageRespondingFactor).toBeCloseTo(Math.sqrt(0.06), 14);
  });

  it('the steps carry the unit of the quantity', () => {
    const units = (figures: WaveformFigures) => figures.working.slice(0, 2).map(({ unit }) => unit);
    expect(units(sineWave())).toEqual(['V', 'V']);
    expect(units(gatedSine({ dutyCycle: 0.5, quantity: 'current' }))).toEqual(['A', 'A']);
    const damped = dampedSine({ frequency: 5e5, timeConstant: 1e-6, repetitionRate: 1e4, quantity: 'current' });
    expect(damped.working.map(({ unit }) => unit)).not.toContain('any');
  });
});

describe('at the ends of what there is', () => {
  it('a duty cycle of 1 is no gate and no pulse', () => {
    expect(pulseTrain({ dutyCycle: 1 })).toMatchObject({ rms: 1, averageRectified: 1, crestFactor: 1, formFactor: 1 });
    const open = gatedSine({ dutyCycle: 1, peak: 3 });
    expect(open.rms).toBeCloseTo(sineWave({ peak: 3 }).rms, 14);
    expect(open.averageRectified).toBeCloseTo(sineWave({ peak: 3 }).averageRectified, 14);
    const counted = gatedSine({ dutyCycle: 1, frequency: 500e3, repetitionRate: 500e3 });
    expect(counted.crestFactor).toBeCloseTo(Math.SQRT2, 14);
  });

  it('the largest peak that a number holds has figures that are numbers', () => {
    const { working, ...figures } = squareWave({ peak: Number.MAX_VALUE });
    expect(Object.values(figures).every(Number.isFinite)).toBe(true);
    expect(figures.averageRespondingFactor).toBeCloseTo(Math.PI / (2 * Math.SQRT2), 14);
    expect(working.every(({ value }) => Number.isFinite(value))).toBe(true);
  });

  it('whole turns of a phase change nothing, however many', () => {
    const wave = (phase: number) =>
      harmonicSum({ fundamental: 1, mean: 0.9, harmonics: [{ order: 3, peak: 0.5, phase }] });
    expect(wave(2 * Math.PI * 1024).peak).toBeCloseTo(wave(0).peak, 10);
    expect(wave(1e100).peak).toBeCloseTo(1.4, 10);
    expect(wave(1e100).averageRectified).toBeCloseTo(0.9, 10);
  });
});

describe('bad input', () => {
  const burst = { frequency: 500e3, timeConstant: 2e-6, repetitionRate: 30e3 };
  const gate = { dutyCycle: 0.5, frequency: 500e3, repetitionRate: 30e3 };
  it.each<[string, () => unknown, string, string]>([
    ['a duty cycle of 0', () => gatedSine({ dutyCycle: 0 }), 'not-positive', 'dutyCycle'],
    ['a duty cycle above 1', () => gatedSine({ dutyCycle: 1.01 }), 'not-a-fraction', 'dutyCycle'],
    ['a duty cycle in percent', () => crestFactorOfGatedSine(6), 'not-a-fraction', 'dutyCycle'],
    ['a duty cycle that is no number', () => pulseTrain({ dutyCycle: Number.NaN }), 'not-a-number', 'dutyCycle'],
    ['a time constant of 0', () => dampedSine({ ...burst, timeConstant: 0 }), 'not-positive', 'timeConstant'],
    ['a frequency of 0', () => dampedSine({ ...burst, frequency: 0 }), 'not-positive', 'frequency'],
    ['a repetition rate of 0', () => dampedSine({ ...burst, repetitionRate: 0 }), 'not-positive', 'repetitionRate'],
    ['bursts faster than the sine', () => dampedSine({ ...burst, frequency: 1e4 }), 'out-of-range', 'frequency'],
    ['an unknown rest', () => dampedSine({ ...burst, rest: 'fades' as 'overlaps' }), 'unknown-choice', 'rest'],
    ['an unknown quantity', () => sineWave({ quantity: 'power' as 'voltage' }), 'unknown-choice', 'quantity'],
    ['a peak of 0', () => triangleWave({ peak: 0 }), 'not-positive', 'peak'],
    ['an infinite peak', () => squareWave({ peak: Number.POSITIVE_INFINITY }), 'not-a-number', 'peak'],
    ['a rate without a frequency', () => gatedSine({ dutyCycle: 0.5, startPhase: 1 }), 'missing-member', 'frequency'],
    [
      'a frequency without a rate',
      () => gatedSine({ dutyCycle: 0.5, frequency: 1 }),
      'missing-member',
      'repetitionRate',
    ],
    ['a load without a rate', () => gatedSine({ dutyCycle: 0.5, load: 50 }), 'missing-member', 'repetitionRate'],
    ['a load of 0', () => gatedSine({ ...gate, load: 0 }), 'not-positive', 'load'],
    ['a gate of next to nothing', () => gatedSine({ ...gate, dutyCycle: 1e-5 }), 'out-of-range', 'dutyCycle'],
    ['a phase in degrees', () => gatedSine({ ...gate, startPhase: 90 }), 'out-of-range', 'startPhase'],
    ['a peak that overflows', () => gatedSine({ ...gate, peak: 1e200, load: 1 }), 'result-out-of-range', 'burstEnergy'],
    ['a negative average', () => averageRespondingReading(-1), 'negative', 'averageRectified'],
    ['a gated sine of frequency 0', () => gatedSine({ ...gate, frequency: 0 }), 'not-positive', 'frequency'],
    [
      'harmonics that overflow',
      () => harmonicSum({ fundamental: 1, harmonics: [{ order: 1, peak: 1e300 }] }),
      'result-out-of-range',
      'rms',
    ],
    ['no harmonics', () => harmonicSum({ fundamental: 1, harmonics: [] }), 'not-positive', 'harmonics'],
  ])('%s', (_, work, code, path) => {
    expect(faultOf(work)).toMatchObject({ code, path });
  });

  it('an order that is there twice', () => {
    const harmonics = [
      { order: 1, peak: 1 },
      { order: 1, peak: 2 },
    ];
    expect(faultOf(() => harmonicSum({ fundamental: 1, harmonics }))).toMatchObject({
      code: 'duplicate',
      path: 'harmonics[1].order',
    });
  });
});
