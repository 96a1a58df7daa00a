/** A copy of plain data with the members of every object in alphabetical order: the same bytes for any key order. */
export function canonical<T>(value: T): T {
  if (Array.isArray(value)) return value.map(canonical) as T;
  if (typeof value !== 'object' || value === null) return value;
  const source = value as Record<string, unknown>;
  const sorted: Record<string, unknown> = {};
  for (const key of Object.keys(source).sort()) {
    if (source[key] !== undefined) sorted[key] = canonical(source[key]);
  }
  return sorted as T;
}
