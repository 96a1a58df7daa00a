import { describe, expect, it } from 'vitest';
import { parseBench, parseReadings, parseSpecification, readDocument } from '../../src/schema/index.js';
import { fixture, fixtureText } from './fixtures.js';

const documents = [
  ['specification', parseSpecification],
  ['bench', parseBench],
  ['readings', parseReadings],
] as const;

describe.each(documents)('%s', (name, parse) => {
  it('in text with units equals the one in SI units', () => {
    expect(parse(fixture(`${name}-text.json`))).toEqual(fixture(`${name}-si.json`));
  });

  it('is read again as itself', () => {
    const once: unknown = parse(fixture(`${name}-text.json`));
    expect(parse(once)).toEqual(once);
  });

  it('leaves what it was given as it was', () => {
    const given = fixture(`${name}-text.json`);
    parse(given);
    expect(given).toEqual(fixture(`${name}-text.json`));
  });

  it('is found by what it says it is, after a byte-order mark too', () => {
    const text = fixtureText(`${name}-text.json`);
    expect(readDocument(text)).toEqual(parse(JSON.parse(text)));
    expect(readDocument(`\ufeff${text}`)).toEqual(readDocument(text));
  });

  it('takes members that are undefined for absent', () => {
    expect(parse({ ...fixture(`${name}-si.json`), note: undefined })).toEqual(
      (({ note: _, ...rest }) => rest)(fixture(`${name}-si.json`)),
    );
  });
});
