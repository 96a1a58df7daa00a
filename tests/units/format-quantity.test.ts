import { describe, expect, it } from 'vitest';
import { type DisplayUnit, type FormatOptions, formatQuantity } from '../../src/units/index.js';

describe('formatQuantity without rounding', () => {
  it.each<[number, DisplayUnit, string]>([
    [0.75, 'A', '750 mA'],
    [1200, 'ohm', '1.2 kΩ'],
    [430e3, 'Hz', '430 kHz'],
    [120, 'W', '120 W'],
    [999.9, 'W', '999.9 W'],
    [1000, 'W', '1 kW'],
    [4e6, 'W', '4000 kW'],
    [1e12, 'W', '1000000000000 W'],
    [0.5e-12, 'F', '0.5 pF'],
    [1e-16, 'F', '1e-16 F'],
    [4.7e-7, 'F', '470 nF'],
    [9.5e-7, 'H', '950 nH'],
    [2.5e-6, 's', '2.5 µs'],
    [90, 's', '90 s'],
    [0.85, 'm', '850 mm'],
    [0.02, 'Hz', '0.02 Hz'],
    [0, 'W', '0 W'],
    [-0, 'W', '0 W'],
    [-0.75, 'A', '-750 mA'],
    [0.2, '%', '20 %'],
    [-0.135, '%', '-13.5 %'],
    [0.07, '%', '7 %'],
    [0.2, '1', '0.2'],
    [296.15, '°C', '23 °C'],
    [296.15, 'K', '296.15 K'],
    [0, '°C', '-273.15 °C'],
    [273.15, '°C', '0 °C'],
    [1e300, 'V', '1e300 V'],
    [5e-324, 'V', '5e-324 V'],
    [Number.MAX_VALUE, 'ohm', '1.7976931348623157e308 Ω'],
  ])('%d %s: %s', (value, unit, text) => {
    expect(formatQuantity(value, unit)).toBe(text);
  });

  it('with a prefix that was asked for', () => {
    expect(formatQuantity(1133e-3, 'A', { prefix: 'm' })).toBe('1133 mA');
    expect(formatQuantity(0.75, 'A', { prefix: 'none' })).toBe('0.75 A');
    expect(formatQuantity(0.85, 'm', { prefix: 'c' })).toBe('85 cm');
    expect(formatQuantity(0, 'W', { prefix: 'k' })).toBe('0 kW');
    expect(formatQuantity(1e-30, 'W', { prefix: 'k' })).toBe('1e-33 kW');
  });

  it('with the form of a value', () => {
    expect(formatQuantity(3200, 'V', { form: 'peak' })).toBe('3.2 kV peak');
    expect(formatQuantity(2, 'A', { form: 'peak-to-peak' })).toBe('2 A peak-to-peak');
    expect(formatQuantity(2, 'A', { form: 'rms' })).toBe('2 A');
  });

  it('in ASCII', () => {
    expect(formatQuantity(1200, 'ohm', { ascii: true })).toBe('1.2 kohm');
    expect(formatQuantity(2.5e-6, 's', { ascii: true })).toBe('2.5 us');
    expect(formatQuantity(296.15, '°C', { ascii: true })).toBe('23 degC');
    expect(formatQuantity(0.75, 'A', { ascii: true })).toBe('750 mA');
  });
});

