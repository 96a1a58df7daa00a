import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DisplayFitInput,
  displayedResistance,
  displayFit,
  type Monitor,
  placeReading,
  type ReadingRowsInput,
  readingRows,
} from '../../src/monitor/index.js';
import { valueBetween } from '../generators.js';
import { faultOf } from './fault-of.js';

describe('readingRows', () => {
  it('takes the tolerance of the row, else the one for all, and the greater of two parts', () => {
    const tolerance = { relative: 0.05, absolute: 3, combine: 'greater' } as const;
    const rows = readingRows({ rows: [{ set: 20 }, { set: 100 }, { set: 0, tolerance: { absolute: 1 } }], tolerance });
    expect(rows.map(({ limits }) => limits)).toEqual([
      { lower: 17, upper: 23 },
      { lower: 95, upper: 105 },
      { lower: 0, upper: 1 },
    ]);
  });

  it('is clamped at 0, and says so in the working', () => {
    const [row] = readingRows({ rows: [{ set: 2 }], tolerance: { absolute: 4 } });
    expect(row?.limits).toEqual({ lower: 0, upper: 6 });
    expect(row?.working.map(({ value }) => value)).toEqual([-2, 0, 6]);
  });

  it('expects what lead and fixture add, and rounds inward to the step of the display', () => {
    const [row] = readingRows({
      rows: [{ set: 50 }],
      tolerance: { relative: 0.05 },
      series: { resistance: 0.6 },
      resolution: 1,
    });
    expect(row?.expected).toBe(50.6);
    // 48.07 and 53.13.
    expect(row?.limits).toEqual({ lower: 49, upper: 53 });
    expect(row?.working.map(({ formula }) => formula)).toContain('monitor-seen');
  });

  it.each([
    [{ below: 2000 }, 1, { upper: 1999 }],
    [{ above: 2000 }, 1, { lower: 2001 }],
    [{ below: 2000 }, 0.1, { upper: 1999.9 }],
    [{ below: 1999.5 }, 1, { upper: 1999 }],
    [{ above: 100, below: 2000 }, 5, { lower: 105, upper: 1995 }],
  ])('an open circuit that must show %j on steps of %d', (sides, resolution, limits) => {
    expect(readingRows({ rows: [{ set: 'open', ...sides }], resolution })[0]?.limits).toEqual(limits);
  });

  it.each<[string, ReadingRowsInput, string, string]>([
    ['a negative resistance', { rows: [{ set: -1 }], tolerance: { absolute: 1 } }, 'negative', 'rows[0].set'],
    ['no tolerance', { rows: [{ set: 1 }] }, 'missing-member', 'rows[0].tolerance'],
    ['limits of an open circuit at a value', { rows: [{ set: 1, below: 3 }] }, 'contradiction', 'rows[0].below'],
    ['nothing of an open circuit', { rows: [{ set: 'open' }], resolution: 1 }, 'missing-member', 'rows[0].above'],
    ['no step of an open circuit', { rows: [{ set: 'open', below: 9 }] }, 'missing-member', 'rows[0].resolution'],
    [
      'a tolerance of an open circuit',
      { rows: [{ set: 'open', tolerance: { absolute: 1 } }], resolution: 1 },
      'contradiction',
      'rows[0].tolerance',
    ],
    [
      'sides of an open circuit that leave nothing',
      { rows: [{ set: 'open', above: 9, below: 9 }], resolution: 1 },
      'band-reversed',
      'rows[0].band.lower',
    ],
  ])('refuses %s', (_, input, code, path) => {
    expect(faultOf(() => readingRows(input))).toEqual([code, path]);
  });
});

describe('placeReading', () => {
  it.each([
    [{ lower: 1, upper: 2 }, 1, 'inside'],
    [{ lower: 1, upper: 2 }, 2, 'inside'],
    [{ lower: 1, upper: 2 }, 0.5, 'below'],
    [{ lower: 1, upper: 2 }, 3, 'above'],
    [{ upper: 2 }, 'over-range', 'above'],
    [{ lower: 2 }, 'over-range', 'inside'],
    [{}, 'over-range', 'inside'],
    [{ lower: 2 }, 1, 'below'],
  ] as const)('%j: %s is %s', (limits, displayed, where) => {
    expect(placeReading(limits, displayed)).toBe(where);
  });
});

describe('displayedResistance', () => {
  const monitor: Monitor = {
    kind: 'contact-quality',
    upper: { resistance: 135 },
    display: { resolution: 0.5, maximum: 400, open: 999 },
  };

  it('rounds to the step, and shows what it shows for an open circuit', () => {
    expect(displayedResistance(monitor, 10.24)).toBe(10);
    expect(displayedResistance(monitor, 10.25)).toBe(10.5);
    expect(displayedResistance(monitor, 400.2)).toBe(400);
    expect(displayedResistance(monitor, 400.25)).toBe(999);
    expect(displayedResistance(monitor, 'open')).toBe(999);
  });

  it('needs a display and a resistance', () => {
    expect(faultOf(() => displayedResistance({ kind: 'continuity', upper: { resistance: 1 } }, 1))).toEqual([
      'missing-member',
      'monitor.display',
    ]);
    expect(faultOf(() => displayedResistance(monitor, -1))).toEqual(['negative', 'resistance']);
  });

  it('lies inside the limits of its own row', () => {
    fc.assert(
      fc.property(valueBetween(0, 399), (set) => {
        const resolution = 0.5;
        const [row] = readingRows({ rows: [{ set }], tolerance: { absolute: resolution }, resolution });
        expect(placeReading(row!.limits, displayedResistance(monitor, set))).toBe('inside');
      }),
    );
  });
});

