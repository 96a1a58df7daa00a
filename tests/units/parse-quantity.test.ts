import { describe, expect, it } from 'vitest';
import { CalculationError, type Fault } from '../../src/checks/index.js';
import { type ParsedQuantity, parseQuantity, type QuantityOptions, safeParseQuantity } from '../../src/units/index.js';

function faultOf(text: unknown, options?: QuantityOptions): Fault {
  const result = safeParseQuantity(text as string, options);
  if (result.ok) throw new Error(`${JSON.stringify(text)} was read as ${JSON.stringify(result.value)}`);
  return result.fault;
}

const noBreak = '\u00a0';
const narrow = '\u202f';

describe('parseQuantity reads', () => {
  it.each<[string, number, ParsedQuantity['quantity'], ParsedQuantity['unit'], ParsedQuantity['form']]>([
    ['120 W', 120, 'power', 'W', 'plain'],
    ['0.25 kW', 250, 'power', 'W', 'plain'],
    ['35 mW', 0.035, 'power', 'W', 'plain'],
    ['750 mA', 0.75, 'current', 'A', 'rms'],
    ['12.5 µA', 12.5e-6, 'current', 'A', 'rms'],
    ['3 nA', 3e-9, 'current', 'A', 'rms'],
    ['1.2 kV', 1200, 'voltage', 'V', 'rms'],
    ['90 V rms', 90, 'voltage', 'V', 'rms'],
    ['90 Vrms', 90, 'voltage', 'V', 'rms'],
    ['90 V RMS', 90, 'voltage', 'V', 'rms'],
    ['1.5 V peak', 1.5, 'voltage', 'V', 'peak'],
    ['1.5 Vpk', 1.5, 'voltage', 'V', 'peak'],
    ['1.5kVpk', 1500, 'voltage', 'V', 'peak'],
    ['2.5 A pk', 2.5, 'current', 'A', 'peak'],
    ['2.5 mA peak-to-peak', 0.0025, 'current', 'A', 'peak-to-peak'],
    ['10 Vpp', 10, 'voltage', 'V', 'peak-to-peak'],
    ['10 V p-p', 10, 'voltage', 'V', 'peak-to-peak'],
    ['10 V pk-pk', 10, 'voltage', 'V', 'peak-to-peak'],
    ['5 mArms', 0.005, 'current', 'A', 'rms'],
    ['500 ohm', 500, 'resistance', 'ohm', 'plain'],
    ['500 ohms', 500, 'resistance', 'ohm', 'plain'],
    ['1.2 k\u2126', 1200, 'resistance', 'ohm', 'plain'],
    ['1.2 k\u03a9', 1200, 'resistance', 'ohm', 'plain'],
    ['5 m\u03a9', 0.005, 'resistance', 'ohm', 'plain'],
    ['5 M\u03a9', 5e6, 'resistance', 'ohm', 'plain'],
    ['2 Gohm', 2e9, 'resistance', 'ohm', 'plain'],
    ['430 kHz', 430_000, 'frequency', 'Hz', 'plain'],
    ['0.43 MHz', 430_000, 'frequency', 'Hz', 'plain'],
    ['10 s', 10, 'time', 's', 'plain'],
    ['2.5 \u00b5s', 2.5e-6, 'time', 's', 'plain'],
    ['2.5 \u03bcs', 2.5e-6, 'time', 's', 'plain'],
    ['2.5 us', 2.5e-6, 'time', 's', 'plain'],
    ['1.5 min', 90, 'time', 's', 'plain'],
    ['0.1 h', 360, 'time', 's', 'plain'],
    ['0.95 uH', 9.5e-7, 'inductance', 'H', 'plain'],
    ['47 pF', 4.7e-11, 'capacitance', 'F', 'plain'],
    ['23 °C', 296.15, 'temperature', 'K', 'plain'],
    ['-40 degC', 233.15, 'temperature', 'K', 'plain'],
    ['-273.15 °C', 0, 'temperature', 'K', 'plain'],
    ['296.15 K', 296.15, 'temperature', 'K', 'plain'],
    ['85 cm', 0.85, 'length', 'm', 'plain'],
    ['1 mm', 0.001, 'length', 'm', 'plain'],
    ['2 m', 2, 'length', 'm', 'plain'],
    ['20 %', 0.2, 'fraction', '1', 'plain'],
    ['-13.5%', -0.135, 'fraction', '1', 'plain'],
    ['120 %', 1.2, 'fraction', '1', 'plain'],
    ['5.77', 5.77, 'number', '1', 'plain'],
    ['1.2e3 ohm', 1200, 'resistance', 'ohm', 'plain'],
    ['1.2E+3 ohm', 1200, 'resistance', 'ohm', 'plain'],
    ['1.2e-3 kohm', 1.2, 'resistance', 'ohm', 'plain'],
    ['12e\u22121 V', 1.2, 'voltage', 'V', 'rms'],
    ['\u22125 V', -5, 'voltage', 'V', 'rms'],
    ['-5 V', -5, 'voltage', 'V', 'rms'],
    ['+5 V', 5, 'voltage', 'V', 'rms'],
    ['007 W', 7, 'power', 'W', 'plain'],
  ])('%s', (text, value, quantity, unit, form) => {
    expect(parseQuantity(text)).toEqual({ value, quantity, unit, form });
  });

  it.each(['120W', '120 W', `120${noBreak}W`, `120${narrow}W`, '120  W', ' 120 W ', `120 ${noBreak}W`])(
    'any of the three blanks, or none: %j',
    (text) => {
      expect(parseQuantity(text).value).toBe(120);
    },
  );

  it('a zero without a sign', () => {
    expect(parseQuantity('-0 W').value).toBe(0);
    expect(parseQuantity('\u22120.00e5 kV').value).toBe(0);
  });

  it('numbers at the ends of the range', () => {
    expect(parseQuantity('1.7976931348623157e308 W').value).toBe(Number.MAX_VALUE);
    expect(parseQuantity('5e-324 W').value).toBe(Number.MIN_VALUE);
    expect(parseQuantity('5e-315 nA').value).toBe(5e-324);
    expect(parseQuantity('1e-324 h').value).toBe(3.6e-321);
    expect(parseQuantity('0e99999999999999999999 W').value).toBe(0);
  });
});