describe('formatQuantity with rounding', () => {
  it.each<[number, DisplayUnit, FormatOptions, string]>([
    [1234.5, 'ohm', { digits: 2, rounding: 'nearest' }, '1.2 kΩ'],
    [1234.5, 'ohm', { digits: 2, rounding: 'up' }, '1.3 kΩ'],
    [0.4898979485566356, 'A', { digits: 4, rounding: 'nearest' }, '489.9 mA'],
    [1.2, 'ohm', { digits: 3, rounding: 'nearest' }, '1.20 Ω'],
    [120, 'W', { digits: 2, rounding: 'nearest' }, '120 W'],
    [125, 'W', { digits: 2, rounding: 'nearest' }, '130 W'],
    [125, 'W', { digits: 2, rounding: 'down' }, '120 W'],
    [9.96, 'ohm', { digits: 2, rounding: 'nearest' }, '10 Ω'],
    [0.99996, 'A', { digits: 4, rounding: 'nearest' }, '1.000 A'],
    [0.99994, 'A', { digits: 4, rounding: 'nearest' }, '999.9 mA'],
    [0.99996, 'A', { decimals: 1, rounding: 'nearest' }, '1.0 A'],
    [0.99994, 'A', { decimals: 1, rounding: 'nearest' }, '999.9 mA'],
    [0.75, 'A', { decimals: 0, rounding: 'nearest' }, '750 mA'],
    [0.2, '%', { decimals: 1, rounding: 'nearest' }, '20.0 %'],
    [0.12345, '%', { resolution: 0.001, rounding: 'down' }, '12.3 %'],
    [0.84301, 'A', { resolution: 0.001, rounding: 'up' }, '844 mA'],
    [0.84399, 'A', { resolution: 0.001, rounding: 'down' }, '843 mA'],
    [1.1334, 'A', { resolution: 0.001, rounding: 'nearest' }, '1.133 A'],
    [1.2, 'A', { resolution: 0.001, rounding: 'nearest' }, '1.200 A'],
    [1233, 'ohm', { resolution: 10, rounding: 'nearest' }, '1.23 kΩ'],
    [0.3, 'V', { resolution: 0.25, rounding: 'nearest', prefix: 'none' }, '0.25 V'],
    [0.375, 'V', { resolution: 0.25, rounding: 'nearest', prefix: 'none' }, '0.50 V'],
    [297.4, '°C', { decimals: 0, rounding: 'nearest' }, '24 °C'],
    [272.9, '°C', { decimals: 0, rounding: 'nearest' }, '0 °C'],
    [-1.25, 'V', { digits: 2, rounding: 'down' }, '-1.3 V'],
    [-1.25, 'V', { digits: 2, rounding: 'up' }, '-1.2 V'],
    [-1.25, 'V', { digits: 2, rounding: 'nearest' }, '-1.3 V'],
    [-0.0004, 'V', { decimals: 0, rounding: 'nearest', prefix: 'none' }, '0 V'],
    [0, 'V', { digits: 3, rounding: 'up' }, '0 V'],
    [0, 'A', { decimals: 3, rounding: 'up' }, '0.000 A'],
    [0, 'A', { resolution: 0.001, rounding: 'up' }, '0.000 A'],
    [1.23e-20, '1', { digits: 2, rounding: 'nearest' }, '1.2e-20'],
    [1.2e-20, '1', { digits: 3, rounding: 'nearest' }, '1.20e-20'],
  ])('%d %s %j: %s', (value, unit, options, text) => {
    expect(formatQuantity(value, unit, options)).toBe(text);
  });

  it('leaves a value that is on a step, though its double is not', () => {
    // 0.843 as a double lies above 843/1000, 1.133 below 1133/1000.
    for (const rounding of ['nearest', 'down', 'up'] as const) {
      expect(formatQuantity(0.843, 'A', { resolution: 0.001, rounding })).toBe('843 mA');
      expect(formatQuantity(1.133, 'A', { resolution: 0.001, rounding })).toBe('1.133 A');
      expect(formatQuantity(0.3, 'A', { resolution: 0.1, rounding })).toBe('300 mA');
    }
    expect(formatQuantity(1.005, 'V', { decimals: 2, rounding: 'nearest' })).toBe('1.01 V');
  });
});

describe('formatQuantity refuses', () => {
  it.each<[string, () => string, string]>([
    ['NaN', () => formatQuantity(Number.NaN, 'W'), 'not-a-number'],
    ['infinity', () => formatQuantity(Number.POSITIVE_INFINITY, 'W'), 'not-a-number'],
    ['text', () => formatQuantity('120' as never, 'W'), 'not-a-number'],
    ['an unknown unit', () => formatQuantity(1, 'J' as never), 'unknown-choice'],
    ['minutes', () => formatQuantity(1, 'min' as never), 'unknown-choice'],
    ['a prefix inside the unit', () => formatQuantity(1, 'mA' as never), 'unknown-choice'],
    ['a prefix beyond the trade', () => formatQuantity(1, 'W', { prefix: 'G' }), 'unknown-choice'],
    ['a prefix before percent', () => formatQuantity(1, '%', { prefix: 'k' }), 'unknown-choice'],
    ['rounding without a direction', () => formatQuantity(1, 'W', { digits: 2 }), 'unknown-choice'],
    ['an unknown direction', () => formatQuantity(1, 'W', { digits: 2, rounding: 'even' as never }), 'unknown-choice'],
    ['a direction alone', () => formatQuantity(1, 'W', { rounding: 'up' }), 'wrong-count'],
    ['two rules', () => formatQuantity(1, 'W', { digits: 2, decimals: 2, rounding: 'up' }), 'wrong-count'],
    ['no digits', () => formatQuantity(1, 'W', { digits: 0, rounding: 'up' }), 'out-of-range'],
    ['half a digit', () => formatQuantity(1, 'W', { digits: 2.5, rounding: 'up' }), 'not-an-integer'],
    ['a negative step', () => formatQuantity(1, 'W', { resolution: -1, rounding: 'up' }), 'not-positive'],
    ['a step beyond printing', () => formatQuantity(1, 'W', { resolution: 3e-90, rounding: 'up' }), 'out-of-range'],
    ['power with a form', () => formatQuantity(1, 'W', { form: 'peak' }), 'form-mismatch'],
    ['an unknown form', () => formatQuantity(1, 'V', { form: 'mean' as never }), 'unknown-choice'],
    ['a negative temperature in °C', () => formatQuantity(-1, '°C'), 'out-of-range'],
  ])('%s', (_what, print, code) => {
    expect(print).toThrow(expect.objectContaining({ name: 'CalculationError', code }));
  });
});
