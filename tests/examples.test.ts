import { describe, expect, it } from 'vitest';
import { collectSnippets, snippetsOfComments, snippetsOfMarkdown } from './snippets/collect.js';
import { runSnippet } from './snippets/run-snippet.js';
import { typeFaults } from './snippets/type-faults.js';

const snippets = collectSnippets();

describe('snippets of the documentation and of the doc comments', () => {
  it('are found', () => {
    expect(snippets.length).toBeGreaterThan(0);
  });

  it('compile', { timeout: 120_000 }, () => {
    expect(typeFaults(snippets)).toEqual([]);
  });

  it('say why, where they are not executed', () => {
    const silent = snippets.filter(({ noRun }) => noRun?.trim() === '').map(({ file, line }) => `${file}:${line}`);
    expect(silent).toEqual([]);
  });

  for (const snippet of snippets.filter(({ noRun }) => noRun === undefined)) {
    it(`${snippet.file}:${snippet.line}`, () => runSnippet(snippet));
  }
});

describe('the snippet checks themselves', () => {
  const run = (...code: string[]) => runSnippet({ file: 'a.md', line: 1, code: code.join('\n') });
  const importing = "import { currentFromPower } from 'esu-limits';";

  it.each([
    ['a value', [importing, 'currentFromPower(120, 500); // → 0.4898979485566356']],
    ['a value on the next line', ['1 + 1;', '// → 2']],
    ['a value over some lines', ['({ a: [1, 2], b: -0 });', '// → {', '//   a: [1, 2],', '//   b: -0,', '// }']],
    ['a constant', ["const a: string = 'x';", '// → "x"']],
    ['part of an object', ['({ a: 1, b: { c: [1, 2, 3], d: 4 } }); // → { b: { c: [1, …], … }, … }']],
    ['a typed array', ['Float64Array.of(1, 2); // → [1, 2]']],
    ['an error', [importing, 'currentFromPower(-1, 500); // throws not-positive']],
    ['a printed text', ["console.log('a\\n  b'); // → a", '//     b']],
    ['a sub-path', ["import { currentFromPower as i } from 'esu-limits/circuit';", 'i(4, 1); // → 2']],
  ])('accept %s', async (_, code) => {
    await expect(run(...code)).resolves.toBeUndefined();
  });

  it.each([
    ['another value', ['1 + 1; // → 3']],
    ['a wrong last digit', [importing, 'currentFromPower(120, 500); // → 0.4898979485566357']],
    ['a missing member', ['({ a: 1 }); // → { a: 1, b: 2 }']],
    ['a further member', ['({ a: 1, b: 2 }); // → { a: 1 }']],
    ['a shorter array', ['[1]; // → [1, 2, …]']],
    ['a longer array', ['[1, 2]; // → [1]']],
    ['no error', [importing, 'currentFromPower(1, 500); // throws not-positive']],
    ['another error', [importing, 'currentFromPower(Number.NaN, 500); // throws not-positive']],
    ['another text', ["console.log('a'); // → b"]],
    ['a text that is cut short', ["console.log('a\\nb'); // → a"]],
    ['nothing compared', ['1 + 1;']],
    ['a promise inside a block', ['if (true) {', '  1 + 1; // → 3', '}', '1; // → 1']],
  ])('refuse %s', async (_, code) => {
    await expect(run(...code)).rejects.toThrow();
  });

  it('find the fault of a type, with its line', () => {
    const code = `${importing}\ncurrentFromPower('120', 500); // → 1`;
    const [fault, ...others] = typeFaults([{ file: 'a.md', line: 10, code }]);
    expect(fault).toMatch(/^a\.md:11: Argument of type 'string' is not assignable/);
    expect(others).toEqual([]);
  });

  it('know the lines of the blocks of a page', () => {
    const page = ['# a', '```ts', '1; // → 1', '```', '```sh', 'ls', '```', '```ts no-run: needs a file', '2;', '```'];
    expect(snippetsOfMarkdown('a.md', page.join('\n'))).toEqual([
      { file: 'a.md', line: 3, code: '1; // → 1' },
      { file: 'a.md', line: 9, code: '2;', noRun: 'needs a file' },
    ]);
  });

  it('know the lines of the examples of a doc comment', () => {
    const comment = ['const a = 1;', '/**', ' * A.', ' * @example', ' * ```ts', ' * 1; // → 1', ' * ```', ' */'];
    expect(snippetsOfComments('a.ts', comment.join('\n'))).toEqual([{ file: 'a.ts', line: 6, code: '1; // → 1' }]);
  });
});
