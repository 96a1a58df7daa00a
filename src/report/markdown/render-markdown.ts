import { escapeMarkdown } from '../escape/escape-markdown.js';
import type { Block, Cell, Group, Row, RowNote, Section, Sheet, Table, Working } from '../sheet/sheet.js';

/** A sheet as Markdown with tables. Pictures are left out: the tables hold their numbers. */
export function renderMarkdown(sheet: Sheet): string {
  const parts = [
    `# ${escapeMarkdown(sheet.title)}`,
    escapeMarkdown(sheet.subtitle),
    ...sheet.sections.flatMap(sectionParts),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function sectionParts(section: Section): string[] {
  const shown = section.blocks.some(
    (block) =>
      !['pictures', 'sweeps', 'traces'].includes(block.kind) && !(block.kind === 'paragraph' && block.tone === 'small'),
  );
  if (!shown) return [];
  const heading = section.heading === undefined ? [] : [`## ${escapeMarkdown(section.heading)}`];
  return [...heading, ...section.blocks.flatMap(blockParts)];
}

function blockParts(block: Block): string[] {
  switch (block.kind) {
    case 'paragraph':
      return [escapeMarkdown(block.text)];
    case 'list':
      return [block.items.map((item) => listItem(block.tone, item)).join('\n')];
    case 'facts':
      return [block.facts.map(({ name, value }) => `- ${escapeMarkdown(name)}: ${escapeMarkdown(value)}`).join('\n')];
    case 'table':
      return tableParts(block.table);
    case 'lines':
      return [
        block.lines
          .map(
            ({ name, value }) =>
              `- ${escapeMarkdown(name)}: ${value === undefined ? '\\_'.repeat(24) : escapeMarkdown(value)}`,
          )
          .join('\n'),
      ];
    case 'pictures':
    case 'sweeps':
    case 'traces':
      return [];
    case 'working':
      return workingParts(block.working);
  }
}

function listItem(tone: string, item: string): string {
  const text = escapeMarkdown(item);
  return tone === 'note' ? `- **${text}**` : `- ${text}`;
}

/** A table as Markdown: one for each group, with its headings. */
export function tableParts(table: Table): string[] {
  const remarks = table.groups.some((group) => group.rows.some((row) => row.notes.length > 0));
  return table.groups.flatMap((group) => [...groupParts(group), groupTable(table, group, remarks)]);
}

function groupParts({ headings, notes }: Group): string[] {
  return [
    ...headings.map(({ level, text }) => (level === 1 ? `### ${escapeMarkdown(text)}` : `**${escapeMarkdown(text)}**`)),
    ...(notes.length === 0 ? [] : [notesText(notes)]),
  ];
}

function groupTable({ columns }: Table, { rows }: Group, remarks: boolean): string {
  const titles = columns.map(({ title, unit }) => escapeMarkdown(unit === undefined ? title : `${title}, ${unit}`));
  const rules = columns.map(({ align }) => (align === 'right' ? '--:' : ':--'));
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const rowLine = (row: Row): string => line([...row.cells.map(cellText), ...(remarks ? [notesText(row.notes)] : [])]);
  return [
    line(remarks ? [...titles, 'Remarks'] : titles),
    line(remarks ? [...rules, ':--'] : rules),
    ...rows.map(rowLine),
  ].join('\n');
}

function notesText(notes: readonly RowNote[]): string {
  return notes
    .map(({ tone, text }) => (tone === 'attention' ? `**${escapeMarkdown(text)}**` : escapeMarkdown(text)))
    .join(' ');
}

function cellText(cell: Cell): string {
  switch (cell.kind) {
    case 'text':
    case 'margin':
      return escapeMarkdown(cell.text);
    case 'number':
      return escapeMarkdown(cell.unit === undefined ? cell.digits : `${cell.digits} ${cell.unit}`);
    case 'verdict': {
      const word = cell.verdict === 'pass' ? escapeMarkdown(cell.word) : `**${escapeMarkdown(cell.word)}**`;
      return cell.reason === undefined ? word : `${word}, ${escapeMarkdown(cell.reason)}`;
    }
    case 'blank':
      return '';
    case 'none':
      return '–';
  }
}

function workingParts({ heading, remarks, tables, parts }: Working): string[] {
  return [
    `### ${escapeMarkdown(heading)}`,
    ...remarks.map(escapeMarkdown),
    ...tables.flatMap((table) => [`**${escapeMarkdown(table.caption)}**`, ...tableParts(table)]),
    ...parts.flatMap((part) => [
      ...(part.heading === '' ? [] : [`**${escapeMarkdown(part.heading)}**`]),
      [
        '| Step | Formula | With numbers | Result | Source |',
        '| :-- | :-- | :-- | --: | :-- |',
        ...part.steps.map((step) => {
          const formula = `${step.symbol} = ${step.expression}`;
          const cells = [step.label, formula, step.substituted, step.result, step.source];
          return `| ${cells.map(escapeMarkdown).join(' | ')} |`;
        }),
      ].join('\n'),
    ]),
  ];
}
