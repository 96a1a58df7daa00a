import type { Specification } from '../procedure/index.js';
import { specificationSchema } from './documents/specification-schema.js';
import { type ParseResult, unwrap } from './fault-list.js';
import { parseDocument } from './parse-document.js';

/**
 * Reads a specification of a generator: numbers in SI units or text with units in, numbers in SI units out.
 *
 * @param input Plain data, such as parsed JSON
 * @returns The document, copied
 * @throws CalculationError with all faults in `faults`, each with code, path, what was received and a hint
 * @example
 * ```ts
 * import { parseSpecification } from 'esu-limits/schema';
 * const specification = parseSpecification({
 *   schema: 'esu-limits/specification',
 *   version: 1,
 *   generator: { name: 'Invented generator' },
 *   outputs: [
 *     {
 *       id: 'cut',
 *       name: 'Cut',
 *       circuit: 'monopolar',
 *       connection: 'Active output to the load, load to the neutral electrode socket',
 *       scale: { kind: 'watt', minimum: '5 W', maximum: '120 W' },
 *       ratedPower: '120 W',
 *       ratedLoad: '500 ohm',
 *       tolerance: { in: 'power', text: '-12 %/+15 %' },
 *     },
 *   ],
 * });
 * specification.outputs[0]?.tolerance; // → { "in": "power", "relative": { "below": 0.12, "above": 0.15 } }
 * ```
 */
export function parseSpecification(input: unknown): Specification {
  return unwrap(safeParseSpecification(input));
}

/**
 * Reads a specification of a generator, and says what is wrong where it cannot: the twin of `parseSpecification`.
 *
 * @param input Plain data, such as parsed JSON
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 * @example
 * ```ts
 * import { safeParseSpecification } from 'esu-limits/schema';
 * const result = safeParseSpecification({
 *   schema: 'esu-limits/specification',
 *   version: 1,
 *   generator: { nmae: 'Invented generator' },
 *   outputs: [],
 * });
 * result.ok ? [] : result.faults.map((fault) => fault.path); // → ["generator.name", "generator.nmae", "outputs"]
 * ```
 */
export function safeParseSpecification(input: unknown): ParseResult<Specification> {
  return parseDocument<Specification>('specification', specificationSchema, input);
}