describe('parseQuantity with an expected quantity', () => {
  it('takes that quantity, or one of several', () => {
    expect(parseQuantity('120 W', { expect: 'power' }).value).toBe(120);
    expect(parseQuantity('750 mA', { expect: ['power', 'current'] }).quantity).toBe('current');
    expect(parseQuantity('0.2', { expect: ['fraction', 'number'] })).toMatchObject({ value: 0.2, quantity: 'number' });
  });

  it('takes peak only where it is asked for by name', () => {
    expect(parseQuantity('3 kV peak', { expect: 'voltage', form: 'peak' }).value).toBe(3000);
    expect(parseQuantity('3 kV peak', { expect: 'voltage', form: 'any' }).form).toBe('peak');
    expect(parseQuantity('3 kV', { expect: 'voltage' }).form).toBe('rms');
    expect(parseQuantity('120 W', { form: 'peak' }).form).toBe('plain');
  });

  it('takes an unmarked value as peak only where that too is asked for', () => {
    const peak = { expect: 'voltage', form: 'peak', unmarked: 'peak' } as const;
    expect(parseQuantity('3 kV', peak)).toMatchObject({ value: 3000, form: 'peak' });
    expect(parseQuantity('3 kV peak', peak)).toMatchObject({ value: 3000, form: 'peak' });
    expect(faultOf('3 kV rms', peak).code).toBe('form-mismatch');
    expect(faultOf('3 kV peak-to-peak', peak).code).toBe('form-mismatch');
  });
});

