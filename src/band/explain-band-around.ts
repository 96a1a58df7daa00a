import {
  limitAboveFormula,
  limitAboveRelativeFormula,
  limitAtFloorFormula,
  limitBelowFormula,
  limitBelowRelativeFormula,
  toleranceGreaterFormula,
  toleranceSumFormula,
} from '../working/formulas/band.js';
import { type Step, step, type UnitName } from '../working/index.js';
import type { Band } from './band.js';
import { bandAround } from './band-around.js';
import type { Tolerance } from './tolerance.js';
import { joinedTolerance, limitOf, type Side, sideOf } from './tolerance-side.js';

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

function explainSide(
  N: number,
  tolerance: Tolerance,
  { unit, symbol = 'x', name = 'value' }: BandNaming,
  side: Side,
  limit: number | undefined,
): Step[] {
  const value = limitOf(N, tolerance, side);
  if (value === undefined || limit === undefined) return [];
  const isBelow = side === 'below';
  const end = isBelow ? 'lower' : 'upper';
  const label = `${end} limit of ${name}`;
  const named = { unit, symbol: `${symbol}_${end}` };
  const r = sideOf(tolerance.relative, side);
  const a = sideOf(tolerance.absolute, side);
  const working: Step[] = [];
  if (a === undefined) {
    // Of a negative nominal the relative part reaches further from 0 below, nearer to 0 above.
    const formula = isBelow === N >= 0 ? limitBelowRelativeFormula : limitAboveRelativeFormula;
    working.push(step(formula, label, { N, r: r as number }, value, named));
  } else {
    let d = a;
    if (r !== undefined) {
      d = joinedTolerance(N, r, a, tolerance.combine);
      const joined = tolerance.combine === 'sum' ? toleranceSumFormula : toleranceGreaterFormula;
      working.push(step(joined, `tolerance ${side} nominal`, { r, N, a }, d, { unit, symbol: `d_${end}` }));
    }
    working.push(step(isBelow ? limitBelowFormula : limitAboveFormula, label, { N, d }, value, named));
  }
  if (limit !== value) {
    working.push(step(limitAtFloorFormula, `${label}, raised to the floor`, { x: value, f: limit }, limit, named));
  }
  return working;
}
