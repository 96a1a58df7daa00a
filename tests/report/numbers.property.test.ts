import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalsNeeded, exactText, fixedText } from '../../src/report/numbers/fixed-text.js';
import { limitDigits, readingDigits } from '../../src/report/numbers/limit-digits.js';
import { marginText, signedPercent } from '../../src/report/numbers/percent-text.js';
import { unitFor } from '../../src/report/numbers/print-unit.js';
import { significantDigits, valueText } from '../../src/report/numbers/value-text.js';
import { current, load, resolution, valueBetween } from '../generators.js';

const number = (digits: string): number => Number(digits.replace(/\u2212/g, '-'));

describe('unitFor', () => {
  it('takes one unit for a column, as a technician would', () => {
    expect(unitFor('current', [0.276, 1.538, 2.74]).symbol).toBe('mA');
    expect(unitFor('current', [1.94, 2.74]).symbol).toBe('A');
    expect(unitFor('power', [0.5, 120]).symbol).toBe('W');
    expect(unitFor('resistance', [10, 500, 2000]).symbol).toBe('Ω');
    expect(unitFor('resistance', [2000, 47_000]).symbol).toBe('kΩ');
    expect(unitFor('voltage', [215, 4000]).symbol).toBe('V');
    expect(unitFor('voltage', [215, 14_000]).symbol).toBe('kV');
    expect(unitFor('frequency', [430e3]).symbol).toBe('kHz');
    expect(unitFor('current', []).symbol).toBe('A');
    expect(unitFor('current', [0, 0]).symbol).toBe('A');
  });
});

describe('values', () => {
  it('are written as a technician writes them', () => {
    expect(valueText(0.75, 'current')).toBe('750 mA');
    expect(valueText(1.13, 'current')).toBe('1.13 A');
    expect(valueText(500, 'resistance')).toBe('500 Ω');
    expect(valueText(1714.6, 'voltage', 3)).toBe('1.71 kV');
    expect(valueText(0, 'power')).toBe('0 W');
    expect(valueText(1e-12, 'current')).toBe('1.000e\u22129 mA');
  });

  it('keep the shortest decimal: 1.005 A is 1005 mA', () => {
    const mA = unitFor('current', [0.5]);
    expect(fixedText(1.005, mA, 0)).toBe('1005');
    expect(exactText(0.0029, mA)).toBe('2.9');
    expect(decimalsNeeded(0.0005, mA)).toBe(1);
    expect(decimalsNeeded(0.001, mA)).toBe(0);
    expect(fixedText(-0.25, unitFor('current', [1]), 2)).toBe('\u22120.25');
  });

  it('to six digits lie within half a unit of the sixth', () => {
    fc.assert(
      fc.property(load(), (value) => {
        const unit = unitFor('resistance', [value]);
        const back = number(significantDigits(value, unit, 6)) * 10 ** -unit.shift;
        expect(Math.abs(back - value)).toBeLessThanOrEqual(value * 5.0001e-6);
      }),
    );
  });
});

describe('limitDigits', () => {
  it('prints a limit on the grid of the instrument in the digits of the instrument', () => {
    const mA = unitFor('current', [0.5]);
    expect(limitDigits(0.843, 'lower', mA, 0.001)).toBe('843');
    expect(limitDigits(0.8430000000000001, 'upper', mA, 0.001)).toBe('843');
    expect(limitDigits(0.47, 'upper', mA, 0.0005)).toBe('470.0');
    expect(limitDigits(1.13, 'upper', unitFor('current', [1.13]), 0.01)).toBe('1.13');
  });

  it('never prints a limit looser than it is, on or off the grid', () => {
    fc.assert(
      fc.property(current(), fc.option(resolution(), { nil: undefined }), (limit, step) => {
        const unit = unitFor('current', [limit]);
        const scale = 10 ** unit.shift;
        // The dust of binary arithmetic, at the thirteenth digit, is tidied to nearest.
        const dust = 1e-12 * limit * scale;
        expect(number(limitDigits(limit, 'lower', unit, step))).toBeGreaterThanOrEqual(limit * scale - dust);
        expect(number(limitDigits(limit, 'upper', unit, step))).toBeLessThanOrEqual(limit * scale + dust);
      }),
    );
  });

  it('prints every multiple of a resolution without any change', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.constantFrom(0.0005, 0.001, 0.002, 0.005, 0.01), (n, step) => {
        const unit = unitFor('current', [n * step]);
        const digits = number(limitDigits(n * step, 'lower', unit, step)) * 10 ** -unit.shift;
        expect(digits).toBeCloseTo(n * step, 12);
      }),
    );
  });
});

describe('readingDigits', () => {
  it('shows the digits of the instrument where they suffice', () => {
    const mA = unitFor('current', [0.5]);
    expect(readingDigits(0.871, mA, 0.001, { lower: '843', upper: '1133' })).toBe('871');
    expect(readingDigits(0.4877321, mA, 0.001, { lower: '439', upper: '536' })).toBe('488');
  });

  it('shows more where rounding would move a converted reading across a limit', () => {
    const mA = unitFor('current', [0.5]);
    expect(readingDigits(0.84296, mA, 0.001, { lower: '843' })).toBe('842.96');
    expect(readingDigits(1.13304, mA, 0.001, { upper: '1133' })).toBe('1133.04');
  });

  it('always prints a reading on its own side of the printed limits', () => {
    fc.assert(
      fc.property(
        valueBetween(0.3, 0.6),
        fc.integer({ min: 300, max: 450 }),
        fc.integer({ min: 450, max: 600 }),
        fc.constantFrom(0.001, 0.01),
        (value, lower, upper, step) => {
          const limits = { lower: String(lower), upper: String(upper) };
          const unit = unitFor('current', [0.5]);
          const printed = number(readingDigits(value, unit, step, limits));
          // The digits of the reading itself, to twelve decimals, tell its side.
          const exact = number(fixedText(value, unit, 12));
          expect(printed < lower).toBe(exact < lower);
          expect(printed > upper).toBe(exact > upper);
        },
      ),
    );
  });
});

describe('percentages', () => {
  it('are signed and short', () => {
    expect(marginText(0.62)).toBe('+62 %');
    expect(marginText(-0.301)).toBe('\u221230 %');
    expect(marginText(0)).toBe('0 %');
    expect(marginText(-0.0001)).toBe('0 %');
    expect(marginText(1)).toBe('+100 %');
    expect(marginText(-1)).toBe('\u2212100 %');
    expect(signedPercent(0.021)).toBe('+2.1 %');
    expect(signedPercent(-0.35)).toBe('\u221235 %');
    expect(signedPercent(1e9)).toBe('+1.0e+11 %');
  });

  it('print no margin onto a limit that it does not reach or has passed', () => {
    const near = fc.double({ min: 0.9, max: 1.1, noNaN: true });
    const nearest = fc.constantFrom(1 - 1e-10, 1 + 1e-10, 0.9996, 1.0004, 1 + Number.EPSILON, 1 - Number.EPSILON);
    fc.assert(
      fc.property(fc.oneof(near, nearest), fc.boolean(), (margin, isLower) => {
        const text = marginText(isLower ? -margin : margin);
        const printed = Math.abs(number(text.replace(' %', '')));
        expect(Math.sign(printed - 100)).toBe(Math.sign(margin - 1));
      }),
    );
  });
});
