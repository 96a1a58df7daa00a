import type { Bench, Findings, Plan, Readings, Specification, VerificationRecord } from '../procedure/index.js';
import { type DocumentLimits, defaultLimits } from './document-limits.js';
import { schemaOf } from './documents/schema-of.js';
import { failure, faultOf, type ParseResult, unwrap } from './fault-list.js';
import { documentName, parsePlain } from './parse-document.js';
import { scanJson } from './scan-json.js';

/** Any document of the library; its member `schema` tells which. */
export type Document = Specification | Bench | Readings | Plan | Findings | VerificationRecord;

/**
 * Reads any document of the library from JSON text. A byte-order mark in front is tolerated.
 *
 * @param text JSON
 * @param options Limits of length and depth
 * @returns The document; its member `schema` tells which it is
 * @throws CalculationError with all faults in `faults`: `not-json` with line and column, `too-large`, `too-deep`,
 * `duplicate` and `unsafe-member` for names of members, `unknown-document`, `newer-version`, and the faults of the document
 * @example
 * ```ts
 * import { readDocument } from 'esu-limits/schema';
 * const document = readDocument('{ "schema": "esu-limits/readings", "version": 1, "readings": [] }');
 * document.schema; // → "esu-limits/readings"
 * ```
 */
export function readDocument(text: string, options?: DocumentLimits): Document {
  return unwrap(safeReadDocument(text, options));
}

/**
 * Reads any document of the library from JSON text, and says what is wrong where it cannot: the twin of `readDocument`.
 *
 * @param text JSON
 * @param options Limits of length and depth
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 * @example
 * ```ts
 * import { safeReadDocument } from 'esu-limits/schema';
 * const result = safeReadDocument('{ "schema": "esu-limits/bench", }');
 * result.ok ? '' : result.faults[0]?.path; // → "line 1, column 33"
 * ```
 */
export function safeReadDocument(text: string, options: DocumentLimits = {}): ParseResult<Document> {
  const json = safeReadJson(text, options);
  if (!json.ok) return json;
  const name = documentName(json.value);
  if (typeof name !== 'string') return failure([name]);
  // Parsed JSON is plain, and the scan has found it neither deep nor with unsafe names: it needs no copy.
  return parsePlain<Document>(name, schemaOf[name], json.value);
}

/** The value that a JSON text holds, after all that makes a text unsafe to parse was looked for. */
function safeReadJson(text: string, options: DocumentLimits): ParseResult<unknown> {
  if (typeof text !== 'string') {
    return failure([faultOf('wrong-type', '', text, 'must be text', 'Decode bytes as UTF-8 first.')]);
  }
  const { maximumLength, maximumDepth } = { ...defaultLimits, ...options };
  if (text.length > maximumLength) {
    return failure([faultOf('too-large', '', text.length, `must have at most ${maximumLength} characters`)]);
  }
  const faults = scanJson(text, maximumDepth);
  if (faults.length > 0) return failure(faults);
  return { ok: true, value: JSON.parse(text.replace(/^\ufeff/, '')) };
}
