import { benchSchema } from './bench-schema.js';
import { findingsSchema } from './findings-schema.js';
import { planSchema } from './plan-schema.js';
import { readingsSchema } from './readings-schema.js';
import { recordSchema } from './record-schema.js';
import { specificationSchema } from './specification-schema.js';

/** The schema of every document, by its name. */
export const schemaOf = {
  specification: specificationSchema,
  bench: benchSchema,
  readings: readingsSchema,
  plan: planSchema,
  findings: findingsSchema,
  record: recordSchema,
} as const;
