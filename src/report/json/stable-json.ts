import { fail } from '../../checks/index.js';

/**
 * A document as JSON text: `schema` and `version` first, other members in alphabetical order, two blanks a level,
 * a line break at the end. The same data give the same bytes, whatever their order.
 *
 * @throws CalculationError `not-a-number` for a number that JSON cannot hold, with its path
 */
export function stableJson(document: object): string {
  return `${JSON.stringify(ordered(document, ''), null, 2)}\n`;
}

function ordered(value: unknown, path: string): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    return fail('not-a-number', path, value, 'must be a finite number, to be kept as JSON');
  }
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((item, i) => ordered(item, `${path}[${i}]`));
  const members = Object.entries(value).sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : 1));
  // Made from entries, so that a member named __proto__ stays a member.
  return Object.fromEntries(
    members.map(([name, member]) => [name, ordered(member, path === '' ? name : `${path}.${name}`)]),
  );
}

function rank(name: string): number {
  return name === 'schema' ? 0 : name === 'version' ? 1 : 2;
}
