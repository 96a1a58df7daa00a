import { describe, expect, it } from 'vitest';
import { readDocument, safeParseSpecification, safeReadDocument } from '../../src/schema/index.js';
import { fixture, fixtureText } from './fixtures.js';

const codesOf = (text: string, options?: Parameters<typeof safeReadDocument>[1]): string[] => {
  const result = safeReadDocument(text, options);
  return result.ok ? [] : result.faults.map((fault) => fault.code);
};

describe('text that is not JSON', () => {
  it.each([
    ['', 'line 1, column 1', 'empty'],
    ['  \n ', 'line 2, column 2', 'empty'],
    ['{\n  "a": 1,\n}', 'line 3, column 1', 'Remove the comma'],
    ['[1, 2,]', 'line 1, column 7', 'Remove the comma'],
    ['{"a": 1', 'line 1, column 8', 'breaks off'],
    ['{"a": "unfinished', 'line 1, column 18', undefined],
    ['{"a": "tab\there"}', 'line 1, column 11', undefined],
    ["{'a': 1}", 'line 1, column 2', 'straight double quotes'],
    ['{“a”: 1}', 'line 1, column 2', 'straight double quotes'],
    ['{a: 1}', 'line 1, column 2', 'double quotes'],
    ['{"a": NaN}', 'line 1, column 7', 'no such number'],
    ['{"a": -Infinity}', 'line 1, column 7', 'no such number'],
    ['{"a": +1}', 'line 1, column 7', 'digit or a minus'],
    ['{"a": .5}', 'line 1, column 7', 'digit or a minus'],
    ['{"a": 007}', 'line 1, column 8', 'leading zero'],
    ['{"a": 1} // note', 'line 1, column 10', undefined],
    ['{ // note\n}', 'line 1, column 3', 'no comments'],
    ['{"a" 1}', 'line 1, column 6', undefined],
    ['{"a": 1 "b": 2}', 'line 1, column 9', undefined],
    ['{"a": 1}\r\n{"b": 2}', 'line 2, column 1', undefined],
    ['point,reading\n1,489 mA', 'line 1, column 1', undefined],
    ['nul', 'line 1, column 1', undefined],
  ])('%j: %s', (text, path, hint) => {
    const result = safeReadDocument(text);
    expect(result).toMatchObject({ ok: false, faults: [{ code: 'not-json', path }] });
    if (!result.ok && hint !== undefined) expect(result.faults[0]?.hint).toContain(hint);
  });

  it.each([undefined, 7, null, new Uint8Array(3), {}])('%s is not even text', (value) => {
    expect(safeReadDocument(value as unknown as string)).toMatchObject({ ok: false, faults: [{ code: 'wrong-type' }] });
  });
});

describe('JSON that would exhaust a program', () => {
  it.each(['[', '{"a":'])('10 MB of %j, nested without end, ends at once', (opening) => {
    const text = opening.repeat(Math.ceil(10e6 / opening.length));
    const start = performance.now();
    expect(codesOf(text)).toEqual(['too-deep']);
    expect(performance.now() - start).toBeLessThan(500);
  });

  it('10 MB, nested 10 000 deep, ends at once', () => {
    const unit = `${'['.repeat(10_000)}${']'.repeat(10_000)}`;
    const text = `[${Array.from({ length: 500 }, () => unit).join(',')}]`;
    expect(text.length).toBeGreaterThan(10e6);
    const start = performance.now();
    expect(codesOf(text)).toEqual(['too-deep']);
    expect(performance.now() - start).toBeLessThan(500);
  });

  it('an object nested 10 000 deep ends in a fault too', () => {
    let deep: unknown = 1;
    for (let i = 0; i < 10_000; i++) deep = { a: deep };
    expect(safeParseSpecification({ ...fixture('specification-si.json'), note: deep })).toMatchObject({
      ok: false,
      faults: [{ code: 'too-deep' }],
    });
  });

  it('an object that contains itself ends in a fault', () => {
    const tree = fixture('specification-si.json');
    tree.generator.name = tree;
    expect(safeParseSpecification(tree)).toMatchObject({ ok: false, faults: [{ code: 'too-deep' }] });
  });

  it('lists that share their entries, and would be of 2^50 values, end in a fault', () => {
    let list: unknown[] = [1];
    for (let i = 0; i < 50; i++) list = [list, list];
    expect(safeParseSpecification({ ...fixture('specification-si.json'), cautions: list })).toMatchObject({
      ok: false,
      faults: [{ code: 'too-large' }],
    });
  });

  it('text longer than the limit is not looked at', () => {
    expect(codesOf(`${' '.repeat(100)}{}`, { maximumLength: 100 })).toEqual(['too-large']);
    expect(codesOf(`${' '.repeat(98)}{}`, { maximumLength: 100 })).toEqual(['missing-member']);
  });

  it('the limit of depth counts lists and objects', () => {
    const text = fixtureText('specification-si.json');
    expect(codesOf(text, { maximumDepth: 7 })).toEqual([]);
    expect(codesOf(text, { maximumDepth: 6 })).toEqual(['too-deep']);
  });

  it('faults without number are counted, and the first are listed', () => {
    const tree = fixture('specification-si.json');
    tree.cautions = Array.from({ length: 5000 }, () => 7);
    const result = safeParseSpecification(tree);
    expect(result.ok ? 0 : result.faults.length).toBe(1001);
    expect(result).toMatchObject({
      faults: expect.arrayContaining([expect.objectContaining({ code: 'too-many-faults' })]),
    });
  });

  it('faults that would exhaust the stack of the validator are faults still', () => {
    const tree = fixture('specification-si.json');
    tree.outputs[0].points = Array.from({ length: 200_000 }, () => 7);
    const result = safeParseSpecification(tree);
    const codes = result.ok ? [] : result.faults.map((fault) => fault.code);
    expect(codes[0]).toBe('wrong-type');
    expect(codes.at(-1)).toBe('too-many-faults');
  });
});

