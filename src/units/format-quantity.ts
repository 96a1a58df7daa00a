import { fail, requireChoice, requireFinite } from '../checks/index.js';
import { decimalText } from './decimal.js';
import { displayDecimal, displayEntry } from './display-decimal.js';
import type { DisplayUnit, FormatOptions } from './format-options.js';
import { roundForDisplay } from './round-for-display.js';
import { hasForm } from './spellings.js';

/** Kelvins that are printed in °C: beyond, the exact decimal difference to 273.15 has too many digits. */
const smallestCelsius = 1e-9;
const largestCelsius = 1e15;

/**
 * Prints a value with its unit, in text that `parseQuantity` reads.
 *
 * Without rounding the text is the shortest that reads back to exactly the same number. Numbers too large or too small
 * for any prefix get an exponent.
 *
 * @param value Value in the SI unit; a fraction for `%`, kelvins for `°C`
 * @param unit Unit to print
 * @param options Rounding, prefix, form, characters
 * @returns Text such as `750 mA`
 * @throws CalculationError `not-a-number`, `unknown-choice`, `not-an-integer`, `out-of-range`, `not-positive`,
 * `wrong-count`, `form-mismatch`
 * @accuracy Exact: parse(print(x)) = x without rounding
 * @example
 * ```ts
 * import { formatQuantity } from 'esu-limits';
 * formatQuantity(0.75, 'A'); // → "750 mA"
 * formatQuantity(1234.5, 'ohm', { digits: 2, rounding: 'nearest' }); // → "1.2 kΩ"
 * formatQuantity(0.84301, 'A', { resolution: 0.001, rounding: 'up' }); // → "844 mA"
 * formatQuantity(3200, 'V', { form: 'peak' }); // → "3.2 kV peak"
 * formatQuantity(0.2, '%'); // → "20 %"
 * ```
 */
export function formatQuantity(value: number, unit: DisplayUnit, options: FormatOptions = {}): string {
  const entry = displayEntry(unit);
  const form = options.form ?? 'rms';
  requireChoice(form, 'form', ['rms', 'peak', 'peak-to-peak']);
  if (form !== 'rms' && !hasForm(entry)) fail('form-mismatch', 'form', form, `must be absent for ${entry.quantity}`);
  requireFinite(value, 'value');
  const celsius = entry.offsetHundredths !== undefined && value !== 0;
  if (celsius && !(value >= smallestCelsius && value <= largestCelsius)) {
    fail('out-of-range', 'value', value, `must be 0 K or from ${smallestCelsius} to ${largestCelsius} K to be in °C`);
  }
  const exact = displayDecimal(value, entry);
  const { decimal, prefix } = roundForDisplay(exact, entry, options);
  const number = decimalText({ digits: decimal.digits, exponent: decimal.exponent - prefix.exponent });
  if (number.length > 60) fail('out-of-range', 'resolution', options.resolution, 'is too fine to print the value');
  const sign = exact.negative && decimal.digits !== 0n ? '-' : '';
  const symbol = (options.ascii === true ? entry.symbols[1] : undefined) ?? entry.symbols[0];
  const before = options.ascii === true && prefix.symbol === 'µ' ? 'u' : prefix.symbol;
  return `${sign}${number} ${before}${symbol}${form === 'rms' ? '' : ` ${form}`}`.trimEnd();
}
