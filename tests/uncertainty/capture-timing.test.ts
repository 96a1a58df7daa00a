import { describe, expect, it } from 'vitest';
import { createRandom, nextNormal, nextUniform, type Random } from '../../src/numeric/index.js';
import { type CaptureBudgetInput, captureBudget, expandedUncertainty } from '../../src/uncertainty/index.js';
import { analyseCapture, type CaptureAnalysis } from '../../src/waveform/index.js';
import { faultOf } from '../band/fault-of.js';

const twoPi = 2 * Math.PI;
type Timed = 'carrierFrequency' | 'repetitionRate' | 'dutyCycle';
type Truth = Partial<Record<Timed, number>>;

/** One synthesised capture: what it holds, what is true of it, and what is said of its errors. */
interface Synthesised {
  readonly voltage: Float64Array;
  readonly truth: Truth;
}

interface Result {
  /** Share of captures whose error lies within the expanded uncertainty of 95 %. */
  readonly covered: number;
  /** Stated standard uncertainty over the root mean square of the errors. */
  readonly ratio: number;
  /** By what all expanded uncertainties could be divided and still hold 95 % of the errors. */
  readonly spare: number;
}

const trials = 500;

function simulated(
  figure: Timed,
  seed: number,
  accuracy: Omit<CaptureBudgetInput, 'analysis'>,
  make: (random: Random) => Synthesised,
): Result {
  const random = createRandom(seed);
  let covered = 0;
  let squares = 0;
  let stated = 0;
  const shares: number[] = [];
  for (let k = 0; k < trials; k++) {
    const { voltage, truth } = make(random);
    const analysis = analyseCapture({ voltage, sampleInterval: accuracy.sampleInterval });
    const { standardUncertainty = Number.NaN, value = Number.NaN } =
      captureBudget({ ...accuracy, analysis }).figures[figure] ?? {};
    expect(Math.abs(value / (analysis[figure] as number) - 1)).toBeLessThan(1e-14);
    const error = value - (truth[figure] as number);
    const { expandedUncertainty: U } = expandedUncertainty({ standardUncertainty, degreesOfFreedom: 'infinite' });
    if (Math.abs(error) <= U) covered++;
    shares.push(Math.abs(error) / U);
    squares += error * error;
    stated += standardUncertainty;
  }
  shares.sort((a, b) => a - b);
  return {
    covered: covered / trials,
    ratio: stated / trials / Math.sqrt(squares / trials),
    spare: 1 / (shares[Math.ceil(0.95 * trials) - 1] as number),
  };
}

const between = (random: Random, low: number, high: number) => low + (high - low) * nextUniform(random);
/** Four standard errors of a standard deviation of so many trials. */
const statistical = 4 / Math.sqrt(2 * trials);
/** The share of a triangular distribution within 1.96 of its standard deviations: two crossings, each anywhere in a sample. */
const triangular = 1 - (1 - 1.959964 / Math.sqrt(6)) ** 2;
const spread = 4 * Math.sqrt((triangular * (1 - triangular)) / trials);

