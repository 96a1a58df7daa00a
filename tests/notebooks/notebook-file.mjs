// The notebooks of the examples as files.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';

const notebookFolder = 'examples/notebooks/';

/** Paths of all notebooks. */
export function notebookPaths() {
  return readdirSync(notebookFolder)
    .filter((name) => name.endsWith('.ipynb'))
    .sort()
    .map((name) => notebookFolder + name);
}

export function readNotebook(path) {
  return JSON.parse(readFileSync(path, 'utf8'));
}

export function writeNotebook(path, notebook) {
  writeFileSync(path, notebookText(notebook));
}

/** A notebook as its file holds it. */
export function notebookText(notebook) {
  return `${JSON.stringify(notebook, null, 1)}\n`;
}

/** Text as a notebook keeps it: lines with their ends. */
export function linesOf(text) {
  return text.match(/[^\n]*\n|[^\n]+/g) ?? [];
}

export function textOf(lines) {
  return typeof lines === 'string' ? lines : lines.join('');
}

/** Where two runs of one notebook differ, some lines for each cell; none where they show the same. */
export function differences(committed, fresh) {
  return committed.cells.flatMap((cell, i) => {
    const [before, now] = [shownBy(cell), shownBy(fresh.cells[i])];
    if (before === now) return [];
    const at = [...before].findIndex((letter, k) => letter !== now[k]);
    const from = Math.max(0, (at < 0 ? before.length : at) - 40);
    const excerpts = [
      `  committed: … ${before.slice(from, from + 160)}`,
      `  fresh:     … ${now.slice(from, from + 160)}`,
    ];
    return [`cell ${i + 1} (${cell.id}) shows something else`, ...excerpts];
  });
}

function shownBy({ execution_count, outputs }) {
  return JSON.stringify({ execution_count, outputs });
}
