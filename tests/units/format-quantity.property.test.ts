import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DisplayUnit, formatQuantity, parseQuantity, unitVocabulary } from '../../src/units/index.js';
import { add, compare, distance, fractionOfDecimal } from './exact.js';

const units: readonly DisplayUnit[] = ['W', 'A', 'V', 'ohm', 'Hz', 's', 'H', 'F', 'K', 'm', '%', '1'];

/** Any finite double: normal, subnormal, zero, both signs; and values of a bench. */
const anyNumber = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  fc.double({ min: -1e-300, max: 1e-300, noNaN: true }),
  fc.integer({ min: -100_000, max: 100_000 }).map((thousandths) => thousandths / 1000),
);

const prefixesOf = (unit: DisplayUnit) =>
  unitVocabulary.find(({ symbols, quantity }) => symbols.includes(unit) || (unit === '1' && quantity === 'number'))!
    .prefixes;

const style = fc.constantFrom(...units).chain((unit) =>
  fc.record({
    unit: fc.constant(unit),
    prefix: fc.constantFrom('auto' as const, 'none' as const, ...prefixesOf(unit)),
    ascii: fc.boolean(),
  }),
);

/** The number that a text shows, exactly, without its unit. */
function shown(text: string) {
  const [, sign = '', whole = '', fraction = '', exponent = '0'] =
    /^(-?)(\d+)(?:\.(\d+))?(?:e(-?\d+))? /.exec(`${text} `) ?? [];
  const digits = BigInt(whole + fraction) * (sign === '-' ? -1n : 1n);
  return { digits, exponent: Number(exponent) - fraction.length, written: (whole + fraction).length };
}

describe('formatQuantity', () => {
  it('prints text that reads back to exactly the same number: parse(print(x)) = x', () => {
    fc.assert(
      fc.property(anyNumber, style, (value, { unit, ...options }) => {
        const read = parseQuantity(formatQuantity(value, unit, options));
        expect(read.value).toBe(value === 0 ? 0 : value);
        expect(read.unit).toBe(unit === '%' ? '1' : unit);
      }),
      { numRuns: 10_000 },
    );
  });

  it('does so for kelvins in °C, and for each form', () => {
    const kelvin = fc.oneof(
      fc.double({ min: 0, max: 2000, noNaN: true }),
      fc.double({ min: 1e-9, max: 1e15, noNaN: true }),
    );
    fc.assert(
      fc.property(kelvin, (value) => {
        if (value !== 0 && value < 1e-9) return;
        expect(parseQuantity(formatQuantity(value, '°C')).value).toBe(value === 0 ? 0 : value);
      }),
      { numRuns: 3000 },
    );
    fc.assert(
      fc.property(anyNumber, fc.constantFrom('rms', 'peak', 'peak-to-peak'), (value, form) => {
        const read = parseQuantity(formatQuantity(value, 'V', { form }));
        expect(read).toEqual({ value: value === 0 ? 0 : value, quantity: 'voltage', unit: 'V', form });
      }),
    );
  });

  it('prints the shortest such text: no digit can be left out', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (value) => {
        const { digits } = shown(formatQuantity(value, 'V', { prefix: 'none' }));
        const significant = String(digits).replace(/0+$/, '').length;
        expect(significant === 1 || Number(value.toPrecision(significant - 1)) !== value).toBe(true);
      }),
    );
  });

  const benchNumber = fc.oneof(
    fc.double({ min: -1e6, max: 1e6, noNaN: true }),
    fc.integer({ min: -1_000_000, max: 1_000_000 }).map((thousandths) => thousandths / 1000),
  );
  const rule = fc.oneof(
    fc.record({ digits: fc.integer({ min: 1, max: 17 }) }),
    fc.record({ decimals: fc.integer({ min: 0, max: 8 }) }),
    fc.record({ resolution: fc.constantFrom(0.0001, 0.001, 0.002, 0.005, 0.01, 0.05, 0.1, 0.25, 0.5, 1, 10) }),
  );

  it('rounds down to at most the value, up to at least the value', () => {
    fc.assert(
      fc.property(benchNumber, fc.constantFrom(...units), rule, (value, unit, how) => {
        const down = parseQuantity(formatQuantity(value, unit, { ...how, rounding: 'down' })).value;
        const up = parseQuantity(formatQuantity(value, unit, { ...how, rounding: 'up' })).value;
        expect(down).toBeLessThanOrEqual(value);
        expect(up).toBeGreaterThanOrEqual(value);
      }),
      { numRuns: 5000 },
    );
  });

  it('rounds by less than a step, and to nearest by at most half a step', () => {
    const steps = fc.constantFrom(
      ...([
        ['1', -3],
        ['2', -3],
        ['5', -2],
        ['25', -2],
        ['1', 0],
        ['5', 1],
      ] as const),
    );
    fc.assert(
      fc.property(
        benchNumber,
        steps,
        fc.constantFrom('nearest', 'down', 'up'),
        (value, [digits, exponent], rounding) => {
          const resolution = Number(`${digits}e${exponent}`);
          const printed = shown(formatQuantity(value, 'V', { resolution, rounding, prefix: 'none' }));
          const exact = shown(formatQuantity(value, 'V', { prefix: 'none' }));
          const error = distance(
            fractionOfDecimal(printed.digits, printed.exponent),
            fractionOfDecimal(exact.digits, exact.exponent),
          );
          const step = fractionOfDecimal(BigInt(digits), exponent);
          if (rounding === 'nearest') expect(compare(add(error, error), step)).toBeLessThanOrEqual(0);
          else expect(compare(error, step)).toBe(-1);
          // On the grid of the step, and with the decimals of the step.
          expect(
            ((printed.digits * 10n ** 20n) / 10n ** BigInt(-printed.exponent)) %
              (BigInt(digits) * 10n ** BigInt(20 + exponent)),
          ).toBe(0n);
          expect(printed.exponent).toBe(Math.min(0, exponent));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it('shows as many significant digits as were asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-12, max: 1e6, noNaN: true }),
        fc.integer({ min: 1, max: 17 }),
        (value, digits) => {
          const text = formatQuantity(value, '1', { digits, rounding: 'nearest' });
          const { digits: all, exponent } = shown(text);
          const significant = String(all).length;
          if (exponent < 0) expect(significant).toBe(digits);
          else expect(String(all).replace(/0+$/, '').length).toBeLessThanOrEqual(digits);
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('chooses a prefix that leaves 1 to 999 before the point, where there is one', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 9.99e11, noNaN: true }), (value) => {
        const number = Number.parseFloat(formatQuantity(value, 'ohm', { digits: 4, rounding: 'nearest' }));
        expect(number).toBeGreaterThanOrEqual(1);
        expect(number).toBeLessThan(1000);
      }),
    );
  });
});
