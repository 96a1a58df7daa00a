import { listKinds, listUnits, nearestUnits, prefixOutside } from './nearest-units.js';
import { type Refusal, refuse } from './parse-result.js';
import { spellings, splitForm } from './spellings.js';
import { formVocabulary, type QuantityForm, type QuantityKind, type UnitEntry } from './vocabulary.js';

/** Refuses a unit that is missing, unknown or not followed by the end of the text, with the nearest that is known. */
export function refuseUnit(
  text: string,
  path: string,
  number: string,
  rest: string,
  kinds: readonly QuantityKind[] | undefined,
): Refusal {
  const units = listUnits(kinds);
  if (rest === '') {
    const [first = 'W'] = units;
    // No example with the number itself for a fraction: 0.2 may mean 20 % or 0.2 %.
    const hint =
      first === '%'
        ? 'Write a fraction in percent, with its sign: 0.2 is "20 %".'
        : `Write the unit, such as "${number} ${first}". Known units: ${units.join(', ')}.`;
    return refuse('unit-missing', path, text, `must have a unit of ${listKinds(kinds)}`, hint);
  }
  const spelling = firstUnit(rest);
  if (spelling !== undefined) {
    const { unit, marked } = spelling;
    if (marked) {
      const hint = `Write "${number} ${unit}": only a current or a voltage is rms or peak. Power is the mean power.`;
      return refuse('form-mismatch', path, text, 'must not carry a word for rms or peak', hint);
    }
    const words = hasWords(unit) ? ` After ${unit} only these words may stand: ${formWords()}.` : '';
    return refuse(
      'text-malformed',
      path,
      text,
      'must be a number, its unit and nothing more',
      `Write "${number} ${unit}" alone.${words}`,
    );
  }
  const outside = prefixOutside(rest);
  const near = nearestUnits(rest, kinds);
  const hint = near.length > 0 ? `Did you mean ${near.map((unit) => `"${number} ${unit}"`).join(' or ')}?` : undefined;
  return refuse(
    'unit-unknown',
    path,
    text,
    outside ?? `must have a known unit${kinds === undefined ? '' : ` of ${listKinds(kinds)}`}`,
    hint ?? `Known units: ${units.join(', ')}.`,
  );
}

/** Refuses a known unit of another quantity than the expected. */
export function refuseKind(
  text: string,
  path: string,
  number: string,
  unit: string,
  entry: UnitEntry,
  kinds: readonly QuantityKind[],
): Refusal {
  const near = unit in barePrefix ? nearestUnits(barePrefix[unit as keyof typeof barePrefix], kinds) : [];
  const guess = near.length > 0 ? ` Did you mean "${number} ${near[0]}"?` : '';
  return refuse(
    'unit-mismatch',
    path,
    text,
    `must be a value of ${listKinds(kinds)}`,
    `The unit ${unit} is one of ${entry.quantity}. Known units: ${listUnits(kinds).join(', ')}.${guess}`,
  );
}

/** Units that are mistaken for a prefix standing alone: "1.2 K" and "5 m" where ohms are expected. */
const barePrefix = { K: 'k', m: 'm' } as const;

/** Refuses a peak value where rms is needed, or the other way round. */
export function refuseForm(
  text: string,
  path: string,
  number: string,
  unit: string,
  received: QuantityForm,
  needed: QuantityForm,
): Refusal {
  const hint =
    needed === 'rms'
      ? `Give the rms value: it cannot be told from a ${received} value without the crest factor.`
      : `If the value is ${needed}, write "${number} ${unit} ${needed}".`;
  return refuse('form-mismatch', path, text, `must be ${needed}, and is ${received}`, hint);
}

function hasWords(unit: string): boolean {
  return spellings.get(unit)?.form === 'unmarked';
}

function formWords(): string {
  return formVocabulary.map(({ word }) => word).join(', ');
}

/** The known unit at the start of a text that goes on with something else; `marked` if that is a word for the form. */
function firstUnit(rest: string): { unit: string; marked: boolean } | undefined {
  const marked = splitForm(rest);
  if (marked !== undefined && marked.unit !== '' && spellings.has(marked.unit))
    return { unit: marked.unit, marked: true };
  const unit = /^[^\s\u00a0\u202f(/;,:]+/.exec(rest)?.[0] ?? '';
  if (unit !== '' && unit !== rest && spellings.has(unit)) return { unit, marked: false };
  // A word for the form that is not known, joined to the unit: Vp, VPeak.
  const joined = rest.slice(0, Math.max(0, rest.search(/[pr]/i)));
  return joined !== '' && hasWords(joined) ? { unit: joined, marked: false } : undefined;
}
