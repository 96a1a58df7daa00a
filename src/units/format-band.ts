import { fail, requireChoice } from '../checks/index.js';
import { fittingPrefix } from './choose-prefix.js';
import type { DisplayUnit, FormatOptions } from './format-options.js';
import { formatQuantity } from './format-quantity.js';
import type { ParsedBand } from './parse-band.js';
import { parseQuantity } from './parse-quantity.js';

/** How a band is printed. */
export interface BandFormatOptions extends Omit<FormatOptions, 'rounding'> {
  /** Direction of rounding, needed with `digits`, `decimals` or `resolution`: `inward` never widens the band. */
  readonly rounding?: 'inward' | 'nearest';
}

/**
 * Prints a band, in text that `parseBand` reads. Both limits get the prefix that suits the lower one.
 *
 * @param band Limits in the SI unit
 * @param unit Unit to print
 * @param options Rounding, prefix, form, characters
 * @returns Text such as `843 mA to 1133 mA` or `≤ 150 mA`
 * @throws CalculationError `wrong-count`, `band-reversed`, `band-empty`, and the codes of `formatQuantity`
 * @accuracy Exact without rounding
 * @example
 * ```ts
 * import { formatBand } from 'esu-limits';
 * formatBand({ lower: 0.843, upper: 1.133 }, 'A'); // → "843 mA to 1133 mA"
 * formatBand({ upper: 0.15 }, 'A', { ascii: true }); // → "<= 150 mA"
 * ```
 */
export function formatBand(
  band: Pick<ParsedBand, 'lower' | 'upper' | 'lowerExcluded' | 'upperExcluded'>,
  unit: DisplayUnit,
  options: BandFormatOptions = {},
): string {
  const { lower, upper, lowerExcluded, upperExcluded } = band;
  const { rounding, ...rest } = options;
  if (rounding !== undefined) requireChoice(rounding, 'rounding', ['inward', 'nearest']);
  if (lower !== undefined && upper !== undefined && lower > upper) {
    fail('band-reversed', 'lower', lower, `must be at most the upper limit, ${upper}`);
  }
  const style = { ...rest, ...commonPrefix(lower, upper, unit, options) };
  const print = (value: number, inward: 'up' | 'down') =>
    formatQuantity(
      value,
      unit,
      rounding === undefined ? style : { ...style, rounding: rounding === 'inward' ? inward : rounding },
    );
  const from = lower === undefined ? undefined : print(lower, 'up');
  const to = upper === undefined ? undefined : print(upper, 'down');
  const atLeast = lowerExcluded ? '>' : options.ascii ? '>=' : '≥';
  const atMost = upperExcluded ? '<' : options.ascii ? '<=' : '≤';
  if (from === undefined) {
    return to === undefined ? fail('wrong-count', 'band', band, 'must have one limit at least') : `${atMost} ${to}`;
  }
  if (to === undefined) return `${atLeast} ${from}`;
  const width = parseQuantity(to).value - parseQuantity(from).value;
  if (width < 0 || (width === 0 && (lowerExcluded || upperExcluded))) {
    fail('band-empty', 'band', `${from} to ${to}`, 'must hold one value after rounding inward');
  }
  return `${lowerExcluded ? '> ' : ''}${from} to ${upperExcluded ? '< ' : ''}${to}`;
}

/** One prefix for both limits, so that they compare at a glance, unless they are far apart. */
function commonPrefix(
  lower: number | undefined,
  upper: number | undefined,
  unit: DisplayUnit,
  { prefix = 'auto' }: BandFormatOptions,
): Pick<FormatOptions, 'prefix'> {
  if (prefix !== 'auto' || lower === undefined || upper === undefined) return { prefix };
  const base = lower === 0 ? upper : lower;
  return Math.abs(upper) < 1e4 * Math.abs(base) ? { prefix: fittingPrefix(base, unit).symbol } : {};
}