describe('parseQuantity refuses', () => {
  it.each<[string, Fault['code'], RegExp]>([
    // Numbers
    ['', 'number-malformed', /empty/],
    ['   ', 'number-malformed', /empty/],
    ['W', 'number-malformed', /number before the unit/],
    ['1,5 A', 'number-malformed', /"1\.5"/],
    ['0,75 A', 'number-malformed', /"0\.75"/],
    ['1,500 A', 'number-malformed', /"1\.500".*"1500"/],
    ['1,000,000 ohm', 'number-malformed', /no commas/],
    ['1,000.5 ohm', 'number-malformed', /no commas/],
    ['1.000,5 ohm', 'number-malformed', /no commas/],
    ['1, A', 'number-malformed', /no commas/],
    ['1 000 ohm', 'number-malformed', /"1000"/],
    [`1${noBreak}000 ohm`, 'number-malformed', /"1000"/],
    [`1${narrow}000 ohm`, 'number-malformed', /"1000"/],
    ['1 000', 'number-malformed', /"1000"/],
    ["1'000 ohm", 'number-malformed', /"1000"/],
    ['1’000 ohm', 'number-malformed', /"1000"/],
    ['1_000 ohm', 'number-malformed', /"1000"/],
    ['NaN', 'number-malformed', /finite/],
    ['NaN W', 'number-malformed', /finite/],
    ['Infinity', 'number-malformed', /finite/],
    ['-inf V', 'number-malformed', /finite/],
    ['∞ ohm', 'number-malformed', /finite/],
    ['0x10 W', 'number-malformed', /decimal number/],
    ['0XFF W', 'number-malformed', /decimal number/],
    ['--5 V', 'number-malformed', /one sign/],
    ['+-5 V', 'number-malformed', /one sign/],
    ['\u2212\u22125 V', 'number-malformed', /one sign/],
    ['- 5 V', 'number-malformed', /directly before the digits/],
    ['–5 V', 'number-malformed', /hyphen/],
    ['.5 A', 'number-malformed', /"0\.5 A"/],
    ['5. A', 'number-malformed', /digit after it/],
    ['1.2.3 A', 'number-malformed', /one decimal point/],
    ['5e A', 'number-malformed', /"5e3"/],
    ['5e', 'number-malformed', /"5e3"/],
    ['5 e3 A', 'number-malformed', /"5e3"/],
    ['1.2 × 10^3 ohm', 'number-malformed', /exponent/],
    ['1/2 W', 'number-malformed', /in full/],
    ['5-6 A', 'number-malformed', /in full/],
    ['１２ W', 'number-malformed', /0 to 9/],
    ['1２ W', 'number-malformed', /0 to 9/],
    ['٣ W', 'number-malformed', /0 to 9/],
    // Units
    ['975 ma', 'unit-unknown', /"975 mA"/],
    ['975 Ma', 'unit-unknown', /"975 mA"/],
    ['750 MA', 'unit-unknown', /"750 mA"/],
    ['5 MW', 'unit-unknown', /"5 mW"/],
    ['5 mHz', 'unit-unknown', /"5 MHz"/],
    ['5 kA', 'unit-unknown', /Known units/],
    ['1.2 KΩ', 'unit-unknown', /"1\.2 kohm"/],
    ['1.2 Kohm', 'unit-unknown', /"1\.2 kohm"/],
    ['430 KHz', 'unit-unknown', /"430 kHz"/],
    ['500 Ohm', 'unit-unknown', /"500 ohm"/],
    ['5 MOHM', 'unit-unknown', /"5 mohm" or "5 Mohm"/],
    ['120 watts', 'unit-unknown', /"120 W"/],
    ['120 Watt', 'unit-unknown', /"120 W"/],
    ['5 milliamps', 'unit-unknown', /"5 mA"/],
    ['5 kilovolts', 'unit-unknown', /"5 kV"/],
    ['3 sec', 'unit-unknown', /"3 s"/],
    ['3 mins', 'unit-unknown', /"3 min"/],
    ['20 ℃', 'unit-unknown', /"20 °C"/],
    ['4R7', 'unit-unknown', /Known units/],
    ['1e3k', 'unit-unknown', /Known units: W, A, V, ohm/],
    ['12 dBm', 'unit-unknown', /Known units/],
    ['5 VA', 'unit-unknown', /Known units/],
    ['20 %%', 'unit-unknown', /Known units/],
    // More than one quantity
    ['120 W extra', 'text-malformed', /"120 W" alone/],
    ['120 W/m', 'text-malformed', /"120 W" alone/],
    ['120 W;', 'text-malformed', /"120 W" alone/],
    ['120 W\n', 'text-malformed', /"120 W" alone/],
    ['5 A 3', 'text-malformed', /"5 A" alone/],
    ['5 V DC', 'text-malformed', /only these words.*peak/],
    ['5 Vp', 'text-malformed', /only these words.*pk/],
    ['5 V Peak', 'text-malformed', /only these words.*peak/],
    ['120 W rms', 'form-mismatch', /mean power/],
    ['120 Wpk', 'form-mismatch', /mean power/],
    // Range
    ['1e400 W', 'result-out-of-range', /exponent/],
    ['1e308 h', 'result-out-of-range', /exponent/],
    ['1e-400 W', 'result-out-of-range', /exponent/],
    ['1e-320 pF', 'result-out-of-range', /exponent/],
    ['1e-999999999999 °C', 'result-out-of-range', /exponent/],
    ['1e999999999999 °C', 'result-out-of-range', /exponent/],
  ])('%j: %s', (text, code, hint) => {
    const fault = faultOf(text, { path: 'outputs[0].power' });
    expect(fault.code).toBe(code);
    expect(fault.path).toBe('outputs[0].power');
    expect(fault.received).toBe(JSON.stringify(text));
    expect(fault.requirement).toMatch(/^must /);
    expect(fault.hint).toMatch(hint);
  });

  it('says what an impossible prefix would mean', () => {
    expect(faultOf('750 MA').requirement).toContain('megaampere');
    expect(faultOf('5 mHz').requirement).toContain('millihertz');
  });

  it.each<[string, QuantityOptions, Fault['code'], RegExp]>([
    ['120 V', { expect: 'power' }, 'unit-mismatch', /V is one of voltage.*W, µW, mW, kW/],
    ['120', { expect: 'power' }, 'unit-missing', /"120 W".*kW/],
    ['20 %', { expect: 'power' }, 'unit-mismatch', /fraction/],
    ['100', { expect: 'resistance' }, 'unit-missing', /"100 ohm".*kohm/],
    ['1.2 K', { expect: 'resistance' }, 'unit-mismatch', /"1\.2 kohm"/],
    ['4.7 k', { expect: 'resistance' }, 'unit-unknown', /"4\.7 kohm"/],
    ['975 ma', { expect: 'current' }, 'unit-unknown', /"975 mA"/],
    ['975 ma', { expect: 'power' }, 'unit-unknown', /Known units: W/],
    ['0.2', { expect: 'fraction' }, 'unit-missing', /0\.2 is "20 %"/],
    ['1', { expect: 'fraction' }, 'unit-missing', /percent/],
    ['5 W', { expect: 'number' }, 'unit-mismatch', /power/],
    ['3 kV peak', { expect: 'voltage' }, 'form-mismatch', /crest factor/],
    ['3 kVpp', { expect: 'voltage' }, 'form-mismatch', /crest factor/],
    ['3 kV', { expect: 'voltage', form: 'peak' }, 'form-mismatch', /"3 kV peak"/],
    ['3 kV rms', { expect: 'voltage', form: 'peak' }, 'form-mismatch', /"3 kV peak"/],
    ['3 kVpp', { expect: 'voltage', form: 'peak' }, 'form-mismatch', /"3 kV peak"/],
    ['3 kV', { expect: ['power', 'current'] }, 'unit-mismatch', /W, µW, mW, kW, A,/],
  ])('%j with %j: %s', (text, options, code, hint) => {
    const fault = faultOf(text, options);
    expect(fault.code).toBe(code);
    expect(fault.hint).toMatch(hint);
  });

  it('temperatures below absolute zero', () => {
    expect(faultOf('-273.16 °C').code).toBe('out-of-range');
    expect(faultOf('-1e300 °C').code).toBe('out-of-range');
  });

  it('text that is too long, and what is not text', () => {
    expect(faultOf('1'.repeat(101)).code).toBe('text-too-long');
    expect(faultOf('9'.repeat(1_000_000)).received.length).toBeLessThan(70);
    expect(parseQuantity(`1.${'0'.repeat(96)} W`).value).toBe(1);
    for (const value of [null, undefined, 120, {}, [], true]) expect(faultOf(value).code).toBe('wrong-type');
  });

  it('names inherited from objects', () => {
    for (const word of ['__proto__', 'constructor', 'toString']) {
      expect(faultOf(`5 ${word}`).code).toBe('unit-unknown');
      expect(faultOf(`5 ${word}`, { expect: 'power' }).code).toBe('unit-unknown');
    }
  });

  it('by throwing the same fault', () => {
    let thrown: unknown;
    try {
      parseQuantity('1,5 A', { path: 'limit' });
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(CalculationError);
    expect((thrown as CalculationError).faults).toEqual([faultOf('1,5 A', { path: 'limit' })]);
    expect((thrown as CalculationError).message).toBe(
      'limit: received "1,5 A"; must be a number with a decimal point and no grouping, then its unit. ' +
        '[number-malformed] Write "1.5", with a decimal point.',
    );
  });
});
