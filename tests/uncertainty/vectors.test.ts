import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalculationError } from '../../src/checks/index.js';
import { createRandom, fTails, fUpperQuantile, nextNormal } from '../../src/numeric/index.js';
import {
  type CovarianceContribution,
  covarianceContributions,
  coverageEllipse,
  type DegreesOfFreedom,
  effectiveDegrees,
  jointEffectiveDegrees,
  type Model,
  normalInput,
  propagate,
  propagateAll,
  repeatedReadingsInput,
  simultaneousReadings,
} from '../../src/uncertainty/index.js';
import { valueBetween } from '../generators.js';

const thrown = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    const { code, path } = error as CalculationError;
    return `${code} ${path}`;
  }
  return 'nothing';
};
const degreesOf = (contributions: readonly CovarianceContribution[]): DegreesOfFreedom =>
  jointEffectiveDegrees(contributions).degreesOfFreedom;

const degrees = () => valueBetween(1, 200);
/** Any two variances and any correlation, ±1 included. */
const matrices = () =>
  fc
    .record({
      a: valueBetween(1e-3, 1e3),
      b: valueBetween(1e-3, 1e3),
      r: fc.oneof(valueBetween(-1, 1), fc.constantFrom(-1, 0, 1)),
    })
    .map(({ a, b, r }) => [
      [a * a, r * a * b],
      [r * a * b, b * b],
    ]);
const sources = () =>
  fc.array(
    fc
      .tuple(matrices(), degrees())
      .map(([covariance, degreesOfFreedom]) => ({ name: 's', covariance, degreesOfFreedom })),
    { minLength: 1, maxLength: 5 },
  );

describe('simultaneous readings', () => {
  const V = [5.007, 4.994, 5.005, 4.99, 4.999];
  const I = [0.019663, 0.019639, 0.01964, 0.019685, 0.019678];
  const phi = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

  it('have the means and uncertainties of each series for itself', () => {
    const { inputs, covariance, degreesOfFreedom } = simultaneousReadings({ V, I, phi }, { V: { unit: 'V' } });
    expect(inputs.V).toEqual({ ...repeatedReadingsInput(V), unit: 'V' });
    expect(inputs.I).toEqual(repeatedReadingsInput(I));
    expect(degreesOfFreedom).toBe(4);
    expect(covariance.names).toEqual(['V', 'I', 'phi']);
    // JCGM 100 H.2, recomputed: covariances of the means.
    const expected = [1.03e-5, -1.08e-8, 2.07e-6, 8.97e-11, -4.595e-9, 5.656e-7];
    const found = [0, 1, 2].flatMap((i) => covariance.rows[i]!.slice(i));
    found.forEach((value, i) => {
      expect(value / expected[i]!).toBeCloseTo(1, 11);
    });
    const turned = covariance.rows.map((_, i) => covariance.rows.map((row) => row[i]));
    expect(turned).toEqual(covariance.rows);
  });

  it('propagate as the sets evaluated one by one do, for a linear model', () => {
    const series = fc.array(fc.tuple(valueBetween(-10, 10), valueBetween(-10, 10)), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(series, valueBetween(-3, 3), (rows, c) => {
        const { inputs, correlations } = simultaneousReadings({ a: rows.map(([a]) => a), b: rows.map(([, b]) => b) });
        const model: Model<'a' | 'b'> = { arithmetic: (x, m) => m.add(x.a, m.multiply(c, x.b)) };
        const found = propagate(model, inputs, { correlations });
        const each = repeatedReadingsInput(rows.map(([a, b]) => a + c * b));
        const size = inputs.a.standardUncertainty + Math.abs(c) * inputs.b.standardUncertainty + 1e-9;
        expect(Math.abs(found.value - each.value)).toBeLessThanOrEqual(1e-13 * 100);
        // The square: near cancellation the root would magnify what rounding leaves.
        const difference = found.standardUncertainty ** 2 - each.standardUncertainty ** 2;
        expect(Math.abs(difference)).toBeLessThanOrEqual(1e-12 * size * size);
      }),
    );
  });

  it('leave out the correlation of a quantity that did not move', () => {
    const { correlations, covariance } = simultaneousReadings({ a: [1, 2, 4], b: [7, 7, 7], c: [2, 4, 8] });
    expect(correlations).toHaveLength(1);
    expect(correlations[0]?.between).toEqual(['a', 'c']);
    expect(correlations[0]?.coefficient).toBeCloseTo(1, 15);
    expect(correlations[0]?.coefficient).toBeLessThanOrEqual(1);
    expect(covariance.rows[1]).toEqual([0, 0, 0]);
  });

  it.each([
    ['no quantity', {}, 'wrong-count readings'],
    ['one reading', { a: [1], b: [2] }, 'wrong-count readings.a.readings'],
    ['series of different lengths', { a: [1, 2, 3], b: [2, 3] }, 'wrong-count readings.b'],
    ['no number', { a: [1, 2], b: [2, Number.NaN] }, 'not-a-number readings.b.readings[1]'],
    ['readings whose squares no number holds', { a: [0, 1e200], b: [1, 2] }, 'result-out-of-range covariance'],
  ])('refuse %s', (_, readings: Record<string, number[]>, fault) => {
    expect(thrown(() => simultaneousReadings(readings))).toBe(fault);
  });
});

