import type { Findings } from '../procedure/index.js';
import { findingsSchema } from './documents/findings-schema.js';
import { type ParseResult, unwrap } from './fault-list.js';
import { parseDocument } from './parse-document.js';

/**
 * Reads findings, as they were written by this library: numbers in SI units or text with units in, numbers in SI units out.
 *
 * @param input Plain data, such as parsed JSON
 * @returns The document, copied
 * @throws CalculationError with all faults in `faults`, each with code, path, what was received and a hint
 */
export function parseFindings(input: unknown): Findings {
  return unwrap(safeParseFindings(input));
}

/**
 * Reads findings, as they were written by this library, and says what is wrong where it cannot: the twin of `parseFindings`.
 *
 * @param input Plain data, such as parsed JSON
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 */
export function safeParseFindings(input: unknown): ParseResult<Findings> {
  return parseDocument<Findings>('findings', findingsSchema, input);
}
