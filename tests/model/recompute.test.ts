import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { recompute } from '../../src/model/index.js';

function codeOf(expression: string, inputs: Record<string, number> = {}): string {
  try {
    recompute({ expression, inputs });
  } catch (error) {
    if (error instanceof CalculationError) return error.code;
    throw error;
  }
  return 'accepted';
}

describe('recompute', () => {
  it('evaluates an expression over its inputs', () => {
    expect(recompute({ expression: 'sqrt(P / R)', inputs: { P: 120, R: 500 } })).toBe(Math.sqrt(120 / 500));
    expect(recompute({ expression: '-x^2 + max(1, 2)', inputs: { x: 3 } })).toBe(-7);
    expect(recompute({ expression: '2 * pi * f', inputs: { f: 1 } })).toBe(2 * Math.PI);
    expect(recompute({ expression: 'sign(x) * floor(abs(x) / q + 0.5) * q', inputs: { x: -2.5, q: 1 } })).toBe(-3);
  });

  it('takes a quotient within 1e-12 of a whole number for that number', () => {
    expect(0.843 / 0.001).not.toBe(843.0000000001);
    expect(recompute({ expression: 'ceil(x)', inputs: { x: 843 + 1.2e-13 } })).toBe(843);
    expect(recompute({ expression: 'floor(x)', inputs: { x: 842.9999999999999 } })).toBe(843);
  });

  it.each([
    ['import("x")'],
    ['createUnit("x")'],
    ['evaluate("1")'],
    ['f(x) = x'],
    ['a = 3'],
    ['x.constructor'],
    ['x["constructor"]'],
    ['[1, 2]'],
    ['{a: 1}'],
    ['1:3'],
    ['1; 2'],
    ['"text"'],
    ['true'],
    ['2 m'],
    ['i'],
    ['y'],
    ['x > 1 ? 2 : 3'],
    ['factorial(170)'],
    ['170!'],
    ['random()'],
    ['config()'],
    ['sqrt'],
    ['__proto__'],
    ['constructor("x")'],
    ['(sqrt)(x)(x)'],
    ['1 +'],
    [''],
    [`${'('.repeat(2000)}1${')'.repeat(2000)}`],
  ])('refuses %s', (expression) => {
    expect(codeOf(expression, { x: 2 })).toBe('expression-refused');
  });

  it('refuses an input that stands for a function', () => {
    expect(codeOf('sqrt(4)', { sqrt: 3 })).toBe('expression-refused');
  });

  it('gives no value that is not finite and no complex number', () => {
    expect(codeOf('1 / x', { x: 0 })).toBe('result-out-of-range');
    expect(codeOf('sqrt(x)', { x: -1 })).toBe('result-out-of-range');
    expect(codeOf('x', { x: Number.NaN })).toBe('not-a-number');
  });

  it('names the expression in its error', () => {
    expect(() => recompute({ expression: 'y + 1', inputs: {} })).toThrow(/"y \+ 1".*y is not one/);
  });
});
