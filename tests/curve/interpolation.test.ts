import { describe, expect, it } from 'vitest';
import { explainReading, loadCurve } from '../../src/curve/index.js';
import { monotoneSlopes } from '../../src/curve/monotone-slopes.js';
import { pchipFixture } from './pchip-fixture.js';

function relativeDifference(a: number, b: number): number {
  return Math.abs(a - b) / Math.abs(b);
}

describe('monotone cubic against SciPy and against 40 digits', () => {
  it('has the versions and the end rule in the header of the fixture', () => {
    expect(pchipFixture.header).toMatchObject({ scipy: expect.any(String), python: expect.any(String) });
    expect(pchipFixture.header['endRule']).toContain('three-point');
    expect(pchipFixture.cases.length).toBeGreaterThanOrEqual(18);
  });

  it.each(pchipFixture.cases.map((entry) => [entry.title, entry.interpolation, entry] as const))(
    '%s, %s',
    (_, interpolation, { points, loads, exact, scipy }) => {
      const curve = loadCurve(points, { interpolation });
      loads.forEach((load, i) => {
        const power = curve.powerAt(load);
        expect(relativeDifference(power, exact[i]!)).toBeLessThanOrEqual(4e-15);
        // SciPy's own rounding is counted against SciPy.
        const off = relativeDifference(scipy[i]!, exact[i]!);
        expect(relativeDifference(power, scipy[i]!)).toBeLessThanOrEqual(4e-15 + off);
      });
    },
  );

  it.each(
    pchipFixture.cases
      .filter(({ interpolation }) => interpolation === 'monotone-cubic')
      .map((entry) => [entry.title, entry] as const),
  )('slopes at the knots: %s', (_, { points, slopes }) => {
    const stretches = points.slice(1).map((point, i) => [points[i]!, point] as const);
    const steps = Float64Array.from(stretches, ([a, b]) => b.load - a.load);
    const secants = Float64Array.from(stretches, ([a, b]) => (b.power - a.power) / (b.load - a.load));
    const largest = Math.max(...secants.map(Math.abs));
    monotoneSlopes(steps, secants).forEach((slope, i) => {
      expect(Math.abs(slope - slopes[i]!)).toBeLessThanOrEqual(4e-15 * largest);
    });
  });

  it('reaches every clamp of the end rule in the fixture', () => {
    const slopesOf = (title: string) =>
      pchipFixture.cases.find((entry) => entry.title === title && entry.interpolation === 'monotone-cubic')!.slopes;
    expect(slopesOf('up and down, both ends held at three times the secant').at(0)).toBe(3);
    expect(slopesOf('up and down, both ends held at three times the secant').at(-1)).toBe(-1.5);
    expect(slopesOf('both ends flattened to slope 0').at(0)).toBe(0);
    expect(slopesOf('both ends flattened to slope 0').at(-1)).toBe(0);
  });
});

