import { type Conversion, convertQuantity, explainConversion } from '../circuit/index.js';
import type { Step } from '../working/index.js';
import { type Band, bandOf } from './band.js';
import { checkQuantityBand } from './convert-band.js';
import type { ExplainedBand } from './explain-band-around.js';

/**
 * `convertBand` with its working.
 *
 * @param band Band in the quantity `from`, limits 0 or more
 * @param conversion Quantity of the band, wanted quantity, load in ohms
 * @returns The converted band and one step for each limit; no step where nothing is converted
 * @throws CalculationError as `convertBand`
 * @source Ohm's law and Joule's law
 * @example
 * ```ts
 * import { explainConvertBand } from 'esu-limits';
 * const { working } = explainConvertBand({ upper: 180 }, { from: 'power', to: 'current', load: 500 });
 * working.map(({ symbol, value }) => `${symbol} = ${value}`); // → ["I_upper = 0.6"]
 * ```
 */
export function explainConvertBand(band: Band, conversion: Conversion): ExplainedBand {
  const { lower, upper } = checkQuantityBand(band);
  // A wrong conversion is an error even where there is no limit to convert.
  convertQuantity(0, conversion);
  const working: Step[] = [];
  const convert = (limit: number | undefined, subscript: string): number | undefined => {
    if (limit === undefined) return undefined;
    const explained = explainConversion(limit, conversion, {
      subscript,
      label: `${subscript} limit of ${conversion.to}`,
    });
    working.push(...explained.working);
    return explained.value;
  };
  return { band: bandOf(convert(lower, 'lower'), convert(upper, 'upper')), working };
}
