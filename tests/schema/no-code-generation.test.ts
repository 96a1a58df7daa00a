import { fileURLToPath } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { fixtureText } from './fixtures.js';

/** A page whose content security policy forbids the making of code from text runs the schemas all the same. */
it('documents are read where code must not be made from text', async () => {
  const result = await build({
    entryPoints: [fileURLToPath(new URL('../../src/schema/index.ts', import.meta.url))],
    bundle: true,
    format: 'iife',
    globalName: 'schema',
    platform: 'browser',
    write: false,
  });
  const context = createContext(
    { text: fixtureText('specification-text.json') },
    { codeGeneration: { strings: false, wasm: false } },
  );
  runInContext(result.outputFiles[0]?.text ?? '', context);
  const run = (code: string): unknown => runInContext(code, context);
  expect(run('schema.readDocument(text).outputs[0].ratedPower')).toBe(160);
  expect(run('schema.safeReadDocument("{}").ok')).toBe(false);
  expect(run('schema.readReadingsCsv("point,reading\\n1,489 mA").readings[0].value')).toBe(0.489);
  expect(run('schema.jsonSchemaOf("bench").type')).toBe('object');
  expect(() => run('new Function("return 1")()')).toThrow('Code generation from strings disallowed');
});
