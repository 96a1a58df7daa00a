import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Band,
  bandAround,
  contains,
  convertBand,
  deriveLimits,
  deriveLimitsColumns,
  explainBandAround,
  explainConvertBand,
  explainRoundBand,
  impliedNominal,
  intersectBands,
  type LimitRule,
  marginIn,
  roundBand,
  type Tolerance,
} from '../../src/band/index.js';
import { CalculationError } from '../../src/checks/index.js';
import { recompute } from '../../src/model/index.js';
import type { Step } from '../../src/working/index.js';
import {
  load,
  power,
  quantity,
  relativeTolerance,
  resolution,
  toleranceFraction,
  valueBetween,
} from '../generators.js';

function expectClose(actual: number, expected: number, relative: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
}

function expectRecomputes(working: readonly Step[]): void {
  for (const step of working) expectClose(recompute(step), step.value, 1e-12);
}

/** Any tolerance: one or two parts, one or two sides, with or without a floor. */
const tolerance: fc.Arbitrary<Tolerance> = fc
  .record({
    r: fc.record({ below: toleranceFraction(), above: toleranceFraction() }),
    a: fc.record({ below: valueBetween(0, 3), above: valueBetween(0, 3) }),
    parts: fc.constantFrom('relative', 'absolute', 'greater', 'sum'),
    sides: fc.constantFrom('both', 'below', 'above'),
    floor: fc.boolean(),
  })
  .map(({ r, a, parts, sides, floor }) => {
    const only = (part: { below: number; above: number }) =>
      sides === 'both' ? part : sides === 'below' ? { below: part.below } : { above: part.above };
    return {
      ...(parts === 'absolute' ? {} : { relative: only(r) }),
      ...(parts === 'relative' ? {} : { absolute: only(a) }),
      ...(parts === 'greater' || parts === 'sum' ? { combine: parts } : {}),
      ...(floor ? { floor: 0 } : {}),
    } as Tolerance;
  });

const rule: fc.Arbitrary<LimitRule> = fc
  .record({
    tolerance,
    toleranceIn: quantity(),
    reads: quantity(),
    resolution: fc.option(resolution(), { nil: undefined }),
    rounding: fc.constantFrom('inward' as const, 'nearest' as const),
  })
  .map(({ resolution: step, ...rest }) => ({ ...rest, ...(step === undefined ? {} : { resolution: step }) }));

/** A result, or the code of the error in its place. */
function outcome<T>(work: () => T): T | string {
  try {
    return work();
  } catch (error) {
    if (error instanceof CalculationError) return error.code;
    throw error;
  }
}

const band = fc
  .record({ a: power(), b: power(), sides: fc.constantFrom('both', 'lower', 'upper') })
  .map(({ a, b, sides }): Band => {
    const lower = Math.min(a, b);
    const upper = Math.max(a, b);
    return sides === 'both' ? { lower, upper } : sides === 'lower' ? { lower } : { upper };
  });

