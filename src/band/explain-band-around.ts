import {
  limitAboveAbsoluteFormula,
  limitAboveGreaterFormula,
  limitAboveRelativeFormula,
  limitAboveSumFormula,
  limitAtFloorFormula,
  limitBelowAbsoluteFormula,
  limitBelowGreaterFormula,
  limitBelowRelativeFormula,
  limitBelowSumFormula,
} from '../working/formulas/band.js';
import { type Formula, type Step, step, type UnitName } from '../working/index.js';
import type { Band } from './band.js';
import { bandAround } from './band-around.js';
import type { Tolerance } from './tolerance.js';
import { limitBy, partsOf, type Side, type SideKind, sideRule } from './tolerance-side.js';

/** How the steps of a band are named. */
export interface BandNaming {
  /** Unit of the nominal and the limits. */
  readonly unit: UnitName;
  /** Symbol of the quantity, such as `P`: the limits are then `P_lower` and `P_upper`; `x` unless stated. */
  readonly symbol?: string;
  /** Name of the quantity in the labels, such as `power`; `value` unless stated. */
  readonly name?: string;
}

/** A band with the steps that lead to it. */
export interface ExplainedBand {
  readonly band: Band;
  readonly working: readonly Step[];
}

/**
 * `bandAround` with its working.
 *
 * @param nominal Nominal value
 * @param tolerance Relative part, absolute part or both
 * @param naming Unit, symbol and name of the quantity
 * @returns The band and its steps
 * @throws CalculationError as `bandAround`
 * @source Definition of the tolerance
 * @example
 * ```ts
 * import { explainBandAround } from 'esu-limits';
 * const { working } = explainBandAround(120, { relative: 0.2 }, { unit: 'W', symbol: 'P' });
 * working.map(({ symbol, expression, value }) => `${symbol} = ${expression} = ${value}`);
 * // → ["P_lower = N * (1 - r) = 96", "P_upper = N * (1 + r) = 144"]
 * ```
 */
export function explainBandAround(nominal: number, tolerance: Tolerance, naming: BandNaming): ExplainedBand {
  const band = bandAround(nominal, tolerance);
  return {
    band,
    working: [
      ...explainSide(nominal, tolerance, naming, 'below', band.lower),
      ...explainSide(nominal, tolerance, naming, 'above', band.upper),
    ],
  };
}

const formulas: Readonly<Record<Side, Readonly<Record<SideKind, Formula>>>> = {
  below: {
    relative: limitBelowRelativeFormula,
    absolute: limitBelowAbsoluteFormula,
    sum: limitBelowSumFormula,
    greater: limitBelowGreaterFormula,
  },
  above: {
    relative: limitAboveRelativeFormula,
    absolute: limitAboveAbsoluteFormula,
    sum: limitAboveSumFormula,
    greater: limitAboveGreaterFormula,
  },
};

function explainSide(
  N: number,
  tolerance: Tolerance,
  { unit, symbol = 'x', name = 'value' }: BandNaming,
  side: Side,
  limit: number | undefined,
): Step[] {
  const rule = sideRule(tolerance, side);
  if (rule === undefined || limit === undefined) return [];
  const end = side === 'below' ? 'lower' : 'upper';
  const label = `${end} limit of ${name}`;
  const naming = { unit, symbol: `${symbol}_${end}` };
  const value = limitBy(rule, N);
  const made = step(formulas[side][rule.kind], label, { N, ...partsOf(tolerance, side) }, value, naming);
  if (limit === value) return [made];
  return [made, step(limitAtFloorFormula, `${label}, raised to the floor`, { x: value, f: limit }, limit, naming)];
}
