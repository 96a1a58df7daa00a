import { type DocumentName, jsonSchemaOf } from '../../src/schema/index.js';

/** Where the JSON Schema files stand; the build copies them into the package. */
export const jsonSchemaFolder = new URL('../../docs/json-schema/', import.meta.url);

/** A JSON Schema as the text of its file. */
export function jsonSchemaText(name: DocumentName): string {
  return `${JSON.stringify(jsonSchemaOf(name), null, 2)}\n`;
}