describe('times that only the samples leave open: JCGM 100:2008, F.2.2.1, u = δ/√12 at each crossing', () => {
  const sampleInterval = 1e-7;
  const exact = { sampleInterval, voltage: { step: 1e-9 } };

  it('the carrier of a square wave, anywhere between its samples', () => {
    const { covered, ratio } = simulated('carrierFrequency', 11, exact, (random) => {
      const f = between(random, 3e5, 5e5);
      const phase = nextUniform(random);
      const voltage = Float64Array.from({ length: 700 }, (_, k) =>
        (k * sampleInterval * f + phase) % 1 < 0.5 ? 100 : -100,
      );
      return { voltage, truth: { carrierFrequency: f } };
    });
    expect(Math.abs(ratio - 1), `${ratio}`).toBeLessThan(statistical);
    expect(Math.abs(covered - triangular), `${covered}`).toBeLessThan(spread);
  });

  const pulses = (random: Random): Synthesised => {
    const rate = between(random, 2e4, 3e4);
    const phase = nextUniform(random);
    const voltage = Float64Array.from({ length: 3000 }, (_, k) =>
      (k * sampleInterval * rate + phase) % 1 < 0.06 ? 50 : 0,
    );
    return { voltage, truth: { repetitionRate: rate, dutyCycle: 0.06 } };
  };

  it('the rate of pulses', () => {
    // The threshold lies at a tenth of a jump: its place is shifted alike at both beginnings.
    const { covered, ratio } = simulated('repetitionRate', 12, exact, pulses);
    expect(Math.abs(ratio - 1), `${ratio}`).toBeLessThan(statistical);
    expect(Math.abs(covered - triangular), `${covered}`).toBeLessThan(spread);
  });

  it('the duty cycle of pulses whose period is a whole number of samples: the error is the same in every burst', () => {
    const { covered, ratio } = simulated('dutyCycle', 13, exact, (random) => {
      const duty = between(random, 0.03, 0.07);
      const phase = nextUniform(random);
      const voltage = Float64Array.from({ length: 3000 }, (_, k) => ((k / 400 + phase) % 1 < duty ? 50 : 0));
      // From threshold to threshold: each lies a tenth of the way from the mean to the top, on a jump of one sample.
      return { voltage, truth: { dutyCycle: duty + (0.8 - 1.8 * duty) / 400 } };
    });
    expect(Math.abs(ratio - 1), `${ratio}`).toBeLessThan(statistical);
    expect(Math.abs(covered - triangular), `${covered}`).toBeLessThan(spread);
  });
});

describe('times under noise', () => {
  /** Samples of a course with a noise of 5 V, in whole volts. */
  const taken = (random: Random, count: number, sampleInterval: number, course: (t: number) => number) =>
    Float64Array.from({ length: count }, (_, k) => Math.round(course(k * sampleInterval) + 5 * nextNormal(random)));

  const sine = (random: Random, count: number, sampleInterval: number): Synthesised => {
    const f = between(random, 4e5, 5e5);
    const start = between(random, 0, 6);
    const voltage = taken(random, count, sampleInterval, (t) => 400 * Math.sin(twoPi * f * t + start));
    return { voltage, truth: { carrierFrequency: f } };
  };

  /** Bursts of whole cycles, with pauses. */
  const gated =
    (cycles: number, period: number) =>
    (random: Random, count: number, sampleInterval: number): Synthesised => {
      const f = between(random, 4e5, 5e5);
      const rate = f / period;
      const late = between(random, 0, 1 / rate);
      const voltage = taken(random, count, sampleInterval, (t) => {
        const since = t + late - Math.floor((t + late) * rate) / rate;
        return since < cycles / f ? 400 * Math.sin(twoPi * f * since) : 0;
      });
      // From threshold to threshold: a tenth of the peak is reached inside of either end.
      const dutyCycle = (cycles - Math.asin(0.1) / Math.PI) / period;
      return { voltage, truth: { carrierFrequency: f, repetitionRate: rate, dutyCycle } };
    };

  /** Bursts that ring off, with time constants of so many cycles. */
  const ringing =
    (shortest: number, longest: number) =>
    (random: Random, count: number, sampleInterval: number): Synthesised => {
      const f = between(random, 4e5, 5e5);
      const tau = between(random, shortest, longest) / f;
      const rate = f / between(random, 18, 25);
      const late = between(random, 0, 1 / rate);
      const course = (t: number) => {
        const since = t + late - Math.floor((t + late) * rate) / rate;
        return 800 * Math.exp(-since / tau) * Math.sin(twoPi * f * since);
      };
      // The same capture without noise says between which values the output is above the threshold.
      const still = Float64Array.from({ length: count }, (_, k) => course(k * sampleInterval));
      const { dutyCycle = 0 } = analyseCapture({ voltage: still, sampleInterval });
      const voltage = taken(random, count, sampleInterval, course);
      return { voltage, truth: { carrierFrequency: f, repetitionRate: rate, dutyCycle } };
    };

  type Make = (random: Random, count: number, sampleInterval: number) => Synthesised;
  // By what the expanded uncertainty may exceed the spread at most stands at the end of a row; it is not to be loosened.
  it.each<[string, Make, number, number, Timed, number, number]>([
    ['a continuous sine', sine, 1500, 2e-8, 'carrierFrequency', 21, 1.4],
    ['a long continuous sine', sine, 20_000, 2e-8, 'carrierFrequency', 22, 1.4],
    ['a continuous sine of a dozen samples a cycle', sine, 300, 1.8e-7, 'carrierFrequency', 23, 1.5],
    ['a gated sine', gated(5, 17), 7000, 2e-8, 'carrierFrequency', 24, 2],
    ['a gated sine', gated(5, 17), 7000, 2e-8, 'repetitionRate', 25, 1.4],
    ['a gated sine', gated(5, 17), 7000, 2e-8, 'dutyCycle', 26, 1.4],
    ['a long gated sine', gated(5, 17), 30_000, 2e-8, 'carrierFrequency', 27, 1.4],
    ['a long gated sine', gated(5, 17), 30_000, 2e-8, 'repetitionRate', 28, 1.4],
    ['a long gated sine', gated(5, 17), 30_000, 2e-8, 'dutyCycle', 29, 1.4],
    ['a gated sine whose threshold lies between two samples', gated(5, 17), 1800, 8e-8, 'carrierFrequency', 30, 2],
    ['a gated sine whose threshold lies between two samples', gated(5, 17), 1800, 8e-8, 'repetitionRate', 31, 2],
    ['a gated sine whose threshold lies between two samples', gated(5, 17), 1800, 8e-8, 'dutyCycle', 32, 2],
    ['bursts that ring off', ringing(1, 4), 10_000, 2e-8, 'carrierFrequency', 33, 2],
    ['bursts that ring off', ringing(1, 4), 10_000, 2e-8, 'repetitionRate', 34, 1.4],
    ['bursts that ring off', ringing(1, 4), 10_000, 2e-8, 'dutyCycle', 35, 2],
    ['long captures of bursts that ring off', ringing(3, 3), 20_000, 2e-8, 'carrierFrequency', 36, 2],
    ['long captures of bursts that ring off', ringing(3, 3), 20_000, 2e-8, 'repetitionRate', 37, 1.4],
  ])(
    '%s is covered as often as stated, and by no more than is needed',
    (...[, make, count, sampleInterval, figure, seed, most]) => {
      const accuracy = { sampleInterval, voltage: { step: 1, noise: 5 } };
      const { covered, spare } = simulated(figure, seed, accuracy, (random) => make(random, count, sampleInterval));
      expect(covered).toBeGreaterThanOrEqual(0.95 - 4 * Math.sqrt((0.95 * 0.05) / trials));
      // Less than 1 by what 500 captures can tell of the 95 % of a normal distribution: three standard errors.
      expect(spare).toBeGreaterThan(1 - 3 * 0.042);
      expect(spare).toBeLessThan(most);
    },
  );
});

