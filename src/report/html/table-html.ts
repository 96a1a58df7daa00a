import { escapeHtml } from '../escape/escape-html.js';
import { marginPicture } from '../picture/margin-picture.js';
import { mark } from '../picture/mark.js';
import { element } from '../picture/svg.js';
import { alignDecimals } from '../sheet/align-decimals.js';
import type { Cell, Column, Group, Row, RowNote, Table } from '../sheet/sheet.js';

/**
 * A table whose header repeats on every printed page. Each row is a body of its own with its remarks, so that
 * no page break parts them; on a narrow screen each becomes a card. The roles keep it a table there.
 */
export function tableHtml(table: Table, anchors: ReadonlySet<string>): string {
  const align = alignDecimals(table, { digit: '\u2007', point: '\u2008' });
  const head = table.columns.map((column) => {
    const unit = column.unit === undefined ? '' : ` <span class="unit">${escapeHtml(column.unit)}</span>`;
    return `<th role="columnheader" scope="col"${classes(column.align === 'right' && 'right')}>${escapeHtml(column.title)}${unit}</th>`;
  });
  const layout: Layout = { columns: table.columns, align, anchors };
  const bodies = table.groups.flatMap((group) => groupBodies(group, layout));
  return [
    `<table class="flow" id="table-${table.id}" role="table">`,
    `<caption>${escapeHtml(table.caption)}</caption>`,
    `<thead role="rowgroup"><tr role="row">${head.join('')}</tr></thead>`,
    ...bodies,
    '</table>',
  ].join('\n');
}

interface Layout {
  readonly columns: readonly Column[];
  /** For each column, digits with blanks so that decimal points stand under each other. */
  readonly align: readonly ((digits: string) => string)[];
  /** Workings that are there to be linked to. */
  readonly anchors: ReadonlySet<string>;
}

/** Headings stand in the body of the first row, so that they are never left alone at the foot of a page. */
function groupBodies(group: Group, layout: Layout): string[] {
  const span = layout.columns.length;
  const heads = [
    ...group.headings.map(({ level, text }) => spanRow(`group${level}`, span, escapeHtml(text))),
    ...noteRow(group.notes, span),
  ].join('');
  if (group.rows.length === 0) return heads === '' ? [] : [`<tbody role="rowgroup" class="heads">${heads}</tbody>`];
  return group.rows.map((row, i) => {
    const failed = row.cells.some((cell) => cell.kind === 'verdict' && cell.verdict === 'fail');
    const before = i === 0 ? heads : '';
    return `<tbody role="rowgroup"${classes(failed && 'is-fail')}>${before}${rowHtml(row, layout)}</tbody>`;
  });
}

function rowHtml(row: Row, layout: Layout): string {
  const cells = row.cells.map((cell, i) => cellHtml(cell, i, layout));
  const notes = noteRow(row.notes, layout.columns.length).join('');
  return `<tr role="row" class="main">${cells.join('')}</tr>${notes}`;
}

function noteRow(notes: readonly RowNote[], span: number): string[] {
  if (notes.length === 0) return [];
  const plain = notes.filter((note) => note.tone === 'plain').map((note) => escapeHtml(note.text));
  const attention = notes.filter((note) => note.tone === 'attention');
  const paragraphs = [
    ...attention.map((note) => `<p class="attention">${escapeHtml(note.text)}</p>`),
    ...(plain.length === 0 ? [] : [`<p>${plain.join(' ')}</p>`]),
  ];
  return [spanRow('notes', span, paragraphs.join(''))];
}

function spanRow(name: string, span: number, content: string): string {
  return `<tr role="row" class="${name}"><td role="cell" colspan="${span}">${content}</td></tr>`;
}

function cellHtml(cell: Cell, index: number, layout: Layout): string {
  const column = layout.columns[index] as Column;
  const label = column.unit === undefined ? column.title : `${column.title}, ${column.unit}`;
  // Long text goes under its label on a narrow screen.
  const isWide = cell.kind === 'text' && cell.text.length > 40;
  const isShort = cell.kind === 'text' && cell.text.length < 12;
  const spills = cell.kind === 'text' && cell.text.split(' ').some((word) => word.length > 20);
  const names = [
    column.align === 'right' && 'right',
    `is-${cell.kind}`,
    isWide && 'wide',
    isShort && 'short',
    spills && 'spill',
  ];
  return `<td role="cell" data-label="${escapeHtml(label)}"${classes(...names)}>${content(cell, index, layout)}</td>`;
}

function content(cell: Cell, index: number, { align, anchors }: Layout): string {
  switch (cell.kind) {
    case 'text':
      return escapeHtml(cell.text);
    case 'number': {
      const digits = escapeHtml(
        cell.unit === undefined ? (align[index]?.(cell.digits) ?? cell.digits) : `${cell.digits}\u00a0${cell.unit}`,
      );
      return cell.working === undefined || !anchors.has(cell.working)
        ? digits
        : `<a href="#${escapeHtml(cell.working)}">${digits}</a>`;
    }
    case 'margin':
      return `${escapeHtml(cell.text)}${marginPicture(cell)}`;
    case 'verdict': {
      const attributes = { width: 12, height: 12, viewBox: '0 0 12 12', 'aria-hidden': 'true' };
      const sign = element('svg', attributes, mark(cell.verdict, 6, 6, 5));
      const reason = cell.reason === undefined ? '' : `<span class="reason">${escapeHtml(cell.reason)}</span>`;
      const name = cell.verdict.replace(' ', '-');
      return `<span><span class="verdict ${name}">${sign}${escapeHtml(cell.word)}</span>${reason}</span>`;
    }
    case 'blank':
      return '';
    case 'none':
      return '–';
  }
}

function classes(...names: readonly (string | false)[]): string {
  const given = names.filter((name) => name !== false);
  return given.length === 0 ? '' : ` class="${given.join(' ')}"`;
}
