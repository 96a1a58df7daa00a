import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  curveReadingBudget,
  loadErrors,
  powerBudget,
  propagate,
  readingBudget,
  readingErrors,
  roundUncertainty,
} from '../../src/uncertainty/index.js';
import { current, load } from '../generators.js';

const range = { maximum: 1, resolution: 0.001 };

describe('errors of a reading', () => {
  it('adds the parts of a statement up to one limit', () => {
    // 1 % of 0.5 + 0.5 % of 1 + 0.002 + 3 · 0.001 = 0.015
    const errors = readingErrors({ ofReading: 0.01, ofRange: 0.005, floor: 0.002, counts: 3 }, { reading: 0.5, range });
    expect(errors.accuracy.standardUncertainty).toBeCloseTo(0.015 / Math.sqrt(3), 15);
    expect(errors.resolution.standardUncertainty).toBeCloseTo(0.001 / Math.sqrt(12), 15);
  });

  it('JCGM 100:2008, 4.3.7: 14e-6 of the reading and 2e-6 of the range', () => {
    const errors = readingErrors(
      { ofReading: 14e-6, ofRange: 2e-6 },
      { reading: 0.928571, range: { maximum: 1, resolution: 1e-6 } },
    );
    // 8.66025057374277e-6, from memory, recomputed
    expect(Math.abs(errors.accuracy.standardUncertainty - 8.66025057374277e-6)).toBeLessThan(5e-21);
  });

  it('takes a statement with coverage as an expanded uncertainty', () => {
    const k2 = readingErrors({ ofReading: 0.02, coverage: { factor: 2 } }, { reading: 0.5, range });
    expect(k2.accuracy.standardUncertainty).toBeCloseTo(0.005, 15);
    const p95 = readingErrors({ ofReading: 0.02, coverage: { level: 0.95 } }, { reading: 0.5, range });
    expect(p95.accuracy.standardUncertainty).toBeCloseTo(0.01 / 1.959963984540054, 12);
  });

  it('adds for frequency, crest factor and drift only where these apply', () => {
    const statement = {
      ofReading: 0.01,
      frequency: [{ from: 1e6, to: 5e6, ofReading: 0.02 }],
      crestFactor: [
        { above: 3, ofReading: 0.01 },
        { above: 6, ofReading: 0.03 },
      ],
      drift: 0.005,
    };
    const names = (extra: { frequency?: number; crestFactor?: number }) =>
      Object.keys(readingErrors(statement, { reading: 0.5, range, ...extra })).sort();
    expect(names({})).toEqual(['accuracy', 'drift', 'resolution']);
    expect(names({ frequency: 4e5, crestFactor: 2 })).toEqual(['accuracy', 'drift', 'resolution']);
    const all = readingErrors(statement, { reading: 0.5, range, frequency: 2e6, crestFactor: 7 });
    expect(all['frequency']?.standardUncertainty).toBeCloseTo(0.01 / Math.sqrt(3), 15);
    expect(all['crestFactor']?.standardUncertainty).toBeCloseTo(0.015 / Math.sqrt(3), 15);
  });

  it.each([
    [{ ofReading: 2 }, 'not-a-fraction'],
    [{ floor: -1 }, 'negative'],
    [{ counts: Number.NaN }, 'not-a-number'],
  ])('refuses %o', (statement, code) => {
    expect(() => readingErrors(statement, { reading: 0.5, range })).toThrow(expect.objectContaining({ code }));
  });
});

describe('errors of a load', () => {
  it('takes a tolerance or a certificate, never both', () => {
    const certificate = { expandedUncertainty: 1, coverage: { factor: 2 } };
    expect(loadErrors({ resistance: 500, certificate })['load']?.standardUncertainty).toBeCloseTo(0.001, 15);
    expect(() => loadErrors({ resistance: 500, certificate, tolerance: 0.01 })).toThrow(/certificate/);
  });

  it('takes warming as anything between cold and the full rise', () => {
    const warm = loadErrors({ resistance: 500, temperature: { coefficient: 1e-4, rise: 80 } })['loadTemperature'];
    expect(warm?.value).toBeCloseTo(0.004, 15);
    expect(warm?.standardUncertainty).toBeCloseTo(0.004 / Math.sqrt(3), 15);
  });
});

