import type { Field } from './form.js';
import { type Path, valueAt } from './json-path.js';

type Rest = Omit<Field, 'kind' | 'path' | 'label'>;

export function field(path: Path, label: string, rest: Rest = {}): Field {
  return { kind: 'field', path, label, ...rest };
}

export function optionalField(path: Path, label: string, rest: Rest = {}): Field {
  return field(path, label, { ...rest, isOptional: true });
}

/** Places in a list, none where there is no list. */
export function places(document: unknown, path: Path): readonly number[] {
  const list = valueAt(document, path);
  return Array.isArray(list) ? list.map((_, i) => i) : [];
}

export function choicesOf(values: readonly string[]): readonly { value: string; text: string }[] {
  return values.map((value) => ({ value, text: value }));
}

export const quantityChoices = choicesOf(['power', 'current', 'voltage']);

/** The fields of a tolerance, in whichever form the document states it. */
export function toleranceFields(document: unknown, path: Path, label: string): readonly Field[] {
  const stated = valueAt(document, path);
  const hasParts =
    typeof stated === 'object' &&
    stated !== null &&
    !Object.hasOwn(stated, 'text') &&
    (Object.hasOwn(stated, 'relative') || Object.hasOwn(stated, 'absolute'));
  const isOther = { isOptional: true, covers: [path] };
  const quantity = field([...path, 'in'], `${label}: of`, {
    choices: [{ value: '', text: 'not stated' }, ...quantityChoices],
  });
  if (!hasParts) return [field([...path, 'text'], label, { example: '-12 %/+15 %', ...isOther }), quantity];
  const part = Object.hasOwn(stated, 'relative') ? 'relative' : 'absolute';
  const value = valueAt(document, [...path, part]);
  // An object with two sides is edited in the JSON.
  if (typeof value === 'object') return [quantity];
  return [
    field([...path, part], label, {
      example: part === 'relative' ? '20 %' : '5 W',
      ...(part === 'relative' ? { unit: '%' as const } : {}),
      ...isOther,
    }),
    quantity,
  ];
}
