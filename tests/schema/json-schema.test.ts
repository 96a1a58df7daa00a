import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DocumentName, documentNames, jsonSchemaOf, safeReadDocument } from '../../src/schema/index.js';
import { formVocabulary, prefixVocabulary, safeParseQuantity, unitVocabulary } from '../../src/units/index.js';
import { fixture, spoilt } from './fixtures.js';
import { jsonSchemaFolder, jsonSchemaText } from './json-schema-text.js';

/** An independent validator for a document. */
function validator(name: DocumentName): ValidateFunction {
  return new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(jsonSchemaOf(name));
}

describe.each(documentNames)('the JSON Schema of %s', (name) => {
  it('is a draft 2020-12 schema that an independent validator compiles in its strict mode', () => {
    expect(jsonSchemaOf(name)).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: `urn:esu-limits:${name}:1`,
      type: 'object',
      additionalProperties: false,
    });
    expect(() => validator(name)).not.toThrow();
  });

  it('is the one in docs/json-schema: run `npm run json-schema` after a change', () => {
    expect(readFileSync(new URL(`${name}.json`, jsonSchemaFolder), 'utf8')).toBe(jsonSchemaText(name));
  });
});

describe.each(['specification', 'bench', 'readings'] as const)('%s, by an independent validator', (name) => {
  const validate = validator(name);

  it.each(['text', 'si'])('is valid with values in %s', (form) => {
    validate(fixture(`${name}-${form}.json`));
    expect(validate.errors).toBeNull();
  });
});

describe('the documents of the examples', () => {
  const folder = new URL('../../examples/', import.meta.url);
  const files = readdirSync(folder, { recursive: true })
    .map((name) => String(name).replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.json') && !name.includes('out/'));
  const documents = files
    .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const)
    .filter(([, text]) => text.includes('"esu-limits/'));

  it.each(documents)('%s is valid by the independent validator, and is read', (_, text) => {
    const validate = validator(
      (JSON.parse(text) as { schema: string }).schema.replace('esu-limits/', '') as DocumentName,
    );
    validate(JSON.parse(text));
    expect(validate.errors).toBeNull();
    expect(safeReadDocument(text)).toMatchObject({ ok: true });
  });
});

describe('what the independent validator refuses', () => {
  it.each([
    ['specification', 'outputs[0].ratedPower', -1],
    ['specification', 'outputs[0].ratedPower', '160'],
    ['specification', 'outputs[0].ratedPower', '160 ohm'],
    ['specification', 'outputs[0].ratedPower', '1,6 W'],
    ['specification', 'outputs[0].maximumPeakVoltage', '1 kV rms'],
    ['specification', 'outputs[0].ratedpower', 160],
    ['specification', 'outputs[0].ratedLoad', undefined],
    ['specification', 'outputs[0].crestFactor', 0.5],
    ['specification', 'outputs[0].id', 'a b'],
    ['specification', 'outputs[0].name', 'a\nb'],
    ['specification', 'outputs[0].name', ' '],
    ['specification', 'outputs[0].scale.kind', 'levels'],
    ['specification', 'outputs[0].curves[0].points', [{ load: 1, power: 1 }]],
    ['specification', 'outputs', []],
    ['specification', 'rules[0].parameters.below', 20],
    ['specification', 'version', 2],
    ['specification', 'schema', 'esu-limits/bench'],
    ['bench', 'loads[0].resistance', 0],
    ['bench', 'substitution.negligible', '1 W'],
    ['readings', 'readings[0].phase', 'before'],
  ] as const)('%s with %s = %j', (name, place, value) => {
    const tree = spoilt(`${name}-text.json`, place, value);
    expect(validator(name)(tree)).toBe(false);
    expect(safeReadDocument(JSON.stringify(tree)).ok).toBe(false);
  });
});

describe('the pattern of a text with a unit', () => {
  const { $defs } = jsonSchemaOf('specification') as { $defs: Record<string, { anyOf: { pattern?: string }[] }> };
  const kinds = {
    Power: { expect: 'power' },
    Current: { expect: 'current' },
    Voltage: { expect: 'voltage' },
    Resistance: { expect: 'resistance' },
    Frequency: { expect: 'frequency' },
    Duration: { expect: 'time' },
    Fraction: { expect: 'fraction' },
  } as const;

  const pieces = [
    ...prefixVocabulary.flatMap(({ spellings }) => spellings),
    ...unitVocabulary.flatMap(({ symbols }) => symbols),
    ...formVocabulary.map(({ word }) => word),
    ...[' ', '\u00a0', '0', '1', '25', '.', ',', 'e', '-', '+', '\u2212', 'x', 'watt'],
  ];
  const text = (kind: string): fc.Arbitrary<string> => {
    const symbols = unitVocabulary.filter(({ quantity }) => quantity === kind).flatMap((unit) => unit.symbols);
    const number = fc.oneof(
      fc.nat().map(String),
      fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }).map(String),
    );
    const words = ['', '', ' ', ...formVocabulary.flatMap(({ word }) => [word, ` ${word}`])];
    const nearly = fc.tuple(
      fc.constantFrom('', '', ' ', '+', '-'),
      number,
      fc.constantFrom('', ' ', '\u202f'),
      fc.oneof(fc.constant(''), fc.constantFrom(...prefixVocabulary.flatMap(({ spellings }) => spellings))),
      fc.constantFrom(...symbols),
      fc.oneof(fc.constant(''), fc.constantFrom(...words)),
    );
    const anything = fc.array(fc.constantFrom(...pieces), { maxLength: 6 });
    return fc.oneof(nearly, anything).map((parts) => parts.join(''));
  };

  it.each(Object.entries(kinds))('%s accepts what the parser accepts, and nothing else', (id, options) => {
    const pattern = $defs[id]?.anyOf.find((form) => form.pattern !== undefined)?.pattern;
    const expression = new RegExp(pattern as string, 'u');
    let accepted = 0;
    fc.assert(
      fc.property(text(options.expect), (given) => {
        const read = safeParseQuantity(given, options);
        // A number beyond all numbers is of the right form.
        const formed = read.ok || read.fault.code === 'result-out-of-range';
        if (formed) accepted++;
        expect(expression.test(given)).toBe(formed);
      }),
      { numRuns: 5000 },
    );
    expect(accepted).toBeGreaterThan(200);
  });
});
