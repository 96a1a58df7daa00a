import { requireFinite, requireInteger, requirePositive } from '../checks/index.js';

/** A value and its uncertainty, rounded to be printed together. */
export interface RoundedResult {
  readonly value: number;
  readonly uncertainty: number;
  /** Digits after the point in both; negative where whole tens or hundreds are meant. */
  readonly decimals: number;
}

/**
 * Rounds an uncertainty to two figures, and the value to the same decimal place.
 * The uncertainty is rounded to nearest unless that makes it smaller by more than 5 %: then it is rounded up.
 *
 * @param value Value, in any unit
 * @param uncertainty Standard or expanded uncertainty, in the same unit, greater than 0
 * @param figures Figures of the uncertainty, 1 or 2; 2 unless stated
 * @returns Both rounded, with the number of decimals
 * @throws CalculationError `not-a-number`, `not-positive`, `not-an-integer`, `out-of-range`
 * @source JCGM 100:2008, 7.2.6; the 5 % rule is that of EA-4/02
 * @example
 * ```ts
 * import { roundUncertainty } from 'esu-limits/uncertainty';
 * roundUncertainty(100.02147, 0.000787); // → { "value": 100.02147, "uncertainty": 0.00079, "decimals": 5 }
 * roundUncertainty(10.0583, 0.0345, 1); // → { "value": 10.06, "uncertainty": 0.04, "decimals": 2 }
 * ```
 */
export function roundUncertainty(value: number, uncertainty: number, figures = 2): RoundedResult {
  requireFinite(value, 'value');
  requirePositive(uncertainty, 'uncertainty');
  requireInteger(figures, 'figures', 1, 2);
  let rounded = Number(uncertainty.toPrecision(figures));
  let exponent = exponentOf(rounded, figures);
  if (rounded < uncertainty * 0.95) {
    rounded = shift(Math.ceil(shift(uncertainty, exponent)), -exponent);
    exponent = exponentOf(rounded, figures);
  }
  return { value: roundAt(value, exponent), uncertainty: rounded, decimals: exponent };
}

/** Decimals that show `figures` figures of a number. */
function exponentOf(x: number, figures: number): number {
  return figures - 1 - Number(x.toExponential().split('e')[1]);
}

/** x · 10^places, by the decimal text: no binary fraction is multiplied. */
function shift(x: number, places: number): number {
  const [mantissa, exponent] = x.toExponential().split('e') as [string, string];
  return Number(`${mantissa}e${Number(exponent) + places}`);
}

function roundAt(x: number, decimals: number): number {
  const scaled = shift(Math.abs(x), decimals);
  return Math.sign(x) * shift(Math.floor(scaled + 0.5), -decimals) || 0;
}
