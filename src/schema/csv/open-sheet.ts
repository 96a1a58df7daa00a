import type { Fault } from '../../checks/index.js';
import { defaultLimits } from '../document-limits.js';
import { failure, faultOf, type ParseResult } from '../fault-list.js';
import type { HeaderRules } from './header-rules.js';
import { findDelimiter, type Header, readHeader } from './read-header.js';
import { type CsvRow, type Delimiter, plainLines, splitCsv } from './split-csv.js';

/** How the text of a sheet is to be understood. */
export interface SheetTextOptions {
  /** What separates cells; the one that fits the header unless stated. */
  readonly delimiter?: Delimiter;
  /** Longest text, in characters; 67 108 864 (64 Mi) unless stated. */
  readonly maximumLength?: number;
}

/** A sheet whose header was read. */
export interface OpenSheet<N extends string> {
  readonly header: Header<N>;
  /** Line on which the header stands, and how many cells it has. */
  readonly line: number;
  readonly headerLength: number;
  readonly rows: readonly CsvRow[];
  /** Whether cells are cut wrongly, so that nothing can be told from the rows. */
  readonly isCut: boolean;
  /** What is wrong with the text as CSV, and with its header. */
  readonly faults: readonly Fault[];
}

/** Splits the text of a sheet and reads its header; fails where the text is none, or too long. */
export function openSheet<N extends string>(
  text: string,
  { delimiter, maximumLength = defaultLimits.maximumLength }: SheetTextOptions,
  rules: HeaderRules<N>,
): ParseResult<OpenSheet<N>> {
  if (typeof text !== 'string') {
    return failure([faultOf('wrong-type', '', text, 'must be text', 'Decode bytes as UTF-8 first.')]);
  }
  if (text.length > maximumLength) {
    return failure([faultOf('too-large', '', text.length, `must have at most ${maximumLength} characters`)]);
  }
  const plain = plainLines(text);
  const split = splitCsv(plain, delimiter ?? findDelimiter(plain, rules));
  const [first, ...rows] = split.rows;
  const { line, cells } = first ?? { line: 1, cells: [] };
  const { header, faults } = readHeader(cells, line, rules);
  return {
    ok: true,
    value: {
      header,
      line,
      headerLength: cells.length,
      rows,
      isCut: split.faults.length > 0,
      faults: [...split.faults, ...faults],
    },
  };
}
