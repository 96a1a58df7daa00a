import type { Formula, UnitName } from './formula.js';
import type { SourceId } from './sources.js';

/** One step of a working: plain data that another person, or another program, can recompute. */
export interface Step {
  /** Symbol of the result, such as `I` or `I_lower`. */
  readonly symbol: string;
  /** What the result is, in a few words. */
  readonly label: string;
  /** Identifier of the formula in the catalogue. */
  readonly formula: string;
  /** The formula's right-hand side in mathjs syntax. */
  readonly expression: string;
  /** Value of every symbol of the expression, in SI units. */
  readonly inputs: Readonly<Record<string, number>>;
  /** The result, in SI units. */
  readonly value: number;
  /** Unit of the result. */
  readonly unit: UnitName;
  /** Source of the formula. */
  readonly source: SourceId;
  /** Clause or equation of the source. */
  readonly clause?: string;
}

/** What a step may say of its result beyond the formula. */
export interface StepNaming {
  /** Symbol in place of the formula's own, such as `I_lower`. */
  readonly symbol?: string;
  /** Unit, needed where the formula's own unit is `any`. */
  readonly unit?: UnitName;
}

/**
 * Records one step: the formula, the numbers that went in and the number that came out.
 * The value is the one that the fast function computed; a test re-evaluates the expression and compares.
 */
export function step<F extends Formula>(
  formula: F,
  label: string,
  inputs: Readonly<Record<keyof F['inputs'] & string, number>>,
  value: number,
  naming?: StepNaming,
): Step {
  return {
    symbol: naming?.symbol ?? formula.symbol,
    label,
    formula: formula.id,
    expression: formula.expression,
    inputs,
    value,
    unit: naming?.unit ?? formula.unit,
    source: formula.source,
    ...(formula.clause === undefined ? {} : { clause: formula.clause }),
  };
}
