import { describe, expect, it } from 'vitest';
import { codeList } from '../../src/checks/index.js';
import { type ReadingsCsvOptions, readReadingsCsv, safeReadReadingsCsv } from '../../src/schema/index.js';
import { fixture } from './fixtures.js';

const header = 'point,reading,display,peak voltage,phase,after interruption,mode unchanged,note,set';

const sheet = [
  header,
  '1,561 mA,158 W,0.43 kV,as-found,,,"second activation,\nafter a pause",',
  '2,79.5 W,,,as-left,yes,yes,,',
  'monitor,101 ohm,,,as-found,,,,100 ohm',
  'monitor,over-range,,,as-found,,,,open',
];
const options = { by: 'Invented technician', date: '2026-11-02', note: 'Invented for the tests of this library.' };

function faultsOf(text: string, given?: ReadingsCsvOptions): { code: string; path: string; hint?: string }[] {
  const result = safeReadReadingsCsv(text, given);
  if (result.ok) return [];
  return result.faults.map(({ code, path, hint }) => ({ code, path, ...(hint === undefined ? {} : { hint }) }));
}

/** Faults of a sheet with one row, as `code at path`. */
function faultsOfRow(row: string, columns = header): string[] {
  return faultsOf(`${columns}\n${row}`).map(({ code, path }) => `${code} at ${path}`);
}

describe('a sheet of readings', () => {
  it('says the same as the readings in JSON', () => {
    expect(readReadingsCsv(sheet.join('\n'), options)).toEqual(fixture('readings-si.json'));
  });

  it.each([
    ['a byte-order mark', (text: string) => `\ufeff${text}`],
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['CR', (text: string) => text.replaceAll('\n', '\r')],
    ['mixed line ends', (text: string) => text.replace('\n', '\r\n')],
    ['a line end after the last row', (text: string) => `${text}\n`],
    ['blank rows', (text: string) => `\n\n${text.replace('\nmonitor', '\n,,,,\n\nmonitor')}\n,,\n`],
    ['every cell quoted', (text: string) => quoteAll(text)],
    ['blanks around cells', (text: string) => text.replace('1,561 mA,158 W', ' 1 ,\u00a0561 mA  , 158 W')],
    ['capitals and underscores in the header', (text: string) => text.replace('peak voltage', 'Peak_Voltage')],
  ])('is read with %s', (_, change) => {
    expect(readReadingsCsv(change(sheet.join('\n')), options)).toEqual(fixture('readings-si.json'));
  });

  it.each([
    ['semicolons', ';'],
    ['tabs', '\t'],
  ] as const)('is read with %s between cells', (_, delimiter) => {
    const cells = sheet.map((row) => row.replace('activation,', 'activation\u0001').replaceAll(',', delimiter));
    const text = cells.join('\n').replace('\u0001', ',');
    expect(readReadingsCsv(text, options)).toEqual(fixture('readings-si.json'));
    expect(readReadingsCsv(text, { ...options, delimiter })).toEqual(fixture('readings-si.json'));
  });

  it('may give units in the header, and other units in cells', () => {
    const text =
      'Point,Reading [mA],Display (W),peak voltage [V peak],set [ohm]\n1,561,158,430,\n2,0.5 A,,,\nmonitor,101 ohm,,,100';
    expect(readReadingsCsv(text)).toEqual({
      schema: 'esu-limits/readings',
      version: 1,
      readings: [
        {
          point: '1',
          phase: 'as-found',
          quantity: 'current',
          value: 0.561,
          display: { quantity: 'power', value: 158 },
          peakVoltage: 430,
        },
        { point: '2', phase: 'as-found', quantity: 'current', value: 0.5 },
      ],
      monitor: [{ set: 100, displayed: 101, phase: 'as-found' }],
    });
  });

  it('takes a row without a reading for a point that was not read', () => {
    expect(readReadingsCsv('point,reading,phase\n1,,as-found\n2,1 A,\nmonitor,,').readings).toHaveLength(1);
  });

  it('takes the phase of the options where a row has none', () => {
    const text = 'point,reading,phase\n1,1 A,\n1,1 A,as found\n1,1 A,As_Left';
    const phases = readReadingsCsv(text, { phase: 'as-left' }).readings.map((reading) => reading.phase);
    expect(phases).toEqual(['as-left', 'as-found', 'as-left']);
  });

  it('passes over the columns that a worksheet prints for the technician', () => {
    const text =
      'number,point,output,setting,load,lower limit,upper limit,reading\n1,cut/120W/500ohm,Cut,120 W,500 ohm,0.4 A,0.5 A,489 mA';
    expect(readReadingsCsv(text).readings).toMatchObject([{ point: 'cut/120W/500ohm', value: 0.489 }]);
  });

  it('takes away the apostrophe that keeps a spreadsheet from running a text, and no other', () => {
    const text = `point,reading,note\n1,1 A,'=1+1\n2,1 A,'tis fine\n3,1 A,' -7`;
    expect(readReadingsCsv(text).readings.map((reading) => reading.note)).toEqual(['=1+1', "'tis fine", ' -7']);
  });

  it('keeps a quoted delimiter, a doubled quotation mark and right-to-left text', () => {
    const text = 'point,reading,note\n1,1 A,"a, ""b"" – קטע"';
    expect(readReadingsCsv(text).readings[0]?.note).toBe('a, "b" – קטע');
  });

  it('of a header alone has no readings', () => {
    expect(readReadingsCsv(header).readings).toEqual([]);
  });
});

