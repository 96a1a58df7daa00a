import type { Verdict } from '../../procedure/index.js';
import type { CurvePicture } from '../picture/curve-picture.js';
import type { SweepPicture } from '../picture/sweep-picture.js';
import type { TracePicture } from '../picture/trace-picture.js';
import type { ShownVerdict } from './shown-verdict.js';

/**
 * A worksheet or a record as neutral sections, made once and rendered four times.
 * Every text in it is plain: one line, no invisible characters; markup is the renderers' affair.
 */
export interface Sheet {
  readonly kind: 'worksheet' | 'record';
  readonly title: string;
  readonly subtitle: string;
  /** Printed at the foot of every page, so that a loose page can be told. */
  readonly foot: string;
  readonly sections: readonly Section[];
}

/** A heading with its blocks. */
export interface Section {
  /** Lower case with hyphens, unique in the sheet. */
  readonly id: string;
  readonly heading?: string;
  readonly blocks: readonly Block[];
  /** True where print begins a new page. */
  readonly newPage?: boolean;
}

/** A piece of a section. */
export type Block =
  | { readonly kind: 'paragraph'; readonly text: string; readonly tone?: 'plain' | 'small' }
  | {
      readonly kind: 'list';
      readonly items: readonly string[];
      readonly tone: 'note' | 'caution' | 'warning' | 'plain';
    }
  | { readonly kind: 'facts'; readonly facts: readonly Fact[] }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'lines'; readonly lines: readonly FormLine[] }
  | { readonly kind: 'pictures'; readonly pictures: readonly CurvePicture[] }
  | { readonly kind: 'sweeps'; readonly pictures: readonly SweepPicture[] }
  | { readonly kind: 'traces'; readonly pictures: readonly TracePicture[] }
  | { readonly kind: 'working'; readonly working: Working };

/** A named value. */
export interface Fact {
  readonly name: string;
  readonly value: string;
}

/** A line of a form: a value where it is known, else room to write. */
export interface FormLine {
  readonly name: string;
  readonly value?: string;
}

/** A table whose rows may stand in groups. */
export interface Table {
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly groups: readonly Group[];
}

/** One column. */
export interface Column {
  readonly id: string;
  readonly title: string;
  /** Title for narrow tables. */
  readonly short?: string;
  /** Unit of every number of the column; absent where each cell carries its own. */
  readonly unit?: string;
  readonly align: 'left' | 'right';
  /** True where the group headings say it already: narrow tables leave the column out. */
  readonly inHeading?: boolean;
}

/** Rows with the headings above them. */
export interface Group {
  readonly headings: readonly GroupHeading[];
  /** Remarks that every row of the group shares. */
  readonly notes: readonly RowNote[];
  readonly rows: readonly Row[];
}

/** A line above rows: of level 1 for a connection, of level 2 for a load. */
export interface GroupHeading {
  readonly level: 1 | 2;
  readonly text: string;
}

/** One row: a cell for each column, and remarks below. */
export interface Row {
  readonly cells: readonly Cell[];
  readonly notes: readonly RowNote[];
  /** Anchor of the row, unique in the sheet. */
  readonly id?: string;
}

/** A remark that belongs to a row. */
export interface RowNote {
  readonly tone: 'plain' | 'attention';
  readonly text: string;
}

/** A cell. */
export type Cell =
  | {
      readonly kind: 'text';
      readonly text: string;
      /** The same for narrow tables. */
      readonly short?: string;
    }
  | {
      readonly kind: 'number';
      readonly digits: string;
      readonly unit?: string;
      /** Identifier of the working that belongs to it. */
      readonly working?: string;
    }
  | { readonly kind: 'margin'; readonly text: string; readonly margin: number; readonly verdict: Verdict | 'close' }
  | { readonly kind: 'verdict'; readonly verdict: ShownVerdict; readonly word: string; readonly reason?: string }
  | { readonly kind: 'blank' }
  | { readonly kind: 'none' };

/** The working of one point or rule. */
export interface Working {
  readonly id: string;
  readonly heading: string;
  /** Sentences before the steps. */
  readonly remarks: readonly string[];
  /** Tables after the sentences, such as a budget. */
  readonly tables: readonly Table[];
  readonly parts: readonly WorkingPart[];
}

/** Steps under a heading of their own, such as the limits or one reading. */
export interface WorkingPart {
  readonly heading: string;
  readonly steps: readonly WorkingStep[];
}

/** One step, ready to print. */
export interface WorkingStep {
  readonly label: string;
  readonly symbol: string;
  readonly expression: string;
  /** The expression with its numbers in place. */
  readonly substituted: string;
  /** Value and unit. */
  readonly result: string;
  /** Number of the source in the list of sources, clause and standing: `[2] 201.12.1.101, published`. */
  readonly source: string;
}
