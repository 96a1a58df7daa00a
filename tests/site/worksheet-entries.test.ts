import { readFileSync } from 'node:fs';
import type { Plan } from 'esu-limits/procedure';
import { parseReadings, parseRecord, readMonitorTraceCsv } from 'esu-limits/schema';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  benchFromText,
  specificationFromText,
} from '../../docs/site/.vitepress/theme/worksheet/state/document-text.js';
import {
  challengeAt,
  editChallenge,
  editDisplayed,
  editReading,
  readingAt,
  removeReading,
} from '../../docs/site/.vitepress/theme/worksheet/state/edit-entries.js';
import { type Entries, isEmpty, noEntries } from '../../docs/site/.vitepress/theme/worksheet/state/entries.js';
import { change, startHistory, undo, undoable } from '../../docs/site/.vitepress/theme/worksheet/state/history.js';
import { readCsvSheet } from '../../docs/site/.vitepress/theme/worksheet/state/import-csv.js';
import { readTraceSheet } from '../../docs/site/.vitepress/theme/worksheet/state/import-trace.js';
import { openDocument } from '../../docs/site/.vitepress/theme/worksheet/state/open-document.js';
import { findingsOf, planOf, recordOf } from '../../docs/site/.vitepress/theme/worksheet/state/results.js';
import { entriesFromSaved, savedText } from '../../docs/site/.vitepress/theme/worksheet/state/saved-entries.js';
import { readingField, readingsFromTyped } from '../../docs/site/.vitepress/theme/worksheet/state/typed-readings.js';

const example = (name: string) => readFileSync(`examples/workshop/${name}`, 'utf8');
const withExample: Entries = {
  ...noEntries,
  specification: example('specification.json'),
  bench: example('bench.json'),
};
const plan = planOf(specificationFromText(withExample.specification).value, benchFromText(withExample.bench).value)
  .value as Plan;
const at = (point: string) => ({ point, phase: 'as-found', afterInterruption: false, repeat: 0 }) as const;

describe('readings as typed', () => {
  it('takes 750 mA and 0.75 A for the same', () => {
    const typed = (text: string) => readingsFromTyped(editReading(noEntries, at('p'), 'reading', text)).readings;
    expect(typed('750 mA').readings[0]?.value).toBe(0.75);
    expect(typed('0.75 A')).toEqual(typed('750 mA'));
  });

  it('says beside the field why a reading is refused, and judges the others', () => {
    let entries = editReading(withExample, at('cut/40W/100ohm'), 'reading', '750 ma');
    entries = editReading(entries, at('cut/100W/100ohm'), 'reading', '0.95 A');
    const { readings, faults } = readingsFromTyped(entries);
    expect(readings.readings.map(({ point }) => point)).toEqual(['cut/100W/100ohm']);
    expect(faults).toHaveLength(1);
    expect(faults[0]?.field).toBe(readingField(at('cut/40W/100ohm'), 'reading'));
    expect(faults[0]?.fault.code).toBe('unit-unknown');
    expect(faults[0]?.fault.hint).toMatch(/mA/);
  });

  it('refuses a number without a unit until the person has stated the unit of such numbers', () => {
    const typed = editReading(noEntries, at('p'), 'reading', '750');
    expect(readingsFromTyped(typed).faults[0]?.fault.code).toBe('unit-missing');
    const stated = readingsFromTyped({ ...typed, units: { reading: 'mA', display: 'W' } });
    expect(stated.readings.readings[0]).toMatchObject({ quantity: 'current', value: 0.75 });
  });

  it('does not lose what is written in a row without a reading: it asks for the reading', () => {
    const { faults } = readingsFromTyped(editReading(noEntries, at('p'), 'note', 'why'));
    expect(faults.map(({ field, fault }) => [field, fault.code])).toEqual([
      [readingField(at('p'), 'reading'), 'missing-member'],
    ]);
  });

  it('refuses what is negative, a peak where rms is wanted and the other way round', () => {
    const codes = (field: 'reading' | 'peakVoltage', text: string) => {
      const entries = editReading(editReading(noEntries, at('p'), 'reading', '1 A'), at('p'), field, text);
      return readingsFromTyped(entries).faults.map(({ fault }) => fault.code);
    };
    expect(codes('reading', '-1 A')).toEqual(['negative']);
    expect(codes('reading', '1 kV peak')).toEqual(['form-mismatch']);
    expect(codes('peakVoltage', '1 kV')).toEqual([]);
    expect(codes('peakVoltage', '1 kV rms')).toEqual(['form-mismatch']);
    expect(codes('peakVoltage', '-1 kV')).toEqual(['negative']);
  });

  it('leaves out texts that no document may hold, and names them', () => {
    let entries = editReading(noEntries, at('p'), 'reading', '1 A');
    entries = editReading(entries, at('p'), 'note', 'bell \u0007 rings');
    entries = { ...entries, signature: { ...entries.signature, by: 'zero \u0000' } };
    const { readings, faults } = readingsFromTyped(entries);
    expect(readings.readings).toHaveLength(1);
    expect(readings.readings[0]?.note).toBeUndefined();
    expect(faults.map(({ field }) => field).sort()).toEqual(['by', readingField(at('p'), 'note')].sort());
  });

  it('whatever is typed: a document of readings or a named fault, never an exception', () => {
    const text = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.constantFrom('1e400 A', 'NaN', '∞ A', '1 W'));
    fc.assert(
      fc.property(text, text, text, text, (reading, display, peak, note) => {
        let entries = editReading(withExample, at('cut/40W/100ohm'), 'reading', reading);
        entries = editReading(entries, at('cut/40W/100ohm'), 'display', display);
        entries = editReading(entries, at('cut/40W/100ohm'), 'peakVoltage', peak);
        entries = editReading(entries, at('cut/40W/100ohm'), 'note', note);
        const { readings, faults } = readingsFromTyped(entries);
        if (reading.trim() !== '' && readings.readings.length === 0) expect(faults.length).toBeGreaterThan(0);
        expect(findingsOf(plan, readings).value).toBeDefined();
      }),
      { numRuns: 60 },
    );
  });

  it('removes one of several readings', () => {
    const entries = editReading(editReading(noEntries, at('p'), 'reading', '1 A'), at('q'), 'reading', '2 A');
    expect(removeReading(entries, at('p')).readings.map(({ point }) => point)).toEqual(['q']);
  });
});

