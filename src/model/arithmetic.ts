import type { FunctionName } from './closed-list.js';
import { cancel, isWholePower, productOf, productTerm } from './factors.js';
import { type BinaryOperator, type BinaryTerm, sameTerm, type Term } from './term.js';

/*
 * Terms are put together with the few rules that keep their value wherever it exists: 0 and 1 go, signs come out,
 * numbers are combined where that is exact, a product is sorted and its equal factors joined. That costs no more
 * than roundings. No sum is expanded, and a denominator keeps each of its factors: x / x stays.
 * (The simplification of mathjs is not used: it cancels x / x, takes 20 to 130 ms, and fails without matrices.)
 */

export const zero: Term = { kind: 'number', value: 0 };
export const unity: Term = { kind: 'number', value: 1 };

/** A number as a term; a negative one is a sign before a number. */
export function num(value: number): Term {
  return value < 0 ? { kind: 'negative', of: num(-value) } : { kind: 'number', value };
}

export function call(name: FunctionName, ...parts: readonly Term[]): Term {
  const [part] = parts as [Term];
  if (name === 'log' && part.kind === 'constant' && part.name === 'e') return unity;
  if (name === 'log' && isNumber(part, 1)) return zero;
  return { kind: 'call', name, parts };
}

export function negate(term: Term): Term {
  if (isNumber(term, 0)) return zero;
  return term.kind === 'negative' ? term.of : { kind: 'negative', of: term };
}

export function add(left: Term, right: Term): Term {
  if (isNumber(left, 0)) return right;
  if (isNumber(right, 0)) return left;
  if (right.kind === 'negative') return subtract(left, right.of);
  if (left.kind === 'negative') return subtract(right, left.of);
  return combined(left, right, 1) ?? binary('+', left, right);
}

export function subtract(left: Term, right: Term): Term {
  if (isNumber(right, 0)) return left;
  if (isNumber(left, 0)) return negate(right);
  if (right.kind === 'negative') return add(left, right.of);
  if (left.kind === 'negative') return negate(add(left.of, right));
  return combined(left, right, -1) ?? binary('-', left, right);
}

export function multiply(left: Term, right: Term): Term {
  return multiplyAll([left, right]);
}

/** A whole product at once: one pass over its factors, however many. */
function multiplyAll(terms: readonly Term[]): Term {
  let negative = false;
  const above: Term[] = [];
  const below: Term[] = [];
  for (const term of terms) {
    if (isNumber(term, 0)) return zero;
    const plain = term.kind === 'negative' ? term.of : term;
    negative = negative !== (plain !== term);
    const quotient = asQuotient(plain);
    above.push(quotient?.left ?? plain);
    if (quotient) below.push(quotient.right);
  }
  const magnitude = below.length === 0 ? productTerm(productOf(above)) : quotientOf(above, below);
  return negative ? negate(magnitude) : magnitude;
}

export function divide(left: Term, right: Term): Term {
  if (isNumber(left, 0)) return zero;
  if (left.kind === 'negative') return negate(divide(left.of, right));
  if (right.kind === 'negative') return negate(divide(left, right.of));
  const inner = asQuotient(left);
  return inner ? quotientOf([inner.left], [inner.right, right]) : quotientOf([left], [right]);
}

function quotientOf(left: readonly Term[], right: readonly Term[]): Term {
  const { above, below } = cancel(productOf(left), productOf(right));
  const denominator = productTerm(below);
  return isNumber(denominator, 1) ? productTerm(above) : binary('/', productTerm(above), denominator);
}

export function power(base: Term, exponent: Term): Term {
  if (isNumber(exponent, 0)) return unity;
  if (isNumber(exponent, 1)) return base;
  const raised = binary('^', base, exponent);
  if (!isWholePower(raised)) return raised;
  if (base.kind === 'negative') {
    const positive = power(base.of, exponent);
    return exponent.kind === 'number' && exponent.value % 2 === 1 ? negate(positive) : positive;
  }
  // A power of a product is the product of powers; one of a quotient stays, since its parts may be too large.
  return productTerm(productOf([raised]));
}

/** The same term, put together anew by these rules. */
export function simplify(term: Term): Term {
  switch (term.kind) {
    case 'negative':
      return negate(simplify(term.of));
    case 'call':
      return call(term.name, ...term.parts.map(simplify));
    case 'binary':
      return term.operator === '*'
        ? multiplyAll(chainOf(term).map(simplify))
        : rules[term.operator](simplify(term.left), simplify(term.right));
    default:
      return term;
  }
}

const rules: Record<Exclude<BinaryOperator, '*'>, (left: Term, right: Term) => Term> = {
  '+': add,
  '-': subtract,
  '/': divide,
  '^': power,
};

/** Whether a term is |u| / u, the sign of u: it stays together, so that it is exactly 1 or −1. */
export function isSign(term: Term): boolean {
  if (term.kind !== 'binary' || term.operator !== '/') return false;
  const { left, right } = term;
  return left.kind === 'call' && left.name === 'abs' && sameTerm(left.parts[0] as Term, right);
}

function isNumber(term: Term, value: number): boolean {
  return term.kind === 'number' && term.value === value;
}

function binary(operator: BinaryOperator, left: Term, right: Term): Term {
  return { kind: 'binary', operator, left, right };
}

function asQuotient(term: Term): BinaryTerm | undefined {
  return term.kind === 'binary' && term.operator === '/' && !isSign(term) ? term : undefined;
}

/** Sum or difference of two numbers where no digit is lost. */
function combined(left: Term, right: Term, sign: 1 | -1): Term | undefined {
  if (left.kind !== 'number' || right.kind !== 'number') return undefined;
  const a = left.value;
  const b = sign * right.value;
  const sum = a + b;
  const rest = sum - a;
  return a - (sum - rest) + (b - rest) === 0 ? num(sum) : undefined;
}

/** The factors of a product of products, from left to right. */
function chainOf(term: Term): readonly Term[] {
  const factors: Term[] = [];
  let rest = term;
  while (rest.kind === 'binary' && rest.operator === '*') {
    factors.push(rest.right);
    rest = rest.left;
  }
  return [...factors, rest].reverse();
}
