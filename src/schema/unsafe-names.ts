/** Member names that reach into the prototypes of objects; none is a name of any document. */
export const unsafeNames: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

export const unsafeNameRequirement = 'must not be the name of a member';
