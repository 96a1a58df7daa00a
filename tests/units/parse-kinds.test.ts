import { describe, expect, it } from 'vitest';
import {
  parseCapacitance,
  parseCurrent,
  parseFraction,
  parseFrequency,
  parseInductance,
  parseLength,
  parsePeakCurrent,
  parsePeakVoltage,
  parsePower,
  parseResistance,
  parseTemperature,
  parseTime,
  parseVoltage,
} from '../../src/units/index.js';

describe('the readers of one quantity', () => {
  it.each([
    ['power', parsePower, '120 W', 120],
    ['current', parseCurrent, '750 mA', 0.75],
    ['voltage', parseVoltage, '1.2 kV', 1200],
    ['peakCurrent', parsePeakCurrent, '2.5 A peak', 2.5],
    ['peakVoltage', parsePeakVoltage, '3.2 kVpk', 3200],
    ['resistance', parseResistance, '1.2 kΩ', 1200],
    ['frequency', parseFrequency, '430 kHz', 430_000],
    ['time', parseTime, '1.5 min', 90],
    ['inductance', parseInductance, '0.95 µH', 9.5e-7],
    ['capacitance', parseCapacitance, '47 pF', 4.7e-11],
    ['temperature', parseTemperature, '23 °C', 296.15],
    ['length', parseLength, '85 cm', 0.85],
    ['fraction', parseFraction, '20 %', 0.2],
  ])('%s', (path, parse, text, value) => {
    expect(parse(text)).toBe(value);
    const wrong = path === 'length' ? '5 W' : '5 mm';
    expect(() => parse(wrong)).toThrow(expect.objectContaining({ code: 'unit-mismatch', path }));
    expect(() => parse(wrong, 'rows[3]')).toThrow(expect.objectContaining({ path: 'rows[3]' }));
    expect(() => parse('5')).toThrow(expect.objectContaining({ code: 'unit-missing' }));
  });

  it('keep peak and rms apart', () => {
    const mismatch = expect.objectContaining({ code: 'form-mismatch' });
    expect(() => parseVoltage('3.2 kV peak')).toThrow(mismatch);
    expect(() => parseCurrent('2 App')).toThrow(mismatch);
    expect(() => parsePeakVoltage('3.2 kV')).toThrow(mismatch);
    expect(() => parsePeakCurrent('2 A rms')).toThrow(mismatch);
    expect(() => parsePeakCurrent('2 A peak-to-peak')).toThrow(mismatch);
  });
});