describe('log–log stretches', () => {
  const points = [
    { load: 100, power: 4 * 100 },
    { load: 150, power: 600 },
    { load: 400, power: 600 },
    { load: 1600, power: (600 * 400) / 1600 },
  ];
  const curve = loadCurve(points);

  it('hold the current constant', () => {
    for (const load of [100, 100.1, 113, 125, 149.9, 150]) {
      expect(relativeDifference(curve.currentAt(load), 2)).toBeLessThanOrEqual(4e-16);
      expect(relativeDifference(curve.powerAt(load), 4 * load)).toBeLessThanOrEqual(4e-16);
    }
  });

  it('hold the power constant, to the last bit', () => {
    for (const load of [150, 151, 200, 299.7, 399.9, 400]) expect(curve.powerAt(load)).toBe(600);
  });

  it('hold the voltage constant', () => {
    const voltage = Math.sqrt(600 * 400);
    for (const load of [400, 401, 500, 987.6, 1599, 1600]) {
      expect(relativeDifference(curve.voltageAt(load), voltage)).toBeLessThanOrEqual(4e-16);
    }
  });

  it('are named by what is constant, within 0.02 of the exponent', () => {
    expect(explainReading(curve, 120).stretch).toEqual({ index: 0, from: 100, to: 150, kind: 'constant-current' });
    expect(explainReading(curve, 200).stretch).toEqual({ index: 1, from: 150, to: 400, kind: 'constant-power' });
    expect(explainReading(curve, 1600).stretch).toEqual({ index: 2, from: 400, to: 1600, kind: 'constant-voltage' });
    const kind = (exponent: number) =>
      explainReading(
        loadCurve([
          { load: 100, power: 50 },
          { load: 200, power: 50 * 2 ** exponent },
        ]),
        150,
      ).stretch.kind;
    expect([0.979, 0.981, 1.019, 1.021].map(kind)).toEqual([
      'between',
      'constant-current',
      'constant-current',
      'between',
    ]);
    expect([-0.021, -0.019, 0.019, 0.021].map(kind)).toEqual([
      'between',
      'constant-power',
      'constant-power',
      'between',
    ]);
    expect([-1.021, -1.019, -0.981, -0.979].map(kind)).toEqual([
      'between',
      'constant-voltage',
      'constant-voltage',
      'between',
    ]);
  });

  it('keep their digits where two knots lie close together', () => {
    const close = loadCurve([
      { load: 100, power: 10 },
      { load: 101, power: 80 },
    ]);
    // 10·8^(ln 1.005/ln 1.01), in 40 digits by mpmath 1.3.0.
    expect(relativeDifference(close.powerAt(100.5), 28.35751982556668)).toBeLessThanOrEqual(1e-13);
  });
});

describe('straight stretches on linear axes', () => {
  const curve = loadCurve(
    [
      { load: 100, power: 300 },
      { load: 200, power: 1 },
      { load: 400, power: 1 },
      { load: 500, power: 251 },
    ],
    { interpolation: 'linear' },
  );

  it('are exact at knots, flats and simple shares', () => {
    expect([100, 200, 300, 400, 500].map(curve.powerAt)).toEqual([300, 1, 1, 1, 251]);
    expect(curve.powerAt(150)).toBe(150.5);
    expect(curve.powerAt(450)).toBe(126);
  });

  it('keep the digits of a small power beside a large one', () => {
    // 1 + 299·(200 − 199.999)/100, the load as the double nearest to 199.999.
    const load = 199.999;
    expect(relativeDifference(curve.powerAt(load), 1 + 2.99 * (200 - load))).toBeLessThanOrEqual(3e-16);
  });

  it('name a flat stretch and no other', () => {
    expect(explainReading(curve, 150).stretch.kind).toBe('between');
    expect(explainReading(curve, 300).stretch.kind).toBe('constant-power');
  });
});

describe('rounding beside a knot', () => {
  // Found by search: without a hold each of these comes out one or two numbers beyond the knot beside it.
  it.each([
    ['log-log', [125, 45, 289, 99], 288.99999999999994, 99],
    ['log-log', [188, 212, 224, 230], 223.99999999999997, 230],
    ['linear', [7, 252, 102, 1], 7.000000000000002, 252],
    ['linear', [47, 255, 120, 89], 47.00000000000001, 255],
    ['monotone-cubic', [33, 231, 155, 160], 33.00000000000001, 231],
    ['monotone-cubic', [9, 268, 39, 104], 9.000000000000002, 268],
    ['monotone-cubic-log', [63, 47, 210, 3], 209.99999999999997, 3],
    ['monotone-cubic-log', [125, 45, 289, 99], 288.99999999999994, 99],
  ] as const)('does not carry %s past the knot, %j', (interpolation, [r1, p1, r2, p2], load, expected) => {
    const curve = loadCurve(
      [
        { load: r1, power: p1 },
        { load: r2, power: p2 },
      ],
      { interpolation },
    );
    expect(curve.powerAt(load)).toBe(expected);
  });
});
