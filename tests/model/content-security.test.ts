import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A page with a strict policy refuses to make code from text; so does a process with this flag. */
const strict = '--disallow-code-generation-from-strings';

const program = `
import { expressionTex, parseModel, recompute } from './src/model/index.js';
let refused = false;
try { new Function('return 1')(); } catch { refused = true; }
const model = parseModel('max(I^2 * R, 0)', { units: { I: 'A', R: 'ohm' }, result: 'P' });
console.log(JSON.stringify({
  refused,
  value: model.evaluate({ I: 2, R: 50 }),
  derivative: model.derivative('I').asFunction(['I', 'R'])(2, 50),
  unit: model.unit,
  tex: model.equationTex,
  step: recompute({ expression: 'sqrt(P / R)', inputs: { P: 200, R: 50 } }),
  formula: expressionTex('sqrt(P / R)'),
}));
`;

async function run(source: string): Promise<unknown> {
  const { outputFiles } = await build({
    stdin: { contents: source, resolveDir: root, loader: 'ts' },
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    write: false,
  });
  const { stdout, stderr, status } = spawnSync(process.execPath, [strict, '--input-type=module'], {
    input: outputFiles[0]?.text ?? '',
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

describe('a strict content security policy', () => {
  it('lets everything of the room run: no code is made from text', async () => {
    expect(await run(program)).toEqual({
      refused: true,
      value: 200,
      derivative: 200,
      unit: 'W',
      tex: 'P = \\max\\left(I^{2} \\, R, 0\\right)',
      step: 2,
      formula: '\\sqrt{\\frac{P}{R}}',
    });
  });
});
