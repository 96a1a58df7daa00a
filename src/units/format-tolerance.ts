import { fail, requireChoice, requireFinite, requireNonNegative } from '../checks/index.js';
import type { DisplayUnit } from './format-options.js';
import { formatQuantity } from './format-quantity.js';
import type { ParsedSides, ParsedTolerance } from './parsed-tolerance.js';
import { unitVocabulary } from './vocabulary.js';

/** How a tolerance is printed. */
export interface ToleranceFormatOptions {
  /** Unit of an absolute part and of the floor. Default: the SI unit of `absoluteQuantity`. */
  readonly unit?: DisplayUnit;
  /** Whether `+/-`, `ohm` and `u` are written in place of `±`, `Ω` and `µ`. Default: false. */
  readonly ascii?: boolean;
}

/**
 * Prints a tolerance exactly, in text that `parseTolerance` reads.
 *
 * @param tolerance Relative part as a fraction, absolute part in the SI unit
 * @param options Unit of the absolute part, characters
 * @returns Text such as `-12 %/+15 %`
 * @throws CalculationError `not-a-number`, `negative`, `wrong-count`, `unknown-choice`, `unit-missing`
 * @accuracy Exact: reading the text gives the same numbers
 * @example
 * ```ts
 * import { formatTolerance } from 'esu-limits';
 * formatTolerance({ relative: { below: 0.12, above: 0.15 } }); // → "-12 %/+15 %"
 * formatTolerance({ relative: 0.02, absolute: 0.5, combine: 'sum' }, { unit: 'ohm' }); // → "±(2 % + 500 mΩ)"
 * ```
 */
export function formatTolerance(tolerance: ParsedTolerance, options: ToleranceFormatOptions = {}): string {
  const { relative, absolute, combine, floor } = tolerance;
  const style: Style = { unit: unitOf(tolerance, options), ascii: options.ascii === true };
  const fractions = sidesOf(relative, 'relative');
  const amounts = sidesOf(absolute, 'absolute');
  const end =
    floor === undefined ? '' : `, not below ${formatQuantity(requireFinite(floor, 'floor'), style.unit, style)}`;
  const fractionText = (value: number) => formatQuantity(value, '%');
  const amountText = (value: number) => formatQuantity(value, style.unit, style);
  if (fractions === undefined) return sidesText(amounts ?? {}, amountText, style) + end;
  if (amounts === undefined) return sidesText(fractions, fractionText, style) + end;
  if (requireChoice(combine as 'sum', 'combine', ['sum', 'greater'] as never) !== 'sum') {
    const parts = [sidesText(fractions, fractionText, style), sidesText(amounts, amountText, style)];
    return `${parts.join(' or ')}, whichever is greater${end}`;
  }
  return sumText(fractions, amounts, fractionText, amountText, style) + end;
}

interface Style {
  readonly unit: DisplayUnit;
  readonly ascii: boolean;
}

type Print = (value: number) => string;

function unitOf({ absolute, floor, absoluteQuantity }: ParsedTolerance, { unit }: ToleranceFormatOptions): DisplayUnit {
  if (unit === '°C') fail('unknown-choice', 'unit', unit, 'must be K, since a difference has no zero point');
  const known = unit ?? unitVocabulary.find(({ quantity }) => quantity === absoluteQuantity)?.unit;
  if (known === undefined && (absolute !== undefined || floor !== undefined)) {
    fail('unit-missing', 'unit', known, 'must be given where an absolute part does not say its quantity');
  }
  return known ?? '1';
}

function sidesOf(part: number | ParsedSides | undefined, path: string): ParsedSides | undefined {
  if (part === undefined) return undefined;
  const sides = typeof part === 'object' && part !== null ? part : { below: part, above: part };
  if (sides.below !== undefined) requireNonNegative(sides.below, `${path}.below`);
  if (sides.above !== undefined) requireNonNegative(sides.above, `${path}.above`);
  return sides;
}

function sidesText({ below, above }: ParsedSides, print: Print, style: Style): string {
  return joinSides(below === undefined ? below : print(below), above === undefined ? above : print(above), style);
}

/** A side without a limit in one part has none in the sum. */
function sumText(fractions: ParsedSides, amounts: ParsedSides, fraction: Print, amount: Print, style: Style): string {
  const pairs = (['below', 'above'] as const).map((side) => {
    const relative = fractions[side];
    const absolute = amounts[side];
    return relative === undefined || absolute === undefined ? undefined : { relative, absolute };
  });
  // A part of zero is left out of a side only where it shows elsewhere: the text must still read as a sum.
  const mixed = pairs.some((pair) => pair?.relative) && pairs.some((pair) => pair?.absolute);
  const full = pairs.map((pair) => pair && `(${fraction(pair.relative)} + ${amount(pair.absolute)})`);
  if (!mixed || full[0] === full[1]) return joinSides(full[0], full[1], style);
  const short = pairs.map((pair, i) => {
    if (pair?.absolute === 0) return fraction(pair.relative);
    return pair?.relative === 0 ? amount(pair.absolute) : full[i];
  });
  return joinSides(short[0], short[1], style);
}

function joinSides(below: string | undefined, above: string | undefined, { ascii }: Style): string {
  if (below === undefined && above === undefined) {
    fail('wrong-count', 'tolerance', undefined, 'must limit one side at least');
  }
  if (below === above) return `${ascii ? '+/-' : '±'}${above}`;
  return [below === undefined ? '' : `-${below}`, above === undefined ? '' : `+${above}`].filter(Boolean).join('/');
}
