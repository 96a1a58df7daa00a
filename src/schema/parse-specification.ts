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
 */
export function parseSpecification(input: unknown): Specification {
  return unwrap(safeParseSpecification(input));
}

/**
 * Reads a specification of a generator, and says what is wrong where it cannot: the twin of `parseSpecification`.
 *
 * @param input Plain data, such as parsed JSON
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 */
export function safeParseSpecification(input: unknown): ParseResult<Specification> {
  return parseDocument<Specification>('specification', specificationSchema, input);
}
