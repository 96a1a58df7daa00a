import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError, codeList } from '../../src/checks/index.js';
import { expressionTex, parseModel, recompute } from '../../src/model/index.js';
import { math } from '../../src/model/math.js';

function codesOf(work: () => unknown): readonly string[] {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return error.faults.map(({ code }) => code);
    throw error;
  }
  return [];
}

/** Names of everything that an expression could hope to change for others. */
function surroundings(): unknown {
  const places = [
    globalThis,
    Object,
    Object.prototype,
    Function.prototype,
    Array.prototype,
    String.prototype,
    Number.prototype,
    Map.prototype,
    Math,
    math,
  ];
  return [places.map((place) => Reflect.ownKeys(place).map(String)), math.config({})];
}

const refused: readonly (readonly [string, readonly string[]])[] = [
  ['an assignment', ['x = 1', 'x := 1', 'a = b = 2', 'x += 1']],
  ['the definition of a function', ['f(x) = x', 'f(x) = x; f(2)', '_(x) = x']],
  ['a member', ['x.constructor', 'x.y', 'x?.y', 'sqrt.constructor("return 1")()', 'x . y', '(x).y']],
  ['an index', ['x[1]', 'x["constructor"]', 'x[1:2]', '[1, 2][1]']],
  ['a range', ['1:3', '1:2:3', '(1:3) * x', ':']],
  ['a matrix or an object', ['[1, 2]', '[[1], [2]]', '[]', '{}', '{a: 1}', "x'"]],
  ['text', ['"text"', "'text'", '`text`', '"a" + x', 'x + "\\u0061"']],
  ['a unit or a percentage', ['2 m', '5 cm to inch', 'x to W', 'x in W', '20 %', '20%', '5 % x']],
  ['a condition or a comparison', ['x > 1 ? 2 : 3', 'x > 1', 'x == 1', 'x != 1', 'x <= 1', 'x < y < z', 'x ?? 1']],
  ['logic and bits', ['x and y', 'not x', 'x or y', 'x xor y', 'x & y', 'x | y', '~x', 'x << 2', 'x mod 2', 'true']],
  ['more than one expression', ['x; y', 'x\ny', 'x;', 'x\r\ny', '\nx', 'x\u2028y', 'x # comment', '// x', '/* x */ x']],
  [
    'what mathjs can do besides',
    [
      'import("x")',
      'createUnit("x")',
      'createUnit(x)',
      'evaluate("1")',
      'evaluate(x)',
      'parse(x)',
      'parser()',
      'compile(x)',
      'config(x)',
      'typed(x)',
      'simplify(x)',
      'derivative(x, x)',
      'resolve(x)',
      'help(x)',
      'chain(x)',
      'print(x)',
      'reviver(x)',
      'map(x, sqrt)',
      'random()',
      'randomInt(x)',
      'factorial(170)',
      '170!',
      'gamma(x)',
      'nthRoot(x, 3)',
      'sec(x)',
      'sum(x, 1)',
      'bignumber(x)',
      'complex(x, 1)',
      'sqrt.transform(x)',
    ],
  ],
  [
    'a way to the constructor',
    [
      'constructor("x")',
      'constructor(x)',
      '__proto__',
      '__proto__(x)',
      'cos.constructor("return this")()',
      'toString(x)',
      'valueOf(x)',
      'hasOwnProperty(x)',
      'eval(x)',
      'Function(x)',
      'self.close()',
    ],
  ],
  ['a call of a call or of a product', ['(sqrt)(x)(x)', 'f(x)(y)', 'sqrt(x)(y)', '(x)(y)', '(x) y', '2(x)', 'x(1)']],
  [
    'a product without sign',
    ['2 R', '2R', 'R 2', 'a b', '1 / 2 R', '(a)(b)', '2 (a + b)', '(a + b) c', '3 pi', '1e3x'],
  ],
  [
    'other numbers',
    ['0x10', '0b1', '0o7', '1n', '1_000', '1e400', '1e-400', '2.', '1.2.3', '1e', '١', 'NaN', 'Infinity'],
  ],
  ['values that are none', ['null', 'undefined', 'false', 'end', 'i = 1']],
  ['elementwise operators', ['x .* y', '2.*x', 'x ./ y', 'x .^ y', "x.'"]],
  [
    'what cannot be read',
    ['', ' ', '\t', '1 +', '* x', '(x', 'x)', 'x,y', '(x, y)', 'sqrt', 'sqrt()', '()', 'x +* y', ','],
  ],
  [
    'signs of the keyboard and of print',
    ['x − y', 'x × y', 'x · y', 'x ÷ y', 'x²', '√x', 'α * x', 'µ', 'Ω', 'x\u00a0+ y', '€'],
  ],
  [
    'a wrong number of arguments',
    ['sin()', 'sin(x, y)', 'atan2(x)', 'max(x)', 'pow(x)', 'hypot(x)', 'log(x, 10)', 'min()'],
  ],
  ['rounding', ['round(x)', 'floor(x)', 'ceil(x)', 'sign(x)']],
  [
    'what is too long or too deep',
    [
      `${'('.repeat(2000)}1${')'.repeat(2000)}`,
      `${'('.repeat(400)}x${')'.repeat(400)}`,
      `${'-'.repeat(900)}x`,
      `${'sin('.repeat(200)}x${')'.repeat(200)}`,
      `x${'^x'.repeat(400)}`,
      `x${' + x'.repeat(400)}`,
    ],
  ],
];

