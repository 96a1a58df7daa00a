// Writes the JSON Schema of every document to docs/json-schema: `npm run json-schema`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { documentNames } from '../../src/schema/index.js';
import { jsonSchemaFolder, jsonSchemaText } from './json-schema-text.js';

mkdirSync(jsonSchemaFolder, { recursive: true });
for (const name of documentNames) writeFileSync(new URL(`${name}.json`, jsonSchemaFolder), jsonSchemaText(name));
