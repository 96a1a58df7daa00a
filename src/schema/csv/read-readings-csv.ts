import type { Fault } from '../../checks/index.js';
import type { ChallengeReading, MonitorReading, Phase, Reading, Readings } from '../../procedure/index.js';
import { mostFaults } from '../document-limits.js';
import { failure, type ParseResult, unwrap } from '../fault-list.js';
import { safeParseReadings } from '../parse-readings.js';
import { openSheet, type SheetTextOptions } from './open-sheet.js';
import { readRow } from './read-row.js';
import { readingsHeader } from './readings-columns.js';

/** What a sheet of readings does not say itself. */
export interface ReadingsCsvOptions extends SheetTextOptions {
  /** Who read. */
  readonly by?: string;
  /** When, as text. */
  readonly date?: string;
  /** Free text. */
  readonly note?: string;
  /** State of the unit where a row does not say it; `as-found` unless stated. */
  readonly phase?: Phase;
}

/**
 * Reads a sheet of readings from CSV text. Byte-order mark, any line ends, quoted cells, and commas, semicolons or tabs
 * between cells are read. Every number has a unit, in its cell or in the header: `reading [mA]`. A row without a
 * reading is not a reading. Rows of the monitor have the point `monitor` and the resistance in the column `set`; rows of
 * its challenges the point `monitor/` and their number, as reading `alarm` or `no alarm`, and the reason of an alarm in
 * the column `alarm reason`.
 *
 * @param text CSV with a header
 * @param options Who read and when, and how the text is to be understood
 * @returns Readings in SI units
 * @throws CalculationError with all faults in `faults`, each with line and column: `csv-malformed`, `unknown-member`,
 * `missing-member`, `duplicate`, `contradiction`, `unknown-choice`, `negative`, `text-unsuitable`, and the codes of
 * `parseQuantity`, such as `unit-missing` and `number-malformed`
 * @example
 * ```ts
 * import { readReadingsCsv } from 'esu-limits/schema';
 * const text = ['point,reading,display', '1,489 mA,118 W', '2,,'].join('\n');
 * readReadingsCsv(text).readings.length; // → 1
 * readReadingsCsv(text).readings[0]?.value; // → 0.489
 * ```
 */
export function readReadingsCsv(text: string, options?: ReadingsCsvOptions): Readings {
  return unwrap(safeReadReadingsCsv(text, options));
}

/**
 * Reads a sheet of readings from CSV text, and says what is wrong where it cannot: the twin of `readReadingsCsv`.
 *
 * @param text CSV with a header
 * @param options Who read and when, and how the text is to be understood
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 * @example
 * ```ts
 * import { safeReadReadingsCsv } from 'esu-limits/schema';
 * const result = safeReadReadingsCsv('point;reading\n1;0,489 A');
 * result.ok ? '' : result.faults[0]?.path; // → "line 2, column 2 (reading)"
 * ```
 */
export function safeReadReadingsCsv(text: string, options: ReadingsCsvOptions = {}): ParseResult<Readings> {
  const opened = openSheet(text, options, readingsHeader);
  if (!opened.ok) return opened;
  const { header, rows, headerLength, isCut } = opened.value;
  const faults: Fault[] = [...opened.value.faults];
  const readings: Reading[] = [];
  const monitor: MonitorReading[] = [];
  const monitorChallenges: ChallengeReading[] = [];
  // Without its columns, or with cells that are cut wrongly, what the rows say cannot be told.
  if (header.has('point') && header.has('reading') && !isCut) {
    for (const row of rows) {
      if (faults.length > mostFaults) break;
      const { content, faults: rowFaults } = readRow(row, header, headerLength, options.phase ?? 'as-found');
      for (const fault of rowFaults) faults.push(fault);
      if (content === undefined) continue;
      if ('reading' in content) readings.push(content.reading);
      else if ('challenge' in content) monitorChallenges.push(content.challenge);
      else monitor.push(content.monitor);
    }
  }
  const { by, date, note } = options;
  const document = {
    schema: 'esu-limits/readings',
    version: 1,
    ...{ note, by, date },
    readings: faults.length === 0 ? readings : [],
    ...(faults.length === 0 && monitor.length > 0 ? { monitor } : {}),
    ...(faults.length === 0 && monitorChallenges.length > 0 ? { monitorChallenges } : {}),
  };
  const result = safeParseReadings(document);
  if (faults.length === 0) return result;
  return failure(result.ok ? faults : [...faults, ...result.faults]);
}