describe('budget of a reading against limits in its own quantity', () => {
  const accuracy = { ofReading: 0.01 };
  const given = { accuracy, range, reading: 0.5, load: { resistance: 500, tolerance: 0.03 } };
  const share = (budget: ReturnType<typeof readingBudget>): number =>
    budget.contributions.find((row) => row.name === 'load')?.share ?? Number.NaN;

  it('the load does not count where the generator keeps the quantity', () => {
    for (const [reads, slope] of [
      ['current', 1],
      ['voltage', -1],
      ['power', 0],
    ] as const) {
      const budget = readingBudget({ ...given, reads, slope });
      expect(budget.loadExponent).toBe(0);
      expect(share(budget)).toBe(0);
      expect(budget.loadStatement).toContain('does not count');
    }
  });

  it('counts half for current and voltage at constant power, whole for current at constant voltage', () => {
    const relative = (reads: 'current' | 'voltage', slope: number): number => {
      const budget = readingBudget({ ...given, reads, slope });
      return Math.abs(budget.contributions.find((row) => row.name === 'load')?.contribution ?? 0) / 0.5;
    };
    const u = 0.03 / Math.sqrt(3);
    expect(relative('current', 0)).toBeCloseTo(u / 2, 14);
    expect(relative('voltage', 0)).toBeCloseTo(u / 2, 14);
    expect(relative('current', -1)).toBeCloseTo(u, 14);
    expect(relative('voltage', 1)).toBeCloseTo(u, 14);
  });

  it('refers a reading at a wrong resistance to the nominal load', () => {
    // Constant power: a load 4 % high lets 2 % less current flow; the reading refers to 2 % more.
    const warm = readingBudget({
      ...given,
      reads: 'current',
      slope: 0,
      load: { resistance: 500, temperature: { coefficient: 0.08, rise: 1 } },
    });
    expect(warm.value).toBeCloseTo(0.5 * Math.sqrt(1.04), 14);
  });

  it('its closed-form sensitivities agree with differences', () => {
    fc.assert(
      fc.property(
        current(),
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        fc.constantFrom('current', 'voltage', 'power'),
        (reading, slope, reads) => {
          const wide = { maximum: 1e4, resolution: 1e-3 };
          const budget = readingBudget({
            reads,
            reading,
            slope,
            accuracy,
            range: wide,
            load: { resistance: 100, tolerance: 0.05, strays: 0.01 },
          });
          const inputs = Object.fromEntries(
            budget.contributions.map((row) => [
              row.name,
              {
                value: row.value,
                standardUncertainty: row.standardUncertainty,
                degreesOfFreedom: row.degreesOfFreedom,
                type: row.type,
                distribution: { kind: 'normal' as const },
              },
            ]),
          );
          const again = propagate(
            (x: Readonly<Record<string, number>>) =>
              (reading + (x['accuracy'] ?? 0) + (x['resolution'] ?? 0)) *
              ((1 + (x['load'] ?? 0)) * (1 + (x['strays'] ?? 0))) ** -budget.loadExponent,
            inputs,
          );
          expect(again.standardUncertainty / budget.standardUncertainty).toBeCloseTo(1, 8);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe('budget of a power', () => {
  it('P = I²R: twice the relative uncertainty of the current, and that of the load', () => {
    fc.assert(
      fc.property(current(), load(), (reading, resistance) => {
        const stated = {
          reading,
          range: { maximum: 2 * reading, resolution: reading * 1e-6 },
          accuracy: { ofReading: 0.02, coverage: { factor: 2 } },
        };
        const budget = powerBudget({ by: 'current', current: stated, load: { resistance, tolerance: 0.01 } });
        expect(budget.value / (reading ** 2 * resistance)).toBeCloseTo(1, 13);
        const expected = Math.hypot(2 * 0.01, 0.01 / Math.sqrt(3), 2e-6 / Math.sqrt(12));
        expect(budget.standardUncertainty / budget.value / expected).toBeCloseTo(1, 9);
      }),
    );
  });

  it('V²/R and V·I', () => {
    const voltage = {
      reading: 200,
      range: { maximum: 500, resolution: 1e-6 },
      accuracy: { ofReading: 0.01, coverage: { factor: 2 } },
    };
    const currentReading = {
      reading: 0.5,
      range: { maximum: 1, resolution: 1e-9 },
      accuracy: { ofReading: 0.02, coverage: { factor: 2 } },
    };
    const byVoltage = powerBudget({
      by: 'voltage',
      voltage,
      load: { resistance: 400, certificate: { expandedUncertainty: 4, coverage: { factor: 2 } } },
    });
    expect(byVoltage.value).toBeCloseTo(100, 10);
    expect(byVoltage.standardUncertainty / 100).toBeCloseTo(Math.hypot(2 * 0.005, 0.005), 9);
    const byBoth = powerBudget({ by: 'current and voltage', current: currentReading, voltage });
    expect(byBoth.standardUncertainty / 100).toBeCloseTo(Math.hypot(0.005, 0.01), 9);
    expect(byBoth.contributions.map((row) => row.name)).toContain('voltage.accuracy');
  });
});

describe('budget of a curve reading', () => {
  it('has no part from the load where the curve is flat, and no part from interpolation where all agree', () => {
    const budget = curveReadingBudget({
      power: 200,
      slope: 0,
      loadDigitising: 0.05,
      powerDigitising: 0.01,
      alternatives: [200, 200],
    });
    expect(budget.standardUncertainty).toBeCloseTo(2 / Math.sqrt(3), 13);
    expect(budget.contributions.map((row) => row.share)).toEqual([1, 0, 0]);
  });
});

describe('rounding of an uncertainty', () => {
  it.each([
    [100.02147, 0.00079, 2, 100.02147, 0.00079, 5],
    [10.0583, 0.0314, 2, 10.058, 0.031, 3],
    [12345.6, 120, 2, 12350, 120, -1],
    [0.7506, 0.0996, 2, 0.75, 0.1, 2],
    [-1.25, 0.5, 1, -1.3, 0.5, 1],
    [5, 0.0141, 1, 5, 0.02, 2],
    [5, 0.0104, 1, 5, 0.01, 2],
  ])('%s ± %s to %s figures', (value, uncertainty, figures, roundedValue, roundedUncertainty, decimals) => {
    expect(roundUncertainty(value, uncertainty, figures)).toEqual({
      value: roundedValue,
      uncertainty: roundedUncertainty,
      decimals,
    });
  });

  it('never understates by more than 5 %', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.integer({ min: 1, max: 2 }), (u, figures) => {
        const { uncertainty } = roundUncertainty(0, u, figures);
        expect(uncertainty).toBeGreaterThanOrEqual(u * 0.95);
        expect(uncertainty).toBeLessThanOrEqual(u * (figures === 1 ? 2 : 1.1));
      }),
    );
  });
});
