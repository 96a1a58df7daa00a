import * as z from 'zod/mini';
import { describeForSchema } from './json-schema-notes.js';

/** Characters of one line: no control characters, no line separators, no override of the reading direction. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is refused
const linePattern = /^[^\u0000-\u001f\u007f-\u009f\u2028\u2029\u202d\u202e\ufeff]*$/u;
/** The same with line feeds and tabs. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is refused
const prosePattern = /^[^\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028\u2029\u202d\u202e\ufeff]*$/u;
/** Half of a surrogate pair: no character, and nothing that UTF-8 can hold. */
const halfCharacter = /\p{Surrogate}/u;

const lineRequirement = 'must be one line of text without control characters';
const proseRequirement = 'must be text without control characters other than line feeds';

/** Longest name, and longest note, in characters. */
export const longestLine = 500;
const longestProse = 10_000;

/** One line of text that is not blank: a name, a place. */
export const line: z.ZodMiniString<string> = named('Line', notBlank(longestLine));

/** One line of text that may be blank, as a form leaves it. */
export const blankableLine: z.ZodMiniString<string> = named('BlankableLine', oneLine(longestLine));

/** Text of several lines, which may be empty: notes and remarks, messages. */
export const prose: z.ZodMiniString<string> = named(
  'Prose',
  z
    .string()
    .check(
      z.maxLength(longestProse, `must have at most ${longestProse} characters`),
      z.regex(prosePattern, proseRequirement),
      wholeCharacters(proseRequirement),
    ),
);

/** A short name that other texts are built from: letters, digits, hyphens, points, underscores. */
export const identifier: z.ZodMiniString<string> = named(
  'Identifier',
  z
    .string()
    .check(
      z.regex(
        /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/,
        'must be 1 to 64 letters, digits, hyphens, points or underscores, and begin with a letter or digit',
      ),
    ),
);

/** One line that is not blank, up to a length. */
export function notBlank(longest: number): z.ZodMiniString<string> {
  return oneLine(longest).check(z.regex(/\S/, 'must not be blank'));
}

function oneLine(longest: number): z.ZodMiniString<string> {
  return z
    .string()
    .check(
      z.maxLength(longest, `must have at most ${longest} characters`),
      z.regex(linePattern, lineRequirement),
      wholeCharacters(lineRequirement),
    );
}

function named<S extends z.ZodMiniType>(id: string, schema: S): S {
  return describeForSchema(schema, { id });
}

/** What is wrong with a text that should be one line, or prose; undefined when nothing is. */
export function textFault(text: string, kind: 'line' | 'prose'): string | undefined {
  const longest = kind === 'line' ? longestLine : longestProse;
  if (text.length > longest) return `must have at most ${longest} characters`;
  const pattern = kind === 'line' ? linePattern : prosePattern;
  if (pattern.test(text) && !halfCharacter.test(text)) return undefined;
  return kind === 'line' ? lineRequirement : proseRequirement;
}

function wholeCharacters(requirement: string): z.core.$ZodCheck<string> {
  return z.refine((text: string) => !halfCharacter.test(text), requirement);
}
