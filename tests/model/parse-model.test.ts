import { describe, expect, it } from 'vitest';
import { type ModelOptions, parseModel } from '../../src/model/index.js';
import { faultsOf } from './faults-of.js';

const shortFaults = (expression: string, options?: ModelOptions) =>
  faultsOf(() => parseModel(expression, options)).map(({ code, path, hint }) => [code, path, ...(hint ? [hint] : [])]);

describe('a model', () => {
  const power = parseModel('I^2 * R * (1 + a*(T - T0))');
  const inputs = { I: 0.5, R: 500, a: 0.001, T: 303, T0: 293 };

  it('says what it was read from and which symbols it uses', () => {
    expect(power.expression).toBe('I^2 * R * (1 + a*(T - T0))');
    expect(power.symbols).toEqual(['I', 'R', 'T', 'T0', 'a']);
    expect(power).not.toHaveProperty('unit');
    expect(parseModel(' 1 + 1 ').expression).toBe('1 + 1');
  });

  it('is read-only', () => {
    expect(Object.isFrozen(power)).toBe(true);
    expect(Object.isFrozen(power.symbols)).toBe(true);
    expect(Object.isFrozen(power.derivative('I'))).toBe(true);
    expect(Object.isFrozen(power.derivative('I').symbols)).toBe(true);
  });

  it('is evaluated at named inputs; further ones are left alone', () => {
    expect(power.evaluate(inputs)).toBe(126.25);
    expect(power.evaluate({ ...inputs, humidity: Number.NaN })).toBe(126.25);
    expect(parseModel('2^-3 + pi - pi').evaluate({})).toBe(0.125);
  });

  it('is a plain function of numbers, in the order that is asked for', () => {
    const inOrder = power.asFunction(['R', 'I', 'T', 'a', 'T0']);
    expect(inOrder(500, 0.5, 303, 0.001, 293)).toBe(126.25);
    const shared = power.asFunction(['humidity', 'I', 'R', 'a', 'T', 'T0']);
    expect(shared(60, 0.5, 500, 0.001, 303, 293)).toBe(126.25);
  });

  it('has members that can be passed on', () => {
    const { evaluate, asFunction, derivative } = power;
    expect([inputs].map(evaluate)).toEqual([126.25]);
    expect(asFunction(power.symbols)(0.5, 500, 303, 293, 0.001)).toBe(126.25);
    expect(derivative('R').evaluate(inputs)).toBe(0.2525);
  });

  it('keeps the meaning of signs and powers that mathematics has', () => {
    const at = (expression: string, x = 3) => parseModel(expression).evaluate({ x });
    expect(at('-x^2')).toBe(-9);
    expect(at('(-x)^2')).toBe(9);
    expect(at('2^x^2')).toBe(512);
    expect(at('x - 2 - 1')).toBe(0);
    expect(at('12 / x / 2')).toBe(2);
    expect(at('12 / x * 2')).toBe(8);
    expect(at('x^-1 * x')).toBe(1);
    expect(at('+x')).toBe(3);
    expect(at('--x')).toBe(3);
    expect(at('2 * -x')).toBe(-6);
    expect(at('1e3 * x + .5')).toBe(3000.5);
    expect(at('0^0 + 0 * x')).toBe(1);
  });

  it('knows every function of the list', () => {
    const at = (expression: string) => parseModel(expression).evaluate({});
    expect(at('abs(-2) + square(3) + pow(2, 3)')).toBe(19);
    expect(at('sqrt(16) + cbrt(-27)')).toBe(1);
    expect(at('log(e) + log10(1000) + log2(8)')).toBeCloseTo(7, 14);
    expect(at('exp(0) + expm1(0) + log1p(0)')).toBe(1);
    expect(at('sin(pi / 2) + cos(0) + tan(0)')).toBe(2);
    expect(at('asin(1) + acos(1) + atan(1) + atan2(-1, -1)')).toBeCloseTo(0, 14);
    expect(at('sinh(0) + cosh(0) + tanh(0) + asinh(0) + acosh(1) + atanh(0)')).toBe(1);
    expect(at('hypot(3, 4) + hypot(1, 2, 2) + min(3, 1, 2) + max(3, 1, 2)')).toBe(12);
  });
});

