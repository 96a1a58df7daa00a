import * as z from 'zod/mini';
import { nearName } from '../../checks/index.js';
import { reporter } from './report-fault.js';

/** One of a few words; the JSON Schema lists them. */
export function choice<const T extends string>(words: readonly T[]): z.ZodMiniEnum<{ [K in T]: K }> {
  return z.enum(words, { error: `must be one of: ${words.join(', ')}` });
}

/**
 * A name of a list that grows with the library, such as its error codes. It must be in the list,
 * but the JSON Schema does not repeat the list.
 */
export function listed<T extends string>(names: readonly T[], what: string): z.ZodMiniType<T, string> {
  const known = new Set<string>(names);
  const check = z.check<string>((payload) => {
    if (known.has(payload.value)) return;
    const near = nearName(payload.value, names);
    const hint = near === undefined ? undefined : `Did you mean "${near}"?`;
    reporter(payload.issues)('unknown-choice', [], payload.value, `must be ${what} that this library knows`, hint);
  });
  return z.string().check(z.maxLength(80, 'must have at most 80 characters'), check) as unknown as z.ZodMiniType<
    T,
    string
  >;
}
