import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Bench, benchFaults, type Specification, specificationFaults } from '../../src/procedure/index.js';
import { safeParseBench, safeParseSpecification } from '../../src/schema/index.js';
import { fixture } from './fixtures.js';

/*
 * The core checks what members say of one another too, for programs that make their documents without a schema.
 * Nothing that it refuses may pass the schema.
 */

const setting = fc.constantFrom<number | string>(5, 20, 40, 80, '1', '2', '3');
const load = fc.constantFrom(50, 100, 200);
const id = fc.constantFrom('a', 'b', 'c');
const scale = fc.oneof(
  fc.record({ kind: fc.constant('watt'), minimum: fc.constantFrom(5, 20, 80), maximum: fc.constantFrom(20, 40, 80) }),
  fc.record({ kind: fc.constant('level'), levels: fc.array(fc.constantFrom('1', '2', '3'), { maxLength: 3 }) }),
);
const few = <T>(entry: fc.Arbitrary<T>): fc.Arbitrary<T[]> => fc.array(entry, { maxLength: 3 });
const points = fc.constant([
  { load: 50, power: 10 },
  { load: 200, power: 20 },
]);
const output = fc.record(
  {
    id,
    name: fc.constant('Invented output'),
    circuit: fc.constant('monopolar'),
    connection: fc.constant('Output to load'),
    scale,
    ratedPower: fc.constant(40),
    ratedLoad: fc.constant(100),
    curves: few(fc.record({ setting, points })),
    rows: few(
      fc.record(
        { setting, load, quantity: fc.constant('current'), lower: fc.constant(0.1), upper: fc.constant(0.2) },
        { requiredKeys: ['setting', 'load', 'quantity'] },
      ),
    ),
    points: few(fc.record({ setting, load, power: fc.constant(10) })),
    settings: fc.array(setting, { minLength: 1, maxLength: 3 }),
  },
  { requiredKeys: ['id', 'name', 'circuit', 'connection', 'scale', 'ratedPower', 'ratedLoad'] },
);
const rule = fc.record(
  {
    rule: fc.constantFrom('output-accuracy', 'output-monotone', 'peak-voltage', 'supply-interruption'),
    parameters: fc.dictionary(
      fc.constantFrom('above', 'below', 'fromFraction', 'sideways'),
      fc.constantFrom(0, 0.2, 1.5),
      { maxKeys: 2, noNullPrototype: true },
    ),
  },
  { requiredKeys: ['rule'] },
);

/** The schema says nothing of settings on a scale that is wrong itself: mending the scale comes first. */
function withoutConsequences(paths: readonly string[]): readonly string[] {
  const outputs = paths.filter((path) => path.includes('.scale')).map((path) => path.split('.')[0] as string);
  // An entry of `settings` is the setting itself, and has no member of that name.
  const places = paths.map((path) => path.replace(/(settings\[\d+\])\.setting$/, '$1'));
  return places.filter((path) => !path.includes('setting') || !outputs.includes(path.split('.')[0] as string));
}

it('a specification that the core refuses is refused by the schema, at the same places', () => {
  let refused = 0;
  fc.assert(
    fc.property(few(output), few(rule), (outputs, rules) => {
      const specification = { ...fixture('specification-si.json'), outputs, rules } as unknown as Specification;
      const core = withoutConsequences(specificationFaults(specification).map(({ path }) => path));
      const result = safeParseSpecification(specification);
      const schema = result.ok ? [] : result.faults.map(({ path }) => path);
      if (core.length > 0) refused++;
      expect(schema).toEqual(expect.arrayContaining([...core]));
    }),
    { numRuns: 1000 },
  );
  expect(refused).toBeGreaterThan(100);
});

it('a bench that the core refuses is refused by the schema, at the same places', () => {
  const quantity = fc.constantFrom('power', 'current', 'voltage');
  fc.assert(
    fc.property(
      few(fc.record({ id, resistance: load, powerRating: load })),
      few(fc.record({ quantity, ranges: fc.constant([{ maximum: 2, resolution: 0.1 }]) })),
      few(fc.record({ id, name: fc.constant('Leads'), circuits: fc.constant(['bipolar']) })),
      quantity,
      (loads, reads, leads, wanted) => {
        const bench = { ...fixture('bench-si.json'), loads, leads, reads: wanted } as unknown as Bench;
        (bench as unknown as { instrument: unknown }).instrument = { ...bench.instrument, reads };
        const core = benchFaults(bench).map(({ path }) => path);
        const result = safeParseBench(bench);
        const schema = result.ok ? [] : result.faults.map(({ path }) => path);
        // Without any function of the instrument, that is the fault, and not the wish to read one of them.
        expect(schema).toEqual(
          expect.arrayContaining(reads.length === 0 ? core.filter((path) => path !== 'reads') : core),
        );
      },
    ),
    { numRuns: 500 },
  );
});
