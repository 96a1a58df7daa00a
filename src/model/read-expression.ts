import type { MathNode } from 'mathjs/number';
import { math } from './math.js';
import { readTerm } from './read-term.js';
import { refuse } from './refuse.js';
import { scanExpression } from './scan-expression.js';
import type { Term } from './term.js';

/** An expression in both forms: the closed term, and the tree of mathjs that it was read from. */
export interface ReadExpression {
  readonly term: Term;
  readonly node: MathNode;
}

/**
 * Reads an expression: characters first, then grammar, then the closed list.
 *
 * @param functions Names that may be called
 * @throws CalculationError `expression-refused`
 */
export function readExpression(expression: unknown, functions: readonly string[]): ReadExpression {
  const text = scanExpression(expression);
  let node: MathNode;
  try {
    node = math.parse(text);
  } catch (error) {
    return refuse(text, `must be an expression: ${error instanceof Error ? error.message : 'it cannot be read'}`);
  }
  const term = readTerm(node, functions, (requirement, hint) => refuse(text, requirement, hint));
  return { term, node };
}
