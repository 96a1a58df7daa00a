import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import {
  type CurvePoint,
  explainReading,
  type Interpolation,
  type LoadCurveOptions,
  loadCurve,
} from '../../src/curve/index.js';

const points: readonly CurvePoint[] = [
  { load: 100, power: 100 },
  { load: 300, power: 300 },
  { load: 600, power: 300 },
  { load: 1800, power: 100 },
];

const interpolations: readonly Interpolation[] = ['log-log', 'monotone-cubic', 'monotone-cubic-log', 'linear'];

function faultOf(work: () => unknown): { code: string; path: string; text: string } {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return { code: error.code, path: error.path, text: error.message };
    throw error;
  }
  throw new Error('accepted');
}

/** The points with one member of the fourth replaced. */
function spoilt(change: Partial<Record<keyof CurvePoint, unknown>>): CurvePoint[] {
  return points.map((point, i) => (i === 3 ? ({ ...point, ...change } as CurvePoint) : point));
}

describe.each(interpolations)('a curve read by %s', (interpolation) => {
  const curve = loadCurve(points, { interpolation });

  it('gives the published power at every point', () => {
    for (const { load, power } of points) {
      expect(curve.powerAt(load)).toBe(power);
      expect(explainReading(curve, load).power).toBe(power);
    }
  });

  it('has its maximum at the lowest load of the flat top, and all loads of a power in order', () => {
    expect(curve.maximum).toEqual({ load: 300, power: 300 });
    expect(curve.loadsAt(300)).toEqual([{ from: 300, to: 600 }]);
    expect(curve.loadsAt(100)).toEqual([
      { from: 100, to: 100 },
      { from: 1800, to: 1800 },
    ]);
    expect(curve.loadsAt(300.0001)).toEqual([]);
    expect(curve.loadsAt(99)).toEqual([]);
    const [low, high, ...none] = curve.loadsAt(222);
    expect(none).toEqual([]);
    expect(curve.powerAt(low!.from)).toBeCloseTo(222, 11);
    expect(curve.powerAt(high!.to)).toBeCloseTo(222, 11);
    expect(low!.from).toBeLessThan(300);
    expect(high!.to).toBeGreaterThan(600);
  });

  it('reads power, current and voltage that belong together', () => {
    const { power, current, voltage } = explainReading(curve, 437);
    expect(curve.powerAt(437)).toBe(power);
    expect(curve.currentAt(437)).toBe(current);
    expect(curve.voltageAt(437)).toBe(voltage);
    expect(current).toBe(Math.sqrt(power / 437));
    expect(voltage).toBe(Math.sqrt(power * 437));
  });

  it('refuses a load outside, naming the range and what to ask for', () => {
    for (const read of [curve.powerAt, curve.currentAt, curve.voltageAt, (at: number) => explainReading(curve, at)]) {
      const { code, path, text } = faultOf(() => read(1800.0001));
      expect([code, path]).toEqual(['load-outside-curve', 'load']);
      expect(text).toContain('100 to 1800 ohm');
      expect(text).toContain("'end-power' or 'end-stretch'");
      expect(faultOf(() => read(99.99)).code).toBe('load-outside-curve');
    }
  });

  it('refuses a load that is not a number, text of a number included', () => {
    for (const load of ['300', null, undefined, Number.NaN, [300]] as unknown as number[]) {
      expect(faultOf(() => curve.powerAt(load))).toMatchObject({ code: 'not-a-number', path: 'load' });
      expect(faultOf(() => explainReading(curve, load))).toMatchObject({ code: 'not-a-number', path: 'load' });
    }
  });

  it('holds the power of the end point where that is asked for', () => {
    const held = loadCurve(points, { interpolation, outside: 'end-power' });
    expect([10, 99, 1801, 1e6].map(held.powerAt)).toEqual([100, 100, 100, 100]);
    const reading = explainReading(held, 3600);
    expect(reading.stretch).toEqual({ index: 2, from: 600, to: 1800, kind: 'outside' });
    expect(reading.warnings).toEqual([
      { code: 'load-outside-curve', message: expect.stringContaining('3600 ohm lies outside') },
    ]);
    expect(explainReading(held, 50).stretch).toEqual({ index: 0, from: 100, to: 300, kind: 'outside' });
    expect(explainReading(held, 500).warnings).toEqual([]);
  });

  it('gives a column of powers, the same as one by one', () => {
    const loads = Float64Array.from({ length: 341 }, (_, i) => 100 + 5 * i);
    const powers = curve.powersAt(loads);
    expect([...powers]).toEqual([...loads].map(curve.powerAt));
    const out = new Float64Array(341);
    expect(curve.powersAt(loads, out)).toBe(out);
    expect(out).toEqual(powers);
    expect(curve.powersAt(new Float64Array())).toEqual(new Float64Array());
  });

  it('names the first bad row of a column and writes nothing', () => {
    const loads = Float64Array.of(150, 1800, 1801, Number.NaN);
    const out = new Float64Array(4);
    expect(faultOf(() => curve.powersAt(loads, out))).toMatchObject({ code: 'load-outside-curve', path: 'loads[2]' });
    loads[2] = -5;
    expect(faultOf(() => curve.powersAt(loads, out))).toMatchObject({ code: 'not-positive', path: 'loads[2]' });
    loads[2] = 200;
    expect(faultOf(() => curve.powersAt(loads, out))).toMatchObject({ code: 'not-a-number', path: 'loads[3]' });
    expect([...out]).toEqual([0, 0, 0, 0]);
    expect(faultOf(() => curve.powersAt(loads, new Float64Array(3)))).toMatchObject({
      code: 'wrong-count',
      path: 'out',
    });
  });

  it('is plain data beside its functions, and keeps no hold on the points it was given', () => {
    const given = points.map((point) => ({ ...point }));
    const own = loadCurve(given, { interpolation });
    given[1]!.power = 7;
    given.pop();
    expect(own.powerAt(300)).toBe(300);
    expect(JSON.parse(JSON.stringify(own))).toEqual({
      points,
      interpolation,
      outside: 'refuse',
      loads: { from: 100, to: 1800 },
      maximum: { load: 300, power: 300 },
    });
  });
});