describe('contributions to a covariance matrix', () => {
  const input = (value: number, degreesOfFreedom: DegreesOfFreedom = 'infinite') =>
    normalInput({ value, standardUncertainty: 0.1 * value, degreesOfFreedom });
  const models = {
    x: (v: Readonly<Record<'a' | 'b' | 'c' | 'd', number>>) => v.a + 2 * v.b - v.c * v.d,
    y: (v: Readonly<Record<'a' | 'b' | 'c' | 'd', number>>) => v.a * v.b + v.d,
  };

  it('add up to the variances and covariance of the outputs', () => {
    const correlation = valueBetween(-1, 1);
    const value = valueBetween(0.1, 10);
    fc.assert(
      fc.property(value, value, value, value, correlation, correlation, (a, b, c, d, r, s) => {
        const inputs = { a: input(a, 5), b: input(b, 5), c: input(c), d: input(d) };
        const correlations = [
          { between: ['a', 'b'] as const, coefficient: r },
          { between: ['c', 'd'] as const, coefficient: s },
        ];
        const both = propagateAll(models, inputs, { correlations, secondOrder: false });
        const { covariance } = jointEffectiveDegrees(covarianceContributions(both));
        const ux = both.outputs.x!.standardUncertainty;
        const uy = both.outputs.y!.standardUncertainty;
        const size = (output: 'x' | 'y') =>
          both.outputs[output]!.contributions.reduce((sum, { contribution }) => sum + Math.abs(contribution), 0);
        const [sx, sy] = [size('x'), size('y')];
        expect(Math.abs(covariance[0]![0]! - ux * ux)).toBeLessThanOrEqual(1e-14 * sx * sx);
        expect(Math.abs(covariance[1]![1]! - uy * uy)).toBeLessThanOrEqual(1e-14 * sy * sy);
        const between = both.correlations[0]?.coefficient ?? 0;
        expect(Math.abs(covariance[0]![1]! - between * ux * uy)).toBeLessThanOrEqual(1e-13 * sx * sy);
      }),
    );
  });

  it('take inputs that are correlated through others as one source', () => {
    const inputs = { a: input(1, 4), b: input(2, 4), c: input(3), d: input(4, 4) };
    const correlations = [
      { between: ['a', 'd'] as const, coefficient: 0.3 },
      { between: ['d', 'b'] as const, coefficient: -0.2 },
    ];
    const parts = covarianceContributions(propagateAll(models, inputs, { correlations }));
    expect(parts.map(({ name, degreesOfFreedom }) => [name, degreesOfFreedom])).toEqual([
      ['a, b, d', 4],
      ['c', 'infinite'],
    ]);
  });

  it('of inputs that cancel are no negative variance', () => {
    const inputs = {
      a: normalInput({ value: 0, standardUncertainty: 0.1 }),
      b: normalInput({ value: 0, standardUncertainty: 0.3 }),
    };
    const correlations = [{ between: ['a', 'b'] as const, coefficient: 1 }];
    const both = propagateAll({ x: (v) => 3 * v.a - v.b, y: (v) => v.a }, inputs, { correlations });
    const joint = jointEffectiveDegrees(covarianceContributions(both));
    expect(joint.covariance[0]![0]).toBeGreaterThanOrEqual(0);
    expect(joint.covariance[0]![0]).toBeLessThan(1e-30);
    expect(joint.covariance[1]![1]).toBeCloseTo(0.01, 15);
  });

  it('refuse correlated inputs with different degrees of freedom', () => {
    const inputs = { a: input(1, 4), b: input(2, 5), c: input(3), d: input(4) };
    const correlations = [{ between: ['a', 'b'] as const, coefficient: 0.3 }];
    const both = propagateAll(models, inputs, { correlations });
    expect(thrown(() => covarianceContributions(both))).toBe('out-of-range inputs.b.degreesOfFreedom');
  });
});