describe('the monitor', () => {
  it('reads resistances and the word over-range', () => {
    let entries = editDisplayed(noEntries, 'open', 'as-found', 'Over range');
    entries = editDisplayed(entries, 60, 'as-found', '61 ohm');
    entries = editDisplayed(entries, 120, 'as-found', '118');
    const { readings, faults } = readingsFromTyped(entries);
    expect(readings.monitor).toEqual([
      { set: 'open', phase: 'as-found', displayed: 'over-range' },
      { set: 60, phase: 'as-found', displayed: 61 },
    ]);
    expect(faults[0]?.fault).toMatchObject({ code: 'unit-missing' });
    expect(faults[0]?.fault.requirement).toMatch(/or the word over-range$/);
  });

  it('puts the steps of a sweep into the order of the plan, however they were typed', () => {
    const sweep = plan.monitorThresholds?.challenges.find(({ kind }) => kind === 'sweep');
    if (sweep?.kind !== 'sweep') throw new Error('the example has no sweep');
    const [first, second] = sweep.values as [number, number];
    const place = (set: number) => ({ challenge: sweep.number, set, phase: 'as-found' }) as const;
    let entries = editChallenge(noEntries, place(second), 'alarm', 'yes');
    entries = editChallenge(entries, place(first), 'alarm', 'no');
    expect(challengeAt(entries, place(first)).alarm).toBe('no');
    expect(readingsFromTyped(entries, plan).readings.monitorChallenges?.map(({ set }) => set)).toEqual([first, second]);
  });

  it('keeps the reason of an alarm through a sheet and storage, and asks for the alarm where there is none', () => {
    const place = { challenge: 1, phase: 'as-found' } as const;
    const alarming = editChallenge(withExample, place, 'alarm', 'yes');
    const entries = editChallenge(alarming, place, 'alarmReason', 'below-lower');
    const kept = entriesFromSaved(savedText(entries)) as Entries;
    expect(kept).toEqual(entries);
    const [reading] = readingsFromTyped(kept, plan).readings.monitorChallenges ?? [];
    expect(reading).toMatchObject({ alarm: true, alarmReason: 'below-lower' });
    const sheet = 'point,reading,alarm reason\nmonitor/1,alarm,below-lower';
    expect(readCsvSheet(sheet, withExample, plan).entries?.challenges).toEqual(entries.challenges);
    const none = readingsFromTyped(editChallenge(entries, place, 'alarm', 'no'), plan);
    expect(none.faults).toMatchObject([
      { field: 'challenge as-found 1 once reason', fault: { code: 'contradiction' } },
    ]);
    expect(none.readings.monitorChallenges?.[0]).toEqual({ challenge: 1, alarm: false, phase: 'as-found' });
  });

  it('asks for the alarm where a time is written', () => {
    const entries = editChallenge(noEntries, { challenge: 1, phase: 'as-found' }, 'responseTime', '3 s');
    expect(readingsFromTyped(entries).faults.map(({ fault }) => fault.path)).toEqual(['alarm']);
  });
});

