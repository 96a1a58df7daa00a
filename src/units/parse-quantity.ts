import { unwrap } from './parse-result.js';
import { type ParsedQuantity, type QuantityOptions, safeParseQuantity } from './safe-parse-quantity.js';

/**
 * Reads a number with its unit, strictly: what is not in the vocabulary is refused with a hint, and nothing is guessed.
 *
 * @param text Text such as `750 mA`, `1.2 kΩ`, `430 kHz`, `20 %`, `1.5 kV peak`
 * @param options Quantity and form that are expected
 * @returns Value in the SI unit, correctly rounded, with quantity, unit and form
 * @throws CalculationError `wrong-type`, `text-too-long`, `number-malformed`, `text-malformed`, `unit-missing`,
 * `unit-unknown`, `unit-mismatch`, `form-mismatch`, `out-of-range`, `result-out-of-range`
 * @accuracy The nearest double to the decimal text
 * @example
 * ```ts
 * import { parseQuantity } from 'esu-limits';
 * parseQuantity('750 mA'); // → { "value": 0.75, "quantity": "current", "unit": "A", "form": "rms" }
 * parseQuantity('1.5 kV peak').form; // → "peak"
 * parseQuantity('20 %').value; // → 0.2
 * ```
 */
export function parseQuantity(text: string, options?: QuantityOptions): ParsedQuantity {
  return unwrap(safeParseQuantity(text, options));
}
