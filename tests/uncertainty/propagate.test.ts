import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ArithmeticModel } from '../../src/uncertainty/index.js';
import {
  expandedUncertainty,
  monteCarlo,
  normalInput,
  propagate,
  propagateAll,
  rectangularInput,
  repeatedReadingsInput,
} from '../../src/uncertainty/index.js';
import { current, load } from '../generators.js';

const relative = fc.double({ min: 1e-4, max: 0.05, noNaN: true });

describe('first order', () => {
  it('gives the closed form of P = I²R in all three forms of a model', () => {
    fc.assert(
      fc.property(current(), load(), relative, relative, (I, R, ui, ur) => {
        const inputs = {
          I: normalInput({ value: I, standardUncertainty: I * ui }),
          R: normalInput({ value: R, standardUncertainty: R * ur }),
        };
        const expected = I * I * R * Math.hypot(2 * ui, ur);
        const exact = propagate({ arithmetic: (x, m) => m.multiply(m.power(x.I, 2), x.R) }, inputs);
        const plain = propagate((x) => x.I * x.I * x.R, inputs);
        const analytic = propagate(
          { evaluate: (x) => x.I * x.I * x.R, sensitivities: { I: (x) => 2 * x.I * x.R, R: (x) => x.I * x.I } },
          inputs,
        );
        expect(exact.standardUncertainty / expected).toBeCloseTo(1, 13);
        expect(analytic.standardUncertainty / expected).toBeCloseTo(1, 13);
        expect(plain.standardUncertainty / expected).toBeCloseTo(1, 9);
        expect([exact.method, plain.method, analytic.method]).toEqual([
          'forward mode',
          'extrapolated differences',
          'analytic',
        ]);
        for (const result of [exact, plain, analytic]) {
          expect(result.contributions.reduce((sum, row) => sum + row.share, 0)).toBeCloseTo(1, 12);
          expect(result.degreesOfFreedom).toBe('infinite');
        }
      }),
    );
  });

  it('differentiates every function of the arithmetic like its differences', () => {
    const inputs = {
      a: normalInput({ value: 1.3, standardUncertainty: 0.01 }),
      b: normalInput({ value: 0.7, standardUncertainty: 0.02 }),
    };
    const exact = propagate(
      {
        arithmetic: (x, m) =>
          m.add(
            m.divide(m.exp(m.sin(x.a)), m.sqrt(m.add(m.cos(x.b), 2))),
            m.subtract(m.log(x.a), m.multiply(3, m.power(x.b, -1.5))),
          ),
      },
      inputs,
    );
    const plain = propagate(
      (x) => Math.exp(Math.sin(x.a)) / Math.sqrt(Math.cos(x.b) + 2) + Math.log(x.a) - 3 * x.b ** -1.5,
      inputs,
    );
    expect(plain.value).toBeCloseTo(exact.value, 13);
    exact.contributions.forEach((row, i) => {
      expect((plain.contributions[i]?.sensitivity ?? 0) / row.sensitivity).toBeCloseTo(1, 9);
    });
    expect(plain.secondOrder?.shift).toBeCloseTo(exact.secondOrder?.shift ?? 0, 9);
    expect((plain.secondOrder?.standardUncertainty ?? 0) / (exact.secondOrder?.standardUncertainty ?? 1)).toBeCloseTo(
      1,
      7,
    );
  });

  it('gives every input the same sensitivity alone as beside others, to the last bit', () => {
    const number = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(number, number, number, fc.constantFrom(-1.5, 0, 1, 2, 3), (a, b, c, exponent) => {
        const values = { a, b, c };
        const model = (constants: Partial<Record<string, number>>): ArithmeticModel => ({
          arithmetic: (x, m) => {
            const at = (name: string) => constants[name] ?? (x[name] as never);
            const quotient = m.divide(m.exp(m.sin(at('a'))), m.sqrt(m.add(m.cos(at('b')), 2)));
            const rest = m.subtract(m.log(at('c')), m.multiply(at('a'), m.power(at('b'), exponent)));
            return m.multiply(m.add(quotient, rest), m.multiply(3, at('c')));
          },
        });
        const input = (value: number) => normalInput({ value, standardUncertainty: 0.01 });
        const together = propagate(model({}), { a: input(a), b: input(b), c: input(c) });
        for (const [i, name] of (['a', 'b', 'c'] as const).entries()) {
          const others = { ...values, [name]: undefined } as Partial<Record<string, number>>;
          const alone = propagate(model(others), { [name]: input(values[name]) });
          expect(alone.value).toBe(together.value);
          expect(alone.contributions[0]?.sensitivity).toBe(together.contributions[i]?.sensitivity);
        }
      }),
    );
  });

  it('names the input whose slope is infinite, not the one beside it', () => {
    const inputs = {
      a: normalInput({ value: 2, standardUncertainty: 0.1 }),
      b: normalInput({ value: 0, standardUncertainty: 0.1 }),
    };
    expect(() => propagate({ arithmetic: (x, m) => m.add(x.a, m.sqrt(x.b)) }, inputs)).toThrow(
      expect.objectContaining({ code: 'result-out-of-range', path: 'model, derivative by b' }),
    );
  });

  it('takes a model that ignores an input, or all', () => {
    const inputs = {
      a: normalInput({ value: 2, standardUncertainty: 0.1 }),
      b: normalInput({ value: 5, standardUncertainty: 0.1 }),
    };
    const one = propagate({ arithmetic: (x, m) => m.power(x.a, 0) }, inputs);
    expect(one).toMatchObject({ value: 1, standardUncertainty: 0 });
    expect(one.contributions.map((row) => row.sensitivity)).toEqual([0, 0]);
    const none = propagate({ arithmetic: (_, m) => m.add(3, 4) }, inputs);
    expect(none).toMatchObject({ value: 7, standardUncertainty: 0 });
  });

  it('x − x is exactly 0 ± 0 when both are one', () => {
    const x = normalInput({ value: 3, standardUncertainty: 0.1 });
    const same = propagate({ arithmetic: (v, m) => m.subtract(v.x, v.x) }, { x });
    expect(same).toMatchObject({ value: 0, standardUncertainty: 0 });
    const correlations = [{ between: ['a', 'b'] as const, coefficient: 1 }];
    const two = propagate((v) => v.a - v.b, { a: x, b: x }, { correlations });
    expect(two).toMatchObject({ value: 0, standardUncertainty: 0 });
  });

  it('neither overflows nor vanishes', () => {
    const huge = { x: normalInput({ value: 1e200, standardUncertainty: 1e199 }) };
    expect(propagate({ arithmetic: (v, m) => m.multiply(v.x, 1e100) }, huge).standardUncertainty).toBeCloseTo(
      1e299,
      -286,
    );
    const tiny = { x: normalInput({ value: 1e-200, standardUncertainty: 1e-201 }) };
    expect(propagate({ arithmetic: (v, m) => m.multiply(v.x, 1) }, tiny).standardUncertainty / 1e-201).toBeCloseTo(
      1,
      12,
    );
  });

  it('says so when the uncertainty itself is beyond the numbers', () => {
    const x = normalInput({ value: 1e10, standardUncertainty: 1e10 });
    expect(() =>
      propagate({ arithmetic: (v, m) => m.multiply(v.x, 1e298) }, { x }, { secondOrder: false }),
    ).not.toThrow();
    const wide = normalInput({ value: 1, standardUncertainty: 1e20 });
    for (const secondOrder of [false, true]) {
      expect(() => propagate({ arithmetic: (v, m) => m.multiply(v.x, 1e298) }, { x: wide }, { secondOrder })).toThrow(
        expect.objectContaining({ code: 'result-out-of-range', path: 'standardUncertainty' }),
      );
    }
  });

  it('works where the model does not exist on one side', () => {
    const inputs = { x: normalInput({ value: 0.001, standardUncertainty: 0.01 }) };
    const result = propagate(({ x }) => Math.sqrt(x), inputs);
    const [row] = result.contributions;
    expect((row?.sensitivity ?? 0) * 2 * Math.sqrt(0.001)).toBeCloseTo(1, 6);
  });

  it('gives a sensitivity to an input without uncertainty too', () => {
    const inputs = { x: normalInput({ value: 5, standardUncertainty: 0 }) };
    expect(propagate(({ x }) => x * x, inputs).contributions[0]?.sensitivity).toBeCloseTo(10, 8);
  });
});