describe('a value that does not exist', () => {
  it.each([
    ['sqrt(x)', -1, 'outside-domain', 'sqrt(x) must have a value at the inputs; it would be that of sqrt(-1)'],
    ['1 / (x - x)', 2, 'outside-domain', '1 / (x - x) must have'],
    ['log(x)', 0, 'outside-domain', 'log(0)'],
    ['log(x)', -1, 'outside-domain', 'log(-1)'],
    ['x^0.5', -4, 'outside-domain', '-4 ^ 0.5'],
    ['x^(1/3)', -8, 'outside-domain', 'x^(1 / 3)'],
    ['x^-1', 0, 'outside-domain', '0 ^ -1'],
    ['pow(x, -1)', 0, 'outside-domain', 'pow(0, -1)'],
    ['asin(x)', 1.1, 'outside-domain', 'asin(1.1)'],
    ['acosh(x)', 0.9, 'outside-domain', 'acosh(0.9)'],
    ['atanh(x)', 1, 'outside-domain', 'atanh(1)'],
    ['exp(x)', 1000, 'result-out-of-range', 'exp(x) must be a number of ordinary size'],
    ['x * x', 1e200, 'result-out-of-range', 'x * x'],
    ['x^2', 1e200, 'result-out-of-range', 'x^2'],
    ['x / 1e-10', 1e300, 'result-out-of-range', 'x / 1e-10'],
  ])('%s at %s: %s', (expression, x, code, text) => {
    const faults = faultsOf(() => parseModel(expression).evaluate({ x }));
    expect(faults).toMatchObject([{ code, path: 'expression', received: `x = ${x}` }]);
    expect(faults[0]?.requirement).toContain(text);
  });

  it.each([
    ['1 / (1 / x)', 0],
    ['exp(-1 / x^2)', 0],
    ['exp(log(x))', 0],
    ['atan(1 / x)', 0],
    ['tanh(1 / x)', 0],
    ['max(log(x), 1)', 0],
    ['min(1 / x, 1)', 0],
    ['min(sqrt(x), 2)', -1],
    ['sqrt(x)^0', -1],
    ['1^sqrt(x)', -1],
    ['atan2(1 / x, 1)', 0],
    ['hypot(1 / x, 1)', 0],
    ['expm1(log(x))', 0],
    ['2^log(x)', 0],
    ['pow(2, log(x))', 0],
    ['0 * log(x)', 0],
    ['1 / cosh(1 / x)', 0],
  ])('is not hidden by what is made of it: %s at %s', (expression, x) => {
    expect(faultsOf(() => parseModel(expression).evaluate({ x }))).toMatchObject([{ code: 'outside-domain' }]);
  });

  it('shows the draw', () => {
    const draw = parseModel('sqrt(P / R)').asFunction(['P', 'R']);
    expect(draw(100, 4)).toBe(5);
    expect(() => draw(-1e-3, 500)).toThrow('received P = -0.001, R = 500; sqrt(P / R) must have a value');
  });

  it('names the inputs of a model with many in part', () => {
    const names = Array.from({ length: 15 }, (_, i) => `x${i}`);
    const model = parseModel(`log(${names.map((name) => `${name} * 0`).join(' + ')})`);
    const inputs = Object.fromEntries(names.map((name) => [name, 1]));
    expect(() => model.evaluate(inputs)).toThrow(/x0 = 1, x1 = 1, .*, …; log/);
  });
});

describe('inputs', () => {
  const model = parseModel('V / R_0 + alpha');

  it('are all named that are missing or no numbers', () => {
    const faults = faultsOf(() => model.evaluate({ V: Number.NaN, R0: 50 }));
    expect(faults.map(({ code, path }) => [code, path])).toEqual([
      ['missing-member', 'inputs.R_0'],
      ['not-a-number', 'inputs.V'],
      ['missing-member', 'inputs.alpha'],
    ]);
    expect(faults[0]?.hint).toBe('Is R0 meant?');
  });

  it.each([[Number.POSITIVE_INFINITY], ['5'], [null], [undefined], [5n], [{}]])('must be finite numbers: %s', (V) => {
    const inputs = { V: V as number, R_0: 1, alpha: 0 };
    expect(faultsOf(() => model.evaluate(inputs))).toMatchObject([{ code: 'not-a-number', path: 'inputs.V' }]);
    const asked = faultsOf(() => model.asFunction(['V', 'R_0', 'alpha'])(V as number, 1, 0));
    expect(asked).toMatchObject([{ code: 'not-a-number', path: 'V' }]);
  });

  it('must be an object, or as many numbers as were named', () => {
    expect(faultsOf(() => model.evaluate(null as never))).toMatchObject([{ code: 'wrong-type', path: 'inputs' }]);
    expect(faultsOf(() => model.asFunction(['V', 'R_0', 'alpha'])(1, 2))).toMatchObject([{ code: 'wrong-count' }]);
  });

  it('have an order that names each symbol once', () => {
    expect(faultsOf(() => model.asFunction(['V', 'V', 'alpha'])).map(({ code, path }) => [code, path])).toEqual([
      ['duplicate', 'order[1]'],
      ['missing-member', 'order'],
    ]);
    expect(faultsOf(() => model.asFunction('V' as never))).toMatchObject([{ code: 'wrong-type', path: 'order' }]);
    expect(faultsOf(() => model.asFunction([1] as never))).toMatchObject([
      { code: 'wrong-type' },
      ...Array(3).fill({}),
    ]);
  });
});

