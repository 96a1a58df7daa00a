import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { type CurvePoint, fitRegimes, regimeCurve } from '../../src/curve/index.js';

const model = regimeCurve({ power: 300, currentLimit: 2, voltageLimit: 600 });
const at = (curve: { powerAt: (load: number) => number }, loads: readonly number[]): CurvePoint[] =>
  loads.map((load) => ({ load, power: curve.powerAt(load) }));

describe('fit of the three-regime model', () => {
  it('gives the limits back from points that lie on it', () => {
    const { limits, undetermined, points, scatter, warnings } = fitRegimes(
      at(model, [10, 25, 50, 100, 300, 1000, 1500, 2000]),
    );
    expect(limits.currentLimit).toBeCloseTo(2, 13);
    expect(limits.power).toBeCloseTo(300, 11);
    expect(limits.voltageLimit).toBeCloseTo(600, 11);
    expect(undetermined).toEqual([]);
    expect(warnings).toEqual([]);
    expect(scatter).toBeLessThan(1e-14);
    expect(points.map(({ regime }) => regime)).toEqual([
      ...Array(3).fill('constant-current'),
      ...Array(3).fill('constant-power'),
      ...Array(2).fill('constant-voltage'),
    ]);
    for (const { power, fitted } of points) expect(fitted! / power).toBeCloseTo(1, 14);
  });

  it('counts a point at a corner for both regimes', () => {
    const { limits } = fitRegimes(at(model, [50, 75, 300, 1200, 2000]));
    expect(limits.currentLimit).toBeCloseTo(2, 13);
    expect(limits.voltageLimit).toBeCloseTo(600, 11);
  });

  it('leaves a regime out that has no point, and says what the points say of its limit', () => {
    const { limits, undetermined } = fitRegimes(at(model, [100, 200, 500, 1000]));
    expect(Object.keys(limits)).toEqual(['power']);
    expect(limits.power).toBeCloseTo(300, 11);
    expect(undetermined).toEqual([
      {
        regime: 'constant-current',
        reason: 'no point lies on it, and two are needed',
        atLeast: expect.closeTo(Math.sqrt(3), 13),
      },
      {
        regime: 'constant-voltage',
        reason: 'no point lies on it, and two are needed',
        atLeast: expect.closeTo(Math.sqrt(3e5), 10),
      },
    ]);
  });

  it('leaves a regime out that has one point, and keeps that point from pulling at the others', () => {
    const { limits, undetermined, points } = fitRegimes(at(model, [40, 100, 300, 1000, 1500, 2000]));
    expect(limits.power).toBeCloseTo(300, 11);
    expect(limits.voltageLimit).toBeCloseTo(600, 11);
    expect(undetermined.map(({ regime }) => regime)).toEqual(['constant-current']);
    expect(undetermined[0]?.reason).toMatch(/^only one point/);
    expect(points[0]).toEqual({ load: 40, power: 160, regime: 'constant-current' });
    expect(points[1]).toHaveProperty('residual');
  });

  it('does not take a point near a corner for a second point of a regime', () => {
    // 76 ohm is on the flat; the line of constant current passes 1.3 % above it.
    const { limits, undetermined } = fitRegimes(at(model, [40, 76, 100, 300, 1000]));
    expect(limits.power).toBeCloseTo(300, 11);
    expect(undetermined.map(({ regime }) => regime)).toEqual(['constant-current', 'constant-voltage']);
  });

  it('does not take a point far above the model for one that supports a regime', () => {
    // 360 W at 90 ohm lies on the line of 2 A through 80 W at 20 ohm, where the model is held at about 200 W.
    const { limits, undetermined, warnings } = fitRegimes([
      { load: 20, power: 80 },
      { load: 90, power: 360 },
      ...at(regimeCurve({ power: 200, currentLimit: 2 }), [100, 110, 120, 130, 140, 150, 160, 170, 180, 190, 200]),
    ]);
    expect(Object.keys(limits)).toEqual(['power']);
    expect(undetermined.map(({ regime }) => regime)).toEqual(['constant-current', 'constant-voltage']);
    expect(warnings).toHaveLength(1);
  });

  it('finds current and voltage limits of a generator that never reaches full power', () => {
    const never = regimeCurve({ power: 300, currentLimit: 1, voltageLimit: 200 });
    const { limits, undetermined } = fitRegimes(at(never, [50, 100, 150, 300, 600, 1200]));
    expect(limits.currentLimit).toBeCloseTo(1, 13);
    expect(limits.voltageLimit).toBeCloseTo(200, 11);
    expect(undetermined.map(({ regime }) => regime)).toEqual(['constant-power']);
    expect(undetermined[0]?.atLeast).toBeLessThanOrEqual(200);
  });

  it('takes rounding of published powers for scatter, not for further regimes', () => {
    const { limits, undetermined, scatter } = fitRegimes([
      { load: 100, power: 301 },
      { load: 200, power: 300 },
      { load: 300, power: 299 },
      { load: 500, power: 300 },
      { load: 800, power: 302 },
      { load: 1200, power: 298 },
    ]);
    expect(limits.power).toBeCloseTo(300, 0);
    expect(undetermined).toHaveLength(2);
    expect(scatter).toBeGreaterThan(0.002);
    expect(scatter).toBeLessThan(0.006);
  });

  it('takes 1 % of noise about one power for a further regime once in a hundred times, and never gives its limit', () => {
    // Park–Miller generator, so that the trials are the same everywhere.
    let state = 20_011;
    const uniform = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    let mistaken = 0;
    for (let trial = 0; trial < 400; trial++) {
      const { points, limits } = fitRegimes(
        [50, 100, 200, 500, 1000, 2000].map((load) => ({ load, power: 100 * Math.exp(0.01 * normal()) })),
      );
      expect(Object.keys(limits)).toEqual(['power']);
      if (points.some(({ regime }) => regime !== 'constant-power')) mistaken += 1;
    }
    expect(mistaken).toBeLessThanOrEqual(12);
  });

  it('determines nothing from points that no regime explains, and warns', () => {
    const { limits, warnings, undetermined } = fitRegimes([
      { load: 50, power: 150 },
      { load: 200, power: 300 },
      { load: 2000, power: 75 },
    ]);
    expect(limits).toEqual({});
    expect(undetermined).toHaveLength(3);
    expect(warnings).toMatchObject([{ code: 'regimes-do-not-fit' }]);
  });

  it('has two points speak only for a regime whose slope they show', () => {
    const two = (a: number, b: number) =>
      Object.keys(
        fitRegimes([
          { load: 100, power: a },
          { load: 200, power: b },
        ]).limits,
      );
    expect(two(100, 200)).toEqual(['currentLimit']);
    expect(two(100, 100)).toEqual(['power']);
    expect(two(100, 50)).toEqual(['voltageLimit']);
    expect(two(100, 75)).toEqual([]);
  });

  it.each([
    [[{ load: 100, power: 3 }], 'wrong-count', 'points'],
    [Array.from({ length: 201 }, (_, i) => ({ load: i + 1, power: 1 })), 'wrong-count', 'points'],
    [
      [
        { load: 100, power: 3 },
        { load: 90, power: 3 },
      ],
      'not-ascending',
      'points[1].load',
    ],
    [
      [
        { load: 100, power: 3 },
        { load: 110, power: -3 },
      ],
      'not-positive',
      'points[1].power',
    ],
  ] as const)('refuses bad points, case %#', (points, code, path) => {
    let fault: unknown;
    try {
      fitRegimes(points);
    } catch (error) {
      fault = error;
    }
    expect(fault).toBeInstanceOf(CalculationError);
    expect(fault).toMatchObject({ code, path });
  });

  it('copes with the most points it takes', () => {
    const loads = Array.from({ length: 200 }, (_, i) => 10 * 500 ** (i / 199));
    const { limits } = fitRegimes(at(model, loads));
    expect(limits.currentLimit).toBeCloseTo(2, 12);
    expect(limits.voltageLimit).toBeCloseTo(600, 10);
  });
});
