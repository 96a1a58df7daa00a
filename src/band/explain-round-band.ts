import { roundedDownFormula, roundedToNearestFormula, roundedUpFormula } from '../working/formulas/band.js';
import { type Step, step } from '../working/index.js';
import type { Band } from './band.js';
import type { BandNaming, ExplainedBand } from './explain-band-around.js';
import { type RoundingDirection, roundBand } from './round-band.js';

/**
 * `roundBand` with its working.
 *
 * @param band Band
 * @param resolution One step of the last digit, in the unit of the band
 * @param naming Unit, symbol and name of the quantity
 * @param direction `inward` unless stated
 * @returns The rounded band and one step for each limit; the label says how it was rounded
 * @throws CalculationError as `roundBand`
 * @source Definition of rounding
 * @example
 * ```ts
 * import { explainRoundBand } from 'esu-limits';
 * const { working } = explainRoundBand({ upper: 1.1326 }, 0.001, { unit: 'A', symbol: 'I', name: 'current' });
 * working.map(({ label, value }) => `${label}: ${value}`); // → ["upper limit of current, rounded inward: 1.132"]
 * ```
 */
export function explainRoundBand(
  band: Band,
  resolution: number,
  { unit, symbol = 'x', name = 'value' }: BandNaming,
  direction: RoundingDirection = 'inward',
): ExplainedBand {
  const rounded = roundBand(band, resolution, direction);
  const working: Step[] = [];
  const how = direction === 'nearest' ? 'to nearest' : 'inward';
  for (const end of ['lower', 'upper'] as const) {
    const x = band[end];
    const value = rounded[end];
    if (x === undefined || value === undefined) continue;
    const inward = end === 'lower' ? roundedUpFormula : roundedDownFormula;
    const formula = direction === 'nearest' ? roundedToNearestFormula : inward;
    const label = `${end} limit of ${name}, rounded ${how}`;
    working.push(step(formula, label, { x, q: resolution }, value, { unit, symbol: `${symbol}_${end}` }));
  }
  return { band: rounded, working };
}
