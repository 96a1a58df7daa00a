import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { parseModel } from '../../src/model/index.js';

function codeOf(work: () => unknown): string {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return error.code;
    throw error;
  }
  return 'none';
}

describe('a derivative', () => {
  // JCGM 100:2008, 5.1.3, example: the sensitivity coefficients of P = V²/{R0[1 + α(t − t0)]}, from memory.
  it.each([
    ['V', '2 * V / (R0 * (1 + alpha * (t - t0)))'],
    ['R0', '-V^2 / (R0^2 * (1 + alpha * (t - t0)))'],
    ['alpha', '-V^2 * (t - t0) / (R0 * (1 + alpha * (t - t0))^2)'],
    ['t', '-V^2 * alpha / (R0 * (1 + alpha * (t - t0))^2)'],
  ])('by %s is written as a person would', (symbol, expression) => {
    expect(parseModel('V^2 / (R0 * (1 + alpha*(t - t0)))').derivative(symbol).expression).toBe(expression);
  });

  it.each([
    ['x^2 / 2', 'x'],
    ['3 * x', '3'],
    ['x^n', 'n * x^(n - 1)'],
    ['x^2.5', '2.5 * x^1.5'],
    ['e^x', 'e^x'],
    ['2^x', '2^x * log(2)'],
    ['1.0000000000001^x', '1.0000000000001^x * log(1.0000000000001)'],
    ['sqrt(x^2 + y^2)', 'x / sqrt(x^2 + y^2)'],
    ['hypot(x, y)', 'x / hypot(x, y)'],
    ['atan2(x, y)', 'y / (y^2 + x^2)'],
    ['cbrt(x)', '1 / (3 * cbrt(x)^2)'],
    ['tan(x)', '1 / cos(x)^2'],
    ['tanh(x)', '(1 / cosh(x))^2'],
    ['log2(x)', '1 / (x * log(2))'],
    ['abs(x)', 'abs(x) / x'],
    ['max(x, y)', '(1 + abs(x - y) / (x - y)) / 2'],
    ['min(x, y)', '(1 - abs(x - y) / (x - y)) / 2'],
    ['-(x - y)', '-1'],
    ['y + 2', '0'],
  ])('of %s is %s', (expression, derivative) => {
    expect(parseModel(`${expression} + 0*x`).derivative('x').expression).toBe(derivative);
  });

  it('keeps each factor of a denominator, so that it gains no value where the model has none', () => {
    expect(parseModel('x^3 / x').derivative('x').expression).toBe('(3 * x^3 - x^3) / x^2');
    expect(codeOf(() => parseModel('x / x').derivative('x').evaluate({ x: 0 }))).toBe('outside-domain');
    expect(codeOf(() => parseModel('log(x)').derivative('x').evaluate({ x: -1 }))).toBe('outside-domain');
    expect(codeOf(() => parseModel('0 * log(x) + x').derivative('x').evaluate({ x: -1 }))).toBe('outside-domain');
  });

  it('has no value at a kink, and at an end with infinite slope', () => {
    const at = (expression: string, x: number, y = 1) =>
      codeOf(() => parseModel(`${expression} + 0 * y`).derivative('x').evaluate({ x, y }));
    expect(at('abs(x)', 0)).toBe('outside-domain');
    expect(at('max(x, y)', 1)).toBe('outside-domain');
    expect(at('min(x, y)', 1)).toBe('outside-domain');
    expect(at('sqrt(x)', 0)).toBe('outside-domain');
    expect(at('asin(x)', 1)).toBe('outside-domain');
    expect(at('hypot(x, 0 * y)', 0)).toBe('outside-domain');
    expect(codeOf(() => parseModel('abs(x)').secondDerivative('x', 'x').evaluate({ x: 0 }))).toBe('outside-domain');
  });

  it('is exact on each side of a kink', () => {
    const limited = parseModel('max(min(G * x, limit), -limit)');
    expect(limited.derivative('x').evaluate({ G: 0.1, x: 3, limit: 5 })).toBe(0.1);
    expect(limited.derivative('x').evaluate({ G: 0.1, x: 300, limit: 5 })).toBe(0);
    expect(limited.derivative('limit').evaluate({ G: 0.1, x: 300, limit: 5 })).toBe(1);
    expect(limited.derivative('limit').evaluate({ G: 0.1, x: -300, limit: 5 })).toBe(-1);
    expect(parseModel('abs(0.1 * x)').derivative('x').evaluate({ x: -1e-300 })).toBe(-0.1);
  });

  it('is good to the last digits near the end of a domain', () => {
    const x = 1 - 2 ** -40;
    // 1 − x² = 2^−39 − 2^−80, exactly.
    const rest = 2 ** -39 - 2 ** -80;
    expect(parseModel('asin(x)').derivative('x').evaluate({ x })).toBeCloseTo(1 / Math.sqrt(rest), 9);
    expect(parseModel('acos(x)').derivative('x').evaluate({ x })).toBeCloseTo(-1 / Math.sqrt(rest), 9);
    expect(parseModel('atanh(x)').derivative('x').evaluate({ x })).toBe(1 / rest);
    expect(parseModel('tanh(x)').derivative('x').evaluate({ x: 600 })).toBe(0);
    expect(parseModel('cbrt(x)').derivative('x').evaluate({ x: -8 })).toBe(1 / 12);
  });

  it('is the same object for the same symbol, and second ones in either order', () => {
    const model = parseModel('x^2 * y');
    expect(model.derivative('x')).toBe(model.derivative('x'));
    expect(model.secondDerivative('x', 'y')).toBe(model.secondDerivative('y', 'x'));
    expect(model.secondDerivative('y', 'x').expression).toBe('2 * x');
    expect(model.secondDerivative('x', 'x').expression).toBe('2 * y');
  });

  it('is a plain function too, of every symbol of its model', () => {
    const model = parseModel('log(x) * y');
    expect(model.derivative('y').symbols).toEqual(['x']);
    expect(model.derivative('y').asFunction(['x', 'y'])(Math.E, 5)).toBe(1);
    expect(codeOf(() => model.derivative('x').asFunction(['x']))).toBe('missing-member');
  });

  it('is refused where it would be too large to be of use', () => {
    const product = parseModel(Array.from({ length: 80 }, (_, i) => `sin(x${i})`).join(' * '));
    expect(product.derivative('x40').expression).toMatch(/\* cos\(x40\)$|\* cos\(x40\) \*/);
    const sum = Array(300).fill('x').join('+');
    expect(parseModel(sum).evaluate({ x: 2 })).toBe(600);
    expect(codeOf(() => parseModel(sum).derivative('x'))).toBe('expression-refused');
  });
});