describe('the way back', () => {
  it('undoes the last change, and typing on in one field as one change', () => {
    let history = startHistory(noEntries);
    for (const text of ['7', '75', '750 mA']) {
      history = change(history, editReading(history.now, at('p'), 'reading', text), 'reading of p', 'p');
    }
    history = change(history, editReading(history.now, at('q'), 'reading', '1 A'), 'reading of q', 'q');
    expect(undoable(history)).toBe('reading of q');
    history = undo(history);
    expect(readingAt(history.now, at('p'))?.reading).toBe('750 mA');
    history = undo(history);
    expect(history.now).toEqual(noEntries);
    expect(undoable(history)).toBeUndefined();
    expect(undo(history)).toBe(history);
  });

  it('brings back what was cleared', () => {
    const history = change(startHistory(withExample), noEntries, 'clearing', '');
    expect(isEmpty(history.now)).toBe(true);
    expect(undo(history).now).toBe(withExample);
  });

  it('forgets changes beyond the hundredth, and keeps the present', () => {
    let history = startHistory(noEntries);
    for (let i = 0; i < 150; i += 1) history = change(history, { ...noEntries, csv: String(i) }, 'csv', '');
    expect(history.past).toHaveLength(100);
    expect(history.now.csv).toBe('149');
  });
});

describe('entries that are kept', () => {
  it('come back as they were', () => {
    const { entries } = readCsvSheet(example('readings.csv'), withExample, plan);
    expect(entriesFromSaved(savedText(entries as Entries))).toEqual(entries);
  });

  it('leaves out what is not as it should be', () => {
    const saved = JSON.stringify({
      version: 1,
      entries: {
        specification: 7,
        bench: '{}',
        readings: [{ point: 'p', repeat: 0, reading: ['x'] }, 3, null, { point: {} }, { point: 'p', repeat: -1 }],
        monitor: [{ set: 'closed' }, { set: 60, displayed: '61 ohm' }],
        challenges: [{ challenge: 'x' }, { challenge: 1, alarm: 'perhaps' }],
        phase: 'before',
        signature: { occasion: 'sale', by: 'x' },
      },
    });
    const entries = entriesFromSaved(saved);
    expect(entries?.specification).toBe('');
    expect(entries?.bench).toBe('{}');
    expect(entries?.readings.map(({ point, reading }) => [point, reading])).toEqual([['p', '']]);
    expect(entries?.monitor.map(({ set }) => set)).toEqual([60]);
    expect(entries?.challenges.map(({ alarm }) => alarm)).toEqual(['']);
    expect(entries?.phase).toBe('as-found');
    expect(entries?.signature).toMatchObject({ occasion: '', by: 'x' });
  });

  it('reads nothing from what is no JSON, of another version or absent', () => {
    for (const text of [null, '', '{', '[]', '{"version":2,"entries":{}}', '{"version":1}']) {
      expect(entriesFromSaved(text)).toBeUndefined();
    }
    fc.assert(fc.property(fc.json(), (text) => entriesFromSaved(text) === undefined));
  });
});

