import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CaptureCsvOptions, readCaptureCsv, safeReadCaptureCsv } from '../../src/schema/index.js';
import { analyseCapture } from '../../src/waveform/index.js';

const lines = (...rows: readonly string[]) => rows.join('\n');

const read = (text: string, options?: CaptureCsvOptions) => {
  const { voltage, current, sampleInterval } = readCaptureCsv(text, options);
  return {
    ...(voltage && { voltage: [...voltage] }),
    ...(current && { current: [...current] }),
    sampleInterval,
  };
};

describe('a capture from CSV text', () => {
  const expected = { voltage: [0.5, -12, 3], current: [0.1, 0.2, -0.3], sampleInterval: 4e-8 };

  it.each<[string, string, CaptureCsvOptions?]>([
    ['headings with units', lines('Time (s),Voltage (V),Current (A)', '0,0.5,0.1', '4e-8,-12,0.2', '8e-8,3,-0.3')],
    ['square brackets', lines('t [ns],u [mV],i [mA]', '-40,500,100', '0,-12000,200', '40,3000,-300')],
    ['a row of units', lines('Time,CH1,CH2', 's,V,A', '0,0.5,0.1', '4e-8,-12,0.2', '8e-8,3,-0.3')],
    ['units in words', lines('second,Volt,Ampere', '0,0.5,0.1', '4e-8,-12,0.2', '8e-8,3,-0.3')],
    ['units in brackets of their own', lines('Time,A,B', '(us),(V),(A)', '0,0.5,0.1', '0.04,-12,0.2', '0.08,3,-0.3')],
    ['a blank line between', lines('Time,A,B', '(us),(V),(A)', '', '0,0.5,0.1', '0.04,-12,0.2', '0.08,3,-0.3')],
    [
      'an interval above',
      lines('Points,3', 'Sample interval,40,ns', 'Voltage (V),Current (A)', '0.5,0.1', '-12,0.2', '3,-0.3'),
    ],
    [
      'an interval in its heading',
      lines('Sample Interval (s),4.0E-08', 'voltage,current', '0.5,0.1', '-12,0.2', '3,-0.3'),
    ],
    ['a plain interval', lines('Interval:,4.0E-08', 'voltage,current', '0.5,0.1', '-12,0.2', '3,-0.3')],
    ['a unit beside the number', lines('dt,40 ns', 'voltage,current', '0.5,0.1', '-12,0.2', '3,-0.3')],
    ['a rate', lines('Sample Rate,25,MHz', 'voltage,current', '0.5,0.1', '-12,0.2', '3,-0.3')],
    ['a rate in samples', lines('Sampling rate,25,MSa/s', 'voltage,current', '0.5,0.1', '-12,0.2', '3,-0.3')],
    [
      'quoted cells',
      lines(
        '"Note","made, by hand"',
        '"Time (s)","Voltage (V)","Current (A)"',
        '0,0.5,0.1',
        '4e-8,-12,0.2',
        '8e-8,3,-0.3',
      ),
    ],
    [
      'a separator at the end',
      lines('Time (s),Voltage (V),Current (A),', '0,0.5,0.1,', '4e-8,-12,0.2,', '8e-8,3,-0.3,'),
    ],
    ['no headings', lines('0.5,0.1', '-12,0.2', '3,-0.3'), { columns: ['voltage', 'current'], sampleInterval: 4e-8 }],
    [
      'a column to skip',
      lines('1,0.5,7,0.1', '2,-12,7,0.2', '3,3,7,-0.3'),
      { columns: ['skip', 'voltage', 'skip', 'current'], sampleInterval: 4e-8 },
    ],
    ['other orders', lines('Current (A);Time (s);Voltage (V)', '0.1;0;0.5', '0.2;4e-8;-12', '-0.3;8e-8;3')],
    ['decimal commas', lines('Time (us);Voltage (V);Current (A)', '0,00;0,5;0,1', '0,04;-12;0,2', '0,08;3,000;-0,3')],
    ['tabs', lines('Time (s)\tVoltage (V)\tCurrent (A)', '0\t.5\t0.1', '4e-8\t-12.\t+0.2', '8e-8\t3\t-.3')],
  ])('with %s', (_, text, options) => {
    const plain = read(text, options);
    expect(plain.voltage).toEqual(expected.voltage);
    expect(plain.current).toEqual(expected.current);
    expect(plain.sampleInterval).toBeCloseTo(4e-8, 20);
    // A byte-order mark and other line ends make no difference.
    expect(read(`\ufeff${text.replaceAll('\n', '\r\n')}\r\n`, options)).toEqual(plain);
  });

  it('of one channel, and of a current probe that shows volts', () => {
    expect(read(lines('Time (s),Current (mA)', '0,5', '1e-6,6'))).toEqual({
      current: [0.005, 0.006],
      sampleInterval: 1e-6,
    });
    const text = lines('Time (s),CH1 (V),CH2 (V)', '0,1,2', '1e-6,3,4');
    expect(safeReadCaptureCsv(text)).toMatchObject({
      ok: false,
      faults: [{ code: 'duplicate', path: 'line 1, column 3' }],
    });
    expect(read(text, { columns: ['time', 'voltage', 'current'] })).toMatchObject({ voltage: [1, 3], current: [2, 4] });
  });

  it('takes times of few digits, as many as tell the steps', () => {
    // Printed with four digits, steps of 40 ns after 1 ms appear as 0 and 1 µs.
    const rows = Array.from({ length: 2000 }, (_, k) => `${(1e-3 + k * 40e-9).toExponential(3)},${k % 7}`);
    const { sampleInterval } = readCaptureCsv(lines('Time (s),Voltage (V)', ...rows));
    expect(Math.abs(sampleInterval / 40e-9 - 1)).toBeLessThan(0.02);
    const stated = readCaptureCsv(lines('Sample interval,40,ns', 'Time (s),Voltage (V)', ...rows));
    expect(stated.sampleInterval).toBe(4e-8);
  });

  it('gives what the analysis takes', () => {
    const rows = Array.from({ length: 3000 }, (_, k) => {
      const v = 300 * Math.sin(2 * Math.PI * 0.0201 * k);
      return `${(k * 40e-9).toExponential(9)},${v.toFixed(2)},${(v / 500).toFixed(5)}`;
    });
    const { activePower } = analyseCapture(readCaptureCsv(lines('Time (s),Voltage (V),Current (A)', ...rows)));
    expect(Math.abs((activePower ?? 0) - 90)).toBeLessThan(0.01);
  });

  it('reads back any samples that were written', () => {
    const sample = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(sample, sample), { minLength: 2, maxLength: 50 }),
        fc.constantFrom(',', ';', '\t'),
        (samples, separator) => {
          const rows = samples.map((pair) => pair.map(String).join(separator));
          const text = lines(
            `Sample interval${separator}2${separator}us`,
            ['Voltage (V)', 'Current (A)'].join(separator),
            ...rows,
          );
          const back = readCaptureCsv(text);
          expect([...(back.voltage ?? [])]).toEqual(samples.map(([v]) => v + 0));
          expect([...(back.current ?? [])]).toEqual(samples.map(([, i]) => i + 0));
          expect(back.sampleInterval).toBe(2e-6);
        },
      ),
    );
  });
});

