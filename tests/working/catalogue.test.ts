import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { recompute } from '../../src/model/index.js';
import { type CatalogueEntry, catalogue, sources, type UnitName } from '../../src/working/index.js';
import { current, load, power, valueBetween, voltage } from '../generators.js';
import type { Twin, Twins } from './twins/twin.js';

const math = create(all ?? {});

/** Physical range of a symbol by its unit; a twin states its own where the unit does not tell. */
const byUnit: Partial<Record<UnitName, fc.Arbitrary<number>>> = {
  W: power(),
  ohm: load(),
  A: current(),
  V: voltage(),
  VA: power(),
  Hz: valueBetween(1e5, 5e6),
  s: valueBetween(1e-7, 100),
  H: valueBetween(1e-9, 1e-4),
  F: valueBetween(1e-12, 1e-8),
  K: valueBetween(250, 400),
};

async function registeredTwins(): Promise<Map<string, Twin>> {
  const folder = new URL('./twins/', import.meta.url);
  const twins = new Map<string, Twin>();
  for (const file of readdirSync(folder).sort()) {
    if (file === 'twin.ts') continue;
    const module = (await import(new URL(file, folder).href)) as { twins: Twins };
    for (const [id, twin] of Object.entries(module.twins)) {
      if (twins.has(id)) throw new Error(`The formula ${id} has two twins, one of them in ${file}.`);
      twins.set(id, twin);
    }
  }
  return twins;
}

/** Symbols that an expression uses, without names of functions. */
function symbolsOf(expression: string): string[] {
  const names = new Set<string>();
  math.parse(expression).traverse((node, path, parent) => {
    if (math.isSymbolNode(node) && !(math.isFunctionNode(parent) && path === 'fn')) names.add(node.name);
  });
  names.delete('pi');
  return [...names].sort();
}

function inputsOf(entry: CatalogueEntry, twin: Twin): fc.Arbitrary<Readonly<Record<string, number>>> {
  if (twin.inputs !== undefined) return twin.inputs;
  const record: Record<string, fc.Arbitrary<number>> = {};
  for (const [symbol, unit] of Object.entries(entry.inputs)) {
    const values = twin.symbols?.[symbol] ?? byUnit[unit];
    if (values === undefined) throw new Error(`The twin of ${entry.id} must say how ${symbol} (${unit}) is drawn.`);
    record[symbol] = values;
  }
  return fc.record(record);
}

const twins = await registeredTwins();

describe('catalogue', () => {
  it('has no identifier twice', () => {
    expect(catalogue.length).toBeGreaterThan(0);
    expect(new Set(catalogue.map(({ id }) => id)).size).toBe(catalogue.length);
  });

  it('has a formula for every twin', () => {
    const ids = new Set(catalogue.map(({ id }) => id));
    expect([...twins.keys()].filter((id) => !ids.has(id))).toEqual([]);
  });

  describe.each(catalogue.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
    it('has an identifier in lower case with hyphens', () => {
      expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    });

    it('has a title and a meaning for the result and for every symbol, and no other', () => {
      expect(entry.title).toMatch(/\S/);
      const symbols = [...new Set([entry.symbol, ...Object.keys(entry.inputs)])].sort();
      expect(Object.keys(entry.meanings).sort()).toEqual(symbols);
      for (const meaning of Object.values(entry.meanings)) expect(meaning).toMatch(/\S/);
    });

    it('uses the symbols of its inputs, all of them and no other', () => {
      expect(symbolsOf(entry.expression)).toEqual(Object.keys(entry.inputs).sort());
    });

    it('names a source of the bibliography', () => {
      expect(Object.keys(sources)).toContain(entry.source);
    });

    it('gives what the fast code gives, within 1e-12', () => {
      const twin = twins.get(id);
      if (twin === undefined) throw new Error(`Register the fast twin of ${id} in tests/working/twins/.`);
      fc.assert(
        fc.property(inputsOf(entry, twin), (inputs) => {
          const expected = recompute({ expression: entry.expression, inputs });
          const fast = twin.fast(inputs);
          expect(Number.isFinite(fast)).toBe(true);
          expect(Math.abs(fast - expected)).toBeLessThanOrEqual(1e-12 * Math.abs(expected));
        }),
      );
    });
  });
});
