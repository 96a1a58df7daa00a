import fc from 'fast-check';
import { all, create, type Unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { unitNames } from '../../src/model/dimension/unit-names.js';
import { type ModelOptions, parseModel } from '../../src/model/index.js';
import { faultsOf } from './faults-of.js';

const math = create(all ?? {});

const faults = (expression: string, options: ModelOptions) => faultsOf(() => parseModel(expression, options));
const units = { I: 'A', R: 'ohm', V: 'V', P: 'W', T: 'K', T0: 'K', a: '1/K', f: 'Hz', L: 'H', C: 'F', n: '1' };

/** Units of the symbols that an expression uses. */
function unitsFor(expression: string): Record<string, string> {
  const { symbols } = parseModel(expression);
  return Object.fromEntries(symbols.map((symbol) => [symbol, units[symbol as keyof typeof units]]));
}

describe('the unit of a model', () => {
  it.each([
    ['I^2 * R * (1 + a*(T - T0))', 'W'],
    ['V^2 / (R * (1 + a*(T - T0)))', 'W'],
    ['sqrt(P / R)', 'A'],
    ['sqrt(P * R)', 'V'],
    ['V / I', 'ohm'],
    ['R * C', 's'],
    ['1 / (2 * pi * sqrt(L * C))', 'Hz'],
    ['2 * pi * f * L', 'ohm'],
    ['sqrt(R^2 + (2*pi*f*L)^2)', 'ohm'],
    ['hypot(R, 2 * pi * f * L)', 'ohm'],
    ['atan2(2 * pi * f * L, R)', '1'],
    ['exp(-R * C * f)', '1'],
    ['I^2', 'A^2'],
    ['1 / T', '1/K'],
    ['P / T', 'W/K'],
    ['P * R', 'V^2'],
    ['cbrt(R^3)', 'ohm'],
    ['R^(3/2) / sqrt(R)', 'ohm'],
    ['pow(R, 0.5) * square(I) * R^0.5', 'W'],
    ['V / f^0.5', 'kg m^2/(s^(5/2) A)'],
    ['max(P - I^2 * R, 0)', 'W'],
    ['abs(T - T0) + 0', 'K'],
    ['min(V / R, I)', 'A'],
    ['I * (V / R)^0', 'A'],
    ['n^n * 2^n * e^(-n)', '1'],
    ['0', '1'],
    ['2', '1'],
    ['L / R^2', 'F'],
    ['P^2 / T', 'kg^2 m^4/(s^6 K)'],
  ])('%s comes to %s', (expression, unit) => {
    expect(parseModel(expression, { units: unitsFor(expression) }).unit).toBe(unit);
  });

  it('is the one that was asked for, in the spelling of the list', () => {
    expect(parseModel('V * I', { units: { V: 'V', I: 'A' }, unit: 'VA' }).unit).toBe('VA');
    expect(parseModel('V * I', { units: { V: 'V', I: 'A' }, unit: 'J/s' }).unit).toBe('J/s');
    expect(parseModel('V / I', { units: { V: 'V', I: 'A' }, unit: 'Ω' }).unit).toBe('ohm');
    expect(parseModel('x', { units: { x: 'rad' }, unit: '1' }).unit).toBe('1');
  });

  it('is that of a symbol where one has it', () => {
    expect(parseModel('2 * x', { units: { x: 'A^2 s' } }).unit).toBe('A^2 s');
    expect(parseModel('x + y', { units: { x: 'VA', y: 'V A' } }).unit).toBe('VA');
    expect(parseModel('x - y', { units: { x: '1/s', y: 'Hz' } }).unit).toBe('1/s');
  });

  it('divides that of a sensitivity by those of its symbols', () => {
    const model = parseModel('I^2 * R * (1 + a*(T - T0))', { units: unitsFor('I*R*a*T*T0'), unit: 'W' });
    expect(model.derivative('I').unit).toBe('W/A');
    expect(model.derivative('R').unit).toBe('W/ohm');
    expect(model.derivative('T').unit).toBe('W/K');
    expect(model.derivative('a').unit).toBe('W K');
    expect(model.secondDerivative('I', 'I').unit).toBe('W/A^2');
    expect(model.secondDerivative('R', 'T').unit).toBe('W/(ohm K)');
    expect(parseModel('x * y', { units: { x: 'V', y: '1' } }).derivative('x').unit).toBe('1');
    expect(parseModel('x * y').derivative('x')).not.toHaveProperty('unit');
  });

  it.each([...unitNames.keys()].filter((name) => name !== 'sr'))(
    '%s has the base units that mathjs gives it',
    (name) => {
      // mathjs has no var and no VA. (It has no sr either.)
      const other: Record<string, string> = { VA: 'V A', var: 'V A' };
      const [mass, length, time, current, temperature, luminous, amount] = (
        math.unit(other[name] ?? name) as Unit & {
          dimensions: number[];
        }
      ).dimensions;
      const exponents = [mass, length, time, current, temperature, amount, luminous];
      expect(unitNames.get(name)).toEqual(exponents.map((numerator) => ({ numerator, denominator: 1 })));
    },
  );
});

describe('dimensions that do not fit', () => {
  it.each([
    ['I + R', 'dimensions-differ', 'I + R', 'I is in A, R is in ohm'],
    ['I^2 * R + V * (T - a)', 'dimensions-differ', 'T - a', 'T is in K, a is in 1/K'],
    ['I - 1', 'dimensions-differ', 'I - 1', '1 is in 1'],
    ['max(V, I, V)', 'dimensions-differ', 'max(V, I, V)', 'I is in A'],
    ['hypot(R, L)', 'dimensions-differ', 'hypot(R, L)', 'L is in H'],
    ['atan2(R, V)', 'dimensions-differ', 'atan2(R, V)', 'V is in V'],
    ['exp(T)', 'dimension-not-plain', 'exp(T)', 'where T stands, which is in K'],
    ['log10(P / V)', 'dimension-not-plain', 'log10(P / V)', 'P / V stands, which is in A'],
    ['sin(2 * pi * f)', 'dimension-not-plain', 'sin(2 * pi * f)', 'is in Hz'],
    ['2^V', 'dimension-not-plain', '2^V', 'is in V'],
    ['n^T', 'dimension-not-plain', 'n^T', 'is in K'],
    ['V^n', 'exponent-not-plain', 'V^n', 'must have a plain number of few digits as exponent, since V is in V'],
    ['V^pi', 'exponent-not-plain', 'V^pi', 'V is in V'],
    ['pow(V, n + 1)', 'exponent-not-plain', 'pow(V, n + 1)', 'V is in V'],
    ['V^1.23456789012345678', 'exponent-not-plain', 'V^1.2345678901234567', 'few digits'],
  ])('%s: %s', (expression, code, part, text) => {
    const found = faults(expression, { units: unitsFor(expression) });
    expect(found).toMatchObject([{ code, path: 'expression', received: JSON.stringify(part) }]);
    expect(found[0]?.requirement).toContain(text);
  });

  it('are all named at once, each at the smallest part', () => {
    const expression = 'exp(T) * (I + R) + sqrt(V + P)';
    expect(faults(expression, { units: unitsFor(expression) }).map(({ received }) => received)).toEqual([
      '"exp(T)"',
      '"I + R"',
      '"V + P"',
    ]);
  });

  it('are faults of the result too', () => {
    expect(faults('V / I', { units: { V: 'V', I: 'A' }, unit: 'W' })).toMatchObject([
      { code: 'unit-mismatch', path: 'unit', requirement: 'must be the unit of the expression, which comes to ohm' },
    ]);
    expect(faults('V / I', { unit: 'ohm' })).toMatchObject([{ code: 'missing-member', path: 'units' }]);
  });

  it('cannot be hidden in roots without end', () => {
    const nested = `${'sqrt('.repeat(55)}V${')'.repeat(55)}`;
    expect(faults(nested, { units: { V: 'V' } })).toMatchObject([{ code: 'exponent-not-plain' }]);
    expect(faults(nested, { units: { V: 'V' }, unit: 'V' })).toMatchObject([{ code: 'exponent-not-plain' }]);
  });
});

describe('units of the symbols', () => {
  it('are needed for each symbol, and for no other', () => {
    const found = faults('I^2 * R * To', { units: { I: 'A', R: 'ohm', T0: 'K' } });
    expect(found.map(({ code, path, hint }) => [code, path, hint])).toEqual([
      ['symbol-unused', 'units.T0', 'Is To meant?'],
      ['unit-missing', 'units.To', 'Is T0 meant?'],
    ]);
  });

  it.each([
    ['W', 'W'],
    ['1', '1'],
    ['1/K', '1/K'],
    ['K^-1', '1/K'],
    ['A^2 s', 'A^2 s'],
    ['A^2*s', 'A^2 s'],
    ['A^2 · s', 'A^2 s'],
    ['W/(m K)', 'W/(m K)'],
    ['W / ( m * K )', 'W/(m K)'],
    ['V/Hz^(1/2)', 'V/Hz^(1/2)'],
    ['m m', 'm^2'],
    ['m/m', '1'],
    ['kg m^2 s^-3', 'kg m^2/s^3'],
    ['\u2126', 'ohm'],
    ['1/s', '1/s'],
  ])('are read: %s', (text, printed) => {
    expect(parseModel('x', { units: { x: text }, unit: text }).unit).toBe(printed);
    expect(parseModel('x', { units: { x: printed }, unit: text }).unit).toBe(printed);
  });

  it.each([
    ['mA', 'unit-unknown', 'without prefix: write A,'],
    ['kΩ', 'unit-unknown', 'write ohm,'],
    ['kohm', 'unit-unknown', 'write ohm,'],
    ['MHz', 'unit-unknown', 'write Hz,'],
    ['µF', 'unit-unknown', 'write F,'],
    ['degC', 'unit-unknown', 'write K,'],
    ['g', 'unit-unknown', 'write kg,'],
    ['min', 'unit-unknown', 'write s,'],
    ['volt', 'unit-unknown', ''],
    ['constructor', 'unit-unknown', ''],
    ['°C', 'text-malformed', 'Temperatures are in kelvins'],
    ['%', 'text-malformed', 'write 1'],
    ['W/m/K', 'text-malformed', 'one pair of parentheses'],
    ['W/m K', 'text-malformed', 'one pair of parentheses'],
    ['', 'text-malformed', ''],
    ['2 A', 'text-malformed', ''],
    ['A^0', 'text-malformed', ''],
    ['A^0.5', 'text-malformed', ''],
    ['A^(1/0)', 'text-malformed', ''],
    ['A + V', 'text-malformed', ''],
    [`${'A '.repeat(50)}A`, 'text-malformed', ''],
  ])('are refused: %s', (text, code, hint) => {
    const found = faults('x', { units: { x: text } });
    expect(found).toMatchObject([{ code, path: 'units.x' }]);
    expect(found[0]?.hint ?? '').toContain(hint);
  });

  it('must be text', () => {
    expect(faults('x', { units: { x: 5 as never } })).toMatchObject([{ code: 'wrong-type', path: 'units.x' }]);
    expect(faults('x', { units: { x: 'V' }, unit: {} as never })).toMatchObject([{ code: 'wrong-type', path: 'unit' }]);
  });
});

describe('dimensions of random models', () => {
  const leaf = fc.constantFrom('I', 'R', 'V', 'P', 'T', 'a', 'f', 'L', 'C', 'n', '2');
  const { expression } = fc.letrec<{ expression: string }>((tie) => ({
    expression: fc.oneof(
      { maxDepth: 4 },
      leaf,
      fc
        .tuple(tie('expression'), fc.constantFrom('*', '/'), tie('expression'))
        .map(([a, op, b]) => `(${a} ${op} ${b})`),
      fc.tuple(tie('expression'), fc.constantFrom('2', '-1', '3', '-2')).map(([a, n]) => `(${a})^${n}`),
      tie('expression').map((a) => `sqrt((${a})^2)`),
      fc.tuple(tie('expression'), tie('expression')).map(([a, b]) => `(${a} + ${b})`),
    ),
  }));

  it('are accepted or refused as the units of mathjs are', () => {
    let accepted = 0;
    let refusedCount = 0;
    fc.assert(
      fc.property(expression, (text) => {
        const symbols = parseModel(text).symbols;
        // Values without meaning, other than 1 so that none is taken for a plain number, in SI units.
        const scope = Object.fromEntries(
          symbols.map((symbol, i) => [
            symbol,
            symbol === 'n' ? 1.5 : math.evaluate(`${1.25 + i} * (${units[symbol as 'I']})`),
          ]),
        );
        let oracle: unknown;
        try {
          oracle = math.evaluate(text, scope);
        } catch {
          oracle = undefined;
        }
        const found = faults(text, { units: unitsFor(text) });
        if (oracle === undefined) {
          refusedCount++;
          expect(found.map(({ code }) => code)).toContain('dimensions-differ');
          return;
        }
        accepted++;
        const { unit = '' } = parseModel(text, { units: unitsFor(text) });
        const dimensionsOf = (value: unknown) => (typeof value === 'number' ? [] : (value as Unit).dimensions);
        const trimmed = (dimensions: readonly number[]) =>
          dimensions
            .map((n) => n + 0)
            .join(' ')
            .replace(/^[0 ]+$/, '');
        const named = unit === '1' ? [] : dimensionsOf(math.evaluate(unit));
        expect(trimmed(named)).toBe(trimmed(dimensionsOf(oracle)));
      }),
      { numRuns: 400, seed: 31 },
    );
    expect(accepted).toBeGreaterThan(100);
    expect(refusedCount).toBeGreaterThan(50);
  });
});