describe('a bad capture file', () => {
  const head = 'Time (s),Voltage (V)';
  it.each<[string, string, CaptureCsvOptions | undefined, string, string]>([
    ['empty', '', undefined, 'missing-member', ''],
    ['only headings', head, undefined, 'missing-member', ''],
    ['one row', lines(head, '0,1'), undefined, 'missing-member', ''],
    [
      'a word among the samples',
      lines(head, '0,1', '1e-6,over', '2e-6,1'),
      undefined,
      'number-malformed',
      'line 3, column 2',
    ],
    ['NaN', lines(head, '0,1', '1e-6,NaN', '2e-6,1'), undefined, 'number-malformed', 'line 3, column 2'],
    [
      'a number beyond all',
      lines(head, '0,1', '1e-6,1e999', '2e-6,1'),
      undefined,
      'number-malformed',
      'line 3, column 2',
    ],
    ['an empty cell', lines(head, '0,1', ',2', '2e-6,1'), undefined, 'missing-member', 'line 3, column 1'],
    ['a short row', lines(head, '0,1', '1e-6', '2e-6,1'), undefined, 'missing-member', 'line 3, column 2'],
    [
      'decimal commas between commas',
      lines(head, '0,1', '0,000001,1,5', '2e-6,1'),
      undefined,
      'csv-malformed',
      'line 3, column 3',
    ],
    [
      'commas that may part thousands',
      lines('Voltage (V);Current (A)', '1,250;2', '3;4'),
      { sampleInterval: 1 },
      'number-malformed',
      'line 2',
    ],
    [
      'commas and points',
      lines('Voltage (V);Current (A)', '1,25;2.5', '3;4'),
      { sampleInterval: 1 },
      'number-malformed',
      'line 2',
    ],
    ['no interval', lines('Voltage (V),Current (A)', '1,2', '3,4'), undefined, 'missing-member', ''],
    ['no channel', lines('Time (s),A,B', '0,1,2', '1,3,4'), undefined, 'missing-member', 'line 1'],
    ['no headings', lines('0,1,2', '1,3,4'), undefined, 'missing-member', 'line 1'],
    [
      'a row that is missing',
      lines(head, '0,1', '1.00e-6,1', '2.00e-6,1', '4.00e-6,1', '5.00e-6,1', '6.00e-6,1'),
      undefined,
      'contradiction',
      'line 5',
    ],
    [
      'times that go back',
      lines(head, '0,1', '3.00e-6,1', '2.00e-6,1', '4.00e-6,1'),
      undefined,
      'contradiction',
      'line 3',
    ],
    ['times that fall', lines(head, '2.00e-6,1', '1.00e-6,1', '0,1'), undefined, 'not-ascending', 'line 4'],
    [
      'another interval than the times',
      lines('Sample interval,2,us', head, '0,1', '1.00e-6,1', '2.00e-6,1'),
      undefined,
      'contradiction',
      'sampleInterval',
    ],
    [
      'an interval of 0',
      lines('Sample interval,0,s', 'Voltage (V)', '1', '2'),
      undefined,
      'not-positive',
      'line 1, column 2',
    ],
    [
      'an interval in no unit of time',
      lines('Sample interval,40,V', 'Voltage (V)', '1', '2'),
      undefined,
      'unit-mismatch',
      'line 1, column 2',
    ],
    ['a stated interval of 0', lines('Voltage (V)', '1', '2'), { sampleInterval: 0 }, 'not-positive', 'sampleInterval'],
    ['too few columns stated', lines(head, '0,1', '1,2'), { columns: ['voltage'] }, 'wrong-count', 'columns'],
    [
      'an unknown column',
      lines(head, '0,1', '1,2'),
      { columns: ['time', 'power' as 'voltage'] },
      'unknown-choice',
      'columns[1]',
    ],
    ['an open quotation mark', lines(head, '0,"1', '1,2'), undefined, 'csv-malformed', 'line 2'],
    ['too long', lines(head, '0,1', '1,2'), { maximumLength: 10 }, 'too-large', ''],
  ])('%s', (_, text, options, code, path) => {
    const result = safeReadCaptureCsv(text, options);
    expect(result).toMatchObject({ ok: false });
    expect(result.ok ? {} : result.faults[0]).toMatchObject({ code, path });
    expect(() => readCaptureCsv(text, options)).toThrow();
  });

  it('that is no text', () => {
    expect(safeReadCaptureCsv(new Uint8Array(3) as unknown as string)).toMatchObject({
      faults: [{ code: 'wrong-type' }],
    });
  });

  it('names every bad line', () => {
    const result = safeReadCaptureCsv(lines(head, '0,1', '1e-6,x', '2e-6,', '3e-6,1'));
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual(['line 3, column 2', 'line 4, column 2']);
  });
});