describe('what is wrong with a row is named with line and column', () => {
  it.each([
    ['1,561,,,,,,,', 'unit-missing at line 2, column 2 (reading)'],
    ['1,"0,561 A",,,,,,,', 'number-malformed at line 2, column 2 (reading)'],
    ['1,561 ohm,,,,,,,', 'unit-mismatch at line 2, column 2 (reading)'],
    ['1,1.2 A peak,,,,,,,', 'form-mismatch at line 2, column 2 (reading)'],
    ['1,-5 mA,,,,,,,', 'negative at line 2, column 2 (reading)'],
    ['1,nought,,,,,,,', 'number-malformed at line 2, column 2 (reading)'],
    ['1,1 A,158,,,,,,', 'unit-missing at line 2, column 3 (display)'],
    ['1,1 A,-1 W,,,,,,', 'negative at line 2, column 3 (display)'],
    ['1,1 A,,430 V rms,,,,,', 'form-mismatch at line 2, column 4 (peak voltage)'],
    ['1,1 A,,430,,,,,', 'unit-missing at line 2, column 4 (peak voltage)'],
    ['1,1 A,,-430 V,,,,,', 'negative at line 2, column 4 (peak voltage)'],
    ['1,1 A,,,before,,,,', 'unknown-choice at line 2, column 5 (phase)'],
    ['1,1 A,,,,perhaps,,,', 'unknown-choice at line 2, column 6 (after interruption)'],
    ['1,1 A,,,,yes,maybe,,', 'unknown-choice at line 2, column 7 (mode unchanged)'],
    ['1,1 A,,,,,,a\u0007b,', 'text-unsuitable at line 2, column 8 (note)'],
    [`1,1 A,,,,,,${'x'.repeat(10_001)},`, 'text-unsuitable at line 2, column 8 (note)'],
    [',1 A,,,,,,,', 'missing-member at line 2, column 1 (point)'],
    [`${'x'.repeat(501)},1 A,,,,,,,`, 'text-unsuitable at line 2, column 1 (point)'],
    ['1,,158 W,,,,,,', 'missing-member at line 2, column 2 (reading)'],
    ['1,,,,,,,leads missing,', 'missing-member at line 2, column 2 (reading)'],
    ['1,1 A,,,,,,,100 ohm', 'contradiction at line 2, column 9 (set)'],
    ['monitor,101 ohm,,,,,,,', 'missing-member at line 2, column 9 (set)'],
    ['monitor,101,,,,,,,100 ohm', 'unit-missing at line 2, column 2 (reading)'],
    ['monitor,101 ohm,,,,,,,wide', 'number-malformed at line 2, column 9 (set)'],
    ['monitor,-1 ohm,,,,,,,100 ohm', 'negative at line 2, column 2 (reading)'],
    ['monitor,1 ohm,5 W,,,,,,100 ohm', 'contradiction at line 2, column 3 (display)'],
    ['1,489,5 mA,,,,,,,,', 'unit-missing at line 2, column 2 (reading)'],
    ['1,1 A,,,,,,,,surplus', 'csv-malformed at line 2, column 10'],
    ['1,1 A,,,,,,"open,', 'csv-malformed at line 2'],
    ['1,1 A,,,,,,"a"b,', 'csv-malformed at line 2'],
  ])('%s', (row, expected) => {
    const found = faultsOfRow(row);
    expect(found).toEqual([expected]);
  });

  it('with the line on which the row begins, after cells of several lines', () => {
    const text = 'point,reading,note\r\n1,1 A,"one\r\ntwo\r\n\r\nthree"\r\n\r\n2,5,\r\n3,1 A,"a\r\nb"\r\n4,6,';
    expect(faultsOf(text).map(({ path }) => path)).toEqual([
      'line 7, column 2 (reading)',
      'line 10, column 2 (reading)',
    ]);
  });

  it('with a hint for a decimal comma', () => {
    expect(faultsOf('point;reading\n1;0,489 A')).toEqual([
      { code: 'number-malformed', path: 'line 2, column 2 (reading)', hint: expect.stringContaining('0.489') },
    ]);
    expect(faultsOf('point;reading [A]\n1;0,489')).toEqual([
      { code: 'number-malformed', path: 'line 2, column 2 (reading)', hint: expect.stringContaining('0.489') },
    ]);
  });

  it('all at once, with those of the header and of the options, and nothing is half-read', () => {
    const text = 'point,reading,dispaly,note\n1,561,,\n2,1 A,,\n3,0 W,,a\u0000';
    const result = safeReadReadingsCsv(text, { by: 'a\nb' });
    expect(result).not.toHaveProperty('value');
    expect(result.ok ? [] : result.faults.map(({ code, path }) => `${code} at ${path}`)).toEqual([
      'unknown-member at line 1, column 3',
      'unit-missing at line 2, column 2 (reading)',
      'text-unsuitable at line 4, column 4 (note)',
      'text-unsuitable at by',
    ]);
    expect(() => readReadingsCsv(text, { by: 'a\nb' })).toThrow(
      expect.objectContaining({ faults: result.ok ? [] : result.faults }),
    );
  });
});

