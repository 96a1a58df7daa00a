/** A place in a document: names of members and places in lists. */
export type Path = readonly (string | number)[];

/** A path as the faults of the schema write it: `outputs[0].curves[1].setting`. */
export function pathText(path: Path): string {
  return path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : text === '' ? part : `${text}.${part}`),
    '',
  );
}

/** What stands at a path; undefined where there is nothing. Only own members count. */
export function valueAt(document: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, part) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, part)
        ? (value as Record<string | number, unknown>)[part]
        : undefined,
    document,
  );
}

/**
 * A copy of a document with another value at a path; what is missing on the way is made. Undefined takes the member
 * away, and with it the objects that it leaves empty.
 */
export function withValueAt(document: unknown, path: Path, value: unknown): unknown {
  return changed(document, path, value) ?? {};
}

function changed(document: unknown, path: Path, value: unknown): unknown {
  const [first, ...rest] = path;
  if (first === undefined) return value;
  if (typeof first === 'number') {
    const list = Array.isArray(document) ? [...document] : [];
    const next = changed(list[first], rest, value);
    if (next === undefined) list.splice(first, 1);
    else list[first] = next;
    return list;
  }
  const members = isObject(document) ? document : {};
  const next = changed(Object.hasOwn(members, first) ? members[first] : undefined, rest, value);
  const others = Object.entries(members).filter(([name]) => name !== first);
  if (next === undefined) return others.length === 0 ? undefined : Object.fromEntries(others);
  const names = Object.keys(members);
  if (!names.includes(first)) return Object.fromEntries([...others, [first, next]]);
  return Object.fromEntries(Object.entries(members).map(([name, old]) => [name, name === first ? next : old]));
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
