import { type CalculationErrorCode, type Fault, nearName } from '../../checks/index.js';
import type { Quantity } from '../../circuit/index.js';
import type { ChallengeReading, MonitorReading, Phase, Reading } from '../../procedure/index.js';
import { type QuantityOptions, safeParseQuantity } from '../../units/index.js';
import { faultOf } from '../fault-list.js';
import { readText } from '../parts/read-quantity.js';
import { textFault } from '../parts/text.js';
import type { Header } from './read-header.js';
import type { ReadingsColumnName } from './readings-columns.js';
import type { CsvRow } from './split-csv.js';

/** What a row says: a reading, a reading of the monitor, or nothing because nothing was read. */
export type RowContent =
  | { readonly reading: Reading }
  | { readonly monitor: MonitorReading }
  | { readonly challenge: ChallengeReading }
  | undefined;

/** Cells of one row by the names of their columns, and the faults that were found in them. */
class Cells {
  readonly faults: Fault[] = [];

  constructor(
    private readonly row: CsvRow,
    private readonly header: Header,
  ) {}

  /** Text of a cell; empty where the column or the cell is not there. */
  text(name: ReadingsColumnName): string {
    const column = this.header.get(name);
    return column === undefined ? '' : (this.row.cells[column.index] ?? '');
  }

  unit(name: ReadingsColumnName): string | undefined {
    return this.header.get(name)?.unit;
  }

  fault(name: ReadingsColumnName, code: CalculationErrorCode, requirement: string, hint?: string): undefined {
    const column = this.header.get(name);
    const place = `line ${this.row.line}${column === undefined ? '' : `, column ${column.index + 1}`} (${name})`;
    this.faults.push(faultOf(code, place, this.text(name), requirement, hint));
    return undefined;
  }

  /** Value of a cell with its unit, or with the unit of the header where the cell has none. */
  quantity(name: ReadingsColumnName, options: QuantityOptions): { value: number; quantity: string } | undefined {
    const text = this.withUnit(name);
    const read = safeParseQuantity(text, options);
    if (!read.ok) return this.fault(name, read.fault.code, read.fault.requirement, read.fault.hint);
    if (read.value.value < 0) return this.fault(name, 'negative', 'must be 0 or more');
    return read.value;
  }

  withUnit(name: ReadingsColumnName): string {
    const text = this.text(name);
    const unit = this.unit(name);
    return unit !== undefined && /^[+\-\u2212]?\d+(\.\d+)?([eE][+-]?\d+)?$/.test(text) ? `${text} ${unit}` : text;
  }

  flag(name: ReadingsColumnName): boolean | undefined {
    const text = this.text(name).toLowerCase();
    if (text === '') return undefined;
    if (text === 'yes' || text === 'true') return true;
    if (text === 'no' || text === 'false') return false;
    return this.fault(name, 'unknown-choice', 'must be yes or no');
  }
}

/** Columns that only a reading can fill. */
const parts = ['display', 'peak voltage', 'after interruption', 'mode unchanged', 'note'] as const;

const rmsQuantities = ['power', 'current', 'voltage'] as const;

/** Reads one row; every fault names line and column. */
export function readRow(
  row: CsvRow,
  header: Header,
  headerLength: number,
  usualPhase: Phase,
): { readonly content: RowContent; readonly faults: readonly Fault[] } {
  const cells = new Cells(row, header);
  const content = contentOf(cells, usualPhase);
  return { content, faults: [...cells.faults, ...excessFaults(row, headerLength)] };
}

function contentOf(cells: Cells, usualPhase: Phase): RowContent {
  const point = unprotected(cells.text('point'));
  const phase = readPhase(cells, usualPhase);
  if (point.toLowerCase() === 'monitor') return monitorOf(cells, phase);
  const challenge = /^monitor\/([1-9]\d{0,3})$/i.exec(point);
  if (challenge !== null) return challengeOf(cells, Number(challenge[1]), phase);
  if (cells.text('response time') !== '') {
    cells.fault('response time', 'contradiction', 'must be empty in a row that is not of a challenge of the monitor');
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
  checkText(cells, 'point', point, 'line');
  const note = unprotected(cells.text('note'));
  checkText(cells, 'note', note, 'prose');
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
  const alarm = said === 'alarm' ? true : said === 'no alarm' || said === 'none' ? false : undefined;
  if (alarm === undefined) {
    cells.fault('reading', 'unknown-choice', 'must be "alarm" or "no alarm" in a row of a challenge of the monitor');
  }
  const isOpen = cells.text('set') === '' || cells.text('set').toLowerCase() === 'open';
  const set = isOpen ? undefined : readResistance(cells, 'set', 'open');
  const responseTime = cells.text('response time') === '' ? undefined : readTime(cells);
  const note = unprotected(cells.text('note'));
  checkText(cells, 'note', note, 'prose');
  if (alarm === undefined || phase === undefined) return undefined;
  return {
    challenge: {
      challenge: number,
      ...(set === undefined ? {} : { set }),
      alarm,
      ...(responseTime === undefined ? {} : { responseTime }),
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

function checkText(cells: Cells, name: 'point' | 'note', text: string, kind: 'line' | 'prose'): void {
  const wrong = textFault(text, kind);
  if (wrong !== undefined) cells.fault(name, 'text-unsuitable', wrong);
}

/** Text of a cell without the apostrophe that keeps a spreadsheet from running it as a formula. */
function unprotected(text: string): string {
  return text.replace(/^'(?=[\t\r\n]|\s*[=+\-@\uff1d\uff0b\uff0d\uff20])/u, '');
}

function excessFaults(row: CsvRow, headerLength: number): readonly Fault[] {
  const excess = row.cells.findIndex((cell, i) => i >= headerLength && cell !== '');
  if (excess < 0) return [];
  const place = `line ${row.line}, column ${excess + 1}`;
  const hint = 'A cell that holds the delimiter stands in quotation marks; numbers have a decimal point.';
  return [
    faultOf(
      'csv-malformed',
      place,
      row.cells[excess],
      `must not be there: the header has ${headerLength} columns`,
      hint,
    ),
  ];
}