describe('the end stretch, continued', () => {
  const options = (interpolation: Interpolation): LoadCurveOptions => ({ interpolation, outside: 'end-stretch' });

  it('goes on as a power law', () => {
    const curve = loadCurve(points, options('log-log'));
    expect(curve.powerAt(50)).toBeCloseTo(50, 12);
    expect(curve.powerAt(3600)).toBeCloseTo(50, 12);
    expect(explainReading(curve, 3600).voltage).toBeCloseTo(curve.voltageAt(1800), 10);
  });

  it('goes on as a line, until there is no power left', () => {
    const curve = loadCurve(points, options('linear'));
    expect(curve.powerAt(50)).toBeCloseTo(50, 12);
    expect(curve.powerAt(2000)).toBeCloseTo(100 - 200 / 6, 12);
    expect(faultOf(() => curve.powerAt(2400)).text).toContain('gives no power there');
    expect(faultOf(() => curve.powersAt(Float64Array.of(200, 2401)))).toMatchObject({
      code: 'load-outside-curve',
      path: 'loads[1]',
    });
  });

  it('leaves a cubic along its tangent, not along the cubic', () => {
    const falling = [
      { load: 100, power: 300 },
      { load: 200, power: 250 },
      { load: 400, power: 100 },
    ];
    for (const interpolation of ['monotone-cubic', 'monotone-cubic-log'] as const) {
      const curve = loadCurve(falling, options(interpolation));
      const { working } = explainReading(curve, 440);
      const m = working[0]!.inputs['m']!;
      const near = 400 * (1 - 1e-7);
      const slope =
        interpolation === 'monotone-cubic'
          ? (curve.powerAt(400) - curve.powerAt(near)) / (400 - near)
          : Math.log(curve.powerAt(400) / curve.powerAt(near)) / Math.log(400 / near);
      expect(m / slope).toBeCloseTo(1, 5);
      expect(curve.powerAt(440)).toBeLessThan(100);
    }
  });
});