describe('noise near the threshold', () => {
  const sampleInterval = 2e-8;
  const codesOf = (noise: number, course: (t: number) => number) => {
    const random = createRandom(51);
    const voltage = Float64Array.from(
      { length: 10_000 },
      (_, k) => course(k * sampleInterval) + noise * nextNormal(random),
    );
    const analysis = analyseCapture({ voltage, sampleInterval });
    return captureBudget({ analysis, sampleInterval, voltage: { step: 1, noise } }).warnings.map(({ code }) => code);
  };
  const since = (t: number) => (t * 2e4 + 0.4) % 1;
  const gated = (t: number) => (since(t) < 0.25 ? 400 * Math.sin((twoPi * 4.4e5 * since(t)) / 2e4) : 0);
  const ringing = (cycles: number) => (t: number) =>
    800 * Math.exp((-since(t) * 22) / cycles) * Math.sin(twoPi * 22 * since(t));

  it('is warned of where it makes bursts of its own', () => {
    expect(codesOf(5, gated)).toEqual([]);
    expect(codesOf(12, gated)).toEqual(['noise-near-threshold']);
  });

  it('is warned of where it makes pauses in bursts that ring off slowly', () => {
    expect(codesOf(5, ringing(2))).toEqual([]);
    expect(codesOf(12, ringing(4))).toEqual(['noise-near-threshold']);
  });

  it('does not matter to a continuous output', () => {
    expect(codesOf(40, (t) => 300 * Math.sin(twoPi * 4.4e5 * t))).toEqual([]);
  });
});

