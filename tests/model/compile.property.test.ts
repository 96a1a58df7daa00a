import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import { modelFunctions } from '../../src/model/closed-list.js';
import { parseModel, recompute } from '../../src/model/index.js';
import { printTerm } from '../../src/model/print-term.js';
import { readExpression } from '../../src/model/read-expression.js';
import { expressions, values } from './expressions.js';

function outcomeOf(work: () => number): number | string {
  try {
    return work();
  } catch (error) {
    if (error instanceof CalculationError) return error.code;
    throw error;
  }
}

describe('compiled evaluation', () => {
  it('gives what mathjs gives for the same expression', () => {
    let compared = 0;
    fc.assert(
      fc.property(expressions(), values(), (expression, inputs) => {
        const own = outcomeOf(() => parseModel(expression).evaluate(inputs));
        fc.pre(typeof own === 'number');
        compared++;
        const other = recompute({ expression, inputs });
        // Roundings of squares and powers differ by a few units; sums of unlike terms make more of them.
        expect(Math.abs((own as number) - other)).toBeLessThanOrEqual(1e-11 * Math.max(1, Math.abs(other)));
      }),
      { numRuns: 2000, seed: 3, maxSkipsPerRun: 20 },
    );
    expect(compared).toBeGreaterThanOrEqual(2000);
  });

  it('is the same by name and by place', () => {
    fc.assert(
      fc.property(expressions(), values(), (expression, inputs) => {
        const model = parseModel(expression);
        const { x, y, R_0, alpha } = inputs;
        const byName = outcomeOf(() => model.evaluate(inputs));
        expect(outcomeOf(() => model.asFunction(['alpha', 'R_0', 'y', 'x'])(alpha, R_0, y, x))).toBe(byName);
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  it('has no value that mathjs has only because something undefined was hidden', () => {
    expect(recompute({ expression: '1 / (1 / x)', inputs: { x: 0 } })).toBe(0);
    expect(outcomeOf(() => parseModel('1 / (1 / x)').evaluate({ x: 0 }))).toBe('outside-domain');
  });
});

describe('a printed expression', () => {
  it('is read as one of the same value, to the last bit', () => {
    fc.assert(
      fc.property(expressions(), values(), (expression, inputs) => {
        const printed = printTerm(readExpression(expression, modelFunctions).term);
        expect(outcomeOf(() => parseModel(printed).evaluate(inputs))).toBe(
          outcomeOf(() => parseModel(expression).evaluate(inputs)),
        );
        expect(printTerm(readExpression(printed, modelFunctions).term)).toBe(printed);
      }),
      { numRuns: 2000, seed: 3 },
    );
  });
});