describe('symbols', () => {
  it('are held to the list, all faults at once', () => {
    expect(shortFaults('I^2 * R * (1 + a*(T - To))', { symbols: ['I', 'R', 'a', 'T', 'T0'] })).toEqual([
      ['symbol-unknown', 'expression', 'Is T0 meant?'],
      ['symbol-unused', 'symbols[4]', 'Is To meant?'],
    ]);
    expect(shortFaults('i^2 * R', { symbols: ['I', 'R', 'P', 'R'] })).toEqual([
      ['symbol-unknown', 'expression', 'Is I meant?'],
      ['symbol-unused', 'symbols[0]', 'Is i meant?'],
      ['symbol-unused', 'symbols[2]'],
      ['duplicate', 'symbols[3]'],
    ]);
    expect(shortFaults('x', { symbols: [] })).toEqual([['symbol-unknown', 'expression']]);
    expect(shortFaults('x + y', { symbols: ['y', 'x'] })).toEqual([]);
  });

  it('are not named like a function, a constant or a member of every object', () => {
    expect(shortFaults('sin + 1')).toEqual([['symbol-unsuitable', 'expression']]);
    expect(shortFaults('floor * 2')).toEqual([['symbol-unsuitable', 'expression']]);
    expect(
      shortFaults('x', { symbols: ['x', 'pi', 'sqrt', 'e', 'valueOf', '', 'T 0', '_x', 'x_', 'a__b', '2x'] }),
    ).toEqual(Array.from({ length: 10 }, (_, i) => ['symbol-unsuitable', `symbols[${i + 1}]`]));
    expect(shortFaults('x', { symbols: ['x', 5 as never] })).toEqual([['symbol-unsuitable', 'symbols[1]']]);
    expect(shortFaults('x'.repeat(41))).toEqual([['symbol-unsuitable', 'expression']]);
    expect(shortFaults('x__y + x_')).toEqual([
      ['symbol-unsuitable', 'expression'],
      ['symbol-unsuitable', 'expression'],
    ]);
  });

  it('that a model does not have cannot be asked for', () => {
    const model = parseModel('I^2 * T_0');
    expect(faultsOf(() => model.derivative('T0'))).toMatchObject([
      { code: 'symbol-unknown', path: 'symbol', requirement: 'must be one of I, T_0', hint: 'Is T_0 meant?' },
    ]);
    expect(faultsOf(() => model.secondDerivative('I', 'R'))).toMatchObject([
      { code: 'symbol-unknown', path: 'second' },
    ]);
    expect(faultsOf(() => model.sensitivityTex('R'))).toMatchObject([{ code: 'symbol-unknown', path: 'symbol' }]);
    expect(faultsOf(() => model.derivative(undefined as never))).toMatchObject([{ code: 'symbol-unknown' }]);
    expect(faultsOf(() => parseModel('2 * 3').derivative('x'))).toMatchObject([{ code: 'symbol-unknown' }]);
  });

  it('may be any letters, with numbers and indices', () => {
    for (const name of ['I', 'i', 'E', 'T0', 'T_0', 'R_12', 'alpha', 'delta_t', 'U_lower_max', 'x1y2', 'PI', 'Exp']) {
      expect(parseModel(`2 * ${name}`).evaluate({ [name]: 3 })).toBe(6);
    }
  });
});

describe('options', () => {
  it.each([
    [{ symbols: 'x' }, 'symbols'],
    [{ units: 'V' }, 'units'],
    [{ units: ['V'] }, 'units'],
    [{ units: null }, 'units'],
    [null, 'options'],
    ['x', 'options'],
  ])('must be of their type: %j', (options, path) => {
    expect(faultsOf(() => parseModel('x', options as never))).toMatchObject([{ code: 'wrong-type', path }]);
  });

  it('name a result that is a symbol of its own', () => {
    expect(shortFaults('I * R', { result: 'I' })).toEqual([['duplicate', 'result']]);
    expect(shortFaults('I * R', { result: 'sqrt' })).toEqual([['symbol-unsuitable', 'result']]);
    expect(shortFaults('I * R', { result: '\\input{x}' })).toEqual([['symbol-unsuitable', 'result']]);
  });
});