describe('degrees of freedom', () => {
  const readings = repeatedReadingsInput([10.1, 10.2, 9.9, 10]);
  const certificate = rectangularInput({ value: 0, halfWidth: 0.05 });

  it('follow from Welch and Satterthwaite', () => {
    const result = propagate((x) => x.a + x.b, { a: readings, b: certificate });
    const expected = result.standardUncertainty ** 4 / (readings.standardUncertainty ** 4 / 3);
    expect(Number(result.degreesOfFreedom) / expected).toBeCloseTo(1, 9);
  });

  it('are absent with a reason for correlated inputs with finite degrees', () => {
    const correlations = [{ between: ['a', 'b'] as const, coefficient: 0.4 }];
    const result = propagate((x) => x.a + x.b, { a: readings, b: certificate }, { correlations });
    expect(result.degreesOfFreedom).toBeUndefined();
    expect(result.degreesOfFreedomReason).toContain('a are correlated');
  });

  it('stay defined when only inputs with infinite degrees are correlated', () => {
    const correlations = [{ between: ['b', 'c'] as const, coefficient: 0.4 }];
    const result = propagate((x) => x.a + x.b + x.c, { a: readings, b: certificate, c: certificate }, { correlations });
    expect(result.degreesOfFreedom).toBeGreaterThan(3);
  });

  it('are infinite where a finite number of them cannot be told from it', () => {
    const a = normalInput({ value: 1, standardUncertainty: 1 });
    const b = normalInput({ value: 1, standardUncertainty: 1e-78, degreesOfFreedom: 5 });
    expect(propagate({ arithmetic: (x, m) => m.add(x.a, x.b) }, { a, b }).degreesOfFreedom).toBe('infinite');
  });

  it('take the next lower whole number only by name', () => {
    const k = (degreesRule: 'exact' | 'truncated') =>
      expandedUncertainty({ standardUncertainty: 1, degreesOfFreedom: 18.9987, degreesRule }).degreesOfFreedom;
    expect(k('exact')).toBe(18.9987);
    expect(k('truncated')).toBe(18);
  });
});

