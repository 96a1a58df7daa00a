import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type MonitorTraceCsvOptions,
  monitorTraceColumns,
  parseReadings,
  readMonitorTraceCsv,
  safeReadMonitorTraceCsv,
} from '../../src/schema/index.js';
import { fixture } from './fixtures.js';

const inDocument = parseReadings(fixture('monitor-trace.json')).monitorTraces?.[0];
const sheet = readFileSync('examples/workshop/monitor-trace.csv', 'utf8');
const name = 'Contact lost, broken lead, short circuit';
const header = 'time [s],set [ohm],alarm';

function faultsOf(text: string, options?: MonitorTraceCsvOptions) {
  const result = safeReadMonitorTraceCsv(text, options);
  return result.ok ? [] : result.faults;
}

/** Faults of a sheet whose first rows are right, as `code at path`. */
function faultsOfRows(...rows: readonly string[]): string[] {
  return faultsOf([header, '0,60,no alarm', ...rows].join('\n')).map(({ code, path }) => `${code} at ${path}`);
}

describe('a trace of the monitor in CSV', () => {
  it('gives exactly what a document of readings holds', () => {
    expect(readMonitorTraceCsv(sheet, { name })).toEqual(inDocument);
  });

  it.each([
    ['a byte-order mark', (text: string) => `\ufeff${text}`],
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['CR', (text: string) => text.replaceAll('\n', '\r')],
    ['blank rows', (text: string) => `\n\n${text.replace('\n40,', '\n,,\n\n40,')}\n,,\n`],
    ['every cell quoted', (text: string) => text.trimEnd().replaceAll(/[^,\n]*/g, (cell) => cell && `"${cell}"`)],
    ['semicolons', (text: string) => text.replaceAll(',', ';')],
    ['tabs', (text: string) => text.replaceAll(',', '\t')],
    ['columns in another order', (text: string) => text.replaceAll(/^(.*),(.*),(.*)$/gm, '$3,$1,$2')],
    ['a column of numbers', (text: string) => text.replace('time', 'number,time').replaceAll(/^(?=\d)/gm, '7,')],
    ['capitals and round brackets', (text: string) => text.replace('time [s],set [ohm]', 'Time (s),SET (Ω)')],
    ['milliseconds', (text: string) => inMilliseconds(text)],
    [
      'kiloohms',
      (text: string) => text.replace('[ohm]', '[kΩ]').replaceAll(/,(\d+),/g, (_, ohms) => `,${ohms / 1000},`),
    ],
    ['units in its cells', (text: string) => inCells(text)],
    ['capitals in its words', (text: string) => text.replaceAll(/open|end|alarm/g, (word) => word.toUpperCase())],
    ['none for no alarm', (text: string) => text.replaceAll('no alarm', 'none')],
    ['the alarm in every row', (text: string) => withAlarms(text)],
  ])('is read with %s', (_, change) => {
    const changed = change(sheet);
    expect(changed).not.toBe(sheet);
    expect(readMonitorTraceCsv(changed, { name })).toEqual(inDocument);
  });

  it('says by its header whether resistances were set or displayed, or the caller says it', () => {
    const of = (heading: string, options?: MonitorTraceCsvOptions) =>
      readMonitorTraceCsv(`time [s],${heading} [ohm],alarm\n0,60,no alarm`, options).of;
    expect(of('set')).toBe('set');
    expect(of('displayed')).toBe('displayed');
    expect(of('resistance', { of: 'displayed' })).toBe('displayed');
    expect(of('set', { of: 'set' })).toBe('set');
  });

  it('takes a display over its range for an open circuit, and a set value not', () => {
    const text = (heading: string) => `time [s],${heading} [ohm],alarm\n0,60,no alarm\n5,over-range,`;
    expect(readMonitorTraceCsv(text('displayed')).resistance).toEqual([60, 'open']);
    expect(faultsOf(text('set')).map(({ path }) => path)).toEqual(['line 3, column 2 (set)']);
  });

  it('ends where it says, else at its last row', () => {
    const end = (...rows: readonly string[]) => readMonitorTraceCsv([header, '0,60,no alarm', ...rows].join('\n')).end;
    expect(end('9,end,')).toBe(9);
    expect(end('5,70,')).toBeUndefined();
    expect(end('5,70,', '6,,alarm')).toBe(6);
  });

  it('keeps an alarm that stands at the end, and one that stood at the beginning', () => {
    const rows = [header, '0,60,alarm', '2,,no alarm', '5,170,', '7,,alarm', '9,end,'];
    expect(readMonitorTraceCsv(rows.join('\n'), { phase: 'as-left' })).toEqual({
      phase: 'as-left',
      of: 'set',
      time: [0, 5],
      resistance: [60, 170],
      end: 9,
      startsIn: 'alarm',
      alarms: [{ from: 0, to: 2 }, { from: 7 }],
    });
  });

  it('keeps the reason of an alarm, in the row where it begins or in every row of it', () => {
    const alarms = (...rows: readonly string[]) =>
      readMonitorTraceCsv([`${header},alarm reason`, '0,60,no alarm,', ...rows].join('\n')).alarms;
    const expected = [{ from: 12, to: 20, reason: 'rise' }];
    expect(alarms('10,90,,', '12,,alarm,rise', '15,91,,', '20,60,no alarm,')).toEqual(expected);
    expect(alarms('10,90,,', '12,,alarm,Rise', '15,91,alarm,rise', '20,60,no alarm,')).toEqual(expected);
    expect(alarms('10,90,,', '12,,alarm,', '20,60,no alarm,')).toEqual([{ from: 12, to: 20 }]);
  });

  it('refuses a reason without its alarm, or another one in the middle of an alarm', () => {
    const faults = (...rows: readonly string[]) =>
      faultsOf([`${header},alarm reason`, '0,60,no alarm,', ...rows].join('\n')).map(
        ({ code, path }) => `${code} at ${path}`,
      );
    const at = (line: number) => [`contradiction at line ${line}, column 4 (alarm reason)`];
    expect(faults('10,90,,rise')).toEqual(at(3));
    expect(faults('10,90,alarm,rise', '15,60,no alarm,rise')).toEqual(at(4));
    expect(faults('10,90,alarm,rise', '12,91,,above-upper')).toEqual(at(4));
    expect(faults('10,90,alarm,', '12,91,,rise')).toEqual(at(4));
    expect(faults('10,90,alarm,loose')).toEqual(['unknown-choice at line 3, column 4 (alarm reason)']);
    expect(faults('10,90,perhaps,rise')).toEqual(['unknown-choice at line 3, column 3 (alarm)']);
  });

  it('has a sentence for each of its columns', () => {
    expect(monitorTraceColumns.map(({ name: column }) => column)).toEqual([
      'time',
      'set',
      'displayed',
      'resistance',
      'alarm',
      'alarm reason',
    ]);
    for (const { holds } of monitorTraceColumns) expect(holds).toMatch(/^[A-Z].*\.$/);
  });
});

