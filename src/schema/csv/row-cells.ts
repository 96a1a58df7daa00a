import type { CalculationErrorCode, Fault } from '../../checks/index.js';
import { type QuantityOptions, safeParseQuantity } from '../../units/index.js';
import { faultOf } from '../fault-list.js';
import { textFault } from '../parts/text.js';
import type { Header } from './read-header.js';
import type { CsvRow } from './split-csv.js';

/** Cells of one row by the names of their columns, and the faults that were found in them. */
export class RowCells<N extends string> {
  readonly faults: Fault[] = [];

  constructor(
    private readonly row: CsvRow,
    private readonly header: Header<N>,
  ) {}

  /** Text of a cell; empty where the column or the cell is not there. */
  text(name: N): string {
    const column = this.header.get(name);
    return column === undefined ? '' : (this.row.cells[column.index] ?? '');
  }

  fault(name: N, code: CalculationErrorCode, requirement: string, hint?: string): undefined {
    const column = this.header.get(name);
    const place = `line ${this.row.line}${column === undefined ? '' : `, column ${column.index + 1}`} (${name})`;
    this.faults.push(faultOf(code, place, this.text(name), requirement, hint));
    return undefined;
  }

  /** Value of a cell with its unit, or with the unit of the header where the cell has none; a word may stand for it. */
  quantity(name: N, options: QuantityOptions, word?: string): { value: number; quantity: string } | undefined {
    const read = safeParseQuantity(this.withUnit(name), options);
    if (!read.ok) {
      const { code, requirement, hint } = read.fault;
      return this.fault(name, code, word === undefined ? requirement : `${requirement}, or the word ${word}`, hint);
    }
    if (read.value.value < 0) return this.fault(name, 'negative', 'must be 0 or more');
    return read.value;
  }

  /** Text of a cell, with the unit of the header where it is a number alone. */
  withUnit(name: N): string {
    const text = this.text(name);
    const unit = this.header.get(name)?.unit;
    return unit !== undefined && /^[+\-\u2212]?\d+(\.\d+)?([eE][+-]?\d+)?$/.test(text) ? `${text} ${unit}` : text;
  }

  flag(name: N): boolean | undefined {
    const text = this.text(name).toLowerCase();
    if (text === '') return undefined;
    if (text === 'yes' || text === 'true') return true;
    if (text === 'no' || text === 'false') return false;
    return this.fault(name, 'unknown-choice', 'must be yes or no');
  }

  /** Text of a cell without the apostrophe that keeps a spreadsheet from running it as a formula, held to its kind. */
  free(name: N, kind: 'line' | 'prose'): string {
    const text = this.text(name).replace(/^'(?=[\t\r\n]|\s*[=+\-@\uff1d\uff0b\uff0d\uff20])/u, '');
    const wrong = textFault(text, kind);
    if (wrong !== undefined) this.fault(name, 'text-unsuitable', wrong);
    return text;
  }

  /** Reports a cell beyond those of the header. */
  reportExcess(headerLength: number): void {
    const { line, cells } = this.row;
    const excess = cells.findIndex((cell, i) => i >= headerLength && cell !== '');
    if (excess < 0) return;
    const place = `line ${line}, column ${excess + 1}`;
    const hint = 'A cell that holds the delimiter stands in quotation marks; numbers have a decimal point.';
    const requirement = `must not be there: the header has ${headerLength} columns`;
    this.faults.push(faultOf('csv-malformed', place, cells[excess], requirement, hint));
  }
}
