import { fail } from '../checks/index.js';
import { escapeHtml } from './escape/escape-html.js';
import { escapeMarkdown } from './escape/escape-markdown.js';
import { plainText } from './escape/plain-text.js';
import { tableHtml } from './html/table-html.js';
import { tableParts } from './markdown/render-markdown.js';
import type { NotebookContent } from './notebook-content.js';
import { notebookTable } from './notebook-table.js';
import { loadCurvePicture } from './picture/load-curve-picture.js';
import { ink } from './picture/palette.js';
import { element } from './picture/svg.js';
import type { Table } from './sheet/sheet.js';
import { tableText } from './text/table-text.js';
import { wrapText } from './text/wrap-text.js';

/** One result in the forms that a notebook may show; it takes the richest that it knows. */
export interface NotebookData {
  readonly 'text/plain': string;
  readonly 'text/html'?: string;
  readonly 'text/markdown'?: string;
  readonly 'image/svg+xml'?: string;
}

/** What JavaScript kernels for notebooks ask a value for. */
const jupyterDisplay: unique symbol = Symbol.for('Jupyter.display');

/** A result that shows itself where it is the last value of a cell. */
export interface NotebookView {
  /** The forms by media type, for a kernel that is told what to show. */
  readonly data: NotebookData;
  readonly [jupyterDisplay]: () => NotebookData;
}

/**
 * A result made ready for a notebook: a table as HTML, Markdown and text, a picture as SVG with its description.
 *
 * A kernel that knows `Symbol.for('Jupyter.display')` shows the value of a cell by itself; any other is given
 * `data`. Nothing of a kernel is needed to make it. Texts of documents are escaped; a drawing that is given as `svg` is
 * markup, and whoever drew it has escaped its texts.
 *
 * @param content A budget, the points of a plan, a working, a table, a picture of a curve or a drawing
 * @returns The view: `data` by media type, and the method that kernels ask for
 * @throws CalculationError `unknown-choice` for anything else, `text-malformed` for a drawing that is not one `svg`
 * element, `not-a-number`, `wrong-count` for a row with another number of cells than there are columns, and those of `budgetText`
 * @example
 * ```ts
 * import { notebookView } from 'esu-limits/report';
 * const { data } = notebookView({ columns: ['Load', { title: 'Power', unit: 'W', decimals: 1 }], rows: [['L500', 120]] });
 * Object.keys(data); // → ["text/html", "text/markdown", "text/plain"]
 * data['text/markdown']?.split('\n')[0]; // → "| Load | Power, W |"
 * ```
 */
export function notebookView(content: NotebookContent): NotebookView {
  const data = dataOf(content);
  return { data, [jupyterDisplay]: () => data };
}

function dataOf(content: NotebookContent): NotebookData {
  if (typeof content === 'object' && content !== null) {
    if ('picture' in content) {
      const { picture, id } = content;
      const drawn = loadCurvePicture(picture, id === undefined ? {} : { id });
      return pictureData(drawn, plainText(picture.description));
    }
    if ('svg' in content) return pictureData(content.svg, plainText(content.description));
    const shown = notebookTable(content);
    if (shown !== undefined) return tableData(shown.table, shown.below);
  }
  return fail(
    'unknown-choice',
    'content',
    content,
    'must be a budget, a plan, a working, a table, a picture or an svg',
  );
}

function tableData(table: Table, below: readonly string[]): NotebookData {
  const { caption } = table;
  const html = [
    `<div class="esu-limits-table"><style>${tableStyle}</style>`,
    tableHtml(table, new Set()),
    ...below.map((line) => `<p>${escapeHtml(line)}</p>`),
    '</div>',
  ];
  const markdown = [
    ...(caption === '' ? [] : [`**${escapeMarkdown(caption)}**`]),
    ...tableParts(table),
    ...below.map(escapeMarkdown),
  ];
  const text = [
    ...(caption === '' ? [] : [...wrapText(caption, textWidth), '']),
    ...tableText(table, textWidth, (words) => words),
    ...below.flatMap((line) => ['', ...wrapText(line, textWidth)]),
  ];
  return {
    'text/html': `${html.join('\n')}\n`,
    'text/markdown': `${markdown.join('\n\n')}\n`,
    'text/plain': text.map((line) => line.trimEnd()).join('\n'),
  };
}

const textWidth = 80;

/** Notebooks align every cell to the right; words and captions belong to the left. It holds inside its own box only. */
const tableStyle = [
  '.esu-limits-table caption{text-align:left;padding:.2em 0}',
  '.esu-limits-table.esu-limits-table table th,.esu-limits-table.esu-limits-table table td{text-align:left;vertical-align:top}',
  '.esu-limits-table.esu-limits-table table .right{text-align:right;font-variant-numeric:tabular-nums}',
  '.esu-limits-table td.is-number{white-space:pre}',
  '.esu-limits-table .unit{display:block;font-weight:400}',
  '.esu-limits-table table tr.notes td{font-size:.9em}',
  '.esu-limits-table p{font-size:.9em;margin:.2em 0}',
].join('');

/** A picture brings its own paper, so that its ink can be read on any ground. */
function pictureData(svg: string, description: string): NotebookData {
  const opening = typeof svg === 'string' ? /^\s*<svg\b[^>]*>/.exec(svg)?.[0] : undefined;
  if (opening === undefined || !/<\/svg>\s*$/.test(svg)) {
    return fail('text-malformed', 'content.svg', svg, 'must be one svg element');
  }
  const paper = element('rect', { width: '100%', height: '100%', style: `fill:${ink('paper')}` });
  return {
    'image/svg+xml': `${opening.trimStart()}${paper}${svg.slice(opening.length)}`,
    'text/plain': wrapText(description, textWidth).join('\n'),
  };
}
