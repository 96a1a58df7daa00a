import * as z from 'zod/mini';

/** Names of the documents, as their member `schema` gives them without the prefix. */
export const documentNames = ['specification', 'bench', 'readings', 'plan', 'findings', 'record'] as const;

/** Name of a document. */
export type DocumentName = (typeof documentNames)[number];

/** Highest version of every document that this library reads and writes. */
export const documentVersion = 1;

/** The members that say what a document is. */
export function header<const N extends DocumentName>(
  name: N,
): { schema: z.ZodMiniLiteral<`esu-limits/${N}`>; version: z.ZodMiniLiteral<1> } {
  return {
    schema: z.literal(`esu-limits/${name}`, `must be "esu-limits/${name}"`),
    version: z.literal(documentVersion, `must be ${documentVersion}`),
  };
}