describe('what is wrong with a row of a trace is named with line and column', () => {
  it.each([
    [['x,60,'], 'number-malformed at line 3, column 1 (time)'],
    [[',60,'], 'missing-member at line 3, column 1 (time)'],
    [['-1 s,60,'], 'negative at line 3, column 1 (time)'],
    [['5 m,60,'], 'unit-mismatch at line 3, column 1 (time)'],
    [['0,70,'], 'not-ascending at line 3, column 1 (time)'],
    [['10,70,', '5,60,'], 'not-ascending at line 4, column 1 (time)'],
    [['5,-1,'], 'negative at line 3, column 2 (set)'],
    [['5,5 V,'], 'unit-mismatch at line 3, column 2 (set)'],
    [['5,infinity,'], 'number-malformed at line 3, column 2 (set)'],
    [['5,NaN,'], 'number-malformed at line 3, column 2 (set)'],
    [['5,,'], 'missing-member at line 3, column 2 (set)'],
    [['5,end,', '9,60,'], 'contradiction at line 3, column 2 (set)'],
    [['5,60,perhaps'], 'unknown-choice at line 3, column 3 (alarm)'],
    [['5,60,,surplus'], 'csv-malformed at line 3, column 4'],
    [['5,"60,'], 'csv-malformed at line 3'],
    [['# a comment'], 'number-malformed at line 3, column 1 (time)'],
  ])('%j', (rows, expected) => {
    expect(faultsOfRows(...rows)).toContain(expected);
  });

  it('the first row says resistance and alarm', () => {
    const first = (row: string) => faultsOf(`${header}\n${row}`).map(({ code, path }) => `${code} at ${path}`);
    expect(first('0,60,')).toEqual(['missing-member at line 2, column 3 (alarm)']);
    expect(first('0,,no alarm')).toEqual(['missing-member at line 2, column 2 (set)']);
    expect(first('0,end,no alarm')).toEqual(['missing-member at line 2, column 2 (set)']);
    expect(first('0,,')).toEqual([
      'missing-member at line 2, column 2 (set)',
      'missing-member at line 2, column 3 (alarm)',
    ]);
  });

  it('with a hint for a decimal comma, in every kind of sheet', () => {
    const hints = (text: string) => faultsOf(text).map(({ hint }) => hint);
    expect(hints('time [s];set [ohm];alarm\n0,5;60;no alarm')).toEqual([expect.stringContaining('0.5')]);
    expect(hints(`${header}\n"0,5",60,no alarm`)).toEqual([expect.stringContaining('0.5')]);
    expect(hints(`${header}\n0,60,no alarm\n1,5,60,`)).toContainEqual(expect.stringContaining('decimal point'));
  });

  it('with a hint where a unit is missing', () => {
    const [fault] = faultsOf('time,set [ohm],alarm\n5,60,no alarm');
    expect(fault).toMatchObject({ code: 'unit-missing', path: 'line 2, column 1 (time)', hint: expect.any(String) });
  });

  it('all at once, with those of the options, and nothing is half-read', () => {
    const text = `${header}\n0,60 V,no alarm\n10,70,\n5,perhaps,later`;
    const result = safeReadMonitorTraceCsv(text, { name: 'a\nb' });
    expect(result).not.toHaveProperty('value');
    expect(faultsOf(text, { name: 'a\nb' }).map(({ code, path }) => `${code} at ${path}`)).toEqual([
      'unit-mismatch at line 2, column 2 (set)',
      'not-ascending at line 4, column 1 (time)',
      'number-malformed at line 4, column 2 (set)',
      'unknown-choice at line 4, column 3 (alarm)',
      'text-unsuitable at name',
    ]);
    expect(() => readMonitorTraceCsv(text)).toThrow(expect.objectContaining({ code: 'unit-mismatch' }));
  });
});

