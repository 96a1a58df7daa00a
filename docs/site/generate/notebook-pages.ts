import { readdirSync, readFileSync } from 'node:fs';
import { page } from './text.js';

const folder = new URL('../../../examples/notebooks/', import.meta.url);

/** The notebooks as they are committed, outputs included, by the path under the site. A test holds them to a fresh run. */
export function notebookPages(): ReadonlyMap<string, string> {
  const names = readdirSync(folder).filter((name) => name.endsWith('.ipynb'));
  return new Map(names.sort().map((name) => [`notebooks/${name.replace('.ipynb', '.md')}`, notebookPage(name)]));
}

/** A cell of a notebook; text stands in lines with their ends. */
interface Cell {
  readonly cell_type: string;
  readonly source: readonly string[];
  readonly outputs?: readonly { readonly data: Readonly<Record<string, readonly string[]>> }[];
}

function notebookPage(name: string): string {
  const { cells } = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as { readonly cells: readonly Cell[] };
  const [first = '', ...rest] = cells.map(cellMarkdown);
  const [, title = name, opening = ''] = /^# (.*)\n+([\s\S]*)$/.exec(first) ?? [];
  const origin = `The page is the notebook \`examples/notebooks/${name}\` with what its cells show; the tests execute it anew and compare.`;
  return page(title, [opening, origin, ...rest]);
}

function cellMarkdown({ cell_type, source, outputs = [] }: Cell): string {
  const text = source.join('');
  if (cell_type === 'markdown') return text.replaceAll('{{', '&#123;&#123;');
  return [`\`\`\`ts\n${text}\n\`\`\``, ...outputs.map(({ data }) => shown(data))].join('\n\n');
}

/** The richest form that suits a page; nothing of it is an expression of a template. */
function shown(data: Readonly<Record<string, readonly string[]>>): string {
  const textOf = (type: string): string | undefined => data[type]?.join('').trim();
  const svg = textOf('image/svg+xml');
  if (svg !== undefined) return `<div class="notebook-picture" v-pre>${svg.replace(/\n\s*/g, ' ')}</div>`;
  const markdown = textOf('text/markdown');
  if (markdown !== undefined) return `<div class="notebook-table" v-pre>\n\n${markdown}\n\n</div>`;
  return `\`\`\`text\n${textOf('text/plain') ?? ''}\n\`\`\``;
}
