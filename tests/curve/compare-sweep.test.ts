import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { compareSweep, loadCurve, type SweepReading, type SweepTolerance } from '../../src/curve/index.js';

const reference = loadCurve([
  { load: 100, power: 100 },
  { load: 300, power: 300 },
  { load: 600, power: 300 },
]);

describe('comparison of a sweep with its reference', () => {
  it('gives the deviation at each load, from power, current or voltage', () => {
    const { rows, worst, verdict, notCompared } = compareSweep(
      reference,
      [
        { load: 200, power: 220 },
        { load: 300, current: 0.9 },
        { load: 500, voltage: 400 },
      ],
      0.2,
    );
    expect(rows.map(({ reference }) => reference)).toEqual([200, 300, 300]);
    expect(rows.map(({ measured }) => measured)).toEqual([220, 243, 320]);
    expect(rows.map(({ deviation }) => deviation)).toEqual([
      expect.closeTo(0.1, 15),
      expect.closeTo(-0.19, 15),
      expect.closeTo(20 / 300, 15),
    ]);
    expect(rows.map(({ lower, upper }) => [lower, upper])).toEqual([
      [160, 240],
      [240, 360],
      [240, 360],
    ]);
    expect(worst).toBe(rows[1]);
    expect(verdict).toBe('inside');
    expect(notCompared).toEqual([]);
  });

  it('counts a reading at a limit as inside and the next number beyond as outside', () => {
    const verdicts = [240, 240.00000000000003, 160, 159.99999999999997].map(
      (power) => compareSweep(reference, [{ load: 200, power }], 0.2).verdict,
    );
    expect(verdicts).toEqual(['inside', 'outside', 'inside', 'outside']);
  });

  it('takes each side by itself, and no limit where a side is absent', () => {
    const sweep = [
      { load: 200, power: 80 },
      { load: 400, power: 315 },
    ];
    const upperOnly = compareSweep(reference, sweep, { above: 0.04 });
    expect(upperOnly.rows.map(({ inside }) => inside)).toEqual([true, false]);
    expect(upperOnly.worst?.load).toBe(400);
    expect(upperOnly.rows[0]).not.toHaveProperty('lower');
    const lowerOnly = compareSweep(reference, sweep, { below: 0.5 });
    expect(lowerOnly.rows.map(({ inside }) => inside)).toEqual([false, true]);
    expect(lowerOnly.worst?.load).toBe(200);
    const wideBelow = compareSweep(reference, sweep, { below: 0.9, above: 0.05 });
    expect(wideBelow.worst?.load).toBe(400);
    expect(wideBelow.verdict).toBe('inside');
  });

  it('judges no output at all: a deviation of −1', () => {
    const { rows, verdict } = compareSweep(reference, [{ load: 200, current: 0 }], 0.2);
    expect(rows[0]).toMatchObject({ measured: 0, deviation: -1, inside: false });
    expect(verdict).toBe('outside');
  });

  it('lists loads that could not be compared, with the reason', () => {
    const { rows, notCompared, verdict } = compareSweep(
      reference,
      [{ load: 50, power: 50 }, { load: 200, power: 200 }, { load: 250 }],
      0.2,
    );
    expect(rows.map(({ index }) => index)).toEqual([1]);
    expect(notCompared).toEqual([
      {
        index: 0,
        load: 50,
        code: 'load-outside-curve',
        reason: 'the load must be from 100 to 600 ohm, the loads of the points',
      },
      { index: 2, load: 250, code: 'reading-missing', reason: 'nothing was read at this load' },
    ]);
    expect(verdict).toBe('incomplete');
    expect(compareSweep(reference, [{ load: 250 }], 0.2)).toEqual({
      rows: [],
      notCompared: [expect.anything()],
      verdict: 'incomplete',
    });
  });

  it('is outside as soon as one row is, also where others could not be compared', () => {
    expect(
      compareSweep(
        reference,
        [
          { load: 50, power: 50 },
          { load: 200, power: 20 },
        ],
        0.2,
      ).verdict,
    ).toBe('outside');
  });

  it('carries the warning of a reference that was continued', () => {
    const held = loadCurve(reference.points, { outside: 'end-power' });
    const { rows } = compareSweep(held, [{ load: 50, power: 100 }], 0.2);
    expect(rows[0]?.warnings).toMatchObject([{ code: 'load-outside-curve' }]);
    expect(rows[0]?.stretch.kind).toBe('outside');
  });

  it('shows the steps: reference power, measured power, deviation', () => {
    const { rows } = compareSweep(reference, [{ load: 300, current: 0.9 }], 0.2);
    expect(rows[0]?.working.map(({ formula }) => formula)).toEqual([
      'curve-exponent',
      'curve-power-law',
      'power-from-current',
      'curve-sweep-deviation',
    ]);
  });

  it.each([
    [[], 0.2, 'wrong-count', 'measured'],
    [{} as SweepReading[], 0.2, 'wrong-type', 'measured'],
    [[{ load: 0, power: 3 }], 0.2, 'not-positive', 'measured[0].load'],
    [
      [
        { load: 200, power: 3 },
        { load: 200, power: -3 },
      ],
      0.2,
      'negative',
      'measured[1].power',
    ],
    [[{ load: 200, current: Number.NaN }], 0.2, 'not-a-number', 'measured[0].current'],
    [[{ load: 200, power: 3, voltage: 2 }], 0.2, 'wrong-count', 'measured[0].voltage'],
    [[null as unknown as SweepReading], 0.2, 'not-a-number', 'measured[0].load'],
    [[{ load: 200, power: 3 }], 20, 'not-a-fraction', 'tolerance.below'],
    [[{ load: 200, power: 3 }], { above: -0.1 }, 'not-a-fraction', 'tolerance.above'],
    [[{ load: 200, power: 3 }], {}, 'wrong-count', 'tolerance'],
    [[{ load: 200, power: 3 }], undefined as unknown as SweepTolerance, 'wrong-count', 'tolerance'],
  ] as const)('refuses bad input, case %#', (measured, tolerance, code, path) => {
    let fault: unknown;
    try {
      compareSweep(reference, measured, tolerance);
    } catch (error) {
      fault = error;
    }
    expect(fault).toBeInstanceOf(CalculationError);
    expect(fault).toMatchObject({ code, path });
  });
});