describe('the time base', () => {
  it('counts in full for rates, and not for a duty cycle', () => {
    const sampleInterval = 1e-8;
    const random = createRandom(41);
    const voltage = Float64Array.from({ length: 200_000 }, (_, k) =>
      (k * sampleInterval * 2e4) % 1 < 0.2 ? 300 * Math.sin(twoPi * 5e5 * k * sampleInterval) : 0,
    );
    let squares = 0;
    for (let k = 0; k < trials; k++) {
      const shown = analyseCapture({
        voltage,
        sampleInterval: sampleInterval / (1 + 0.01 * (2 * nextUniform(random) - 1)),
      });
      squares += ((shown.repetitionRate as number) - 2e4) ** 2;
    }
    const analysis = analyseCapture({ voltage, sampleInterval });
    const figures = (timeBase: number) =>
      captureBudget({ analysis, sampleInterval, voltage: { step: 1e-6 }, timeBase }).figures;
    const u = figures(0.01).repetitionRate?.standardUncertainty ?? 0;
    expect(Math.abs(u / Math.sqrt(squares / trials) - 1)).toBeLessThan(statistical);
    expect((figures(0.01).carrierFrequency?.standardUncertainty ?? 0) / 5e5).toBeCloseTo(0.01 / Math.sqrt(3), 4);
    expect(figures(0.01).dutyCycle?.standardUncertainty).toBe(figures(0).dutyCycle?.standardUncertainty);
  });
});

describe('which times have a budget', () => {
  const analyse = (voltage: Float64Array): CaptureAnalysis => analyseCapture({ voltage, sampleInterval: 1e-8 });
  const budget = (voltage: Float64Array) =>
    captureBudget({ analysis: analyse(voltage), sampleInterval: 1e-8, voltage: { step: 1 } }).figures;

  it('those that the analysis has', () => {
    const steady = budget(new Float64Array(50).fill(2));
    expect(Object.keys(steady).filter((name) => /carrier|repetition|duty/.test(name))).toEqual([]);
    const sine = budget(Float64Array.from({ length: 5000 }, (_, k) => 100 * Math.sin(0.03 * k)));
    expect(Object.keys(sine).filter((name) => /carrier|repetition|duty/.test(name))).toEqual(['carrierFrequency']);
    const pulses = budget(Float64Array.from({ length: 5000 }, (_, k) => (k % 1000 < 50 ? 100 : 0)));
    expect(Object.keys(pulses).filter((name) => /carrier|repetition|duty/.test(name))).toEqual([
      'repetitionRate',
      'dutyCycle',
    ]);
    // Of two crossings, a cycle apart, each is moved by the steps over the slope: √2·(1/√12)/(100·2π) of a cycle.
    const short = budget(Float64Array.from({ length: 600 }, (_, k) => 100 * Math.sin(0.025 * k)));
    const { standardUncertainty = 0, value = 1 } = short.carrierFrequency ?? {};
    expect(standardUncertainty / value / (Math.SQRT1_2 / Math.sqrt(3) / (100 * twoPi))).toBeCloseTo(1, 0);
  });

  it('more cycles, more bursts and a shorter interval make it smaller', () => {
    const u = (count: number, interval: number) =>
      captureBudget({
        analysis: analyseCapture({
          voltage: Float64Array.from({ length: count }, (_, k) => 100 * Math.sin(twoPi * 4e5 * k * interval)),
          sampleInterval: interval,
        }),
        sampleInterval: interval,
        voltage: { step: 1e-6 },
      }).figures.carrierFrequency?.standardUncertainty ?? Number.NaN;
    expect(u(20_000, 1e-8) / u(2000, 1e-8)).toBeLessThan(0.12);
    // By how much a straight line between two samples misses a sine grows with the square of the interval.
    expect(u(20_000, 1e-8) / u(10_000, 2e-8)).toBeCloseTo(0.25, 2);
  });

  it.each([
    ['a threshold of 0', 0, 'not-positive'],
    ['a threshold of 1', 1, 'out-of-range'],
    ['a threshold in percent', 10, 'not-a-fraction'],
  ])('refuses %s', (_, burstThreshold, code) => {
    const analysis = analyse(Float64Array.from({ length: 5000 }, (_, k) => 100 * Math.sin(0.03 * k)));
    const input = { analysis, sampleInterval: 1e-8, voltage: { step: 1 }, burstThreshold };
    expect(faultOf(() => captureBudget(input))).toMatchObject({ code, path: 'burstThreshold' });
  });
});
