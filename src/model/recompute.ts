import { all, create, type EvalFunction, type MathNode } from 'mathjs';
import { fail, requireFinite, requireResult } from '../checks/index.js';
import type { Step } from '../working/index.js';

/** What an expression may call: arithmetic and elementary functions, nothing that reads, writes or loops. */
export const allowedFunctions: readonly string[] = [
  'abs',
  'acos',
  'acosh',
  'asin',
  'asinh',
  'atan',
  'atan2',
  'atanh',
  'cbrt',
  'ceil',
  'cos',
  'cosh',
  'exp',
  'expm1',
  'floor',
  'hypot',
  'log',
  'log10',
  'log1p',
  'max',
  'min',
  'pow',
  'round',
  'sign',
  'sin',
  'sinh',
  'sqrt',
  'tan',
  'tanh',
];

const operators: readonly string[] = ['+', '-', '*', '/', '^'];
const constants: readonly string[] = ['pi'];
/** Far above any formula; a bound on the work that text from a file can cause. */
const longestExpression = 1000;

// `predictable`: a root of a negative number is NaN, hence an error, and not a complex number.
const math = /* @__PURE__ */ create(all ?? {}, { number: 'number', matrix: 'Array', predictable: true });

/** What a recomputation needs of a step. */
export type Recomputable = Pick<Step, 'expression' | 'inputs'>;

/**
 * Evaluates the expression of a step again, with mathjs, from its inputs.
 *
 * Only numbers, the symbols of `inputs`, `pi`, the operators `+ - * / ^` and the functions of
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
  const compiled = compileChecked(expression, scope);
  const value: unknown = compiled.evaluate(scope);
  if (typeof value !== 'number') return refuse(expression, 'must give a number');
  return requireResult(value, 'value');
}

function refuse(expression: unknown, requirement: string): never {
  return fail('expression-refused', 'expression', expression, requirement);
}

function compileChecked(expression: string, scope: ReadonlyMap<string, number>): EvalFunction {
  if (typeof expression !== 'string' || expression.length > longestExpression) {
    refuse(expression, `must be text of at most ${longestExpression} characters`);
  }
  let node: MathNode;
  try {
    node = math.parse(expression);
  } catch (error) {
    return refuse(expression, `must be an expression: ${error instanceof Error ? error.message : 'it cannot be read'}`);
  }
  node.traverse((part, path, parent) => {
    const reason = refusal(part, path, parent, scope);
    if (reason !== undefined) refuse(expression, reason);
  });
  return node.compile();
}

/** Why a part of an expression is not let through, or nothing. */
function refusal(
  part: MathNode,
  path: string,
  parent: MathNode | null,
  scope: ReadonlyMap<string, number>,
): string | undefined {
  if (math.isParenthesisNode(part)) return undefined;
  if (math.isConstantNode(part)) return typeof part.value === 'number' ? undefined : 'must hold no text';
  if (math.isOperatorNode(part))
    return operators.includes(part.op) ? undefined : `must not use the operator ${part.op}`;
  if (math.isFunctionNode(part)) {
    // The name is a symbol node of its own; anything else, such as a.b(c), is no plain call.
    const called: MathNode = part.fn as unknown as MathNode;
    return math.isSymbolNode(called) && allowedFunctions.includes(called.name) && !scope.has(called.name)
      ? undefined
      : 'must call only the functions of the closed list';
  }
  if (math.isSymbolNode(part)) {
    const isCall = parent !== null && math.isFunctionNode(parent) && path === 'fn';
    return isCall || scope.has(part.name) || constants.includes(part.name)
      ? undefined
      : `must use only the symbols of its inputs; ${part.name} is not one`;
  }
  return `must not hold a ${part.type}`;
}
