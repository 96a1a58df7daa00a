import { nearName } from '../checks/index.js';

/** A hint at the symbol that a misspelt one most likely means; nothing where none is near. */
export function nearSymbol(name: string, known: readonly string[]): { readonly hint?: string } {
  const near = nearName(name, known);
  // Any two letters are one exchange apart: of single ones only the other case is near.
  if (near === undefined || (name.length < 2 && near.toLowerCase() !== name.toLowerCase())) return {};
  return { hint: `Is ${near} meant?` };
}
