import * as z from 'zod/mini';
import { describeForSchema } from './json-schema-notes.js';
import { type Report, reporter } from './report-fault.js';

/** An object with these members and no others. The message of a member too many lists the known ones, for a hint. */
export function members<S extends z.core.$ZodShape>(shape: S): z.ZodMiniObject<S, z.core.$strict> {
  const names = Object.keys(shape).join(' ');
  return z.strictObject(shape, { error: (issue) => (issue.code === 'unrecognized_keys' ? names : undefined) });
}

/** A member that may be absent. */
export const optional = z.exactOptional;

/** A list, with the least number of entries it must have. */
export function list<S extends z.core.SomeType>(entry: S, least = 0): z.ZodMiniArray<S> {
  if (least === 0) return z.array(entry);
  const longEnough = z.check<unknown[]>(({ value, issues }) => {
    if (value.length < least)
      reporter(issues)(
        'wrong-count',
        [],
        value,
        least === 1 ? 'must have at least one entry' : `must have at least ${least} entries`,
      );
  });
  return describeForSchema(z.array(entry).check(longEnough as never), { minItems: least });
}

/**
 * A value of which nothing is certain: what stands where a `T` should, before every fault in it is mended.
 * An object may be anything, so its members are read with `?.`; a list is read through `items`.
 */
export type Loose<T> = LooseDefined<Exclude<T, undefined>>;

type LooseDefined<T> = T extends readonly (infer E)[]
  ? readonly Loose<E>[] | undefined
  : T extends object
    ? { -readonly [K in keyof T]?: Loose<T[K]> } | undefined
    : unknown;

/** Entries of what should be a list. */
export function items<E>(entries: readonly E[] | undefined): readonly E[] {
  return Array.isArray(entries) ? entries : [];
}

/** The value if it is a number that a calculation can use. */
export function finite(value: unknown): number | undefined {
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
}

/**
 * Adds a check across the members of an object. It runs even when members are wrong, so that all faults are found at
 * once.
 */
export function crossCheck<S extends z.ZodMiniType>(
  schema: S,
  check: (value: NonNullable<Loose<z.output<S>>>, report: Report) => void,
): S {
  const isObject = (payload: { value: unknown }): boolean =>
    typeof payload.value === 'object' && payload.value !== null;
  const crossing = z.check<unknown>(
    (payload) => check(payload.value as NonNullable<Loose<z.output<S>>>, reporter(payload.issues)),
    { when: isObject },
  );
  return schema.check(crossing as never);
}

/** An object whose members `K` were numbers or text, and are numbers now. */
export type WithNumbers<T, K extends keyof T> = { [P in keyof T]: P extends K ? Exclude<T[P], string> : T[P] };

/** As `crossCheck`, for a check that puts numbers in place of text: the unit that is needed stands in another member. */
export function resolving<S extends z.ZodMiniType, K extends keyof z.output<S>>(
  schema: S,
  resolve: (value: NonNullable<Loose<z.output<S>>>, report: Report) => void,
): z.ZodMiniType<WithNumbers<z.output<S>, K>, z.input<S>> {
  return crossCheck(schema, resolve) as unknown as z.ZodMiniType<WithNumbers<z.output<S>, K>, z.input<S>>;
}

/** Reports every entry that repeats one before it. */
export function reportRepeats(
  values: readonly unknown[],
  path: (index: number) => readonly PropertyKey[],
  report: Report,
  requirement = 'must differ from those before it',
): void {
  const seen = new Set<unknown>();
  values.forEach((value, i) => {
    if (value === undefined) return;
    if (seen.has(value)) report('duplicate', path(i), value, requirement);
    seen.add(value);
  });
}
