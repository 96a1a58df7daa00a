import { asciiText } from '../escape/ascii-text.js';
import { bindUnits } from '../escape/bind-units.js';
import type { Block, FormLine, Section, Sheet, Working } from '../sheet/sheet.js';
import type { SheetOptions } from '../sheet/sheet-options.js';
import { tableText } from './table-text.js';
import { textWidth } from './text-width.js';
import { wrapText, wrapUnder } from './wrap-text.js';

/** How a sheet is written as text. */
export interface TextOptions extends SheetOptions {
  /** Writes `ohm` for Ω, `-` for −, and drops accents, for terminals and printers that only know ASCII. Default: false. */
  readonly ascii?: boolean;
}

const width = 80;

/** A sheet as text of at most 80 columns, ended by a line break. */
export function renderText(sheet: Sheet, options: TextOptions = {}): string {
  const spell: Spell = (text) => bindUnits(options.ascii === true ? asciiText(text) : text);
  const lines = [
    ...wrapText(spell(sheet.title.toUpperCase()), width),
    ...wrapText(spell(sheet.subtitle), width),
    '='.repeat(width),
    ...sheet.sections.flatMap((section) => sectionLines(section, spell)),
  ];
  return `${lines
    .map((line) => line.replace(/\u00a0/g, ' ').trimEnd())
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')}\n`;
}

const bullets = { note: '*** ', caution: '! ', warning: '! ', plain: '- ' } as const;

type Spell = (text: string) => string;

function sectionLines(section: Section, spell: Spell): string[] {
  const blocks = section.blocks.map((block) => blockLines(block, spell)).filter((lines) => lines.length > 0);
  const shown = section.blocks.filter(
    (block) => !['pictures', 'sweeps', 'traces'].includes(block.kind) && !isSmall(block),
  );
  if (shown.length === 0) return [];
  const heading = section.heading === undefined ? [] : headingLines(section.heading, spell);
  return ['', ...heading, ...blocks.flatMap((lines, i) => (i === 0 ? lines : ['', ...lines]))];
}

/** Small print stands beside something; alone it has nothing to say. */
function isSmall(block: Block): boolean {
  return block.kind === 'paragraph' && block.tone === 'small';
}

function headingLines(heading: string, spell: Spell): string[] {
  const lines = wrapText(spell(heading), width);
  return [...lines, '-'.repeat(textWidth(lines.at(-1) as string)), ''];
}

function blockLines(block: Block, spell: Spell): string[] {
  switch (block.kind) {
    case 'paragraph':
      return wrapText(spell(block.text), width);
    case 'list':
      return block.items.flatMap((item) => wrapUnder(bullets[block.tone], spell(item), width));
    case 'facts':
      return block.facts.flatMap(({ name, value }) => wrapUnder(spell(name).padEnd(28), spell(value), width));
    case 'table':
      return tableText(block.table, width, spell);
    case 'lines':
      return block.lines.flatMap((line) => [...formLine(line, spell), '']).slice(0, -1);
    case 'pictures':
    case 'sweeps':
    case 'traces':
      return [];
    case 'working':
      return workingLines(block.working, spell);
  }
}

function formLine({ name, value }: FormLine, spell: Spell): string[] {
  const lead = spell(name).padEnd(28);
  return value === undefined ? [lead + '_'.repeat(40)] : wrapUnder(lead, spell(value), width);
}

function workingLines({ heading, remarks, tables, parts }: Working, spell: Spell): string[] {
  const lines = wrapText(spell(heading), width);
  for (const remark of remarks) lines.push(...wrapUnder('  ', spell(remark), width));
  for (const table of tables) {
    lines.push(...wrapUnder('  ', spell(table.caption), width));
    lines.push(...tableText(table, width - 4, spell).map((line) => (line === '' ? '' : `    ${line}`)));
  }
  for (const part of parts) {
    if (part.heading !== '') lines.push(...wrapUnder('  ', spell(part.heading), width));
    for (const step of part.steps) {
      lines.push(...wrapUnder('    ', spell(`${step.label}  ${step.source}`), width));
      const lead = spell(`      ${step.symbol} = `);
      const equals = '= '.padStart(Math.min(textWidth(lead), 30));
      lines.push(
        ...wrapUnder(
          textWidth(lead) <= 30 ? lead : '      ',
          spell(textWidth(lead) <= 30 ? step.expression : `${step.symbol} = ${step.expression}`),
          width,
        ),
      );
      if (step.substituted !== step.expression && step.substituted !== step.result.split(' ')[0]) {
        lines.push(...wrapUnder(equals, spell(step.substituted), width));
      }
      lines.push(...wrapUnder(equals, spell(step.result), width));
    }
  }
  return lines;
}
