import { readFileSync } from 'node:fs';

// biome-ignore lint/suspicious/noExplicitAny: the tests spoil any place of a tree
type Tree = { [name: string]: any };

/** Text of a document of the tests, all of an invented scenario. */
export function fixtureText(name: string): string {
  return readFileSync(new URL(`fixtures/${name}`, import.meta.url), 'utf8');
}

/** A fresh copy of a document of the tests, to be spoilt at will. */
export function fixture(name: string): Tree {
  return JSON.parse(fixtureText(name)) as Tree;
}

/** A document with one place of it replaced; `undefined` removes it. The place is written as in a fault. */
export function spoilt(name: string, place: string, value: unknown): Tree {
  const tree = fixture(name);
  const steps = place.match(/[^.[\]]+/g) as string[];
  const last = steps.pop() as string;
  const parent = steps.reduce((at, step) => at[step], tree);
  if (value === undefined) delete parent[last];
  else Object.defineProperty(parent, last, { value, enumerable: true, configurable: true, writable: true });
  return tree;
}