describe('a sheet of readings', () => {
  it('gives the same findings as the library does with the CSV itself', async () => {
    const { readReadingsCsv } = await import('esu-limits/schema');
    const { assessReadings } = await import('esu-limits/procedure');
    const sheet = readCsvSheet(example('readings.csv'), withExample, plan);
    const { readings, faults } = readingsFromTyped(sheet.entries as Entries, plan);
    expect(faults).toEqual([]);
    const direct = assessReadings(plan, readReadingsCsv(example('readings.csv')));
    const typed = findingsOf(plan, readings).value;
    expect(typed?.final).toEqual(direct.final);
    expect(typed?.asFound).toEqual(direct.asFound);
    expect(typed?.points.map(({ verdict, value, margin }) => [verdict, value, margin])).toEqual(
      direct.points.map(({ verdict, value, margin }) => [verdict, value, margin]),
    );
    expect(typed?.monitorTrips).toEqual(direct.monitorTrips);
  });

  it('takes nothing while a row is wrong, names the line, and leaves it out when asked', () => {
    const text = 'point,reading\n1,0.61 A\n2,0.87 ampere\n3,1.11 A';
    const sheet = readCsvSheet(text, withExample, plan);
    expect(sheet.entries).toBeUndefined();
    expect(sheet.wrongLines).toEqual([3]);
    expect(sheet.faults[0]?.path).toMatch(/^line 3, column 2/);
    expect(sheet.rest).toBe('point,reading\n1,0.61 A\n3,1.11 A');
    const rest = readCsvSheet(sheet.rest as string, withExample, plan);
    expect(rest.count).toBe(2);
    expect(rest.entries?.readings.map(({ point }) => point)).toEqual([0, 2].map((i) => plan.points[i]?.id));
  });

  it('does not cut a text whose cells hold line ends, or whose header is wrong', () => {
    expect(readCsvSheet('point,reading,note\n1,x,"two\nlines"', noEntries, plan).rest).toBeUndefined();
    expect(readCsvSheet('piont,reading\n1,1 A', noEntries, plan).rest).toBeUndefined();
  });

  it('replaces a reading of the same point, keeps the others and several of one point', () => {
    let entries = editReading(withExample, at('cut/40W/100ohm'), 'reading', '1 A');
    entries = editReading(entries, at('cut/100W/100ohm'), 'reading', '2 A');
    const taken = readCsvSheet('point,reading\n1,0.61 A\n1,0.62 A', entries, plan).entries;
    expect(taken?.readings.map(({ point, repeat, reading }) => [point, repeat, reading])).toEqual([
      ['cut/100W/100ohm', 0, '2 A'],
      ['cut/40W/100ohm', 0, '610 mA'],
      ['cut/40W/100ohm', 1, '620 mA'],
    ]);
  });
});

describe('traces of the monitor', () => {
  const traceDocument = readFileSync('tests/schema/fixtures/monitor-trace.json', 'utf8');
  const opened = openDocument(traceDocument, withExample, plan).entries as Entries;

  it('of a file are kept through storage, judged as the library judges them, and not taken twice', () => {
    const kept = entriesFromSaved(savedText(opened)) as Entries;
    expect(kept.traces).toBe(opened.traces);
    const { readings, faults } = readingsFromTyped(kept, plan);
    expect(faults).toEqual([]);
    const direct = parseReadings(JSON.parse(traceDocument)).monitorTraces;
    expect(readings.monitorTraces).toEqual(direct);
    const late = findingsOf(plan, readings).value?.monitorTraces[0]?.rows.filter(({ verdict }) => verdict === 'fail');
    expect(late).toHaveLength(2);
    expect(openDocument(traceDocument, opened, plan).entries?.traces).toBe(opened.traces);
  });

  it('that are wrong are named by their member, and the readings stand', () => {
    const entries = editReading({ ...opened, traces: '[{"time": ["0 s"]}]' }, at('cut/40W/100ohm'), 'reading', '0.6 A');
    const { readings, faults } = readingsFromTyped(entries, plan);
    expect(readings.readings).toHaveLength(1);
    expect(readings.monitorTraces).toBeUndefined();
    expect(faults.map(({ field }) => field)).toContain('traces');
    expect(faults.some(({ fault }) => fault.path.startsWith('monitorTraces[0].'))).toBe(true);
    expect(readingsFromTyped({ ...opened, traces: '[{' }, plan).faults[0]?.fault.code).toBe('not-json');
  });
});

