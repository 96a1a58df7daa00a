import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Model,
  normalInput,
  type PowerColumnsInput,
  powerColumns,
  propagate,
  type UncertainColumn,
} from '../../src/uncertainty/index.js';
import { current, load, voltage } from '../generators.js';

const relative = () => fc.double({ min: 1e-5, max: 0.1, noNaN: true });
const degrees = () => fc.double({ min: 1, max: 200, noNaN: true });

const ways: readonly (readonly [string, 'current' | 'voltage', 'load' | 'current', Model<'a' | 'b'>])[] = [
  ['I²R', 'current', 'load', { arithmetic: (x, m) => m.multiply(m.power(x.a, 2), x.b) }],
  ['V²/R', 'voltage', 'load', { arithmetic: (x, m) => m.divide(m.power(x.a, 2), x.b) }],
  ['V·I', 'voltage', 'current', { arithmetic: (x, m) => m.multiply(x.a, x.b) }],
];
const generators = { current, voltage, load };

const column = (rows: readonly (readonly [number, number, number])[]): UncertainColumn => ({
  value: Float64Array.from(rows, ([x]) => x),
  standardUncertainty: Float64Array.from(rows, ([x, u]) => x * u),
  degreesOfFreedom: Float64Array.from(rows, ([, , nu]) => nu),
});

describe('powers in columns', () => {
  it.each(ways)('by %s are those of the propagation, row by row', (_, first, second, model) => {
    const row = fc.tuple(
      fc.tuple(generators[first](), relative(), degrees()),
      fc.tuple(generators[second](), relative(), degrees()),
    );
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), (rows) => {
        const input: PowerColumnsInput = {
          [first]: column(rows.map(([a]) => a)),
          [second]: column(rows.map(([, b]) => b)),
        };
        const found = powerColumns(input);
        rows.forEach(([[a, ua, na], [b, ub, nb]], i) => {
          const expected = propagate(model, {
            a: normalInput({ value: a, standardUncertainty: a * ua, degreesOfFreedom: na }),
            b: normalInput({ value: b, standardUncertainty: b * ub, degreesOfFreedom: nb }),
          });
          expect((found.value[i] as number) / expected.value).toBeCloseTo(1, 14);
          expect((found.standardUncertainty[i] as number) / expected.standardUncertainty).toBeCloseTo(1, 14);
          expect((found.degreesOfFreedom[i] as number) / (expected.degreesOfFreedom as number)).toBeCloseTo(1, 13);
        });
      }),
    );
  });

  const good = (): { current: UncertainColumn; load: UncertainColumn } => ({
    current: { value: Float64Array.of(0.5, 0.6, 0.7), standardUncertainty: Float64Array.of(0.01, 0.01, 0.01) },
    load: { value: Float64Array.of(400, 300, 200), standardUncertainty: Float64Array.of(1, 2, 3) },
  });

  it('without finite degrees of freedom, or without uncertainty, have infinite ones', () => {
    const none = { value: Float64Array.of(2), standardUncertainty: Float64Array.of(0), degreesOfFreedom: 3 };
    expect([...powerColumns(good()).degreesOfFreedom]).toEqual(Array(3).fill(Number.POSITIVE_INFINITY));
    expect(powerColumns({ current: none, voltage: none })).toEqual({
      value: Float64Array.of(4),
      standardUncertainty: Float64Array.of(0),
      degreesOfFreedom: Float64Array.of(Number.POSITIVE_INFINITY),
    });
  });

  it('are good at the ends of their range', () => {
    for (const x of [1e-50, 1e50]) {
      for (const u of [0, 1e-50, 1e50]) {
        const each = { value: Float64Array.of(x), standardUncertainty: Float64Array.of(u), degreesOfFreedom: 2 };
        for (const input of [
          { current: each, load: each },
          { voltage: each, load: each },
          { voltage: each, current: each },
        ]) {
          const found = powerColumns(input);
          expect(Number.isFinite(found.value[0])).toBe(true);
          expect(Number.isFinite(found.standardUncertainty[0])).toBe(true);
          expect(found.degreesOfFreedom[0]).toBeGreaterThanOrEqual(2);
        }
      }
    }
  });

  it('are written into columns that are given', () => {
    const out = {
      value: new Float64Array(3),
      standardUncertainty: new Float64Array(3),
      degreesOfFreedom: new Float64Array(3),
    };
    const found = powerColumns(good(), out);
    expect(found.value).toBe(out.value);
    expect(found).toEqual(powerColumns(good()));
  });

  it('of no rows are none', () => {
    const none = { value: new Float64Array(), standardUncertainty: new Float64Array() };
    expect(powerColumns({ current: none, load: none }).value).toHaveLength(0);
  });

  const withRow = (name: 'value' | 'standardUncertainty', i: number, x: number): PowerColumnsInput => {
    const { current: amperes, load: ohms } = good();
    const changed = Float64Array.from(ohms[name]);
    changed[i] = x;
    return { current: amperes, load: { ...ohms, [name]: changed } };
  };
  const { current: amperes, load: ohms } = good();

  it.each<readonly [string, string, PowerColumnsInput]>([
    ['out-of-range', 'load.value[1]', withRow('value', 1, -300)],
    ['out-of-range', 'load.value[0]', withRow('value', 0, 0)],
    ['not-a-number', 'load.value[2]', withRow('value', 2, Number.NaN)],
    ['out-of-range', 'load.standardUncertainty[2]', withRow('standardUncertainty', 2, -1)],
    ['not-a-number', 'load.standardUncertainty[1]', withRow('standardUncertainty', 1, Number.POSITIVE_INFINITY)],
    ['wrong-count', 'input', { load: ohms }],
    ['wrong-count', 'input', { load: ohms, current: amperes, voltage: amperes }],
    ['wrong-count', 'load.value', { current: amperes, load: { ...ohms, value: new Float64Array(2) } }],
    ['wrong-type', 'load.value', { current: amperes, load: { ...ohms, value: [1, 2, 3] as never } }],
    ['wrong-type', 'current.value', { current: {} as never, load: ohms }],
    ['out-of-range', 'load.degreesOfFreedom', { current: amperes, load: { ...ohms, degreesOfFreedom: 0 } }],
    [
      'out-of-range',
      'load.degreesOfFreedom[1]',
      { current: amperes, load: { ...ohms, degreesOfFreedom: Float64Array.of(3, 0, 3) } },
    ],
  ])('are refused with %s at %s', (code, path, input) => {
    expect(() => powerColumns(input)).toThrow(expect.objectContaining({ code, path }));
  });

  it('are not written over what they are made from', () => {
    const input = good();
    const spare = () => new Float64Array(3);
    const out = { value: input.load.value, standardUncertainty: spare(), degreesOfFreedom: spare() };
    expect(() => powerColumns(input, out)).toThrow(
      expect.objectContaining({ code: 'out-of-range', path: 'out.value' }),
    );
    const twice = spare();
    const double = { value: twice, standardUncertainty: twice, degreesOfFreedom: spare() };
    expect(() => powerColumns(input, double)).toThrow(expect.objectContaining({ path: 'out.standardUncertainty' }));
  });
});
