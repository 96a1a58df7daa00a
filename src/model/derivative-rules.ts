import { add, call, divide, isSign, multiply, negate, num, power, subtract, unity, zero } from './arithmetic.js';
import type { FunctionName } from './closed-list.js';
import type { CallTerm, Term } from './term.js';

/** The derivative of a term, given how to differentiate its parts. */
type Rule = (parts: readonly Term[], derive: (part: Term) => Term, term: CallTerm) => Term;

const two = num(2);

/**
 * Rules of our own, for functions whose rule in mathjs is missing (log2, log1p, expm1, square, atan2, hypot, min,
 * max), leaves the closed list (tan, tanh), leaves the real numbers (cbrt of a negative number), or loses digits
 * near the end of the domain (asin, acos, acosh, atanh). All others are differentiated by mathjs.
 */
const functionRules: Partial<Record<FunctionName, Rule>> = {
  abs: ([u], derive) => multiply(signOf(u as Term), derive(u as Term)),
  acos: ([u], derive) => negate(divide(derive(u as Term), rootOfProduct(oneMinus(u as Term), onePlus(u as Term)))),
  acosh: ([u], derive) => divide(derive(u as Term), rootOfProduct(subtract(u as Term, unity), add(u as Term, unity))),
  asin: ([u], derive) => divide(derive(u as Term), rootOfProduct(oneMinus(u as Term), onePlus(u as Term))),
  atan2: ([y, x], derive) =>
    divide(
      subtract(multiply(x as Term, derive(y as Term)), multiply(y as Term, derive(x as Term))),
      add(power(x as Term, two), power(y as Term, two)),
    ),
  atanh: ([u], derive) => divide(derive(u as Term), multiply(oneMinus(u as Term), onePlus(u as Term))),
  cbrt: ([u], derive, term) => divide(derive(u as Term), multiply(num(3), power(term, two))),
  expm1: ([u], derive) => multiply(derive(u as Term), call('exp', u as Term)),
  hypot: (parts, derive, term) =>
    divide(
      parts.reduce((sum, part) => add(sum, multiply(part, derive(part))), zero),
      term,
    ),
  log1p: ([u], derive) => divide(derive(u as Term), onePlus(u as Term)),
  log2: ([u], derive) => divide(derive(u as Term), multiply(u as Term, call('log', two))),
  max: (parts, derive) => chosen('max', parts, derive),
  min: (parts, derive) => chosen('min', parts, derive),
  pow: ([base, exponent], derive) => derive(power(base as Term, exponent as Term)),
  square: ([u], derive) => multiply(multiply(two, u as Term), derive(u as Term)),
  tan: ([u], derive) => divide(derive(u as Term), power(call('cos', u as Term), two)),
  // The square of 1 / cosh fades to 0 where cosh squared would overflow.
  tanh: ([u], derive) => multiply(derive(u as Term), power(divide(unity, call('cosh', u as Term)), two)),
};

/** The rule of our own for a term; undefined where mathjs knows a good one. */
export function ownRule(term: Term): ((derive: (part: Term) => Term) => Term) | undefined {
  // A sign is constant wherever it has a value.
  if (isSign(term)) return () => zero;
  if (term.kind === 'binary' && term.operator === '^' && term.left.kind === 'number') {
    // mathjs takes a base within 1e-12 of 1 for 1.
    return (derive) => multiply(multiply(term, call('log', term.left)), derive(term.right));
  }
  if (term.kind !== 'call') return undefined;
  const rule = functionRules[term.name];
  return rule && ((derive) => rule(term.parts, derive, term));
}

/** |u| / u: exactly 1 or −1, and without value at 0, where |u| has no derivative. */
function signOf(u: Term): Term {
  return u.kind === 'negative' ? negate(signOf(u.of)) : divide(call('abs', u), u);
}

/**
 * Derivative of the larger or the smaller of some terms: that of the one that is chosen.
 * Its weight (1 ± sign) / 2 is exactly 1 or 0, and has no value where two are equal.
 */
function chosen(name: 'max' | 'min', parts: readonly Term[], derive: (part: Term) => Term): Term {
  const [first, ...others] = parts as [Term, ...Term[]];
  let best = first;
  let derivative = derive(first);
  for (const other of others) {
    const sign = signOf(subtract(best, other));
    const towards = name === 'max' ? sign : negate(sign);
    derivative = add(
      multiply(divide(add(unity, towards), two), derivative),
      multiply(divide(subtract(unity, towards), two), derive(other)),
    );
    best = call(name, best, other);
  }
  return derivative;
}

function oneMinus(u: Term): Term {
  return subtract(unity, u);
}

function onePlus(u: Term): Term {
  return add(unity, u);
}

function rootOfProduct(a: Term, b: Term): Term {
  return call('sqrt', multiply(a, b));
}
