import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { explainReading, type RegimeLimits, regimeCurve, scaleCurve } from '../../src/curve/index.js';

function faultOf(work: () => unknown): { code: string; path: string } {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return { code: error.code, path: error.path };
    throw error;
  }
  throw new Error('accepted');
}

describe('a generator that limits current, power and voltage', () => {
  const limits = { power: 300, currentLimit: 2, voltageLimit: 600 };
  const curve = regimeCurve(limits);

  it('has the corner loads P/I² and V²/P', () => {
    expect(curve.corners).toEqual([
      { load: 75, power: 300, below: 'constant-current', above: 'constant-power' },
      { load: 1200, power: 300, below: 'constant-power', above: 'constant-voltage' },
    ]);
    expect(curve.maximum).toEqual({ load: 75, power: 300 });
    expect(curve.limits).toEqual(limits);
  });

  it('holds each of the three constant in its regime', () => {
    for (const load of [1, 20, 74.9]) expect(curve.currentAt(load)).toBeCloseTo(2, 14);
    for (const load of [75, 76, 500, 1200]) expect(curve.powerAt(load)).toBe(300);
    for (const load of [1201, 5000, 1e6]) expect(curve.voltageAt(load)).toBeCloseTo(600, 11);
  });

  it('says which regime answered and between which loads', () => {
    expect(explainReading(curve, 50).stretch).toEqual({ index: 0, from: 0, to: 75, kind: 'constant-current' });
    expect(explainReading(curve, 100).stretch).toEqual({ index: 1, from: 75, to: 1200, kind: 'constant-power' });
    expect(explainReading(curve, 2000).stretch).toEqual({ index: 2, from: 1200, kind: 'constant-voltage' });
  });

  it('lists the loads of a power', () => {
    expect(curve.loadsAt(300)).toEqual([{ from: 75, to: 1200 }]);
    expect(curve.loadsAt(180)).toEqual([
      { from: 45, to: 45 },
      { from: 2000, to: 2000 },
    ]);
    expect(curve.loadsAt(300.001)).toEqual([]);
  });

  it('answers in columns', () => {
    expect([...curve.powersAt(Float64Array.of(50, 500, 2000))]).toEqual([200, 300, 180]);
    expect(faultOf(() => curve.powersAt(Float64Array.of(50, 0)))).toEqual({ code: 'not-positive', path: 'loads[1]' });
  });

  it('is plain data beside its functions', () => {
    expect(JSON.parse(JSON.stringify(curve))).toEqual({
      limits,
      corners: curve.corners,
      maximum: { load: 75, power: 300 },
    });
  });
});

describe('a generator that never reaches its power limit', () => {
  const curve = regimeCurve({ power: 300, currentLimit: 1, voltageLimit: 200 });

  it('has one corner, at V/I', () => {
    expect(curve.corners).toEqual([{ load: 200, power: 200, below: 'constant-current', above: 'constant-voltage' }]);
    expect(curve.maximum).toEqual({ load: 200, power: 200 });
    expect(curve.powerAt(200)).toBe(200);
    expect(curve.loadsAt(200)).toEqual([{ from: 200, to: 200 }]);
    expect(curve.loadsAt(250)).toEqual([]);
    expect(curve.loadsAt(100)).toEqual([
      { from: 100, to: 100 },
      { from: 400, to: 400 },
    ]);
  });

  it('knows two regimes', () => {
    expect(explainReading(curve, 150).stretch).toEqual({ index: 0, from: 0, to: 200, kind: 'constant-current' });
    expect(explainReading(curve, 250).stretch).toEqual({ index: 1, from: 200, kind: 'constant-voltage' });
  });

  it('reads at the corner where V·I just reaches the power', () => {
    const edge = regimeCurve({ power: 200, currentLimit: 1, voltageLimit: 200 });
    expect(edge.corners.map(({ load }) => load)).toEqual([200, 200]);
    expect(edge.loadsAt(200)).toEqual([{ from: 200, to: 200 }]);
    expect(explainReading(edge, 200).power).toBe(200);
    expect(explainReading(edge, 201).stretch).toEqual({ index: 2, from: 200, kind: 'constant-voltage' });
  });
});

describe('a generator with one limit beside its power', () => {
  it('without a current limit has full power down to no load at all', () => {
    const curve = regimeCurve({ power: 100, voltageLimit: 200 });
    expect(curve.maximum).toEqual({ load: 400, power: 100 });
    expect(curve.loadsAt(100)).toEqual([{ from: 0, to: 400 }]);
    expect(curve.loadsAt(50)).toEqual([{ from: 800, to: 800 }]);
    expect(explainReading(curve, 1).stretch).toEqual({ index: 0, from: 0, to: 400, kind: 'constant-power' });
    expect(explainReading(curve, 500).stretch).toEqual({ index: 1, from: 400, kind: 'constant-voltage' });
  });

  it('without a voltage limit has full power up to any load', () => {
    const curve = regimeCurve({ power: 100, currentLimit: 1 });
    expect(curve.maximum).toEqual({ load: 100, power: 100 });
    expect(curve.loadsAt(100)).toEqual([{ from: 100 }]);
    expect(curve.loadsAt(50)).toEqual([{ from: 50, to: 50 }]);
    expect(explainReading(curve, 500).stretch).toEqual({ index: 1, from: 100, kind: 'constant-power' });
  });
});

describe('bad limits', () => {
  it.each([
    [{ power: 300 }, 'wrong-count', 'limits'],
    [{ power: 0, currentLimit: 1 }, 'not-positive', 'power'],
    [{ power: -3, currentLimit: 1 }, 'not-positive', 'power'],
    [{ currentLimit: 1 } as RegimeLimits, 'not-a-number', 'power'],
    [{ power: 300, currentLimit: 0 }, 'not-positive', 'currentLimit'],
    [{ power: 300, currentLimit: Number.POSITIVE_INFINITY }, 'not-a-number', 'currentLimit'],
    [{ power: 300, currentLimit: 1, voltageLimit: Number.NaN }, 'not-a-number', 'voltageLimit'],
    [{ power: 300, voltageLimit: 1e150 }, 'out-of-range', 'voltageLimit'],
  ] as const)('%j', (limits, code, path) => {
    expect(faultOf(() => regimeCurve(limits))).toEqual({ code, path });
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-200, 1e200])('a load of %s', (load) => {
    expect(faultOf(() => regimeCurve({ power: 300, currentLimit: 1 }).powerAt(load)).path).toBe('load');
  });
});

describe('scaling', () => {
  it('keeps the corner loads and scales the power', () => {
    const half = scaleCurve(regimeCurve({ power: 300, currentLimit: 2, voltageLimit: 600 }), 0.25);
    expect(half.limits).toEqual({ power: 75, currentLimit: 1, voltageLimit: 300 });
    expect(half.corners.map(({ load }) => load)).toEqual([75, 1200]);
  });

  it.each([0, -1, Number.NaN])('refuses the factor %s', (factor) => {
    expect(faultOf(() => scaleCurve(regimeCurve({ power: 300, currentLimit: 2 }), factor)).path).toBe('factor');
  });
});
