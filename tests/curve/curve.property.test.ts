import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CurvePoint,
  type CurveReading,
  compareSweep,
  explainReading,
  fitRegimes,
  type Interpolation,
  loadCurve,
  type RegimeLimits,
  regimeCurve,
  scaleCurve,
} from '../../src/curve/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import { curvePoints, load, regimeLimits, valueBetween } from '../generators.js';

const interpolation = fc.constantFrom<Interpolation>('log-log', 'monotone-cubic', 'monotone-cubic-log', 'linear');
const share = valueBetween(0, 1);

function loadAt(points: readonly CurvePoint[], part: number): number {
  const from = points[0]!.load;
  const to = points.at(-1)!.load;
  return Math.min(to, Math.max(from, from * (to / from) ** part));
}

function expectRecomputed(working: readonly Step[]): void {
  for (const { expression, inputs, value } of working) {
    const again = recompute({ expression, inputs });
    expect(Math.abs(again - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
  }
}

/** What the last step of a symbol says. */
function lastValue(working: readonly Step[], symbol: string): number | undefined {
  return working.findLast((entry) => entry.symbol === symbol)?.value;
}

describe('every interpolation', () => {
  it('stays between the powers of the two knots', () => {
    fc.assert(
      fc.property(curvePoints(), interpolation, share, (points, kind, part) => {
        const { power, stretch } = explainReading(loadCurve(points, { interpolation: kind }), loadAt(points, part));
        const ends = [points[stretch.index]!.power, points[stretch.index + 1]!.power];
        expect(power).toBeGreaterThanOrEqual(Math.min(...ends));
        expect(power).toBeLessThanOrEqual(Math.max(...ends));
      }),
      { numRuns: 500 },
    );
  });

  it('rises or falls through a stretch as its knots do', () => {
    fc.assert(
      fc.property(curvePoints({ maximum: 6 }), interpolation, share, share, fc.nat(), (points, kind, a, b, which) => {
        const i = which % (points.length - 1);
        const [low, high] = [points[i]!, points[i + 1]!];
        const [near, far] = [Math.min(a, b), Math.max(a, b)].map((part) => low.load + (high.load - low.load) * part);
        const curve = loadCurve(points, { interpolation: kind });
        const rise = curve.powerAt(Math.min(far!, high.load)) - curve.powerAt(near!);
        const most = Math.max(low.power, high.power);
        expect(rise * Math.sign(high.power - low.power)).toBeGreaterThanOrEqual(-1e-14 * most);
      }),
      { numRuns: 500 },
    );
  });

  it('re-evaluates in every step, and the steps end in what was read', () => {
    fc.assert(
      fc.property(curvePoints(), interpolation, share, (points, kind, part) => {
        const reading = explainReading(loadCurve(points, { interpolation: kind }), loadAt(points, part));
        expectRecomputed(reading.working);
        expect(lastValue(reading.working, 'P')).toBe(reading.power);
        expect(lastValue(reading.working, 'I')).toBe(reading.current);
        expect(lastValue(reading.working, 'V')).toBe(reading.voltage);
      }),
      { numRuns: 300 },
    );
  });

  it('re-evaluates beyond the points too', () => {
    fc.assert(
      fc.property(
        curvePoints(),
        interpolation,
        fc.constantFrom('end-power' as const, 'end-stretch' as const),
        valueBetween(1.01, 1.3),
        fc.boolean(),
        (points, kind, outside, factor, above) => {
          const curve = loadCurve(points, { interpolation: kind, outside });
          const at = above ? points.at(-1)!.load * factor : points[0]!.load / factor;
          let reading: CurveReading;
          try {
            reading = explainReading(curve, at);
          } catch (error) {
            // A falling line ends where its power does.
            expect(outside).toBe('end-stretch');
            expect(error).toMatchObject({ code: 'load-outside-curve' });
            return;
          }
          expect(reading.stretch.kind).toBe('outside');
          expectRecomputed(reading.working);
        },
      ),
    );
  });

  it('is turned round by loadsAt', () => {
    fc.assert(
      fc.property(curvePoints(), interpolation, share, (points, kind, part) => {
        const curve = loadCurve(points, { interpolation: kind });
        const at = loadAt(points, part);
        const power = curve.powerAt(at);
        const found = curve.loadsAt(power);
        for (const { from, to } of found) {
          // The nearest number on a steep stretch may be half a step of the load away.
          for (const end of [from, to]) {
            const step = end * 2 ** -52;
            const around = [end - step, end + step].map((x) => Math.min(Math.max(x, curve.loads.from), curve.loads.to));
            const slack = Math.abs(curve.powerAt(around[1]!) - curve.powerAt(around[0]!)) + 1e-14 * power;
            expect(Math.abs(curve.powerAt(end) - power)).toBeLessThanOrEqual(slack);
          }
        }
        for (const [i, { from }] of found.slice(1).entries()) expect(from).toBeGreaterThan(found[i]!.to);
        // The load that was read is among them, up to loads of the same power within rounding.
        const nearest = Math.min(
          ...found
            .map(({ from, to }) => (at < from ? curve.powerAt(from) : at > to ? curve.powerAt(to) : power))
            .map((p) => Math.abs(p - power)),
        );
        expect(found.length).toBeGreaterThan(0);
        expect(nearest).toBeLessThanOrEqual(1e-12 * power);
      }),
      { numRuns: 500 },
    );
  });

  it('has no power above its maximum', () => {
    fc.assert(
      fc.property(curvePoints(), interpolation, share, (points, kind, part) => {
        const curve = loadCurve(points, { interpolation: kind });
        expect(curve.maximum.power).toBe(Math.max(...points.map(({ power }) => power)));
        expect(curve.powerAt(curve.maximum.load)).toBe(curve.maximum.power);
        expect(curve.powerAt(loadAt(points, part))).toBeLessThanOrEqual(curve.maximum.power);
      }),
    );
  });

  it('scales with its powers', () => {
    fc.assert(
      fc.property(curvePoints(), interpolation, share, valueBetween(0.01, 10), (points, kind, part, factor) => {
        const curve = loadCurve(points, { interpolation: kind });
        const at = loadAt(points, part);
        const scaled = scaleCurve(curve, factor);
        expect(scaled.interpolation).toBe(kind);
        expect(scaled.outside).toBe('refuse');
        expect(scaled.powerAt(at) / (factor * curve.powerAt(at))).toBeCloseTo(1, 12);
        expect(scaled.currentAt(at) / (Math.sqrt(factor) * curve.currentAt(at))).toBeCloseTo(1, 12);
      }),
    );
  });

  it('does not depend on the unit of the load', () => {
    fc.assert(
      fc.property(curvePoints(), interpolation, share, (points, kind, part) => {
        const at = loadAt(points, part);
        const kilo = loadCurve(
          points.map((point) => ({ load: point.load * 1024, power: point.power })),
          { interpolation: kind },
        );
        const power = loadCurve(points, { interpolation: kind }).powerAt(at);
        expect(kilo.powerAt(at * 1024) / power).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('log–log', () => {
  it('through points of the three-regime model, its corners among them, is the model', () => {
    fc.assert(
      fc.property(regimeLimits(), share, (limits, part) => {
        const model = regimeCurve(limits);
        const [lower, upper] = model.corners.map((corner) => corner.load);
        const points = [lower! / 5, lower!, upper!, upper! * 5].map((at) => ({ load: at, power: model.powerAt(at) }));
        const at = loadAt(points, part);
        expect(loadCurve(points).powerAt(at) / model.powerAt(at)).toBeCloseTo(1, 13);
      }),
    );
  });
});

describe('the three-regime model', () => {
  it('exceeds none of its limits and reaches one of them', () => {
    fc.assert(
      fc.property(regimeLimits(), load(), (limits, at) => {
        const { power, current, voltage, stretch, working } = explainReading(regimeCurve(limits), at);
        const used = [current / limits.currentLimit, power / limits.power, voltage / limits.voltageLimit];
        expect(Math.max(...used)).toBeCloseTo(1, 13);
        const governing = { 'constant-current': 0, 'constant-power': 1, 'constant-voltage': 2 }[
          stretch.kind as 'constant-power'
        ];
        expect(used[governing]).toBeCloseTo(1, 13);
        expectRecomputed(working);
        expect(at).toBeGreaterThanOrEqual(stretch.from * (1 - 1e-14));
        if (stretch.to !== undefined) expect(at).toBeLessThanOrEqual(stretch.to * (1 + 1e-14));
      }),
      { numRuns: 300 },
    );
  });

  it('has its loads at a power where loadsAt says', () => {
    fc.assert(
      fc.property(regimeLimits(), valueBetween(0.01, 0.999), (limits, part) => {
        const curve = regimeCurve(limits);
        const found = curve.loadsAt(limits.power * part);
        expect(found).toHaveLength(2);
        for (const { from } of found) expect(curve.powerAt(from) / (limits.power * part)).toBeCloseTo(1, 13);
      }),
    );
  });
});

describe('the fit', () => {
  const spread = ({ corners }: ReturnType<typeof regimeCurve>): number[] => {
    const [lower, upper] = corners.map((corner) => corner.load);
    const inside = [0.2, 0.5, 0.8].map((part) => lower! * (upper! / lower!) ** part);
    return [lower! / 6, lower! / 2.5, lower! / 1.4, ...inside, upper! * 1.4, upper! * 2.5, upper! * 6];
  };

  it('gives the limits back from exact points', () => {
    fc.assert(
      fc.property(regimeLimits(), (limits) => {
        const model = regimeCurve(limits);
        const { limits: found, undetermined } = fitRegimes(
          spread(model).map((at) => ({ load: at, power: model.powerAt(at) })),
        );
        expect(undetermined).toEqual([]);
        expect(found.power! / limits.power).toBeCloseTo(1, 13);
        expect(found.currentLimit! / limits.currentLimit).toBeCloseTo(1, 13);
        expect(found.voltageLimit! / limits.voltageLimit).toBeCloseTo(1, 13);
      }),
    );
  });

  it('has no larger sum of squares than the model that made the points', () => {
    fc.assert(
      fc.property(
        regimeLimits(),
        fc.array(valueBetween(0.97, 1.03), { minLength: 9, maxLength: 9 }),
        (limits, noise) => {
          const model = regimeCurve(limits);
          const points = spread(model).map((at, i) => ({ load: at, power: model.powerAt(at) * noise[i]! }));
          const fit = fitRegimes(points);
          fc.pre(fit.undetermined.length === 0);
          const squares = points.reduce(
            (sum, { load: at, power }) => sum + Math.log(power / model.powerAt(at)) ** 2,
            0,
          );
          const left = fit.points.reduce((sum, { residual }) => sum + residual! ** 2, 0);
          expect(left).toBeLessThanOrEqual(squares * (1 + 1e-9) + 1e-25);
          expect(fit.scatter).toBeCloseTo(Math.sqrt(left / 6), 12);
        },
      ),
    );
  });

  /** Sum of squares that limits leave, the power limit absent where it is never reached. */
  const squaresLeft = (points: readonly CurvePoint[], limits: Partial<RegimeLimits>): number => {
    const { power = Infinity, currentLimit = Infinity, voltageLimit = Infinity } = limits;
    return points.reduce(
      (sum, { load: R, power: P }) =>
        sum + Math.log(P / Math.min(currentLimit ** 2 * R, power, voltageLimit ** 2 / R)) ** 2,
      0,
    );
  };

  // A corner at a point makes a kink, in which the best corner often lies: hence points close to each other.
  it.each([
    ['three regimes', 2, 3],
    ['current and voltage only', 1, 2],
  ])('leaves the smallest sum of squares: no limits beside it do better (%s)', (_, width, regimes) => {
    const noisy = fc.array(valueBetween(0.85, 1.15), { minLength: 24, maxLength: 24 });
    const near = valueBetween(0.9, 1.1);
    let compared = 0;
    fc.assert(
      fc.property(noisy, fc.tuple(near, near, near), (noise, ways) => {
        const model = regimeCurve({
          power: width === 1 ? 1e6 : 200,
          currentLimit: 1,
          voltageLimit: 200 * Math.sqrt(width),
        });
        const points = noise.map((factor, i) => {
          const at = 200 * 1.15 ** (i - 12) * Math.sqrt(width);
          return { load: at, power: model.powerAt(at) * factor };
        });
        const { limits, points: fitted } = fitRegimes(points);
        const left = fitted.reduce((sum, { residual = 0 }) => sum + residual ** 2, 0);
        if (Object.keys(limits).length !== regimes || fitted.some(({ residual }) => residual === undefined)) return;
        compared += 1;
        expect(squaresLeft(points, limits)).toBeCloseTo(left, 12);
        for (const scale of [1, 0.3, 0.1, 0.01, 1e-3, 1e-4]) {
          const [a, b, c] = ways.map((way) => 1 + (way - 1) * scale);
          const beside = {
            ...(limits.power === undefined ? {} : { power: limits.power * a! }),
            currentLimit: limits.currentLimit! * b!,
            voltageLimit: limits.voltageLimit! * c!,
          };
          expect(squaresLeft(points, beside)).toBeGreaterThanOrEqual(left - 1e-14);
        }
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(100);
  });

  it('scales with the powers and with the loads', () => {
    fc.assert(
      fc.property(regimeLimits(), valueBetween(0.1, 10), valueBetween(0.1, 10), (limits, factor, stretch) => {
        const model = regimeCurve(limits);
        const { limits: found } = fitRegimes(
          spread(model).map((at) => ({ load: at * stretch, power: model.powerAt(at) * factor })),
        );
        expect(found.power! / (factor * limits.power)).toBeCloseTo(1, 12);
        expect(found.currentLimit! / (Math.sqrt(factor / stretch) * limits.currentLimit)).toBeCloseTo(1, 12);
        expect(found.voltageLimit! / (Math.sqrt(factor * stretch) * limits.voltageLimit)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('the comparison of a sweep', () => {
  it('has the verdict that its deviations have, and steps that re-evaluate', () => {
    fc.assert(
      fc.property(
        curvePoints(),
        share,
        valueBetween(0, 2),
        valueBetween(0.01, 0.9),
        (points, part, factor, tolerance) => {
          const curve = loadCurve(points);
          const at = loadAt(points, part);
          const power = curve.powerAt(at);
          fc.pre(Math.abs(Math.abs(factor - 1) - tolerance) > 1e-9);
          const { rows, verdict, worst } = compareSweep(curve, [{ load: at, power: power * factor }], tolerance);
          expect(verdict).toBe(Math.abs(factor - 1) < tolerance ? 'inside' : 'outside');
          expect(rows[0]!.deviation).toBeCloseTo(factor - 1, 12);
          expect(worst).toBe(rows[0]);
          expectRecomputed(rows[0]!.working);
        },
      ),
    );
  });
});