describe('laws of bands', () => {
  it('a nominal lies inside its band, and the explained band is the band', () => {
    fc.assert(
      fc.property(power(), tolerance, (nominal, t) => {
        const around = bandAround(nominal, t);
        expect(contains(around, nominal)).toBe(true);
        const explained = explainBandAround(nominal, t, { unit: 'W', symbol: 'P' });
        expect(explained.band).toEqual(around);
        expectRecomputes(explained.working);
        const last = (symbol: string): number | undefined =>
          explained.working.filter((step) => step.symbol === symbol).at(-1)?.value;
        expect(last('P_lower')).toBe(around.lower);
        expect(last('P_upper')).toBe(around.upper);
      }),
    );
  });

  it('the sum of two parts is never tighter than the greater of them', () => {
    fc.assert(
      fc.property(power(), toleranceFraction(), valueBetween(0, 50), (nominal, relative, absolute) => {
        const greater = bandAround(nominal, { relative, absolute, combine: 'greater' });
        const sum = bandAround(nominal, { relative, absolute, combine: 'sum' });
        expect(sum.lower!).toBeLessThanOrEqual(greater.lower!);
        expect(sum.upper!).toBeGreaterThanOrEqual(greater.upper!);
      }),
    );
  });

  it('a band converted there and back is the band again', () => {
    fc.assert(
      fc.property(band, quantity(), quantity(), load(), (before, from, to, ohms) => {
        const there = convertBand(before, { from, to, load: ohms });
        const back = convertBand(there, { from: to, to: from, load: ohms });
        expect(Object.keys(back)).toEqual(Object.keys(before));
        for (const end of ['lower', 'upper'] as const) {
          if (before[end] !== undefined) expectClose(back[end]!, before[end], 1e-15);
        }
        const explained = explainConvertBand(before, { from, to, load: ohms });
        expect(explained.band).toEqual(there);
        expectRecomputes(explained.working);
      }),
    );
  });

  it('rounding inward never widens, by more than the 1e-12 that count as on a step', () => {
    fc.assert(
      fc.property(band, resolution(), (before, step) => {
        const rounded = outcome(() => roundBand(before, step));
        if (typeof rounded === 'string') {
          expect(rounded).toBe('band-empty');
          // Nothing is left only where no step lies between the limits.
          expect(Math.ceil(before.lower! / step - 1e-9)).toBeGreaterThan(Math.floor(before.upper! / step + 1e-9));
          return;
        }
        if (before.lower !== undefined) {
          expect(rounded.lower!).toBeGreaterThanOrEqual(before.lower * (1 - 1e-12));
          expect(rounded.lower!).toBeLessThan(before.lower * (1 + 1e-12) + step);
        }
        if (before.upper !== undefined) {
          expect(rounded.upper!).toBeLessThanOrEqual(before.upper * (1 + 1e-12));
          expect(rounded.upper!).toBeGreaterThan(before.upper * (1 - 1e-12) - step);
        }
        // A rounded band is on the grid: rounding again, either way, changes nothing.
        expect(roundBand(rounded, step)).toEqual(rounded);
        expect(roundBand(rounded, step, 'nearest')).toEqual(rounded);
        const explained = explainRoundBand(before, step, { unit: 'W' });
        expect(explained.band).toEqual(rounded);
        expectRecomputes(explained.working);
      }),
    );
  });

  it('rounding to nearest moves a limit by half a step at most', () => {
    fc.assert(
      fc.property(band, resolution(), (before, step) => {
        const { band: rounded, working } = explainRoundBand(before, step, { unit: 'W' }, 'nearest');
        for (const end of ['lower', 'upper'] as const) {
          if (before[end] === undefined) continue;
          expect(Math.abs(rounded[end]! - before[end])).toBeLessThanOrEqual(step / 2 + 1e-12 * before[end]);
        }
        expectRecomputes(working);
      }),
    );
  });

  it('a rounded limit prints with no more decimals than the resolution', () => {
    fc.assert(
      fc.property(power(), fc.constantFrom(0.1, 0.01, 0.001, 0.0001), (limit, step) => {
        const decimals = String(step).length - 2;
        const { lower } = roundBand({ lower: limit }, step);
        expect(lower).toBe(Number(lower!.toFixed(decimals)));
      }),
    );
  });

  it('the intersection holds exactly what all bands hold', () => {
    fc.assert(
      fc.property(band, band, power(), (a, b, value) => {
        const both = outcome(() => intersectBands(a, b));
        const expected = contains(a, value) && contains(b, value);
        expect(typeof both === 'string' ? false : contains(both, value)).toBe(expected);
        expect(outcome(() => intersectBands(b, a))).toEqual(both);
      }),
    );
  });

  it('a margin is monotone, 0 at nominal, ±1 at the limits, and beyond ±1 exactly outside', () => {
    fc.assert(
      fc.property(power(), relativeTolerance(), power(), power(), (nominal, t, a, b) => {
        const around = bandAround(nominal, t);
        expect(marginIn(around, nominal, nominal)).toBe(0);
        expect(marginIn(around, nominal, around.lower!)).toBe(-1);
        expect(marginIn(around, nominal, around.upper!)).toBe(1);
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(marginIn(around, nominal, low)).toBeLessThanOrEqual(marginIn(around, nominal, high));
        // Right beside a limit the quotient may round to ±1: the verdict is `contains`, not the margin.
        if (Math.abs(marginIn(around, nominal, a)) < 1) expect(contains(around, a)).toBe(true);
        if (Math.abs(marginIn(around, nominal, a)) > 1) expect(contains(around, a)).toBe(false);
      }),
    );
  });
});

