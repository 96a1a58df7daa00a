import type { Readings } from '../procedure/index.js';
import { readingsSchema } from './documents/readings-schema.js';
import { type ParseResult, unwrap } from './fault-list.js';
import { parseDocument } from './parse-document.js';

/**
 * Reads a sheet of readings: numbers in SI units or text with units in, numbers in SI units out.
 *
 * @param input Plain data, such as parsed JSON
 * @returns The document, copied
 * @throws CalculationError with all faults in `faults`, each with code, path, what was received and a hint
 * @example
 * ```ts
 * import { parseReadings } from 'esu-limits/schema';
 * const { readings } = parseReadings({
 *   schema: 'esu-limits/readings',
 *   version: 1,
 *   readings: [{ point: '1', phase: 'as-found', quantity: 'current', value: '489 mA' }],
 * });
 * readings[0]?.value; // → 0.489
 * ```
 */
export function parseReadings(input: unknown): Readings {
  return unwrap(safeParseReadings(input));
}

/**
 * Reads a sheet of readings, and says what is wrong where it cannot: the twin of `parseReadings`.
 *
 * @param input Plain data, such as parsed JSON
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 */
export function safeParseReadings(input: unknown): ParseResult<Readings> {
  return parseDocument<Readings>('readings', readingsSchema, input);
}
