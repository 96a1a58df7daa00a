/** A cell of a notebook, as far as the tests look at it. */
export interface NotebookCell {
  readonly cell_type: string;
  readonly id: string;
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly source: readonly string[];
  readonly execution_count?: number | null;
  readonly outputs?: readonly {
    readonly output_type: string;
    readonly execution_count?: number;
    readonly data: Readonly<Record<string, readonly string[]>>;
  }[];
}

/** A notebook file, format 4. */
export interface Notebook {
  readonly cells: readonly NotebookCell[];
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly nbformat: number;
  readonly nbformat_minor: number;
}

export function notebookPaths(): string[];
export function readNotebook(path: string): Notebook;
export function notebookText(notebook: Notebook): string;
export function linesOf(text: string): string[];
export function textOf(lines: string | readonly string[]): string;
export function differences(committed: Notebook, fresh: Notebook): string[];