describe.each(refused)('%s', (_, expressions) => {
  it.each(expressions.map((expression) => [expression]))('is refused: %j', (expression) => {
    const codes = codesOf(() => parseModel(expression));
    expect(codes.length).toBeGreaterThan(0);
    for (const code of codes) expect(['expression-refused', 'symbol-unsuitable']).toContain(code);
  });
});

describe('what is not text', () => {
  it.each([[undefined], [null], [12], [{}], [['x']], [{ toString: () => 'x' }], [new String('x')], [Symbol.iterator]])(
    'is refused: %s',
    (value) => {
      expect(codesOf(() => parseModel(value as string))).toEqual(['expression-refused']);
      expect(codesOf(() => expressionTex(value as string))).toEqual(['expression-refused']);
      expect(codesOf(() => recompute({ expression: value as string, inputs: {} }))).toEqual(['expression-refused']);
    },
  );
});

describe('a refusal', () => {
  it.each([
    ['2 R', 'Write * for every product'],
    ['R(1 + a)', 'A product needs its sign'],
    ['20 %', 'Write a fraction'],
    ['α * x', 'Write the name of the letter'],
    ['log(x, 2)', 'log(x) / log(base)'],
    ['round(x)', 'Rounding has no sensitivity'],
    ['P = I^2 * R', 'Write the right-hand side alone'],
    ['x²', 'Write ^2'],
    ['x × y', 'Write *'],
  ])('of %j says what to write', (expression, hint) => {
    expect(() => parseModel(expression)).toThrow(hint);
  });

  it('names the character and its place', () => {
    expect(() => parseModel('a + b; c')).toThrow('must not hold ";" (character 6)');
  });
});

