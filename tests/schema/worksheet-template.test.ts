import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { planVerification } from '../../src/procedure/index.js';
import { worksheetCsv } from '../../src/report/index.js';
import { parseBench, parseSpecification, readReadingsCsv, safeReadReadingsCsv } from '../../src/schema/index.js';
import { fixture } from './fixtures.js';

const plan = planVerification(
  parseSpecification(fixture('specification-text.json')),
  parseBench(fixture('bench-text.json')),
);
const worksheet = worksheetCsv(plan);

/** The worksheet as a spreadsheet saves it after someone wrote into it. */
function filled(write: (row: Record<string, string>, index: number) => void, delimiter = ','): string {
  const [header = [], ...rows] = Papa.parse(worksheet.trimEnd(), { delimiter: ',', newline: '\r\n' }).data;
  const written = rows.map((cells, index) => {
    const row = Object.fromEntries(header.map((name, i) => [name.replace(/ \[.*/, ''), cells[i] ?? '']));
    write(row, index);
    return header.map((name) => row[name.replace(/ \[.*/, '')] ?? '');
  });
  const text = [header, ...written].map((cells) =>
    cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(delimiter),
  );
  return `\ufeff${text.join('\r\n')}\r\n`;
}

describe('the worksheet that is printed is the sheet that is read', () => {
  it('without any reading while nothing was written into it', () => {
    expect(plan.points.length).toBeGreaterThan(3);
    expect(plan.monitor.length).toBeGreaterThan(2);
    expect(readReadingsCsv(worksheet)).toEqual({ schema: 'esu-limits/readings', version: 1, readings: [] });
    expect(readReadingsCsv(worksheetCsv(plan, { byteOrderMark: true })).readings).toEqual([]);
  });

  it.each([',', ';', '\t'])('with every reading that was written, with %j between cells', (delimiter) => {
    const text = filled((row, i) => {
      if (row['point'] === 'monitor') {
        row['reading'] = row['set'] === 'open' ? 'over-range' : `${row['set']} ohm`;
      } else {
        row['reading'] = `${400 + i} mA`;
        row['display'] = '80 W';
        row['note'] = 'a; b, "c"';
      }
    }, delimiter);
    const { readings, monitor } = readReadingsCsv(text);
    expect(readings).toEqual(
      plan.points.map((point, i) => ({
        point: point.id,
        phase: 'as-found',
        quantity: 'current',
        value: (400 + i) / 1000,
        display: { quantity: 'power', value: 80 },
        note: 'a; b, "c"',
      })),
    );
    expect(monitor).toEqual(
      plan.monitor.map(({ set }) => ({ set, displayed: set === 'open' ? 'over-range' : set, phase: 'as-found' })),
    );
  });

  it('with bare numbers in the unit of the column, and not in rows of the monitor', () => {
    expect(worksheet).toMatch(/,reading \[mA\],/);
    const bare = filled((row) => {
      if (row['point'] !== 'monitor') row['reading'] = '450';
    });
    expect(readReadingsCsv(bare).readings.map(({ value }) => value)).toEqual(plan.points.map(() => 0.45));
    const monitor = safeReadReadingsCsv(
      filled((row) => {
        if (row['point'] === 'monitor') row['reading'] = '101';
      }),
    );
    expect(monitor.ok ? [] : monitor.faults.map(({ code }) => code)).toEqual(plan.monitor.map(() => 'unit-missing'));
  });
});
