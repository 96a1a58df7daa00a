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

/** Choices of an optional member; the first takes it away. */
export function optionalChoices(values: readonly string[], none = 'not stated'): readonly { value: string; text: string }[] {
  return [{ value: '', text: none }, ...values.map((value) => ({ value, text: value.replaceAll('-', ' ') }))];
}

/** Unit of the quantity that stands beside a value. */
export function unitOf(quantity: unknown): 'W' | 'A' | 'V' {
  return quantity === 'power' ? 'W' : quantity === 'voltage' ? 'V' : 'A';
}

/** The fields of a tolerance, in whichever form the document states it. */
export function toleranceFields(document: unknown, path: Path, label: string): readonly Field[] {
  const stated = valueAt(document, path);
  const isStated = (part: string) => valueAt(stated, [part]) !== undefined;
  const of = valueAt(stated, ['in']);
  const quantity = field([...path, 'in'], `${label}: of`, {
    choices: [{ value: '', text: 'not stated' }, ...quantityChoices],
  });
  if (isStated('text') || (!isStated('relative') && !isStated('absolute'))) {
    return [field([...path, 'text'], label, { example: '-12 %/+15 %', isOptional: true, covers: [path] }), quantity];
  }
  return [...toleranceParts(document, path, label, unitOf(of)), quantity];
}

/** The parts of a tolerance that are stated, each with one value or two sides, and how they join. */
function toleranceParts(document: unknown, path: Path, label: string, unit: 'W' | 'A' | 'V'): readonly Field[] {
  const isStated = (part: string) => valueAt(document, [...path, part]) !== undefined;
  const parts = [
    ...(isStated('relative') ? [relativePart(path, label)] : []),
    ...(isStated('absolute') ? [absolutePart(path, label, unit)] : []),
  ];
  const [first, ...others] = parts;
  const speaking = first === undefined ? [] : [{ ...first, speaksFor: [path] }];
  return [
    ...speaking,
    ...others,
    ...(parts.length > 1 || isStated('combine') ? [combination(path, label)] : []),
    ...(isStated('floor') ? [optionalField([...path, 'floor'], `${label}: not below`, { unit })] : []),
  ];
}

/** The fields of a tolerance of a resistance, which has no whole text. */
export function resistanceToleranceFields(document: unknown, path: Path, label: string): readonly Field[] {
  const isStated = (part: string) => valueAt(document, [...path, part]) !== undefined;
  return [
    { ...absolutePart(path, label, 'ohm'), speaksFor: [path] },
    relativePart(path, label),
    ...((isStated('relative') && isStated('absolute')) || isStated('combine') ? [combination(path, label)] : []),
    ...(isStated('floor') ? [optionalField([...path, 'floor'], `${label}: not below`, { unit: 'ohm' })] : []),
  ];
}

function relativePart(path: Path, label: string): Field {
  return optionalField([...path, 'relative'], `${label}, in percent`, { as: 'sides', unit: '%', example: '5 % or -3 %/+5 %' });
}

function absolutePart(path: Path, label: string, unit: 'W' | 'A' | 'V' | 'ohm'): Field {
  const example = `3 ${unit} or -2 ${unit}/+3 ${unit}`;
  return optionalField([...path, 'absolute'], `${label}, in ${unit}`, { as: 'sides', unit, example });
}

function combination(path: Path, label: string): Field {
  return field([...path, 'combine'], `${label}: the two parts`, {
    choices: [
      { value: '', text: 'not stated' },
      { value: 'greater', text: 'the greater holds' },
      { value: 'sum', text: 'are added' },
    ],
  });
}