describe('bad points', () => {
  it.each([
    ['unsorted', spoilt({ load: 500 }), 'not-ascending', 'points[3].load'],
    ['repeated', spoilt({ load: 600 }), 'not-ascending', 'points[3].load'],
    ['NaN load', spoilt({ load: Number.NaN }), 'not-a-number', 'points[3].load'],
    ['infinite load', spoilt({ load: Number.POSITIVE_INFINITY }), 'not-a-number', 'points[3].load'],
    ['missing load', spoilt({ load: undefined }), 'not-a-number', 'points[3].load'],
    ['text as load', spoilt({ load: '1800' }), 'not-a-number', 'points[3].load'],
    ['zero load', spoilt({ load: 0 }), 'not-positive', 'points[3].load'],
    ['negative load', spoilt({ load: -1800 }), 'not-positive', 'points[3].load'],
    ['load beyond all measure', spoilt({ load: 1e200 }), 'out-of-range', 'points[3].load'],
    ['NaN power', spoilt({ power: Number.NaN }), 'not-a-number', 'points[3].power'],
    ['infinite power', spoilt({ power: Number.POSITIVE_INFINITY }), 'not-a-number', 'points[3].power'],
    ['zero power', spoilt({ power: 0 }), 'not-positive', 'points[3].power'],
    ['negative power', spoilt({ power: -100 }), 'not-positive', 'points[3].power'],
    ['power beyond all measure', spoilt({ power: 1e-200 }), 'out-of-range', 'points[3].power'],
    ['one point', points.slice(0, 1), 'wrong-count', 'points'],
    ['no point', [], 'wrong-count', 'points'],
    ['a null among them', [points[0], null] as unknown as CurvePoint[], 'not-a-number', 'points[1].load'],
    // biome-ignore lint/suspicious/noSparseArray: the hole is what is tested
    ['a hole among them', [points[0], , points[2]] as unknown as CurvePoint[], 'not-a-number', 'points[1].load'],
    ['no array', { 0: points[0], length: 2 } as unknown as CurvePoint[], 'wrong-type', 'points'],
  ] as const)('%s', (_, bad, code, path) => {
    expect(faultOf(() => loadCurve(bad))).toMatchObject({ code, path });
  });

  it('names a wrong choice', () => {
    expect(faultOf(() => loadCurve(points, { interpolation: 'spline' as 'linear' }))).toMatchObject({
      code: 'unknown-choice',
      path: 'interpolation',
    });
    expect(faultOf(() => loadCurve(points, { outside: 'extrapolate' as 'refuse' }))).toMatchObject({
      code: 'unknown-choice',
      path: 'outside',
    });
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-300])('loadsAt refuses %s', (power) => {
    expect(faultOf(() => loadCurve(points).loadsAt(power)).path).toBe('power');
  });
});

describe('loads at a power', () => {
  it('lists every crossing of a curve that goes up and down', () => {
    const curve = loadCurve(
      [10, 20, 30, 40, 50].map((load, i) => ({ load, power: i % 2 === 0 ? 10 : 30 })),
      { interpolation: 'linear' },
    );
    expect(curve.loadsAt(20)).toEqual([15, 25, 35, 45].map((load) => ({ from: load, to: load })));
    expect(curve.loadsAt(30)).toEqual([20, 40].map((load) => ({ from: load, to: load })));
    expect(curve.loadsAt(10)).toEqual([10, 30, 50].map((load) => ({ from: load, to: load })));
  });

  it('joins flat stretches that follow one another', () => {
    const curve = loadCurve([
      { load: 10, power: 5 },
      { load: 20, power: 9 },
      { load: 30, power: 9 },
      { load: 50, power: 9 },
      { load: 70, power: 4 },
      { load: 80, power: 9 },
      { load: 90, power: 9 },
    ]);
    expect(curve.loadsAt(9)).toEqual([
      { from: 20, to: 50 },
      { from: 80, to: 90 },
    ]);
  });

  it('finds matched loads of a source with a resistance: P(R) = P(r²/R)', () => {
    const watts = (load: number) => 11.2 ** 2 * (load / (0.8 + load) ** 2);
    const loads = Array.from({ length: 61 }, (_, i) => 0.1 * 64 ** (i / 60));
    const curve = loadCurve(
      loads.map((load) => ({ load, power: watts(load) })),
      { interpolation: 'monotone-cubic-log' },
    );
    const [low, high] = curve.loadsAt(watts(0.5));
    expect(low!.from).toBeCloseTo(0.5, 4);
    expect(high!.from).toBeCloseTo(0.8 ** 2 / 0.5, 4);
  });
});