describe('a trace of the monitor as CSV', () => {
  const text = example('monitor-trace.csv');

  it('waits to be looked at, and is then taken over as the library reads it', () => {
    const waiting = openDocument(text, withExample, plan);
    expect(waiting.what).toBe('trace of the monitor');
    expect(waiting.entries).toEqual({ ...withExample, traceCsv: text });
    const sheet = readTraceSheet(text, waiting.entries as Entries);
    expect(sheet.count).toBe(1);
    expect(sheet.entries?.traceCsv).toBe('');
    const { readings, faults } = readingsFromTyped(sheet.entries as Entries, plan);
    expect(faults).toEqual([]);
    expect(readings.monitorTraces).toEqual([readMonitorTraceCsv(text)]);
  });

  it('comes after the traces that are there, in the state of the unit that is read, and not twice', () => {
    const first = readTraceSheet(text, withExample).entries as Entries;
    expect(readTraceSheet(text, first).entries?.traces).toBe(first.traces);
    const second = readTraceSheet(text, { ...first, phase: 'as-left' }).entries as Entries;
    expect(readingsFromTyped(second, plan).readings.monitorTraces?.map(({ phase }) => phase)).toEqual([
      'as-found',
      'as-left',
    ]);
  });

  it('is not taken over while a row is wrong, and no row can be left out', () => {
    const sheet = readTraceSheet(text.replace('\n30,60', '\n3,60'), withExample);
    expect(sheet).toMatchObject({ count: 0, faults: [{ code: 'not-ascending', path: 'line 6, column 1 (time)' }] });
    expect(sheet.entries).toBeUndefined();
    expect(sheet.rest).toBeUndefined();
  });

  it('does not take the place of a list that cannot be read', () => {
    const sheet = readTraceSheet(text, { ...withExample, traces: '[{' });
    expect(sheet.entries).toBeUndefined();
    expect(sheet.faults).toMatchObject([{ path: 'traces' }]);
  });

  it('of nothing is nothing, and a sheet of readings is none', () => {
    expect(readTraceSheet(' \n', withExample)).toEqual({ count: 0, faults: [], wrongLines: [] });
    expect(openDocument('point;time;reading\n1;;1 A', noEntries, undefined).what).toBe('sheet of readings');
    expect(openDocument(text.replaceAll(',', ';'), noEntries, undefined).what).toBe('trace of the monitor');
  });
});

describe('a file that is opened', () => {
  it('takes a specification as it is written, with its units', () => {
    const opened = openDocument(example('specification.json'), noEntries, undefined);
    expect(opened.entries?.specification).toBe(example('specification.json'));
  });

  it('takes a record whole: what is worked out from it is the same', () => {
    const sheet = readCsvSheet(example('readings.csv'), withExample, plan).entries as Entries;
    const signature = { occasion: 'after repair', by: 'Invented', date: '2026-11-20', remarks: 'none' } as const;
    const { readings } = readingsFromTyped({ ...sheet, signature }, plan);
    const record = recordOf(plan, readings, signature).value;
    const again = openDocument(JSON.stringify(record), noEntries, undefined).entries as Entries;
    const reopened = planOf(specificationFromText(again.specification).value, benchFromText(again.bench).value).value;
    expect(reopened).toEqual(plan);
    const second = recordOf(reopened, readingsFromTyped(again, reopened).readings, again.signature).value;
    expect(second?.findings.final).toEqual(record?.findings.final);
    expect(second?.signature).toEqual(signature);
    expect(parseRecord(JSON.parse(JSON.stringify(second)))).toEqual(second);
  });

  it('says why when it can take nothing', () => {
    expect(openDocument('{ "schema": "esu-limits/bench", }', noEntries, undefined).faults[0]?.code).toBe('not-json');
    expect(openDocument('{ "schema": "else" }', noEntries, undefined).faults[0]?.code).toBe('unknown-document');
  });

  it('lets a text that is no JSON wait as a sheet of readings', () => {
    expect(openDocument('point,reading\n1,1 A', noEntries, undefined).entries?.csv).toBe('point,reading\n1,1 A');
  });
});