describe('contributions whose squares no number holds', () => {
  it('are refused', () => {
    const huge = normalInput({ value: 0, standardUncertainty: 1e200 });
    const both = propagateAll({ x: ({ a }) => a, y: ({ a }) => 2 * a }, { a: huge }, { secondOrder: false });
    expect(thrown(() => covarianceContributions(both))).toBe('result-out-of-range covariance');
  });
});

describe('joint effective degrees of freedom', () => {
  it('of one source are its own', () => {
    fc.assert(
      fc.property(matrices(), degrees(), (covariance, degreesOfFreedom) => {
        const nu = degreesOf([{ name: 's', covariance, degreesOfFreedom }]) as number;
        expect(Math.abs(nu / degreesOfFreedom - 1)).toBeLessThanOrEqual(2 * Number.EPSILON);
      }),
    );
  });

  it('of one output are those of Welch and Satterthwaite', () => {
    const term = fc.record({ u: valueBetween(1e-3, 1e3), nu: degrees() });
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 6 }), (terms) => {
        const expected = effectiveDegrees(
          terms.map(({ u, nu }) => ({ name: 's', contribution: u, degreesOfFreedom: nu })),
          Math.hypot(...terms.map(({ u }) => u)),
          new Set(),
        ) as { degreesOfFreedom: number };
        for (const covarianceOf of [
          (u: number) => [[u * u]],
          (u: number) => [
            [u * u, 0],
            [0, 0],
          ],
        ]) {
          const nu = degreesOf(
            terms.map((t) => ({ name: 's', covariance: covarianceOf(t.u), degreesOfFreedom: t.nu })),
          );
          expect((nu as number) / expected.degreesOfFreedom).toBeCloseTo(1, 14);
        }
      }),
    );
  });

  it('lie between the fewest degrees of a source and those of all together', () => {
    fc.assert(
      fc.property(sources(), (list) => {
        const nu = degreesOf(list) as number;
        const own = list.map(({ degreesOfFreedom }) => degreesOfFreedom);
        expect(nu).toBeGreaterThanOrEqual(Math.min(...own) * (1 - 1e-14));
        expect(nu).toBeLessThanOrEqual(own.reduce((sum, x) => sum + x, 0) * (1 + 1e-14));
      }),
    );
  });

  it('do not depend on the unit, on the order of the sources or of the outputs', () => {
    fc.assert(
      fc.property(sources(), valueBetween(1e-6, 1e6), (list, unit) => {
        const nu = degreesOf(list) as number;
        const scaled = list.map((s) => ({
          ...s,
          covariance: s.covariance.map((row) => row.map((v) => v * unit * unit)),
        }));
        const turned = list.map((s) => ({
          ...s,
          covariance: s.covariance.toReversed().map((row) => row.toReversed()),
        }));
        for (const other of [scaled, list.toReversed(), turned]) {
          expect((degreesOf(other) as number) / nu).toBeCloseTo(1, 13);
        }
      }),
    );
  });

  it('are infinite where those of every source are, or finite ones bring nothing', () => {
    const unit = [
      [1, 0],
      [0, 1],
    ];
    const none = [
      [0, 0],
      [0, 0],
    ];
    const known = { name: 'a', covariance: unit, degreesOfFreedom: 'infinite' } as const;
    expect(degreesOf([known])).toBe('infinite');
    expect(degreesOf([known, { name: 'b', covariance: none, degreesOfFreedom: 3 }])).toBe('infinite');
    const nothing = jointEffectiveDegrees([{ name: 'b', covariance: none, degreesOfFreedom: 3 }]);
    expect(nothing.covariance).toEqual(none);
    expect(nothing.degreesOfFreedom).toBe('infinite');
  });

  it('show every source in the working', () => {
    const joint = jointEffectiveDegrees([
      { name: 'noise', covariance: [[4]], degreesOfFreedom: 4 },
      { name: 'meter', covariance: [[4]], degreesOfFreedom: 'infinite' },
    ]);
    expect(joint.working.map(({ label, value }) => [label, value])).toEqual([
      ['all sources', 128],
      ['noise', 32],
      ['sources up to noise', 8],
      ['effective degrees of freedom', 16],
    ]);
  });

  const good = [
    [1, 0.5],
    [0.5, 1],
  ];
  const of = (covariance: number[][], degreesOfFreedom = 4) => ({ name: 's', covariance, degreesOfFreedom });
  it.each([
    ['no source', [], 'wrong-count contributions'],
    ['no output', [of([])], 'wrong-count contributions'],
    [
      'three outputs',
      [
        of([
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
        ]),
      ],
      'matrix-shape contributions[0].covariance',
    ],
    ['matrices of different sizes', [of(good), of([[1]])], 'matrix-shape contributions[1].covariance'],
    ['a row too short', [of([[1, 0], [0]])], 'matrix-shape contributions[0].covariance[1]'],
    [
      'a matrix that is not symmetric',
      [
        of([
          [1, 0.5],
          [0.4, 1],
        ]),
      ],
      'not-symmetric contributions[0].covariance[1][0]',
    ],
    [
      'a correlation beyond 1',
      [
        of([
          [1, 1.2],
          [1.2, 1],
        ]),
      ],
      'not-positive-semidefinite contributions[0].covariance[1]',
    ],
    [
      'a negative variance',
      [
        of(good),
        of([
          [-1, 0],
          [0, 1],
        ]),
      ],
      'not-positive-semidefinite contributions[1].covariance[0]',
    ],
    [
      'no number',
      [
        of([
          [Number.NaN, 0],
          [0, 1],
        ]),
      ],
      'not-a-number contributions[0].covariance[0][0]',
    ],
    ['0 degrees of freedom', [of(good, 0)], 'out-of-range contributions[0].degreesOfFreedom'],
    ['variances whose squares no number holds', [of([[1e-160]])], 'result-out-of-range covariance'],
    ['the same, too large', [of([[1e160]])], 'result-out-of-range covariance'],
  ])('refuse %s', (_, contributions, fault) => {
    expect(thrown(() => jointEffectiveDegrees(contributions))).toBe(fault);
  });
});

