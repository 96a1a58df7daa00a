import type { SourceId } from './sources.js';

/** Unit of a symbol: an SI unit as it is written in a working, `1` for a plain number or a fraction. */
export type UnitName =
  | '1'
  | 'W'
  | 'A'
  | 'V'
  | 'ohm'
  | 'Hz'
  | 's'
  | 'H'
  | 'F'
  | 'K'
  | 'J'
  | 'm'
  | 'VA'
  | 'var'
  | 'rad'
  | 'A^2 s'
  | 'm^2'
  | 'A/m^2'
  | 'W/ohm'
  | 'ohm m'
  | 'ohm/m'
  | 'H/m'
  | 'F/m'
  | 'm/s'
  | 'K/W'
  | '1/K'
  | 'any';

/**
 * A formula of the catalogue, in the form that the core carries: just enough for a working.
 * Title and the meaning of each symbol stand in the catalogue, which only documentation and reports load.
 */
export interface Formula {
  /** Stable identifier, lower case with hyphens. */
  readonly id: string;
  /** Symbol of the result. */
  readonly symbol: string;
  /** Right-hand side in mathjs syntax, over the symbols of `inputs`. */
  readonly expression: string;
  /** Unit of the result; `any` where the formula serves every quantity. */
  readonly unit: UnitName;
  /** Symbols of the expression with their units. */
  readonly inputs: Readonly<Record<string, UnitName>>;
  /** Where the formula comes from. */
  readonly source: SourceId;
  /** Clause or equation of the source. */
  readonly clause?: string;
}