describe('displayFit', () => {
  const of = (rows: readonly (readonly [number, number])[], rest: Partial<DisplayFitInput> = {}) =>
    displayFit({ resolution: 1, ...rest, rows: rows.map(([set, displayed]) => ({ set, displayed })) });

  it.each([
    [
      'factor',
      [
        [0, 0.5],
        [50, 55],
        [100, 110],
      ],
    ],
    [
      'none',
      [
        [0, 0],
        [50, 50],
        [100, 100],
      ],
    ],
    [
      'constant',
      [
        [0, 3],
        [50, 53],
        [100, 103],
      ],
    ],
    [
      'constant',
      [
        [0, 3],
        [50, 52],
        [100, 103],
      ],
    ],
    [
      'factor',
      [
        [0, 0],
        [50, 55],
        [100, 110],
      ],
    ],
    [
      'factor',
      [
        [10, 11],
        [100, 110],
        [500, 550],
      ],
    ],
    [
      'constant-or-factor',
      [
        [99, 104],
        [100, 105],
        [101, 106],
      ],
    ],
    [
      'constant-and-factor',
      [
        [0, 5],
        [50, 60],
        [100, 115],
        [200, 225],
      ],
    ],
    [
      'irregular',
      [
        [0, 0],
        [50, 70],
        [100, 100],
        [200, 180],
      ],
    ],
  ] as const)('hints at %s', (fault, rows) => {
    expect(of(rows).fault).toBe(fault);
    expect(of(rows).message).toMatch(/\.$/);
  });

  it('names the constant and the factor', () => {
    expect(
      of([
        [0, 3],
        [50, 53],
        [100, 103],
      ]),
    ).toMatchObject({ constant: 3, factor: null, gain: 1, offset: 3 });
    const { factor, constant } = of([
      [0, 0],
      [50, 55],
      [100, 110],
    ]);
    expect(constant).toBeNull();
    expect(factor).toBeCloseTo(1.1, 2);
  });

  it('a box that is less accurate explains more', () => {
    const rows = [
      [0, 0],
      [50, 51],
      [100, 102],
    ] as const;
    expect(of(rows).fault).toBe('factor');
    expect(of(rows, { accuracy: { relative: 0.02 } }).fault).toBe('none');
  });

  it('two rows leave no residual to judge by', () => {
    const { gainStandardError, offsetStandardError, rows } = of([
      [0, 1],
      [100, 103],
    ]);
    expect([gainStandardError, offsetStandardError]).toEqual([null, null]);
    for (const { residual } of rows) expect(residual).toBeCloseTo(0, 12);
  });

  it('finds again what was put in, whatever the constant and the factor', () => {
    const sets = [0, 5, 20, 60, 135, 300];
    fc.assert(
      fc.property(valueBetween(2, 10), valueBetween(1.1, 1.5), (add, times) => {
        const rounded = (x: number) => Math.round(x * 10) / 10;
        const byConstant = of(
          sets.map((set) => [set, rounded(set + add)]),
          { resolution: 0.1 },
        );
        expect(byConstant.fault).toBe('constant');
        expect(Math.abs((byConstant.constant as number) - add)).toBeLessThanOrEqual(0.1);
        const byFactor = of(
          sets.map((set) => [set, rounded(set * times)]),
          { resolution: 0.1 },
        );
        expect(byFactor.fault).toBe('factor');
        expect(Math.abs((byFactor.factor as number) - times)).toBeLessThanOrEqual(0.1 / 300);
      }),
    );
  });

  it.each<[string, DisplayFitInput, string, string]>([
    ['one row', { rows: [{ set: 1, displayed: 1 }], resolution: 1 }, 'wrong-count', 'rows'],
    [
      'one value twice',
      {
        rows: [
          { set: 1, displayed: 1 },
          { set: 1, displayed: 2 },
        ],
        resolution: 1,
      },
      'singular',
      'rows',
    ],
    [
      'a negative display',
      {
        rows: [
          { set: 1, displayed: 1 },
          { set: 2, displayed: -2 },
        ],
        resolution: 1,
      },
      'negative',
      'rows[1].displayed',
    ],
    [
      'no step',
      {
        rows: [
          { set: 1, displayed: 1 },
          { set: 2, displayed: 2 },
        ],
        resolution: 0,
      },
      'not-positive',
      'resolution',
    ],
    [
      'an accuracy in percent',
      {
        rows: [
          { set: 1, displayed: 1 },
          { set: 2, displayed: 2 },
        ],
        resolution: 1,
        accuracy: { relative: 2 },
      },
      'not-a-fraction',
      'accuracy.relative',
    ],
  ])('refuses %s', (_, input, code, path) => {
    expect(faultOf(() => displayFit(input))).toEqual([code, path]);
  });
});
