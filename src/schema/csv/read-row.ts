import { type Fault, nearName } from '../../checks/index.js';
import type { Quantity } from '../../circuit/index.js';
import type { ChallengeReading, MonitorReading, Phase, Reading } from '../../procedure/index.js';
import { safeParseQuantity } from '../../units/index.js';
import { readText } from '../parts/read-quantity.js';
import { readAlarmReason } from './read-alarm-reason.js';
import type { Header } from './read-header.js';
import type { ReadingsColumnName } from './readings-columns.js';
import { RowCells } from './row-cells.js';
import type { CsvRow } from './split-csv.js';

/** What a row says: a reading, a reading of the monitor, or nothing because nothing was read. */
export type RowContent =
  | { readonly reading: Reading }
  | { readonly monitor: MonitorReading }
  | { readonly challenge: ChallengeReading }
  | undefined;

type Cells = RowCells<ReadingsColumnName>;

/** Columns that only a reading can fill. */
const parts = ['display', 'peak voltage', 'after interruption', 'mode unchanged', 'note'] as const;

const rmsQuantities = ['power', 'current', 'voltage'] as const;

/** Reads one row; every fault names line and column. */
export function readRow(
  row: CsvRow,
  header: Header<ReadingsColumnName>,
  headerLength: number,
  usualPhase: Phase,
): { readonly content: RowContent; readonly faults: readonly Fault[] } {
  const cells = new RowCells(row, header);
  const content = contentOf(cells, usualPhase);
  cells.reportExcess(headerLength);
  return { content, faults: cells.faults };
}

function contentOf(cells: Cells, usualPhase: Phase): RowContent {
  const point = cells.free('point', 'line');
  const phase = readPhase(cells, usualPhase);
  if (point.toLowerCase() === 'monitor') return monitorOf(cells, phase);
  const challenge = /^monitor\/([1-9]\d{0,3})$/i.exec(point);
  if (challenge !== null) return challengeOf(cells, Number(challenge[1]), phase);
  for (const name of ['response time', 'alarm reason'] as const) {
    if (cells.text(name) === '') continue;
    cells.fault(name, 'contradiction', 'must be empty in a row that is not of a challenge of the monitor');
  }
  if (cells.text('set') !== '') {
    cells.fault(
      'set',
      'contradiction',
      'must be empty in a row that is not of the monitor',
      'Write "monitor" as the point.',
    );
  }
  const filled = parts.filter((name) => cells.text(name) !== '');
  if (cells.text('reading') === '') {
    if (filled.length > 0) {
      const hint = 'A remark on a point that was not read belongs into the remarks of the record.';
      cells.fault('reading', 'missing-member', `must be given, because the row says more: ${filled.join(', ')}`, hint);
    }
    return undefined;
  }
  if (point === '') cells.fault('point', 'missing-member', 'must name the point of the reading');
  const note = cells.free('note', 'prose');
  const read = cells.quantity('reading', { expect: rmsQuantities });
  const display = cells.text('display') === '' ? undefined : cells.quantity('display', { expect: rmsQuantities });
  const peakVoltage = cells.text('peak voltage') === '' ? undefined : readPeak(cells);
  const afterInterruption = cells.flag('after interruption');
  const modeUnchanged = cells.flag('mode unchanged');
  if (read === undefined || phase === undefined) return undefined;
  return {
    reading: {
      point,
      phase,
      quantity: read.quantity as Quantity,
      value: read.value,
      ...(display === undefined ? {} : { display: { quantity: display.quantity as Quantity, value: display.value } }),
      ...(peakVoltage === undefined ? {} : { peakVoltage }),
      ...(afterInterruption === undefined ? {} : { afterInterruption }),
      ...(modeUnchanged === undefined ? {} : { modeUnchanged }),
      ...(note === '' ? {} : { note }),
    },
  };
}

function monitorOf(cells: Cells, phase: Phase | undefined): RowContent {
  for (const name of parts) {
    if (cells.text(name) !== '') cells.fault(name, 'contradiction', 'must be empty in a row of the monitor');
  }
  if (cells.text('reading') === '') return undefined;
  const set = cells.text('set').toLowerCase() === 'open' ? 'open' : readResistance(cells, 'set', 'open');
  const overRange = /^over[\s-]?range$/i.test(cells.text('reading'));
  const displayed = overRange ? 'over-range' : readResistance(cells, 'reading', 'over-range');
  if (set === undefined || displayed === undefined || phase === undefined) return undefined;
  return { monitor: { set, displayed, phase } };
}

function challengeOf(cells: Cells, number: number, phase: Phase | undefined): RowContent {
  for (const name of parts) {
    if (name !== 'note' && cells.text(name) !== '') {
      cells.fault(name, 'contradiction', 'must be empty in a row of a challenge of the monitor');
    }
  }
  const said = cells.text('reading').toLowerCase();
  if (said === '') return undefined;
  const alarmReason = readAlarmReason(cells);
  const alarm = said === 'alarm' ? true : said === 'no alarm' || said === 'none' ? false : undefined;
  if (alarm === undefined) {
    cells.fault('reading', 'unknown-choice', 'must be "alarm" or "no alarm" in a row of a challenge of the monitor');
  }
  if (alarm === false && cells.text('alarm reason') !== '') {
    cells.fault('alarm reason', 'contradiction', 'must be empty where there was no alarm');
  }
  const isOpen = cells.text('set') === '' || cells.text('set').toLowerCase() === 'open';
  const set = isOpen ? undefined : readResistance(cells, 'set', 'open');
  const responseTime = cells.text('response time') === '' ? undefined : readTime(cells);
  const note = cells.free('note', 'prose');
  if (alarm === undefined || phase === undefined) return undefined;
  return {
    challenge: {
      challenge: number,
      ...(set === undefined ? {} : { set }),
      alarm,
      ...(responseTime === undefined ? {} : { responseTime }),
      ...(alarmReason === undefined ? {} : { alarmReason }),
      phase,
      ...(note === '' ? {} : { note }),
    },
  };
}

function readTime(cells: Cells): number | undefined {
  return cells.quantity('response time', { expect: 'time' })?.value;
}

function readResistance(cells: Cells, name: 'set' | 'reading', word: string): number | undefined {
  if (cells.text(name) === '') return cells.fault(name, 'missing-member', `must be given: a resistance, or ${word}`);
  // A unit in the header of the readings is that of the instrument, not of the monitor.
  const text = name === 'set' ? cells.withUnit(name) : cells.text(name);
  const read = safeParseQuantity(text, { expect: 'resistance' });
  if (!read.ok)
    return cells.fault(name, read.fault.code, `${read.fault.requirement}, or the word ${word}`, read.fault.hint);
  return read.value.value < 0 ? cells.fault(name, 'negative', 'must be 0 or more') : read.value.value;
}

function readPeak(cells: Cells): number | undefined {
  const value = readText(cells.withUnit('peak voltage'), { kind: 'voltage', form: 'peak' });
  if (typeof value !== 'number') return cells.fault('peak voltage', value.code, value.requirement, value.hint);
  return value < 0 ? cells.fault('peak voltage', 'negative', 'must be 0 or more') : value;
}

function readPhase(cells: Cells, usual: Phase): Phase | undefined {
  const text = cells.text('phase').toLowerCase().replace(/[\s_]/g, '-');
  if (text === '') return usual;
  if (text === 'as-found' || text === 'as-left') return text;
  const near = nearName(text, ['as-found', 'as-left']);
  return cells.fault('phase', 'unknown-choice', 'must be as-found or as-left', near && `Did you mean "${near}"?`);
}
