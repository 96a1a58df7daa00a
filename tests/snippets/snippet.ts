/** One piece of TypeScript that documentation shows. */
export interface Snippet {
  /** Path from the top of the repository. */
  readonly file: string;
  /** Line of the first line of code, from 1. */
  readonly line: number;
  readonly code: string;
  /** Why the snippet is shown and not executed; absent when it is executed. */
  readonly noRun?: string;
}
