import type { Findings, Plan } from '../procedure/index.js';
import type { Propagated } from '../uncertainty/index.js';
import type { Step } from '../working/index.js';
import type { CurvePicture } from './picture/curve-picture.js';
import type { BudgetOptions } from './sheet/budget-options.js';

/** What a notebook can be shown. */
export type NotebookContent =
  | NotebookBudget
  | NotebookPoints
  | NotebookWorking
  | NotebookCells
  | NotebookPicture
  | NotebookDrawing;

/** An uncertainty budget. */
export interface NotebookBudget extends BudgetOptions {
  readonly budget: Propagated;
}

/** The points of a plan with their limits; with findings, readings and verdicts. */
export interface NotebookPoints {
  readonly plan: Plan;
  readonly findings?: Findings;
  readonly title?: string;
}

/** The steps of a number, with their sources below. */
export interface NotebookWorking {
  readonly working: readonly Step[];
  readonly title?: string;
}

/** A table of the user's own. */
export interface NotebookCells {
  readonly columns: readonly NotebookColumn[];
  /** A cell for each column: text, or a number to align. */
  readonly rows: readonly (readonly (string | number)[])[];
  readonly title?: string;
}

/** A column: its title alone, or with a unit and the decimals of its numbers (six significant digits unless stated). */
export type NotebookColumn = string | { readonly title: string; readonly unit?: string; readonly decimals?: number };

/** A load curve with its band, of `curvePictures`. */
export interface NotebookPicture {
  readonly picture: CurvePicture;
  /** Start of the identifiers inside the picture: two on one page need different ones. */
  readonly id?: string;
}

/** A drawing as one `svg` element, with its texts escaped, and what it shows in words. */
export interface NotebookDrawing {
  readonly svg: string;
  readonly description: string;
}
