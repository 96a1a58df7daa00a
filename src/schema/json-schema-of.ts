import * as z from 'zod/mini';
import { requireChoice } from '../checks/index.js';
import { schemaOf } from './documents/schema-of.js';
import { type DocumentName, documentNames, documentVersion } from './parts/header.js';
import { schemaNotes } from './parts/json-schema-notes.js';

/** A JSON Schema, draft 2020-12, as plain data. */
export type JsonSchema = { readonly [keyword: string]: unknown };

/**
 * The JSON Schema of a document as it may be written: with numbers in SI units or text with units.
 * It describes structure; what members say of one another is checked by the parse functions alone.
 *
 * @param name Name of the document
 * @returns JSON Schema, draft 2020-12
 * @throws CalculationError `unknown-choice`
 * @example
 * ```ts
 * import { jsonSchemaOf } from 'esu-limits/schema';
 * jsonSchemaOf('bench')['$id']; // → "urn:esu-limits:bench:1"
 * ```
 */
export function jsonSchemaOf(name: DocumentName): JsonSchema {
  requireChoice(name, 'name', documentNames);
  const {
    $schema,
    id: _,
    ...schema
  } = z.toJSONSchema(schemaOf[name] as z.ZodMiniType, {
    io: 'input',
    target: 'draft-2020-12',
    metadata: schemaNotes,
  });
  return { $schema, $id: `urn:esu-limits:${name}:${documentVersion}`, ...withSchemaPointer(schema) };
}

/** A document may name its JSON Schema, for the benefit of editors. */
function withSchemaPointer(schema: JsonSchema): JsonSchema {
  const properties = schema['properties'] as JsonSchema | undefined;
  return { ...schema, properties: { $schema: { type: 'string' }, ...properties } };
}