describe('second order', () => {
  it('is silent for a linear model and exact for a square', () => {
    const x = normalInput({ value: 2, standardUncertainty: 0.5 });
    const linear = propagate({ arithmetic: (v, m) => m.multiply(3, v.x) }, { x });
    expect(linear.secondOrder).toMatchObject({ standardUncertainty: 1.5, shift: 0, firstOrderEnough: true });
    // Var(x²) = 4μ²σ² + 2σ⁴, E(x²) = μ² + σ²
    const square = propagate({ arithmetic: (v, m) => m.power(v.x, 2) }, { x });
    expect(square.secondOrder?.standardUncertainty).toBeCloseTo(Math.sqrt(4 * 4 * 0.25 + 2 * 0.0625), 12);
    expect(square.secondOrder?.shift).toBeCloseTo(0.25, 12);
  });

  it('agrees with the exact variance of a product of independent inputs', () => {
    const a = normalInput({ value: 2, standardUncertainty: 0.5 });
    const b = normalInput({ value: 3, standardUncertainty: 0.7 });
    const product = propagate({ arithmetic: (x, m) => m.multiply(x.a, x.b) }, { a, b });
    const exact = Math.sqrt(4 * 0.49 + 9 * 0.25 + 0.25 * 0.49);
    expect(product.secondOrder?.standardUncertainty).toBeCloseTo(exact, 12);
  });

  it('is left out when not asked for', () => {
    const x = normalInput({ value: 2, standardUncertainty: 0.5 });
    expect(propagate((v) => v.x, { x }, { secondOrder: false }).secondOrder).toBeUndefined();
  });
});

