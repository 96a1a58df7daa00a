import type { FunctionName } from './closed-list.js';
import { type BinaryOperator, type BinaryTerm, sameTerm, type Term } from './term.js';

/*
 * Terms are put together with the few rules that keep their value wherever it exists: 0 and 1 go, signs come out,
 * numbers are combined where that is exact, a product is sorted. The sign and the order of a product cost no more
 * than a rounding. Nothing is expanded, nothing is cancelled but numbers: x / x stays.
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
function multiplyAll(factors: readonly Term[]): Term {
  let negative = false;
  const above: Term[] = [];
  const below: Term[] = [];
  for (const factor of factors) {
    if (isNumber(factor, 0)) return zero;
    const plain = factor.kind === 'negative' ? factor.of : factor;
    negative = negative !== (plain !== factor);
    const quotient = asQuotient(plain);
    above.push(...factorsOf(quotient?.left ?? plain));
    if (quotient) below.push(...factorsOf(quotient.right));
  }
  const magnitude = below.length === 0 ? product(above) : divide(product(above), product(below));
  return negative ? negate(magnitude) : magnitude;
}

export function divide(left: Term, right: Term): Term {
  if (isNumber(left, 0)) return zero;
  if (left.kind === 'negative') return negate(divide(left.of, right));
  if (right.kind === 'negative') return negate(divide(left, right.of));
  const inner = asQuotient(left);
  if (inner) return divide(inner.left, multiply(inner.right, right));
  const above = splitNumber(left);
  const below = splitNumber(right);
  const common = commonDivisor(above.number, below.number);
  const numerator = withNumber(above.number / common, above.rest);
  const denominator = withNumber(below.number / common, below.rest);
  return isNumber(denominator, 1) ? numerator : binary('/', numerator, denominator);
}

export function power(base: Term, exponent: Term): Term {
  if (isNumber(exponent, 0)) return unity;
  return isNumber(exponent, 1) ? base : binary('^', base, exponent);
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
        ? multiplyAll(factorsOf(term).map(simplify))
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

function factorsOf(term: Term): readonly Term[] {
  const factors: Term[] = [];
  const collect = (part: Term): void => {
    if (part.kind === 'binary' && part.operator === '*') {
      collect(part.left);
      collect(part.right);
    } else factors.push(part);
  };
  collect(term);
  return factors;
}

/** Numbers first, then symbols and their powers, then the rest; each group in the order it came in. */
function product(factors: readonly Term[]): Term {
  let whole = 1;
  const groups: [Term[], Term[], Term[]] = [[], [], []];
  for (const factor of factors) {
    if (factor.kind === 'number' && isExactProduct(whole, factor.value)) whole *= factor.value;
    else groups[rankOf(factor)].push(factor);
  }
  const sorted = whole === 1 ? groups.flat() : [num(whole), ...groups.flat()];
  return sorted.length === 0 ? unity : sorted.reduce((left, right) => binary('*', left, right));
}

function rankOf(term: Term): 0 | 1 | 2 {
  if (term.kind === 'number') return 0;
  const inner = term.kind === 'binary' && term.operator === '^' ? term.left : term;
  return inner.kind === 'symbol' || inner.kind === 'constant' ? 1 : 2;
}

function isExactProduct(a: number, b: number): boolean {
  return Number.isInteger(a) && Number.isInteger(b) && Number.isSafeInteger(a * b);
}

/** The number that leads a product, and what it is a multiple of. */
function splitNumber(term: Term): { readonly number: number; readonly rest: readonly Term[] } {
  const [first, ...rest] = factorsOf(term) as [Term, ...Term[]];
  return first.kind === 'number' ? { number: first.value, rest } : { number: 1, rest: [first, ...rest] };
}

function withNumber(number: number, rest: readonly Term[]): Term {
  return product([num(number), ...rest]);
}

function commonDivisor(a: number, b: number): number {
  if (!Number.isSafeInteger(a) || !Number.isSafeInteger(b)) return 1;
  return b === 0 ? a : commonDivisor(b, a % b);
}
