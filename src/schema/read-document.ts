import type { Bench, Findings, Plan, Readings, Specification, VerificationRecord } from '../procedure/index.js';
import { type DocumentLimits, defaultLimits } from './document-limits.js';
import { schemaOf } from './documents/schema-of.js';
import { failure, faultOf, type ParseResult, unwrap } from './fault-list.js';
import { documentName, parseDocument } from './parse-document.js';
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
 */
export function safeReadDocument(text: string, options: DocumentLimits = {}): ParseResult<Document> {
  const json = safeReadJson(text, options);
  if (!json.ok) return json;
  const name = documentName(json.value);
  if (typeof name !== 'string') return failure([name]);
  return parseDocument<Document>(name, schemaOf[name], json.value, options);
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
