import { parseQuantity } from './parse-quantity.js';

/**
 * Reads a power.
 *
 * @param text Text such as `120 W`
 * @param path Where the text stands, for the error
 * @returns Value, in watts
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parsePower } from 'esu-limits';
 * parsePower('120 W'); // → 120
 * ```
 */
export function parsePower(text: string, path = 'power'): number {
  return parseQuantity(text, { expect: 'power', path }).value;
}

/**
 * Reads an rms current. A peak value is refused.
 *
 * @param text Text such as `750 mA`
 * @param path Where the text stands, for the error
 * @returns Value, in amperes
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseCurrent } from 'esu-limits';
 * parseCurrent('750 mA'); // → 0.75
 * ```
 */
export function parseCurrent(text: string, path = 'current'): number {
  return parseQuantity(text, { expect: 'current', path }).value;
}

/**
 * Reads an rms voltage. A peak value is refused.
 *
 * @param text Text such as `1.2 kV`
 * @param path Where the text stands, for the error
 * @returns Value, in volts
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseVoltage } from 'esu-limits';
 * parseVoltage('1.2 kV'); // → 1200
 * ```
 */
export function parseVoltage(text: string, path = 'voltage'): number {
  return parseQuantity(text, { expect: 'voltage', path }).value;
}

/**
 * Reads a peak current. The text must say `peak`: an unmarked value is rms, and is refused.
 *
 * @param text Text such as `2.5 A peak`
 * @param path Where the text stands, for the error
 * @returns Value, in amperes
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parsePeakCurrent } from 'esu-limits';
 * parsePeakCurrent('2.5 A peak'); // → 2.5
 * ```
 */
export function parsePeakCurrent(text: string, path = 'peakCurrent'): number {
  return parseQuantity(text, { expect: 'current', form: 'peak', path }).value;
}

/**
 * Reads a peak voltage. The text must say `peak`: an unmarked value is rms, and is refused.
 *
 * @param text Text such as `3.2 kV peak`
 * @param path Where the text stands, for the error
 * @returns Value, in volts
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parsePeakVoltage } from 'esu-limits';
 * parsePeakVoltage('3.2 kV peak'); // → 3200
 * ```
 */
export function parsePeakVoltage(text: string, path = 'peakVoltage'): number {
  return parseQuantity(text, { expect: 'voltage', form: 'peak', path }).value;
}

/**
 * Reads a resistance.
 *
 * @param text Text such as `1.2 kΩ`
 * @param path Where the text stands, for the error
 * @returns Value, in ohms
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseResistance } from 'esu-limits';
 * parseResistance('1.2 kΩ'); // → 1200
 * ```
 */
export function parseResistance(text: string, path = 'resistance'): number {
  return parseQuantity(text, { expect: 'resistance', path }).value;
}

/**
 * Reads a frequency.
 *
 * @param text Text such as `430 kHz`
 * @param path Where the text stands, for the error
 * @returns Value, in hertz
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseFrequency } from 'esu-limits';
 * parseFrequency('430 kHz'); // → 430000
 * ```
 */
export function parseFrequency(text: string, path = 'frequency'): number {
  return parseQuantity(text, { expect: 'frequency', path }).value;
}

/**
 * Reads a time.
 *
 * @param text Text such as `1.5 min`
 * @param path Where the text stands, for the error
 * @returns Value, in seconds
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseTime } from 'esu-limits';
 * parseTime('1.5 min'); // → 90
 * ```
 */
export function parseTime(text: string, path = 'time'): number {
  return parseQuantity(text, { expect: 'time', path }).value;
}

/**
 * Reads an inductance.
 *
 * @param text Text such as `0.95 µH`
 * @param path Where the text stands, for the error
 * @returns Value, in henries
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseInductance } from 'esu-limits';
 * parseInductance('0.95 µH'); // → 9.5e-7
 * ```
 */
export function parseInductance(text: string, path = 'inductance'): number {
  return parseQuantity(text, { expect: 'inductance', path }).value;
}

/**
 * Reads a capacitance.
 *
 * @param text Text such as `47 pF`
 * @param path Where the text stands, for the error
 * @returns Value, in farads
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseCapacitance } from 'esu-limits';
 * parseCapacitance('47 pF'); // → 4.7e-11
 * ```
 */
export function parseCapacitance(text: string, path = 'capacitance'): number {
  return parseQuantity(text, { expect: 'capacitance', path }).value;
}

/**
 * Reads a temperature. Celsius is converted exactly.
 *
 * @param text Text such as `23 °C`
 * @param path Where the text stands, for the error
 * @returns Value, in kelvins
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseTemperature } from 'esu-limits';
 * parseTemperature('23 °C'); // → 296.15
 * ```
 */
export function parseTemperature(text: string, path = 'temperature'): number {
  return parseQuantity(text, { expect: 'temperature', path }).value;
}

/**
 * Reads a length.
 *
 * @param text Text such as `85 cm`
 * @param path Where the text stands, for the error
 * @returns Value, in metres
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseLength } from 'esu-limits';
 * parseLength('85 cm'); // → 0.85
 * ```
 */
export function parseLength(text: string, path = 'length'): number {
  return parseQuantity(text, { expect: 'length', path }).value;
}

/**
 * Reads a fraction, written in percent. A number without the sign is refused, since 1 could be 1 or 1 %.
 *
 * @param text Text such as `20 %`
 * @param path Where the text stands, for the error
 * @returns A fraction: 0.2 for 20 %
 * @throws CalculationError the codes of `parseQuantity`
 * @example
 * ```ts
 * import { parseFraction } from 'esu-limits';
 * parseFraction('20 %'); // → 0.2
 * ```
 */
export function parseFraction(text: string, path = 'fraction'): number {
  return parseQuantity(text, { expect: 'fraction', path }).value;
}
