import * as z from 'zod/mini';
import type { Sides } from '../../band/index.js';
import type { Quantity } from '../../circuit/index.js';
import type { StatedTolerance } from '../../procedure/index.js';
import { type ParsedTolerance, safeParseTolerance } from '../../units/index.js';
import { choice } from './choice.js';
import { describeForSchema } from './json-schema-notes.js';
import { crossCheck, finite, members, optional } from './members.js';
import { unresolved } from './quantity.js';
import { isQuantity, readQuantity } from './read-quantity.js';
import type { Report } from './report-fault.js';
import { longestLine, notBlank } from './text.js';

/** The three quantities in which output is read and limited. */
export const quantityChoice: z.ZodMiniEnum<{ power: 'power'; current: 'current'; voltage: 'voltage' }> = choice([
  'power',
  'current',
  'voltage',
]);

const sides = members({
  below: optional(unresolved('How far below the nominal; absent: unlimited.')),
  above: optional(unresolved('How far above the nominal; absent: unlimited.')),
});

function part(description: string, example: string): z.ZodMiniType<number | string | z.output<typeof sides>> {
  return describeForSchema(
    z.union([z.number(), z.string(), sides], {
      error: `must be a number, text such as "${example}", or an object with below and above`,
    }),
    { description, examples: [example] },
  );
}

const fields = members({
  in: quantityChoice,
  text: optional(
    describeForSchema(notBlank(longestLine), {
      description: 'The whole tolerance as text.',
      examples: ['-12 %/+15 %'],
    }),
  ),
  relative: optional(part('Fraction of the nominal, or text in percent.', '±20 %')),
  absolute: optional(part('In the SI unit of the quantity, or text with a unit.', '±5 W')),
  combine: optional(choice(['greater', 'sum'])),
  floor: optional(unresolved('A lower limit below this is raised to it.')),
});

type Fields = z.output<typeof fields>;

/** Members that may be numbers or text, with the text turned into numbers, all the way down. */
type WithoutText<T> = NumbersIn<number extends T ? Exclude<T, string> : T>;
type NumbersIn<T> = T extends object ? { [K in keyof T]: WithoutText<T[K]> } : T;

/** A tolerance with the quantity in which it holds: in its parts, or as one text. */
export const statedTolerance = describeForSchema(
  crossCheck(fields, (value, report) => {
    const given = value as Partial<Fields>;
    const stated = given.text === undefined ? readParts(given, report) : readWhole(given, report);
    if (stated !== undefined) checkTolerance(stated, report);
    for (const name of ['text', 'relative', 'absolute', 'combine', 'floor'] as const) delete given[name];
    Object.assign(given, stated);
  }),
  { id: 'StatedTolerance' },
) as unknown as z.ZodMiniType<Omit<WithoutText<Fields>, 'text'>, z.input<typeof fields>>;

/** A tolerance whose parts are numbers, and where each part was given. */
type Numbers = Omit<StatedTolerance, 'in'>;

function readWhole(given: Partial<Fields>, report: Report): Numbers | undefined {
  for (const name of ['relative', 'absolute', 'combine', 'floor'] as const) {
    if (given[name] !== undefined) report('contradiction', [name], given[name], 'must not stand beside a text');
  }
  if (typeof given.text !== 'string' || !isQuantity(given.in)) return undefined;
  const read = safeParseTolerance(given.text, { expect: given.in });
  if (!read.ok) {
    report(read.fault.code, ['text'], given.text, read.fault.requirement, read.fault.hint);
    return undefined;
  }
  const { absoluteQuantity: _, ...numbers } = read.value;
  return numbers;
}

function readParts(given: Partial<Fields>, report: Report): Numbers | undefined {
  const { relative, absolute, combine, floor } = given;
  if (relative === undefined && absolute === undefined) {
    report('missing-member', ['relative'], undefined, 'must be given, or absolute, or text');
    return undefined;
  }
  if (relative !== undefined && absolute !== undefined && combine === undefined) {
    const hint = 'Write "greater" or "sum".';
    report('missing-member', ['combine'], undefined, 'must say how the relative and the absolute part join', hint);
  }
  const unit = isQuantity(given.in) ? given.in : undefined;
  const numbers: { relative?: number | Sides; absolute?: number | Sides; combine?: 'greater' | 'sum'; floor?: number } =
    {};
  const relativeNumbers = readPart(relative, 'relative', undefined, report);
  if (relativeNumbers !== undefined) numbers.relative = relativeNumbers;
  if (unit !== undefined) {
    const absoluteNumbers = readPart(absolute, 'absolute', unit, report);
    if (absoluteNumbers !== undefined) numbers.absolute = absoluteNumbers;
    const least = readQuantity(floor, ['floor'], { kind: unit, range: 'zero or more' }, report);
    if (least !== undefined) numbers.floor = least;
  }
  if (combine !== undefined) numbers.combine = combine;
  return numbers;
}

/** The relative part, or the absolute part when `unit` says in what. */
function readPart(
  part: unknown,
  name: 'relative' | 'absolute',
  unit: Quantity | undefined,
  report: Report,
): number | Sides | undefined {
  if (typeof part === 'string') return readPartText(part, name, unit, report);
  const rule = { kind: unit ?? 'fraction', range: 'zero or more' } as const;
  if (typeof part === 'number') return readQuantity(part, [name], rule, report);
  if (typeof part !== 'object' || part === null) return undefined;
  const { below, above } = part as { below?: unknown; above?: unknown };
  if (below === undefined && above === undefined) {
    report('missing-member', [name, 'below'], undefined, 'must be given, or above');
    return undefined;
  }
  const lower = readQuantity(below, [name, 'below'], rule, report);
  const upper = readQuantity(above, [name, 'above'], rule, report);
  return { ...(lower === undefined ? {} : { below: lower }), ...(upper === undefined ? {} : { above: upper }) };
}

function readPartText(
  text: string,
  name: 'relative' | 'absolute',
  unit: Quantity | undefined,
  report: Report,
): number | Sides | undefined {
  const read = safeParseTolerance(text, unit === undefined ? {} : { expect: unit });
  if (!read.ok) {
    report(read.fault.code, [name], text, read.fault.requirement, read.fault.hint);
    return undefined;
  }
  const { [name]: wanted, ...others }: ParsedTolerance = read.value;
  const { absoluteQuantity: _, ...rest } = others;
  if (wanted === undefined || Object.keys(rest).length > 0) {
    const needed = name === 'relative' ? 'in percent alone, such as "±20 %"' : 'with a unit alone, such as "±5 W"';
    report('text-malformed', [name], text, `must be a tolerance ${needed}`, 'Put a whole tolerance in "text".');
    return undefined;
  }
  return wanted;
}

function checkTolerance({ relative, floor }: Numbers, report: Report): void {
  const below = finite(typeof relative === 'object' ? relative.below : relative);
  if (below === undefined || below <= 1 || floor !== undefined) return;
  const hint = below <= 100 ? `If ${below} % is meant, write "${below} %" or ${below / 100}.` : undefined;
  const path = typeof relative === 'object' ? ['relative', 'below'] : ['relative'];
  report('limit-negative', path, below, 'must be at most 1, so that the lower limit is not negative', hint);
}
