import type { VerificationRecord } from '../procedure/index.js';
import { recordSchema } from './documents/record-schema.js';
import { type ParseResult, unwrap } from './fault-list.js';
import { parseDocument } from './parse-document.js';

/**
 * Reads a record, as it was written by this library: numbers in SI units or text with units in, numbers in SI units out.
 *
 * @param input Plain data, such as parsed JSON
 * @returns The document, copied
 * @throws CalculationError with all faults in `faults`, each with code, path, what was received and a hint
 */
export function parseRecord(input: unknown): VerificationRecord {
  return unwrap(safeParseRecord(input));
}

/**
 * Reads a record, as it was written by this library, and says what is wrong where it cannot: the twin of `parseRecord`.
 *
 * @param input Plain data, such as parsed JSON
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 */
export function safeParseRecord(input: unknown): ParseResult<VerificationRecord> {
  return parseDocument<VerificationRecord>('record', recordSchema, input);
}