describe('laws of derived limits', () => {
  it('every step recomputes, and the working holds every limit that is given', () => {
    fc.assert(
      fc.property(power(), load(), rule, (watts, ohms, how) => {
        const derived = outcome(() => deriveLimits({ power: watts, load: ohms, ...how }));
        if (typeof derived === 'string') {
          expect(['limit-negative', 'band-empty']).toContain(derived);
          return;
        }
        expectRecomputes(derived.working);
        const values = new Set(derived.working.map(({ value }) => value));
        for (const limits of [derived.limits, derived.limitsBeforeRounding, derived.powerLimits]) {
          for (const end of ['lower', 'upper'] as const) {
            if (limits[end] !== undefined) expect(values).toContain(limits[end]);
          }
        }
        expect(contains(derived.powerLimits, watts) || how.toleranceIn !== 'power').toBe(true);
      }),
    );
  });

  it('columns give the same limits, to the last bit, and the same errors', () => {
    const rows = fc.array(fc.record({ p: power(), r: load() }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(rows, rule, (points, how) => {
        const input = {
          power: Float64Array.from(points, ({ p }) => p),
          load: Float64Array.from(points, ({ r }) => r),
        };
        const columns = outcome(() => deriveLimitsColumns({ ...input, ...how }));
        const single = points.map(({ p, r }) => outcome(() => deriveLimits({ power: p, load: r, ...how })));
        const faults = single.filter((one) => typeof one === 'string');
        if (typeof columns === 'string') {
          expect(faults).toContain(columns);
          return;
        }
        expect(faults).toEqual([]);
        single.forEach((one, i) => {
          if (typeof one === 'string') return;
          expect(columns.expected[i]).toBe(one.expected[how.reads ?? 'current']);
          expect(columns.lower?.[i]).toBe(one.limits.lower);
          expect(columns.upper?.[i]).toBe(one.limits.upper);
        });
      }),
    );
  });

  it('a known tolerance read backwards finds the nominal, and its printed limits the interval around it', () => {
    fc.assert(
      fc.property(
        power(),
        load(),
        relativeTolerance(),
        quantity(),
        quantity(),
        (watts, ohms, t, toleranceIn, reads) => {
          const point = { power: watts, load: ohms, tolerance: t, toleranceIn, reads } as const;
          const { limits, expected } = deriveLimits(point);
          const hypothesis = { tolerance: t, in: toleranceIn };
          const found = impliedNominal(limits, { quantity: reads, load: ohms, hypothesis });
          expect(found.consistent).toBe(true);
          for (const q of ['power', 'current', 'voltage'] as const) expectClose(found.nominal[q], expected[q], 1e-13);
          expectRecomputes(found.working);

          const step = expected[reads] / 1000;
          const printed = deriveLimits({ ...point, resolution: step, rounding: 'nearest' }).limits;
          const range = impliedNominal(printed, { quantity: reads, load: ohms, hypothesis, resolution: step });
          expect(range.consistent).toBe(true);
          expect(range.interval!.power.lower).toBeLessThanOrEqual(watts * (1 + 1e-12));
          expect(range.interval!.power.upper).toBeGreaterThanOrEqual(watts * (1 - 1e-12));
          expectRecomputes(range.working);
        },
      ),
    );
  });

  it('a symmetric or geometric hypothesis gives back limits at the tolerance that it implies', () => {
    fc.assert(
      fc.property(
        power(),
        toleranceFraction(),
        load(),
        fc.constantFrom('symmetric-in-current', 'symmetric-in-power', 'symmetric-in-voltage', 'geometric'),
        (watts, r, ohms, hypothesis) => {
          const before = bandAround(watts, { relative: r });
          const found = impliedNominal(before, { quantity: 'power', load: ohms, hypothesis });
          const around = bandAround(found.nominal.power, { relative: found.toleranceInPower });
          expectClose(around.lower!, before.lower!, 1e-13);
          expectClose(around.upper!, before.upper!, 1e-13);
          expectRecomputes(found.working);
        },
      ),
    );
  });
});
