import { fail, requireFinite } from '../checks/index.js';
import type { Plan, PlanPoint } from '../procedure/index.js';
import { plainText } from './escape/plain-text.js';
import type { NotebookCells, NotebookContent, NotebookWorking } from './notebook-content.js';
import { budgetSheet } from './sheet/budget-options.js';
import { textCell } from './sheet/cells.js';
import { warningNotes } from './sheet/point-notes.js';
import { pointNumbers } from './sheet/point-numbers.js';
import { pointsRecord } from './sheet/points-record.js';
import { feasibilityNotes, identityCells, identityColumns } from './sheet/points-worksheet.js';
import type { Cell, Column, RowNote, Table } from './sheet/sheet.js';
import { SourceNumbers, stepsOf } from './sheet/working.js';

/** A table with the lines that belong below it. */
interface TableWithLines {
  readonly table: Table;
  readonly below: readonly string[];
}

/** What is shown as a table, as one; undefined where it is no such thing. */
export function notebookTable(content: NotebookContent): TableWithLines | undefined {
  if ('budget' in content) return { table: budgetSheet(content.budget, content), below: [] };
  if ('plan' in content) {
    const { plan, findings, title } = content;
    const shown = findings === undefined ? planTable(plan) : { table: findingsTable(plan, findings.points), below: [] };
    return title === undefined ? shown : { ...shown, table: { ...shown.table, caption: plainText(title) } };
  }
  if ('working' in content) return workingTable(content);
  if ('columns' in content) return { table: cellsTable(content), below: [] };
  return undefined;
}

/**
 * The points in the order of work, without groups: a notebook is no sheet to work from. Limits of acceptance stand
 * with them where the rule of the plan gives any; what must be minded stands with its row, all else below.
 */
function planTable(plan: Plan): TableWithLines {
  const { points } = plan;
  const numbers = pointNumbers(plan);
  const unit = numbers.columnUnit === undefined ? {} : { unit: numbers.columnUnit.symbol };
  const guarded = points.some((point) => point.measurement?.acceptance !== undefined);
  const columns: Column[] = [
    ...identityColumns(numbers),
    { id: 'power', title: 'Expected power', unit: numbers.powerUnit.symbol, align: 'right' },
    { id: 'expected', title: 'Expected', ...unit, align: 'right' },
    { id: 'lower', title: 'Lower limit', ...unit, align: 'right' },
    { id: 'upper', title: 'Upper limit', ...unit, align: 'right' },
  ];
  if (guarded) {
    columns.push({ id: 'accept-from', title: 'Accept from', ...unit, align: 'right' });
    columns.push({ id: 'accept-to', title: 'Accept to', ...unit, align: 'right' });
  }
  const names = new Set(points.map(({ outputName }) => outputName));
  const isShown = (_: unknown, i: number): boolean => names.size > 1 || columns[i]?.id !== 'output';
  const rows = points.map((point) => {
    const cells = [
      ...identityCells(point, numbers),
      numbers.power(point),
      numbers.expected(point),
      numbers.limit(point, 'lower'),
      numbers.limit(point, 'upper'),
      ...(guarded ? [numbers.acceptance(point, 'lower'), numbers.acceptance(point, 'upper')] : []),
    ];
    return { cells: cells.filter(isShown), notes: notesOf(point).filter(({ tone }) => tone === 'attention') };
  });
  const [name] = names;
  const caption = `${names.size === 1 ? `${name}: points` : 'Points'} in the order of work; values are rms`;
  const groups = [{ headings: [], notes: [], rows }];
  const below = points.flatMap((point) =>
    notesOf(point).flatMap(({ tone, text }) => (tone === 'plain' ? [`Point ${point.number}: ${text}`] : [])),
  );
  const table = { id: 'points', caption: plainText(caption), columns: columns.filter(isShown), groups };
  return { table, below };
}

/** Remarks of a point, with those that the heading of a load makes on a worksheet. */
function notesOf(point: PlanPoint): readonly RowNote[] {
  const substituted = point.warnings.filter(({ code }) => code === 'load-substituted');
  return [
    ...feasibilityNotes(point),
    ...substituted.map(({ message }) => ({ tone: 'plain', text: plainText(message) }) as const),
    ...warningNotes(point.warnings),
  ];
}

function findingsTable(plan: Plan, findings: Parameters<typeof pointsRecord>[1]): Table {
  const block = pointsRecord(plan, findings).blocks.find(({ kind }) => kind === 'table');
  return (block as { readonly table: Table }).table;
}

const workingColumns: readonly Column[] = [
  { id: 'step', title: 'Step', align: 'left' },
  { id: 'formula', title: 'Formula', align: 'left' },
  { id: 'numbers', title: 'With numbers', align: 'left' },
  { id: 'result', title: 'Result', align: 'right' },
  { id: 'source', title: 'Source', align: 'left' },
];

function workingTable({ working, title = 'Working' }: NotebookWorking): TableWithLines {
  const numbered = new SourceNumbers();
  const rows = stepsOf(working, numbered).map(({ label, symbol, expression, substituted, result, source }) => {
    const texts = [label, `${symbol} = ${expression}`, substituted, result, source];
    return { cells: texts.map(textCell), notes: [] };
  });
  const groups = [{ headings: [], notes: [], rows }];
  return {
    table: { id: 'working', caption: plainText(title), columns: workingColumns, groups },
    below: numbered.list(),
  };
}

function cellsTable({ columns, rows, title = '' }: NotebookCells): Table {
  const named = columns.map((column) => (typeof column === 'string' ? { title: column } : column));
  rows.forEach((row, i) => {
    if (row.length === named.length) return;
    fail('wrong-count', `content.rows[${i}]`, row.length, `must have ${named.length} cells, as there are columns`);
  });
  const laidOut = named.map((column, i): Column => {
    const align = rows.length > 0 && rows.every((row) => typeof row[i] === 'number') ? 'right' : 'left';
    const unit = column.unit === undefined ? {} : { unit: plainText(column.unit) };
    return { id: `column-${i + 1}`, title: plainText(column.title), ...unit, align };
  });
  const cells = rows.map((row, j) => ({
    cells: row.map((value, i) => cellOf(value, named[i]?.decimals, `content.rows[${j}][${i}]`)),
    notes: [],
  }));
  const groups = [{ headings: [], notes: [], rows: cells }];
  return { id: 'table', caption: plainText(title), columns: laidOut, groups };
}

function cellOf(value: string | number, decimals: number | undefined, path: string): Cell {
  if (typeof value !== 'number') return textCell(value);
  requireFinite(value, path);
  const digits = decimals === undefined ? String(Number(value.toPrecision(6))) : value.toFixed(decimals);
  return { kind: 'number', digits: digits.replaceAll('-', '−') };
}
