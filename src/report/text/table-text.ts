import { alignDecimals } from '../sheet/align-decimals.js';
import type { Cell, Column, Group, Row, RowNote, Table } from '../sheet/sheet.js';
import { textWidth } from './text-width.js';
import { pad, wrapText, wrapUnder } from './wrap-text.js';

/** A column as it is laid out. */
interface Lane {
  readonly index: number;
  readonly column: Column;
  readonly head: readonly string[];
  width: number;
  /** No narrower than this, as long as it can be helped. */
  readonly good: number;
  /** Never narrower than this. */
  readonly least: number;
}

interface Layout {
  readonly lanes: readonly Lane[];
  readonly gap: string;
}

type Spell = (text: string) => string;
type CellText = (cell: Cell, index: number) => string;

const indent = '  ';

/** A table as lines of at most a width; where the columns do not fit, each row becomes a list of its cells. */
export function tableText(table: Table, width: number, spell: Spell): string[] {
  const align = alignDecimals(table, { digit: ' ', point: ' ' });
  const text: CellText = (cell, index) => spell(cellText(cell, align[index] as (digits: string) => string));
  const layout = layOut(lanesOf(table, text, spell), width);
  if (layout === undefined) return stacked(table, width, spell);
  const { lanes, gap } = layout;
  const total = lanes.reduce((sum, lane) => sum + lane.width + gap.length, 0);
  const noteWidth = Math.min(width, Math.max(total, 60));
  const lines = [...headLines(layout), lanes.map((lane) => '-'.repeat(lane.width)).join(gap)];
  for (const group of table.groups) {
    lines.push(...groupHead(group, width, spell));
    for (const row of group.rows) {
      const cells = lanes.map((lane) => wrapText(text(row.cells[lane.index] as Cell, lane.index), lane.width));
      lines.push(...lineUp(layout, cells));
      lines.push(...noteLines(row.notes, noteWidth, spell));
    }
  }
  return lines;
}

/** What a cell says, in text. */
function cellText(cell: Cell, align: (digits: string) => string): string {
  switch (cell.kind) {
    case 'text':
      return cell.short ?? cell.text;
    case 'margin':
      return cell.text;
    case 'number':
      return cell.unit === undefined ? align(cell.digits) : `${cell.digits} ${cell.unit}`;
    case 'verdict':
      return cell.word;
    case 'blank':
      return '_______';
    case 'none':
      return '-';
  }
}

function lanesOf(table: Table, text: CellText, spell: Spell): Lane[] {
  const grouped = table.groups.some((group) => group.headings.length > 0);
  const rows = table.groups.flatMap((group) => group.rows);
  return table.columns.flatMap((column, index): Lane[] => {
    if (grouped && column.inHeading === true) return [];
    const title = spell(column.short ?? column.title);
    const unit = column.unit === undefined ? [] : [spell(column.unit)];
    const headWidth = longestWord([title, ...unit]);
    let natural = headWidth;
    let good = headWidth;
    let least = headWidth;
    for (const row of rows) {
      const cell = row.cells[index] as Cell;
      const shown = text(cell, index);
      natural = Math.max(natural, textWidth(shown));
      // Words may wrap, and long ones break; digits and blanks to write on may not.
      const rigid =
        cell.kind === 'text' || cell.kind === 'verdict' ? Math.min(longestWord([shown]), 16) : textWidth(shown);
      good = Math.max(good, rigid);
      least = Math.max(least, cell.kind === 'text' ? Math.min(rigid, 6) : rigid);
    }
    return [{ index, column, head: [title, ...unit], width: natural, good, least }];
  });
}

/** Narrows the widest lanes until all fit: wide gaps and no wrapping where there is room, else narrow gaps, at worst broken words. */
function layOut(lanes: readonly Lane[], width: number): Layout | undefined {
  for (const [gap, bound] of [
    ['  ', 'width'],
    [' ', 'width'],
    [' ', 'good'],
    [' ', 'least'],
  ] as const) {
    const tried = lanes.map((lane) => ({ ...lane }));
    let excess = tried.reduce((sum, lane) => sum + lane.width, gap.length * (lanes.length - 1) - width);
    for (; excess > 0; excess--) {
      const widest = tried.filter((lane) => lane.width > lane[bound]).sort((a, b) => b.width - a.width)[0];
      if (widest === undefined) break;
      widest.width--;
    }
    if (excess <= 0) return { lanes: tried, gap };
  }
  return undefined;
}

function longestWord(texts: readonly string[]): number {
  return texts.flatMap((text) => text.split(' ')).reduce((most, word) => Math.max(most, textWidth(word)), 0);
}

/** Titles with their units below, standing on the rule. */
function headLines(layout: Layout): string[] {
  const heads = layout.lanes.map(({ head, width }) => head.flatMap((text) => wrapText(text, width)));
  const height = Math.max(...heads.map((head) => head.length));
  return lineUp(
    layout,
    heads.map((head) => [...Array.from({ length: height - head.length }, () => ''), ...head]),
  );
}

/** Cells side by side, each of one or more lines. */
function lineUp({ lanes, gap }: Layout, cells: readonly (readonly string[])[]): string[] {
  const height = Math.max(...cells.map((cell) => cell.length));
  return Array.from({ length: height }, (_, i) =>
    lanes
      .map((lane, j) => pad(cells[j]?.[i] ?? '', lane.width, lane.column.align))
      .join(gap)
      .trimEnd(),
  );
}

function groupHead(group: Group, width: number, spell: Spell): string[] {
  const headings = group.headings.flatMap(({ level, text }) =>
    level === 1 ? ['', ...wrapText(spell(text), width), ''] : wrapUnder('- ', spell(text), width),
  );
  const spaced = group.headings[0]?.level === 2 ? ['', ...headings] : headings;
  return [...spaced, ...noteLines(group.notes, width, spell)];
}

function noteLines(notes: readonly RowNote[], width: number, spell: Spell): string[] {
  const plain = notes.filter((note) => note.tone === 'plain').map((note) => note.text);
  const attention = notes.filter((note) => note.tone === 'attention').map((note) => note.text);
  return [
    ...attention.flatMap((text) => wrapUnder(`${indent}! `, spell(text), width)),
    ...(plain.length === 0 ? [] : wrapUnder(`${indent}  `, spell(plain.join(' ')), width)),
  ];
}

function stacked(table: Table, width: number, spell: Spell): string[] {
  const row = ({ cells, notes }: Row): string[] => [
    '',
    ...table.columns.flatMap((column, i) => {
      const cell = cells[i] as Cell;
      const unit = column.unit === undefined || cell.kind === 'none' ? '' : ` ${column.unit}`;
      return wrapUnder(
        `${indent}${spell(column.title)}: `,
        spell(`${cellText(cell, (digits) => digits)}${unit}`),
        width,
      );
    }),
    ...noteLines(notes, width, spell),
  ];
  return table.groups.flatMap((group) => [...groupHead(group, width, spell), ...group.rows.flatMap(row)]);
}
