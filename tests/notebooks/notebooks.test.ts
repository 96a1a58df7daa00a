import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { shownExpression } from './cell-value.mjs';
import {
  differences,
  linesOf,
  type Notebook,
  type NotebookCell,
  notebookPaths,
  notebookText,
  readNotebook,
  textOf,
} from './notebook-file.mjs';

const isCode = ({ cell_type }: NotebookCell): boolean => cell_type === 'code';

/** The code of a notebook as one module whose `shown` holds what each code cell shows. */
function moduleOf(notebook: Notebook): string {
  const cells = notebook.cells.filter(isCode).map((cell, i) => {
    const source = textOf(cell.source);
    const found = shownExpression(source);
    return found === undefined ? source : `${found.before}shown[${i}] = (${found.expression});`;
  });
  return ['export const shown: unknown[] = [];', ...cells].join('\n').replaceAll("'./", "'../../examples/notebooks/");
}

/** What the code cells show, executed without any kernel. */
async function shownInNode(path: string): Promise<unknown[]> {
  const folder = resolve('.cache/notebooks');
  mkdirSync(folder, { recursive: true });
  const file = `${folder}/${path.replaceAll(/[\\/]/g, '-').replace('.ipynb', '.ts')}`;
  writeFileSync(file, moduleOf(readNotebook(path)));
  return ((await import(/* @vite-ignore */ file)) as { shown: unknown[] }).shown;
}

it('there are notebooks', () => {
  expect(notebookPaths().length).toBeGreaterThanOrEqual(2);
});

describe.each(notebookPaths())('%s', (path) => {
  const notebook = readNotebook(path);
  const code = notebook.cells.filter(isCode);

  it('is kept as `npm run notebooks` writes it, with everything that its cells show', () => {
    expect(readFileSync(path, 'utf8')).toBe(notebookText(notebook));
    expect([notebook.nbformat, notebook.nbformat_minor]).toEqual([4, 5]);
    expect(notebook.metadata).toMatchObject({ kernelspec: { name: 'deno' } });
    expect(new Set(notebook.cells.map(({ id }) => id)).size).toBe(notebook.cells.length);
    for (const [i, { source, execution_count, metadata, outputs = [] }] of code.entries()) {
      expect(execution_count).toBe(i + 1);
      expect(metadata).toEqual({});
      const shows = shownExpression(textOf(source)) !== undefined;
      expect(
        outputs.map(({ output_type }) => output_type),
        textOf(source),
      ).toEqual(shows ? ['execute_result'] : []);
    }
  });

  it('says at its start that it is invented, and cautions', () => {
    const opening = textOf(notebook.cells[0]?.source ?? []);
    expect(opening).toMatch(/^# /);
    expect(opening).toContain('invented');
    expect(opening).toContain('**Caution.**');
  });

  it('uses nothing but the package and the files beside it', () => {
    const imports = code.flatMap(({ source }) =>
      [...textOf(source).matchAll(/from '([^']+)'/g)].map(([, from]) => from),
    );
    expect(imports.length).toBeGreaterThan(0);
    for (const from of imports) expect(from).toMatch(/^(esu-limits(\/[a-z]+)?|\.\/[a-z-]+\.ts)$/);
  });

  it('shows the same without its kernel', async () => {
    const shown = await shownInNode(path);
    expect(shown.filter((value) => value !== undefined).length).toBeGreaterThan(0);
    for (const [i, { source, outputs = [] }] of code.entries()) {
      const committed = outputs.map(({ data }) => data);
      const { data } = (shown[i] ?? {}) as { data?: Record<string, string> };
      const lines = Object.entries(data ?? {}).map(([type, value]) => [type, linesOf(value)]);
      expect(data === undefined ? [] : [Object.fromEntries(lines)], textOf(source)).toEqual(committed);
    }
  });
});

describe('the comparison with a fresh run', () => {
  const [path = ''] = notebookPaths();
  const committed = readNotebook(path);
  const position = committed.cells.findIndex(({ outputs = [] }) => outputs.length > 0);
  const withCell = (change: (cell: NotebookCell) => NotebookCell): Notebook => ({
    ...committed,
    cells: committed.cells.map((cell, i) => (i === position ? change(cell) : cell)),
  });

  it('finds nothing where nothing differs', () => {
    expect(differences(committed, readNotebook(path))).toEqual([]);
  });

  it('finds another digit, a lost result and another order', () => {
    const digit = withCell((cell) => JSON.parse(JSON.stringify(cell).replace('119.6', '119.7')) as NotebookCell);
    expect(differences(committed, digit).join('\n')).toMatch(/shows something else[\s\S]*119\.6[\s\S]*119\.7/);
    expect(
      differences(
        committed,
        withCell((cell) => ({ ...cell, outputs: [] })),
      ),
    ).toHaveLength(3);
    expect(
      differences(
        committed,
        withCell((cell) => ({ ...cell, execution_count: 99 })),
      ),
    ).toHaveLength(3);
  });

  it('knows what a cell shows', () => {
    expect(shownExpression('const a = 1;\na + 1;')).toEqual({ before: 'const a = 1;\n', expression: 'a + 1' });
    expect(shownExpression('const a = 1;')).toBeUndefined();
    expect(shownExpression('')).toBeUndefined();
  });
});