describe('what is wrong with a header is named', () => {
  it.each([
    ['point,reading,reading', ['duplicate at line 1, column 3']],
    ['point,display', ['missing-member at line 1']],
    ['number;output', ['missing-member at line 1', 'missing-member at line 1']],
    ['point,reading [ohm]', ['unit-mismatch at line 1, column 2 (reading)']],
    ['point,reading [amps]', ['unit-unknown at line 1, column 2 (reading)']],
    ['point,reading []', ['unit-missing at line 1, column 2 (reading)']],
    ['point [V],reading', ['unit-mismatch at line 1, column 1 (point)']],
    ['point,reading,colour', ['unknown-member at line 1, column 3']],
    ['', ['missing-member at line 1', 'missing-member at line 1']],
    [
      '{ "schema": "esu-limits/readings" }',
      ['unknown-member at line 1, column 1', 'missing-member at line 1', 'missing-member at line 1'],
    ],
  ])('%s', (columns, expected) => {
    expect(faultsOf(columns).map(({ code, path }) => `${code} at ${path}`)).toEqual(expected);
  });

  it('with a hint where a known name is near', () => {
    expect(faultsOf('point,reading,peak volts')[0]?.hint).toContain('peak voltage');
  });
});

describe('a text that would exhaust a program', () => {
  it('is refused by its length', () => {
    expect(faultsOf(sheet.join('\n'), { maximumLength: 20 })).toMatchObject([{ code: 'too-large' }]);
  });

  it.each([
    ['quotation marks', '"'],
    ['delimiters', ','],
    ['line ends', '\n'],
    ['rows with a fault', 'x,1\n'],
    ['rows without a fault', 'x,1 A\n'],
    ['opening cells', ',"'],
  ])('of 2 MB of %s ends in good time', (_, unit) => {
    const text = `point,reading\n${unit.repeat(2e6 / unit.length)}`;
    const start = performance.now();
    const result = safeReadReadingsCsv(text);
    expect(performance.now() - start).toBeLessThan(10_000);
    for (const { code } of result.ok ? [] : result.faults) expect(codeList).toHaveProperty(code);
    if (!result.ok) expect(result.faults.length).toBeLessThanOrEqual(1001);
  });

  it.each([undefined, 7, null, {}])('%s is no text', (value) => {
    expect(faultsOf(value as unknown as string)).toMatchObject([{ code: 'wrong-type' }]);
  });
});

function quoteAll(text: string): string {
  const cells = text.replace('"second activation,\nafter a pause"', '\u0001').split('\n');
  const quoted = cells.map((row) =>
    row
      .split(',')
      .map((cell) => `"${cell}"`)
      .join(','),
  );
  return quoted.join('\n').replace('\u0001', 'second activation,\nafter a pause');
}
