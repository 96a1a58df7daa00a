import type { MathNode } from 'mathjs/number';
import { type FunctionName, functionList, isConstant, isFunction, limits } from './closed-list.js';
import { math } from './math.js';
import type { BinaryOperator, Term } from './term.js';

/** Receives what is wrong with a node, and never returns. */
type Refusal = (requirement: string, hint?: string) => never;

const operators: readonly string[] = ['+', '-', '*', '/', '^'];

/**
 * A tree of mathjs as a closed term. Everything that has no place in one is refused.
 *
 * @param functions Names that may be called
 */
export function readTerm(node: MathNode, functions: readonly string[], refuse: Refusal, nesting = 0): Term {
  if (nesting > limits.nesting) return refuse(`must not nest deeper than ${limits.nesting}`);
  const read = (part: MathNode, deeper = nesting + 1) => readTerm(part, functions, refuse, deeper);
  if (math.isParenthesisNode(node)) return read(node.content, nesting);
  if (math.isConstantNode(node)) {
    return typeof node.value === 'number' && Number.isFinite(node.value)
      ? { kind: 'number', value: node.value }
      : refuse('must hold no text and no value but numbers');
  }
  if (math.isSymbolNode(node)) {
    return isConstant(node.name) ? { kind: 'constant', name: node.name } : { kind: 'symbol', name: node.name };
  }
  if (math.isOperatorNode(node)) {
    const [left, right, third] = node.args as MathNode[];
    if (left === undefined || third !== undefined) return refuse('must have one or two terms to an operator');
    if (right === undefined) {
      // By the name of the operation: a factorial and a transposition have one term too.
      if (node.fn === 'unaryMinus') return { kind: 'negative', of: read(left) };
      return node.fn === 'unaryPlus' ? read(left) : refuse(`must not use the operator ${node.op}`);
    }
    if (!operators.includes(node.op)) return refuse(`must not use the operator ${node.op}`);
    if (node.implicit) return refuse('must have a sign for every product', 'Write *: 2 * R.');
    // A long sum or product leans to the left, which is no nesting.
    const leans = node.op !== '^' && math.isOperatorNode(left) && left.args.length === 2;
    return {
      kind: 'binary',
      operator: node.op as BinaryOperator,
      left: read(left, leans ? nesting : nesting + 1),
      right: read(right),
    };
  }
  if (math.isFunctionNode(node)) {
    // The name is a symbol node of its own; anything else, such as a.b(c), is no plain call.
    const called = node.fn as unknown as MathNode;
    if (!math.isSymbolNode(called)) return refuse('must call functions by their name');
    const name = checkedFunction(called.name, functions, node.args.length, refuse);
    return { kind: 'call', name, parts: node.args.map((part) => read(part)) };
  }
  return refuse(`must not hold a ${node.type}`);
}

function checkedFunction(name: string, functions: readonly string[], count: number, refuse: Refusal): FunctionName {
  if (!isFunction(name)) {
    return refuse(
      `must call only the functions of the closed list, and ${name} is none`,
      'A product needs its sign: R * (1 + a).',
    );
  }
  if (!functions.includes(name)) {
    return refuse(`must not call ${name}`, 'Rounding has no sensitivity: it belongs to workings, not to models.');
  }
  const { least, most } = functionList[name];
  if (count < least || count > most) {
    const wanted = least === most ? `${least}` : `${least} to ${most}`;
    return refuse(
      `must give ${name} ${wanted} argument${most === 1 ? '' : 's'}, and there ${count === 1 ? 'is' : 'are'} ${count}`,
      name === 'log' && count === 2 ? 'The logarithm to another base is log(x) / log(base).' : undefined,
    );
  }
  return name;
}