describe('names that reach into prototypes', () => {
  const names = ['__proto__', 'constructor', 'prototype', '\\u005f_proto__', 'construct\\u006fr'];

  it.each(names)('%s is refused as a member, wherever it stands, and pollutes nothing', (name) => {
    const text = fixtureText('specification-si.json');
    for (const place of ['"generator": {', '"scale": {', '"rules": [\n    {', '{\n  "schema"']) {
      expect(text).toContain(place);
      const spoilt = text.replace(place, (found) =>
        found.endsWith('"schema"')
          ? `{ "${name}": { "polluted": true },\n  "schema"`
          : `${found} "${name}": { "polluted": true },`,
      );
      expect(codesOf(spoilt)).toEqual(['unsafe-member']);
    }
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('is refused in parsed data too', () => {
    const tree = fixture('specification-si.json');
    tree.outputs[0].duty = JSON.parse('{ "on": 1, "off": 2, "__proto__": { "polluted": true } }');
    expect(safeParseSpecification(tree)).toMatchObject({
      ok: false,
      faults: [{ code: 'unsafe-member', path: 'outputs[0].duty.__proto__' }],
    });
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('are no documents', () => {
    for (const name of ['__proto__', 'constructor', 'toString']) {
      expect(codesOf(JSON.stringify({ schema: name, version: 1 }))).toEqual(['unknown-document']);
      expect(codesOf(JSON.stringify({ schema: `esu-limits/${name}`, version: 1 }))).toEqual(['unknown-document']);
    }
  });

  it('a prototype that is inherited says nothing', () => {
    const tree = Object.create(fixture('specification-si.json'));
    expect(safeParseSpecification(tree)).toMatchObject({ ok: false, faults: expect.anything() });
  });
});

describe('names that repeat', () => {
  it('are found with their place', () => {
    const text = fixtureText('specification-si.json').replace(
      '"ratedLoad": 500,',
      '"ratedLoad": 500,\n"ratedLoad": 400,',
    );
    expect(safeReadDocument(text)).toMatchObject({
      ok: false,
      faults: [{ code: 'duplicate', path: 'outputs[0].ratedLoad', hint: 'It stands in line 20, column 1.' }],
    });
  });

  it('are found however they are escaped', () => {
    expect(codesOf('{"a": 1, "\\u0061": 2}')).toEqual(['duplicate']);
  });

  it('may stand in objects beside each other', () => {
    expect(codesOf('[{"a": 1}, {"a": 1, "b": {"a": 1}}]')).toEqual(['wrong-type']);
  });
});

describe('values that throw', () => {
  const thrower = (): never => {
    throw new TypeError('no');
  };
  it.each([
    ['a getter', Object.defineProperty({}, 'schema', { get: thrower, enumerable: true })],
    ['a proxy', new Proxy({}, { get: thrower, ownKeys: thrower, getPrototypeOf: thrower })],
    ['a revoked proxy', revoked()],
    [
      'a tag',
      {
        get [Symbol.toStringTag]() {
          return thrower();
        },
      },
    ],
  ])('%s', (_, value) => {
    expect(safeParseSpecification(value)).toMatchObject({ ok: false, faults: [{ code: 'wrong-type' }] });
    expect(safeParseSpecification({ ...fixture('specification-si.json'), monitor: value })).toMatchObject({
      ok: false,
    });
  });

  function revoked(): unknown {
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    return proxy;
  }
});

it('an unknown document is told which are known', () => {
  const result = safeReadDocument('{"schema": "esu-limits/receipt", "version": 1}');
  const requirement = result.ok ? '' : (result.faults[0]?.requirement ?? '');
  for (const name of ['specification', 'bench', 'readings', 'plan', 'findings', 'record']) {
    expect(requirement).toContain(`esu-limits/${name}`);
  }
});

it('the throwing call carries the same faults', () => {
  const text = '{"schema": "esu-limits/bench", "version": 1}';
  const result = safeReadDocument(text);
  expect(() => readDocument(text)).toThrow(expect.objectContaining({ faults: result.ok ? [] : result.faults }));
});
