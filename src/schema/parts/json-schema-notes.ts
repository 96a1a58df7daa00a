import * as z from 'zod/mini';

/** What the JSON Schema of a part says beyond what follows from its type. */
export interface SchemaNote {
  /** Name under which the schema is defined once and referred to. */
  readonly id?: string;
  readonly title?: string;
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minItems?: number;
  readonly exclusiveMinimum?: number;
}

/** The notes of all parts: a registry of our own, so that no other user of zod in the program sees it. */
export const schemaNotes: z.core.$ZodRegistry<SchemaNote> = z.registry<SchemaNote>();

/** Notes something for the JSON Schema of a part, and gives the part back. */
export function describeForSchema<S extends z.ZodMiniType>(schema: S, note: SchemaNote): S {
  schemaNotes.add(schema, note);
  return schema;
}
