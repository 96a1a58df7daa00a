import { constantList, type FunctionName } from './closed-list.js';
import type { Term } from './term.js';

/** Values of the symbols, in the order that they were compiled for. */
export type Values = ArrayLike<number>;

/** A term as a function of the values of its symbols. What is not finite anywhere inside is not finite outside. */
export type Compiled = (values: Values) => number;

/**
 * Turns a term into nested functions, once; no code is made from text.
 *
 * Operations through which an infinite or undefined part would look like a number (1 / ∞ is 0, NaN ^ 0 is 1)
 * check that part, so that a result can be relied on if it is finite.
 *
 * @param order Symbols in the order of the values
 */
export function compile(term: Term, order: readonly string[]): Compiled {
  switch (term.kind) {
    case 'number': {
      const { value } = term;
      return () => value;
    }
    case 'constant': {
      const value = constantList[term.name];
      return () => value;
    }
    case 'symbol': {
      const index = order.indexOf(term.name);
      return (values) => values[index] as number;
    }
    case 'negative': {
      const of = compile(term.of, order);
      return (values) => -of(values);
    }
    case 'binary':
      return compileBinary(term.operator, term.left, term.right, order);
    case 'call':
      return compileCall(
        term.name,
        term.parts.map((part) => compile(part, order)),
      );
  }
}

function compileBinary(operator: '+' | '-' | '*' | '/' | '^', a: Term, b: Term, order: readonly string[]): Compiled {
  const left = compile(a, order);
  const right = compile(b, order);
  switch (operator) {
    case '+':
      return (values) => left(values) + right(values);
    case '-':
      return (values) => left(values) - right(values);
    case '*':
      return (values) => left(values) * right(values);
    case '/':
      return (values) => left(values) / finite(right(values));
    case '^':
      if (b.kind === 'number' && b.value === 2) return squareOf(left);
      return (values) => raise(left(values), right(values));
  }
}

function squareOf(part: Compiled): Compiled {
  return (values) => {
    const x = part(values);
    return x * x;
  };
}

function compileCall(name: FunctionName, parts: readonly Compiled[]): Compiled {
  const [first, second] = parts as [Compiled, Compiled];
  switch (name) {
    case 'square':
      return squareOf(first);
    case 'pow':
      return (values) => raise(first(values), second(values));
    case 'atan2':
      return (values) => Math.atan2(finite(first(values)), finite(second(values)));
    case 'hypot':
    case 'max':
    case 'min': {
      const of = Math[name];
      return (values) => of(...parts.map((part) => finite(part(values))));
    }
    default: {
      const of = Math[name];
      return (values) => of(finite(first(values)));
    }
  }
}

/** The same number if it is one, else NaN. */
function finite(value: number): number {
  return value - value === 0 ? value : Number.NaN;
}

/** NaN ^ 0 and 1 ^ NaN would be 1. */
function raise(base: number, exponent: number): number {
  return base - base === 0 && exponent - exponent === 0 ? base ** exponent : Number.NaN;
}