describe('what is wrong with the header of a trace is named', () => {
  it.each([
    ['time [s],set [ohm]', ['missing-member at line 1']],
    ['set [ohm],alarm', ['missing-member at line 1']],
    ['time [s],alarm', ['missing-member at line 1']],
    ['time [s],time [s],set [ohm],alarm', ['duplicate at line 1, column 2']],
    ['time [s],set [ohm],displayed [ohm],alarm', ['contradiction at line 1']],
    ['time [s],resistance [ohm],alarm', ['missing-member at line 1, column 2 (resistance)']],
    [
      'time [ohm],set [s],alarm',
      ['unit-mismatch at line 1, column 1 (time)', 'unit-mismatch at line 1, column 2 (set)'],
    ],
    ['time [s],set [ohm],alarm [s]', ['unit-mismatch at line 1, column 3 (alarm)']],
    ['time [s],set [ohm],alarm,note', ['unknown-member at line 1, column 4']],
  ])('%s', (columns, expected) => {
    const cells = columns.split(',').map((column) => ({ t: '0 s', a: 'no alarm' })[column.charAt(0)] ?? '60 ohm');
    const found = faultsOf(`${columns}\n${cells.join(',')}`).map(({ code, path }) => `${code} at ${path}`);
    expect(found).toEqual(expect.arrayContaining(expected));
  });

  it('a header alone, or nothing, is no trace', () => {
    expect(faultsOf(header)).toMatchObject([{ code: 'missing-member', path: 'line 1' }]);
    expect(faultsOf('').map(({ code }) => code)).toEqual(['missing-member', 'missing-member', 'missing-member']);
  });

  it('and options that say otherwise, or are no options', () => {
    expect(faultsOf(sheet, { of: 'displayed' })).toMatchObject([{ code: 'contradiction', path: 'of' }]);
    expect(faultsOf(sheet, { phase: 'before' as 'as-left' })).toMatchObject([
      { code: 'unknown-choice', path: 'phase' },
    ]);
    expect(faultsOf(7 as unknown as string)).toMatchObject([{ code: 'wrong-type', path: '' }]);
    expect(faultsOf(sheet, { maximumLength: 10 })).toMatchObject([{ code: 'too-large' }]);
  });
});

it('2 MB are read in good time, and 2 MB of faults', () => {
  const rows = Array.from({ length: 150_000 }, (_, i) => `${i},${60 + (i % 7)},no alarm`);
  const start = performance.now();
  expect(readMonitorTraceCsv([header, ...rows].join('\n')).time).toHaveLength(150_000);
  expect(faultsOf([header, '0,60,no alarm', ...rows].join('\n').replaceAll(',no alarm', ',x')).at(-1)).toMatchObject({
    code: 'too-many-faults',
  });
  expect(performance.now() - start).toBeLessThan(10_000);
});

function inMilliseconds(text: string): string {
  return text.replace('[s]', '[ms]').replaceAll(/^[\d.]+/gm, (seconds) => String(Math.round(Number(seconds) * 1000)));
}

function inCells(text: string): string {
  return text
    .replace('time [s],set [ohm]', 'time,set')
    .replaceAll(/^([\d.]+),(\d*)/gm, (_, time, ohms) => `${time} s,${ohms === '' ? '' : `${ohms} ohm`}`);
}

function withAlarms(text: string): string {
  let state = '';
  return text.trimEnd().replaceAll(/^([^,\n]*,[^,\n]*),([^,\n]*),/gm, (_, before, cell) => {
    if (cell !== '') state = cell;
    return `${before},${state},`;
  });
}
