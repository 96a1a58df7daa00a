import {
  type Contribution,
  type ExpandedUncertainty,
  type Propagated,
  roundUncertainty,
} from '../../uncertainty/index.js';
import { plainText } from '../escape/plain-text.js';
import { fixedText } from '../numbers/fixed-text.js';
import { type PrintKind, unitFor } from '../numbers/print-unit.js';
import { significantDigits } from '../numbers/value-text.js';
import { none, textCell } from './cells.js';
import type { Cell, Column, Row, Table } from './sheet.js';

/** How a budget is labelled. */
export interface BudgetLabels {
  /** Lower case with hyphens, unique in the sheet. */
  readonly id: string;
  readonly caption: string;
  /** Unit of the result, such as `A`. */
  readonly unit?: string;
}

const columns: readonly Column[] = [
  { id: 'quantity', title: 'Quantity', align: 'left' },
  { id: 'value', title: 'Value', align: 'right' },
  { id: 'uncertainty', title: 'Standard uncertainty', short: 'u', align: 'right' },
  { id: 'distribution', title: 'Distribution', short: 'Distr.', align: 'left' },
  { id: 'degrees', title: 'Degrees of freedom', short: 'DoF', align: 'right' },
  { id: 'type', title: 'Type', align: 'left' },
  { id: 'sensitivity', title: 'Sensitivity', short: 'Sens.', align: 'right' },
  { id: 'contribution', title: 'Contribution', short: 'Contrib.', align: 'right' },
  { id: 'share', title: 'Share', align: 'right' },
];

/** A budget as a table: a row for each input, and the combined result last. */
export function budgetTable(budget: Propagated, { id, caption, unit }: BudgetLabels): Table {
  const contributionText = inOneUnit(budget.standardUncertainty, unit);
  const rows = budget.contributions.map((row) => rowOf(row, contributionText(row.contribution)));
  const combined: Row = {
    cells: [
      textCell('Combined'),
      quantityCell(budget.value, unit, 4),
      quantityCell(budget.standardUncertainty, unit, 2),
      none,
      degreesCell(budget.degreesOfFreedom),
      none,
      none,
      textCell(contributionText(budget.standardUncertainty)),
      textCell(budget.standardUncertainty > 0 ? '100 %' : '–'),
    ],
    notes: [],
  };
  return { id, caption: plainText(caption), columns, groups: [{ headings: [], notes: [], rows: [...rows, combined] }] };
}

/** Result with its uncertainty in a sentence: `y = 500.0 mA, U = 8.3 mA (k = 2.02, 95 %)`. */
export function budgetResultText(budget: Propagated, expanded: ExpandedUncertainty, unit?: string): string {
  const { expandedUncertainty, coverageFactor, coverageProbability } = expanded;
  const percent = Number((coverageProbability * 100).toPrecision(4));
  const coverage = `k = ${Number(coverageFactor.toPrecision(3))}, ${percent} %`;
  if (!(expandedUncertainty > 0)) return `Result: ${plain(budget.value, unit, 6)}, without uncertainty.`;
  const rounded = roundUncertainty(budget.value, expandedUncertainty);
  const magnitude = [rounded.uncertainty, rounded.value];
  const kind = kindOf(unit);
  if (kind === undefined) {
    const decimals = Math.max(0, Math.min(100, rounded.decimals));
    const suffix = unit === undefined || unit === '1' || unit === 'any' ? '' : ` ${unit}`;
    return `Result: ${rounded.value.toFixed(decimals)}${suffix}, U = ${rounded.uncertainty.toFixed(decimals)}${suffix} (${coverage}).`;
  }
  const printed = unitFor(kind, magnitude);
  const decimals = Math.max(0, rounded.decimals - printed.shift);
  const text = (value: number): string => `${(value * 10 ** printed.shift).toFixed(decimals)} ${printed.symbol}`;
  return `Result: ${text(rounded.value)}, U = ${text(rounded.uncertainty)} (${coverage}).`;
}

function rowOf(contribution: Contribution, ofResult: string): Row {
  const { name, description, unit, value, standardUncertainty, distribution, degreesOfFreedom } = contribution;
  return {
    cells: [
      textCell(description ?? name),
      quantityCell(value, unit, 4),
      quantityCell(standardUncertainty, unit, 2),
      textCell(distribution.replace(/-/g, ' ')),
      degreesCell(degreesOfFreedom),
      textCell(contribution.type),
      { kind: 'number', digits: digitsOf(contribution.sensitivity, 3) },
      textCell(ofResult),
      textCell(shareText(contribution.share)),
    ],
    notes: [],
  };
}

/** Contributions stand in the unit of the combined uncertainty, with its digits: they are compared with it. */
function inOneUnit(combined: number, unit: string | undefined): (value: number) => string {
  const kind = kindOf(unit);
  if (kind === undefined || !(combined > 0)) return (value) => plain(value, unit, 3);
  const printed = unitFor(kind, [combined]);
  const decimals = 2 - Math.floor(Math.log10(combined * 10 ** printed.shift));
  if (decimals < 0 || decimals > 6) return (value) => plain(value, unit, 3);
  return (value) => `${fixedText(value, printed, decimals)} ${printed.symbol}`;
}

function shareText(share: number): string {
  if (share !== 0 && Math.abs(share) < 0.0005) return 'below 0.1 %';
  return `${(share * 100).toFixed(1).replace('-', '\u2212')} %`;
}

function degreesCell(degrees: Contribution['degreesOfFreedom'] | undefined): Cell {
  if (degrees === undefined) return none;
  return textCell(degrees === 'infinite' ? '∞' : digitsOf(degrees, 3));
}

function quantityCell(value: number, unit: string | undefined, digits: number): Cell {
  return { kind: 'text', text: plain(value, unit, digits) };
}

/** A value with its unit; units of the trade get a prefix. */
function plain(value: number, unit: string | undefined, digits: number): string {
  const kind = kindOf(unit);
  if (kind !== undefined) {
    const printed = unitFor(kind, [value]);
    return `${significantDigits(value, printed, digits)} ${printed.symbol}`;
  }
  return plainText(
    `${digitsOf(value, digits)}${unit === undefined || unit === '1' || unit === 'any' ? '' : ` ${unit}`}`,
  );
}

function digitsOf(value: number, digits: number): string {
  return String(Number(value.toPrecision(digits))).replace(/-/g, '\u2212');
}

const kinds: Readonly<Record<string, PrintKind>> = {
  W: 'power',
  A: 'current',
  V: 'voltage',
  ohm: 'resistance',
  s: 'time',
  Hz: 'frequency',
};

function kindOf(unit: string | undefined): PrintKind | undefined {
  return unit !== undefined && Object.hasOwn(kinds, unit) ? kinds[unit] : undefined;
}
