import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { modelFunctions } from '../../src/model/closed-list.js';
import { type MeasurementModel, parseModel } from '../../src/model/index.js';
import { math } from '../../src/model/math.js';
import { readExpression } from '../../src/model/read-expression.js';
import { evaluateTerm } from './evaluate-term.js';
import { expressions, values } from './expressions.js';
import { constant, elementary, type HyperDual } from './hyper-dual.js';

/** Intermediate results beyond this would drown the digits that are compared. */
const largest = 1e3;

/** Derivatives without symbols, and the largest number on the way to them. */
function byArithmetic(
  model: MeasurementModel,
  inputs: Record<string, number>,
  a: string,
  b: string,
): [HyperDual, number] {
  const { term } = readExpression(model.expression, modelFunctions);
  const seeded = Object.fromEntries(
    Object.entries(inputs).map(([symbol, value]) => [
      symbol,
      { ...constant(value), first: symbol === a ? 1 : 0, second: symbol === b ? 1 : 0 },
    ]),
  );
  let size = 0;
  const result = evaluateTerm(term, seeded, (part) => {
    const parts = [part.value, part.first, part.second, part.both].map(Math.abs);
    size = parts.some(Number.isNaN) ? Number.POSITIVE_INFINITY : Math.max(size, ...parts);
  });
  return [result, size];
}

function valueOr(work: () => number): number | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof CalculationError) return undefined;
    throw error;
  }
}

describe('derivatives of random expressions', () => {
  it('are those of hyper-dual arithmetic, first and second', { timeout: 300_000 }, () => {
    let compared = 0;
    fc.assert(
      fc.property(expressions(), values(), fc.nat(), fc.nat(), (text, inputs, i, j) => {
        const model = parseModel(text);
        const { symbols } = model;
        fc.pre(symbols.length > 0 && valueOr(() => model.evaluate(inputs)) !== undefined);
        const a = symbols[i % symbols.length] as string;
        const b = symbols[j % symbols.length] as string;
        const [exact, size] = byArithmetic(model, inputs, a, b);
        fc.pre(size < largest);
        // The rule of a variable exponent needs the logarithm of the base, even where the exponent rests for a while.
        if (/\^(?!-?[\d.])|pow\(/.test(text))
          fc.pre(valueOr(() => model.secondDerivative(a, b).evaluate(inputs)) !== undefined);
        compared++;
        expect(close(model.evaluate(inputs), exact.value)).toBe(true);
        expect(close(model.derivative(a).evaluate(inputs), exact.first)).toBe(true);
        expect(close(model.secondDerivative(a, b).evaluate(inputs), exact.both)).toBe(true);
      }),
      { numRuns: 2000, seed: 1995, maxSkipsPerRun: 20 },
    );
    expect(compared).toBeGreaterThanOrEqual(2000);
  });

  it('are written so that they can be read again and have the same value to the last bit', () => {
    fc.assert(
      fc.property(expressions(), values(), fc.nat(), (text, inputs, i) => {
        const model = parseModel(text);
        fc.pre(model.symbols.length > 0);
        const derivative = model.derivative(model.symbols[i % model.symbols.length] as string);
        const value = valueOr(() => derivative.evaluate(inputs));
        fc.pre(value !== undefined);
        expect(parseModel(derivative.expression).evaluate(inputs)).toBe(value);
      }),
      { numRuns: 1000, seed: 1995, maxSkipsPerRun: 20 },
    );
  });

  it('have the value of what mathjs gives before it is simplified', () => {
    const known = /^(?!.*(abs|acos|asin|acosh|atanh|atan2|cbrt|expm1|hypot|log1p|log2|max|min|pow|square|tan))/;
    fc.assert(
      fc.property(expressions(), values(), fc.nat(), (text, inputs, i) => {
        fc.pre(known.test(text));
        const model = parseModel(text);
        fc.pre(model.symbols.length > 0 && valueOr(() => model.evaluate(inputs)) !== undefined);
        const symbol = model.symbols[i % model.symbols.length] as string;
        const [, size] = byArithmetic(model, inputs, symbol, symbol);
        fc.pre(size < largest);
        const raw = math.derivative(math.parse(text), symbol, { simplify: false }).compile();
        expect(close(model.derivative(symbol).evaluate(inputs), raw.evaluate(new Map(Object.entries(inputs))))).toBe(
          true,
        );
      }),
      { numRuns: 500, seed: 1995, maxSkipsPerRun: 50 },
    );
  });
});

describe('the arithmetic that they are held against', () => {
  // Fourth-order differences of the function itself, and of its first derivative.
  const slope = (of: (x: number) => number, x: number) => {
    const h = 1e-3;
    return (8 * (of(x + h) - of(x - h)) - (of(x + 2 * h) - of(x - 2 * h))) / (12 * h);
  };
  const points = [-2.3, -0.7, -0.3, 0.2, 0.6, 0.9, 1.4, 2.5];

  it.each(Object.entries(elementary))('differentiates %s', (_, of) => {
    let compared = 0;
    for (const x of points.filter((point) => of(point).every(Number.isFinite))) {
      const [, first, second] = of(x);
      expect(Math.abs(slope((at) => of(at)[0], x) - first)).toBeLessThan(1e-6 * Math.max(1, Math.abs(first)));
      expect(Math.abs(slope((at) => of(at)[1], x) - second)).toBeLessThan(1e-6 * Math.max(1, Math.abs(second)));
      compared++;
    }
    expect(compared).toBeGreaterThan(1);
  });
});

function close(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));
}
