import { nearName } from '../checks/index.js';

/**
 * A hint at the symbol that a misspelt one most likely means; nothing where none is near.
 *
 * @param pools Names to look among; a later one only where an earlier one has none that is near
 */
export function nearSymbol(name: string, ...pools: readonly (readonly string[])[]): { readonly hint?: string } {
  for (const pool of pools) {
    const near = nearName(name, pool);
    // Any two letters are one exchange apart: of single ones only the other case is near.
    const other = name.length < 2 && near?.toLowerCase() !== name.toLowerCase();
    if (near !== undefined && !other) return { hint: `Is ${near} meant?` };
  }
  return {};
}