describe('elliptical coverage region', () => {
  const level = () => valueBetween(0.01, 0.9999);

  it("has Hotelling's factor, as the general F distribution gives it", () => {
    fc.assert(
      fc.property(valueBetween(1.05, 500), level(), (nu, p) => {
        const { coverageFactor: k } = coverageEllipse({
          covariance: [
            [1, 0],
            [0, 1],
          ],
          degreesOfFreedom: nu,
          coverageProbability: p,
        });
        const f = (k * k * (nu - 1)) / (2 * nu);
        expect(fTails(f, 2, nu - 1).upper / (1 - p)).toBeCloseTo(1, 11);
        if (nu > 3) expect(f / fUpperQuantile(1 - p, 2, nu - 1)).toBeCloseTo(1, 11);
      }),
    );
  });

  it('comes to that of infinite degrees of freedom', () => {
    const covariance = [
      [1, 0],
      [0, 1],
    ];
    const { coverageFactor } = coverageEllipse({ covariance });
    expect(coverageEllipse({ covariance, degreesOfFreedom: 1e12 }).coverageFactor / coverageFactor).toBeCloseTo(1, 11);
  });

  it('has axes and a direction that make its matrix', () => {
    fc.assert(
      fc.property(matrices(), degrees(), level(), (covariance, nu, p) => {
        const ellipse = coverageEllipse({ covariance, degreesOfFreedom: nu + 0.1, coverageProbability: p });
        const [a, b] = ellipse.semiAxes.map((x) => x / ellipse.coverageFactor) as [number, number];
        expect(a).toBeGreaterThanOrEqual(b * (1 - 1e-7));
        const [c, s] = [Math.cos(ellipse.angle), Math.sin(ellipse.angle)];
        const size = covariance[0]![0]! + covariance[1]![1]!;
        const near = (found: number, expected: number) => expect(Math.abs(found - expected)).toBeLessThan(1e-14 * size);
        near(a * a * c * c + b * b * s * s, covariance[0]![0]!);
        near(a * a * s * s + b * b * c * c, covariance[1]![1]!);
        near((a * a - b * b) * c * s, covariance[0]![1]!);
        expect(Math.abs(ellipse.angle)).toBeLessThanOrEqual(Math.PI / 2);
      }),
    );
  });

  it('of nothing is a point', () => {
    const none = [
      [0, 0],
      [0, 0],
    ];
    const { semiAxes, angle } = coverageEllipse({ covariance: none });
    expect([semiAxes, angle]).toEqual([[0, 0], 0]);
  });

  it('holds the true pair in 95 of 100 series of six simultaneous readings', () => {
    const random = createRandom(20021);
    const trials = 20_000;
    let inside = 0;
    for (let i = 0; i < trials; i++) {
      const x: number[] = [];
      const y: number[] = [];
      for (let n = 0; n < 6; n++) {
        const [a, b] = [nextNormal(random), nextNormal(random)];
        x.push(a);
        y.push(0.8 * a + 0.6 * b);
      }
      const { inputs, covariance, degreesOfFreedom } = simultaneousReadings({ x, y });
      const { coverageFactor } = coverageEllipse({ covariance: covariance.rows, degreesOfFreedom });
      const [[xx, xy], [, yy]] = covariance.rows as [[number, number], [number, number]];
      const [p, q] = [inputs.x.value, inputs.y.value];
      const square = (p * p * yy - 2 * p * q * xy + q * q * xx) / (xx * yy - xy * xy);
      if (square <= coverageFactor ** 2) inside++;
    }
    // Three standard errors of a part of 0.95.
    expect(Math.abs(inside / trials - 0.95)).toBeLessThan(3 * Math.sqrt((0.95 * 0.05) / trials));
  });

  const unit = [
    [1, 0],
    [0, 1],
  ];
  it.each([
    ['one output', { covariance: [[1]] }, 'matrix-shape covariance'],
    ['a row too short', { covariance: [[1, 0], [0]] }, 'matrix-shape covariance[1]'],
    [
      'a matrix that is not symmetric',
      {
        covariance: [
          [1, 0],
          [0.1, 1],
        ],
      },
      'not-symmetric covariance[1][0]',
    ],
    [
      'a correlation beyond 1',
      {
        covariance: [
          [1, 2],
          [2, 1],
        ],
      },
      'not-positive-semidefinite covariance[1]',
    ],
    ['one degree of freedom', { covariance: unit, degreesOfFreedom: 1 }, 'out-of-range degreesOfFreedom'],
    ['0 degrees of freedom', { covariance: unit, degreesOfFreedom: 0 }, 'out-of-range degreesOfFreedom'],
    [
      'a factor that no number holds',
      { covariance: unit, degreesOfFreedom: 1 + 1e-9 },
      'result-out-of-range coverageFactor',
    ],
    ['a percentage', { covariance: unit, coverageProbability: 95 }, 'not-a-fraction coverageProbability'],
    ['certainty', { covariance: unit, coverageProbability: 1 }, 'not-a-fraction coverageProbability'],
    [
      'variances whose squares no number holds',
      {
        covariance: [
          [1e-170, 0],
          [0, 0],
        ],
      },
      'result-out-of-range semiAxes',
    ],
  ])('refuses %s', (_, input, fault) => {
    expect(thrown(() => coverageEllipse(input))).toBe(fault);
  });
});
