import type { Phase } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import type { PrintUnit } from '../numbers/print-unit.js';
import type { Cell } from './sheet.js';

/** A cell without anything. */
export const none: Cell = { kind: 'none' };

/** A cell to write into. */
export const blank: Cell = { kind: 'blank' };

/** A cell of text, which may come from a file. */
export function textCell(text: string): Cell {
  return { kind: 'text', text: plainText(text) };
}

/** A cell of digits: with its unit unless the column has one. */
export function numberCell(digits: string, unit: PrintUnit, columnUnit: PrintUnit | undefined): Cell {
  return columnUnit === undefined ? { kind: 'number', digits, unit: unit.symbol } : { kind: 'number', digits };
}

/** A cell of the state in which the unit was read. */
export function stateCell(phase: Phase): Cell {
  return { kind: 'text', text: phase.replace('-', ' '), short: phase === 'as-found' ? 'found' : 'left' };
}
