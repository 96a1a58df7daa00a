import type { QuantityKind } from '../../units/index.js';

/** What the header of a sheet may hold. */
export interface HeaderRules<N extends string> {
  /** Columns that are read; capitals, blanks, hyphens and underscores make no difference. */
  readonly names: readonly N[];
  /** Columns that may stand there and are not read. */
  readonly informative: readonly string[];
  /** Columns that must be there. */
  readonly required: readonly N[];
  /** What a unit in the header may be of; a column without any has no unit. */
  readonly units: Readonly<Partial<Record<N, readonly QuantityKind[]>>>;
  /** What else may stand in a sheet, for the message about a column that may not. */
  readonly besides?: string;
}