describe('correlations that cannot be', () => {
  const x = normalInput({ value: 1, standardUncertainty: 1 });
  const inputs = { a: x, b: x, c: x };
  const sum = (v: Readonly<Record<'a' | 'b' | 'c', number>>): number => v.a + v.b + v.c;
  it.each([
    [[{ between: ['a', 'b'], coefficient: 1.2 }], 'out-of-range', 'correlations[0].coefficient'],
    [[{ between: ['a', 'z'], coefficient: 0.2 }], 'unknown-choice', 'correlations[0].between'],
    [[{ between: ['a', 'a'], coefficient: 1 }], 'out-of-range', 'correlations[0].between'],
    [
      [
        { between: ['a', 'b'], coefficient: 0.1 },
        { between: ['b', 'a'], coefficient: 0.1 },
      ],
      'duplicate',
      'correlations[1].between',
    ],
    [
      [
        { between: ['a', 'b'], coefficient: 0.9 },
        { between: ['b', 'c'], coefficient: 0.9 },
        { between: ['a', 'c'], coefficient: -0.9 },
      ],
      'not-positive-semidefinite',
      'correlations',
    ],
  ] as const)('%o', (correlations, code, path) => {
    expect(() => propagate(sum, inputs, { correlations })).toThrow(expect.objectContaining({ code, path }));
  });
});

describe('inputs that cannot be', () => {
  it.each([
    [() => normalInput({ value: 1, standardUncertainty: -1 }), 'negative'],
    [() => normalInput({ value: 1, standardUncertainty: 1, degreesOfFreedom: 0 }), 'out-of-range'],
    [() => normalInput({ value: Number.NaN, standardUncertainty: 1 }), 'not-a-number'],
    [() => repeatedReadingsInput([1]), 'wrong-count'],
    [() => expandedUncertainty({ standardUncertainty: 1, coverageProbability: 95 }), 'not-a-fraction'],
    [() => propagate(() => 1, {}), 'wrong-count'],
    [
      () =>
        propagate({ arithmetic: (x, m) => m.log(x.x) }, { x: normalInput({ value: -1, standardUncertainty: 0.1 }) }),
      'function-not-finite',
    ],
    [
      () =>
        propagate({ arithmetic: () => undefined as never }, { x: normalInput({ value: 1, standardUncertainty: 0.1 }) }),
      'function-not-finite',
    ],
    [
      () =>
        propagate(
          {
            arithmetic: () => {
              throw new Error('no model');
            },
          },
          { x: normalInput({ value: 1, standardUncertainty: 0.1 }) },
        ),
      'function-not-finite',
    ],
    [
      () => propagate(({ x }) => Math.log(x), { x: normalInput({ value: -1, standardUncertainty: 0.1 }) }),
      'function-not-finite',
    ],
  ])('%s', (work, code) => {
    expect(work).toThrow(expect.objectContaining({ code }));
  });
});

describe('several outputs', () => {
  it('carry the correlation that common inputs make', () => {
    const inputs = {
      V: normalInput({ value: 200, standardUncertainty: 1 }),
      R: normalInput({ value: 400, standardUncertainty: 2 }),
    };
    const both = propagateAll({ current: (x) => x.V / x.R, power: (x) => x.V ** 2 / x.R }, inputs);
    const [pair] = both.correlations;
    // By hand: relative contributions (V, R) are (0.005, −0.005) and (0.01, −0.005).
    expect(pair?.coefficient).toBeCloseTo(
      (0.005 * 0.01 + 0.005 ** 2) / (Math.hypot(0.005, 0.005) * Math.hypot(0.01, 0.005)),
      8,
    );
  });
});

describe('first order against Monte Carlo, for linear models', () => {
  it('agrees within three standard errors for at least 95 of the seeds 1 to 100', () => {
    const inputs = {
      a: normalInput({ value: 1, standardUncertainty: 0.3 }),
      b: rectangularInput({ value: 2, halfWidth: 0.8 }),
    };
    const model = (x: Readonly<Record<'a' | 'b', number>>): number => 2 * x.a - x.b;
    const first = propagate(model, inputs);
    const trials = 4000;
    let within = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const run = monteCarlo(model, inputs, { seed, trials, interval: 'none' });
      const error = first.standardUncertainty / Math.sqrt(trials);
      if (Math.abs(run.value - first.value) <= 3 * error) within++;
    }
    expect(within).toBeGreaterThanOrEqual(95);
  });
});
