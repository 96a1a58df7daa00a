import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { importCircles, importFaults } from './architecture/import-faults.js';
import { purityFaults } from './architecture/purity-faults.js';
import { lineOf, parse, type SourceFile, sourceFiles } from './architecture/source-files.js';

const files = sourceFiles();
const roomOf = (path: string) => path.split('/')[0] as string;

describe('the rooms of src', () => {
  it('import downwards, from other rooms through their index, and only the packages they may', () => {
    expect(files.length).toBeGreaterThan(0);
    expect(importFaults(files)).toEqual([]);
  });

  it('import every file that they name', () => {
    const paths = new Set(files.map((file) => file.path));
    const missing = files.flatMap((file) =>
      file.imports
        .filter(({ target }) => target !== undefined && !paths.has(target))
        .map(({ specifier, line }) => `${file.path}:${line} imports ${specifier}, which is not there`),
    );
    expect(missing).toEqual([]);
  });

  it('have no circle of files', () => {
    expect(importCircles(files)).toEqual([]);
  });

  it('have no circle of rooms', () => {
    expect(importCircles(files, roomOf)).toEqual([]);
  });

  it('define nothing in an index', () => {
    const definitions = files
      .filter((file) => /(^|\/)(index|browser)\.ts$/.test(file.path))
      .flatMap((file) =>
        file.tree.statements
          .filter((statement) => !(ts.isExportDeclaration(statement) && statement.moduleSpecifier))
          .map((statement) => `${file.path}:${lineOf(file.tree, statement)} is not a re-export`),
      );
    expect(definitions).toEqual([]);
  });

  it('depend on no clock, locale, chance, console or machine', () => {
    expect(files.flatMap(purityFaults)).toEqual([]);
  });
});

describe('the architecture checks themselves', () => {
  const file = (path: string, text: string): SourceFile => parse(path, text);

  it.each([
    [
      'an import that goes up',
      'band/a.ts',
      "import { plan } from '../procedure/index.js';",
      'up from floor 2 to floor 4',
    ],
    ['an import past an index', 'curve/a.ts', "import type { Band } from '../band/band.js';", 'not through its index'],
    ['a package that is not allowed', 'band/a.ts', "import * as z from 'zod';", 'may import no such package'],
    ['a Node built-in', 'report/a.ts', "import { readFileSync } from 'node:fs';", 'may import no such package'],
    ['an edge in the core', 'report/a.ts', "export { parse } from '../schema/index.js';", 'the core imports an edge'],
    ['a type from above', 'units/a.ts', "type A = import('../band/index.js').Band;", 'up from floor 1 to floor 2'],
    ['a dynamic import', 'units/a.ts', "await import('mathjs');", 'may import no such package'],
    ['an unknown room', 'attic/a.ts', "import { a } from '../band/index.js';", 'is no room of the design'],
  ])('find %s', (_, path, text, fault) => {
    const faults = importFaults([file(path, text)]);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(fault);
  });

  it('find a circle, and only once', () => {
    const a = file('band/a.ts', "import { b } from './b.js';");
    const b = file('band/b.ts', "import { c } from './c.js';");
    const c = file('band/c.ts', "import { a } from './a.js';");
    expect(importCircles([a, b, c])).toEqual(['band/a.ts → band/b.ts → band/c.ts → band/a.ts']);
    expect(importCircles([a, b])).toEqual([]);
  });

  it('find a circle of rooms that no single file closes', () => {
    const a = file('band/a.ts', "import { x } from '../curve/index.js';");
    const b = file('curve/b.ts', "import { y } from '../band/index.js';");
    expect(importCircles([a, b])).toEqual([]);
    expect(importCircles([a, b], roomOf)).toEqual(['band → curve → band']);
  });

  it.each([
    ['new Date()', 'Date'],
    ['Math.random()', 'Math.random'],
    ["Math['random']()", 'random'],
    ["console.log('x')", 'console'],
    ['(1.5).toLocaleString()', 'toLocaleString'],
    ["'a'.localeCompare('b')", 'localeCompare'],
    ["new Intl.NumberFormat('en')", 'Intl'],
  ])('find %s', (text, name) => {
    expect(purityFaults(file('band/a.ts', `export const a = ${text};`))).toEqual([`band/a.ts:1 uses ${name}`]);
  });

  it('let a member of the same name pass', () => {
    expect(purityFaults(file('band/a.ts', 'export const a = { Date: 1 }.Date;'))).toEqual([]);
  });
});
