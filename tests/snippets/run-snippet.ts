import { format } from 'node:util';
import { expect } from 'vitest';
import { expectedValue, withoutRest } from './expected-value.js';
import { programOf } from './program-of.js';
import type { Snippet } from './snippet.js';

/** The package by its name, a room by its sub-path; anything else is a package of the reader's. */
async function importFor(specifier: string): Promise<unknown> {
  if (specifier === 'esu-limits') return import('../../src/index.js');
  const room = /^esu-limits\/([a-z-]+)$/.exec(specifier)?.[1];
  return room ? import(`../../src/${room}/index.ts`) : import(/* @vite-ignore */ specifier);
}

/** Executes a snippet and compares every value that its comments promise. */
export async function runSnippet(snippet: Snippet): Promise<void> {
  const { body, comparisons } = programOf(snippet.code);
  if (comparisons === 0) throw new Error('nothing is compared: add `// → value`, or mark it `ts no-run` with a reason');
  const where = (line: number) => `${snippet.file}:${snippet.line + line}`;

  const value = (actual: unknown, line: number, text: string, further: readonly string[]) => {
    const pair = withoutRest(expectedValue(text, further), actual);
    expect(pair.actual, where(line)).toStrictEqual(pair.expected);
  };
  const throws = async (work: () => Promise<unknown>, line: number, text: string) => {
    const error = await work().then(
      () => undefined,
      (reason: unknown) => reason,
    );
    expect((error as { code?: string } | undefined)?.code, `${where(line)} throws ${text}`).toBe(text);
  };
  const prints = (values: readonly unknown[], line: number, text: string, further: readonly string[]) => {
    const expected = [text, ...further.map((next) => next.replace(/^ {1,3}/, '').trimEnd())];
    const actual = format(...values)
      .split('\n')
      .map((printed) => printed.trimEnd());
    expect(actual, where(line)).toEqual(expected);
  };

  const AsyncFunction = (async () => {}).constructor as new (...parts: string[]) => (...values: unknown[]) => unknown;
  const silent = { log: () => {} };
  const program = new AsyncFunction('__import', '__value', '__throws', '__prints', 'console', body);
  await program(importFor, value, throws, prints, silent);
}