describe('arbitrary text', () => {
  const tokens =
    'x y R_0 T0 alpha pi e i 2 0.5 1e3 .5 + - * / ^ ( ) , ; : = == < > ? ! % & | ~ . \' " [ ] { } # @ $ \\ _ __proto__ ' +
    'constructor prototype toString sqrt( log( max( atan2( abs( import( evaluate( parse( f(x)= x[1] .* ./ to in mod not';
  const pieces = fc.array(fc.constantFrom(...tokens.split(' '), ' ', '\n', '\t'), { maxLength: 12 });
  const text = fc.oneof(
    pieces.map((parts) => parts.join('')),
    pieces.map((parts) => parts.join(' ')),
    fc.string({ maxLength: 40 }),
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc.string({ unit: fc.constantFrom(...'xy0129.+-*/^(), e'), maxLength: 30 }),
  );

  /** Everything that can be asked of a model; each answer is a result or a coded error. */
  function askEverything(expression: string): number {
    let answers = 0;
    const ask = (work: () => unknown): void => {
      for (const code of codesOf(work)) expect(Object.hasOwn(codeList, code)).toBe(true);
      answers++;
    };
    ask(() => {
      const model = parseModel(expression, { result: 'Q' });
      const inputs = Object.fromEntries(model.symbols.map((symbol, i) => [symbol, 0.3 + i]));
      for (const symbol of model.symbols) {
        ask(() => expect(Number.isFinite(model.derivative(symbol).evaluate(inputs))).toBe(true));
        ask(() => expect(Number.isFinite(model.secondDerivative(symbol, symbol).evaluate(inputs))).toBe(true));
        ask(() => expect(model.sensitivityTex(symbol)).toMatch(/^[ -~]+$/));
      }
      ask(() => expect(Number.isFinite(model.evaluate(inputs))).toBe(true));
      ask(() => expect(Number.isFinite(model.asFunction(model.symbols)(...Object.values(inputs)))).toBe(true));
      ask(() => parseModel(expression, { units: Object.fromEntries(model.symbols.map((symbol) => [symbol, 'V'])) }));
    });
    ask(() => expect(Number.isFinite(recompute({ expression, inputs: { x: 1, y: 2, T0: 3 } }))).toBe(true));
    ask(() => expect(expressionTex(expression)).toMatch(/^[ -~]+$/));
    return answers;
  }

  it('gives a result or a coded error, and changes nothing for others', { timeout: 120_000 }, () => {
    const before = surroundings();
    let accepted = 0;
    fc.assert(
      fc.property(text, (expression) => {
        // Three answers are errors about the expression; more come from a model.
        if (askEverything(expression) > 3) accepted++;
      }),
      { numRuns: 4000, seed: 17025 },
    );
    expect(accepted).toBeGreaterThan(100);
    expect(surroundings()).toEqual(before);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('is no unit and no symbol that does harm', () => {
    const before = surroundings();
    fc.assert(
      fc.property(text, text, (name, unit) => {
        for (const code of codesOf(() => parseModel('x', { units: { x: unit } }))) {
          expect(['text-malformed', 'unit-unknown', 'wrong-type']).toContain(code);
        }
        expect(codesOf(() => parseModel('x', { symbols: ['x', name] })).length).toBeGreaterThan(0);
        codesOf(() => parseModel('x', { result: name }));
      }),
      { numRuns: 2000, seed: 17025 },
    );
    expect(surroundings()).toEqual(before);
  });

  it('finds nothing behind a name but an input', () => {
    for (const name of ['this', 'globalThis', 'process', 'math', 'window']) {
      expect(codesOf(() => parseModel(name).evaluate({}))).toEqual(['missing-member']);
      expect(codesOf(() => recompute({ expression: name, inputs: {} }))).toEqual(['expression-refused']);
    }
  });

  it('does not reach a prototype by names of members', () => {
    const inputs = JSON.parse('{ "x": 1, "__proto__": { "y": 2 } }') as Record<string, number>;
    expect(parseModel('x').evaluate(inputs)).toBe(1);
    expect(codesOf(() => parseModel('x + y').evaluate(inputs))).toEqual(['missing-member']);
    expect(codesOf(() => parseModel('x').evaluate(Object.create({ x: 1 })))).toEqual(['missing-member']);
    const units = JSON.parse('{ "x": "V", "__proto__": "A" }') as Record<string, string>;
    expect(codesOf(() => parseModel('x', { units }))).toEqual(['symbol-unused']);
    for (const name of ['constructor', 'toString', 'valueOf', 'hasOwnProperty', '__proto__', 'prototype_', '_x']) {
      expect(codesOf(() => parseModel('x', { symbols: ['x', name] }))).toEqual(['symbol-unsuitable']);
    }
    for (const name of ['constructor', 'toString', 'valueOf', 'hasOwnProperty', 'isPrototypeOf']) {
      expect(codesOf(() => parseModel(`${name} + 1`))).toEqual(['symbol-unsuitable']);
    }
  });
});
