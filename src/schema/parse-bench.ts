import type { Bench } from '../procedure/index.js';
import { benchSchema } from './documents/bench-schema.js';
import { type ParseResult, unwrap } from './fault-list.js';
import { parseDocument } from './parse-document.js';

/**
 * Reads a description of a bench: numbers in SI units or text with units in, numbers in SI units out.
 *
 * @param input Plain data, such as parsed JSON
 * @returns The document, copied
 * @throws CalculationError with all faults in `faults`, each with code, path, what was received and a hint
 * @example
 * ```ts
 * import { parseBench } from 'esu-limits/schema';
 * const bench = parseBench({
 *   schema: 'esu-limits/bench',
 *   version: 1,
 *   name: 'Invented bench',
 *   instrument: { name: 'Meter', reads: [{ quantity: 'current', ranges: [{ maximum: '2 A', resolution: '1 mA' }] }] },
 *   loads: [{ id: 'R500', resistance: '0.5 kohm', powerRating: '250 W' }],
 * });
 * bench.loads; // → [{ "id": "R500", "resistance": 500, "powerRating": 250 }]
 * ```
 */
export function parseBench(input: unknown): Bench {
  return unwrap(safeParseBench(input));
}

/**
 * Reads a description of a bench, and says what is wrong where it cannot: the twin of `parseBench`.
 *
 * @param input Plain data, such as parsed JSON
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 * @example
 * ```ts
 * import { safeParseBench } from 'esu-limits/schema';
 * const result = safeParseBench({ schema: 'esu-limits/bench', version: 2 });
 * result.ok ? [] : result.faults.map((fault) => fault.code); // → ["newer-version"]
 * ```
 */
export function safeParseBench(input: unknown): ParseResult<Bench> {
  return parseDocument<Bench>('bench', benchSchema, input);
}
