import { requireFinite, requireResult } from '../checks/index.js';
import type { Step } from '../working/index.js';
import { allowedFunctions } from './closed-list.js';
import { readExpression } from './read-expression.js';
import { refuse } from './refuse.js';
import { partsOf, type Term } from './term.js';

/** What a recomputation needs of a step. */
export type Recomputable = Pick<Step, 'expression' | 'inputs'>;

/**
 * Evaluates the expression of a step again, with mathjs, from its inputs.
 *
 * Only numbers, the symbols of `inputs`, `pi`, `e`, the operators `+ - * / ^` and the functions of
 * `allowedFunctions` are let through: a step may come from a file.
 * `ceil` and `floor` take a value within 1e-12 (relative) of a whole number for that number.
 *
 * @param step A step of a working, or any expression with its inputs
 * @returns The value, in the unit of the step
 * @throws CalculationError `expression-refused`, `not-a-number` (an input), `result-out-of-range`
 * @example
 * ```ts
 * import { recompute } from 'esu-limits/model';
 * recompute({ expression: 'sqrt(P / R)', inputs: { P: 120, R: 500 } }); // → 0.4898979485566356
 * ```
 */
export function recompute(step: Recomputable): number {
  const { expression, inputs } = step;
  const scope = new Map<string, number>();
  for (const [symbol, value] of Object.entries(inputs)) scope.set(symbol, requireFinite(value, `inputs.${symbol}`));
  const { term, node } = readExpression(expression, allowedFunctions);
  checkNames(expression, term, scope);
  const value: unknown = node.compile().evaluate(scope);
  if (typeof value !== 'number') return refuse(expression, 'must give a number');
  return requireResult(value, 'value');
}

function checkNames(expression: string, term: Term, scope: ReadonlyMap<string, number>): void {
  if (term.kind === 'symbol' && !scope.has(term.name)) {
    refuse(expression, `must use only the symbols of its inputs; ${term.name} is not one`);
  }
  // mathjs would look for the function among the inputs.
  if (term.kind === 'call' && scope.has(term.name)) {
    refuse(expression, `must not call ${term.name}, which is one of its inputs`);
  }
  for (const part of partsOf(term)) checkNames(expression, part, scope);
}
