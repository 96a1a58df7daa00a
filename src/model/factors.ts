import { sameTerm, type Term } from './term.js';

/** A factor of a product: a term to a whole power of 1 or more. */
interface Factor {
  readonly base: Term;
  readonly exponent: number;
}

/** A product, sorted: one exact whole number, then everything else with equal bases joined. */
export interface Product {
  readonly whole: number;
  readonly factors: readonly Factor[];
}

/** Joins factors into one product. A number joins the whole one as long as no digit is lost. */
export function productOf(terms: readonly Term[]): Product {
  let whole = 1;
  const factors: Factor[] = [];
  const join = (term: Term, exponent: number): void => {
    if (term.kind === 'number' && isExact(whole, term.value ** exponent)) {
      whole *= term.value ** exponent;
    } else if (term.kind === 'binary' && term.operator === '*') {
      join(term.left, exponent);
      join(term.right, exponent);
    } else if (term.kind === 'binary' && isWholePower(term)) {
      join(term.left, exponent * (term.right as Term & { kind: 'number' }).value);
    } else {
      const same = factors.findIndex(({ base }) => base.kind !== 'number' && sameTerm(base, term));
      if (same < 0) factors.push({ base: term, exponent });
      else factors[same] = { base: term, exponent: exponent + (factors[same] as Factor).exponent };
    }
  };
  for (const term of terms) join(term, 1);
  return { whole, factors };
}

/**
 * Cancels what two products share, as far as the denominator keeps each of its bases:
 * x / x² becomes 1 / x, but x / x stays, so that the quotient has no value at 0 as before.
 */
export function cancel(above: Product, below: Product): { readonly above: Product; readonly below: Product } {
  const divisor = commonDivisor(above.whole, below.whole);
  const numerator = [...above.factors];
  const denominator = below.factors.map((factor) => {
    const i = numerator.findIndex(({ base }) => base.kind !== 'number' && sameTerm(base, factor.base));
    if (i < 0) return factor;
    const { base, exponent } = numerator[i] as Factor;
    const shared = Math.min(exponent, factor.exponent - 1);
    numerator[i] = { base, exponent: exponent - shared };
    return { base, exponent: factor.exponent - shared };
  });
  return {
    above: { whole: above.whole / divisor, factors: numerator.filter(({ exponent }) => exponent > 0) },
    below: { whole: below.whole / divisor, factors: denominator },
  };
}

/** A product as a term: numbers first, then symbols, then the rest; each group in the order it came in. */
export function productTerm({ whole, factors }: Product): Term {
  const groups: [Term[], Term[], Term[]] = [[], [], []];
  for (const { base, exponent } of factors) {
    const rank = base.kind === 'number' ? 0 : base.kind === 'symbol' || base.kind === 'constant' ? 1 : 2;
    groups[rank].push(exponent === 1 ? base : binary('^', base, { kind: 'number', value: exponent }));
  }
  const sorted = groups.flat();
  if (whole !== 1 || sorted.length === 0) sorted.unshift({ kind: 'number', value: whole });
  return sorted.reduce((left, right) => binary('*', left, right));
}

/** Whether a term is raised to a whole number of 2 or more. */
export function isWholePower(term: Term): boolean {
  if (term.kind !== 'binary' || term.operator !== '^' || term.right.kind !== 'number') return false;
  return Number.isInteger(term.right.value) && term.right.value >= 2;
}

function binary(operator: '*' | '^', left: Term, right: Term): Term {
  return { kind: 'binary', operator, left, right };
}

function isExact(a: number, b: number): boolean {
  return Number.isSafeInteger(a) && Number.isSafeInteger(b) && Number.isSafeInteger(a * b);
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? Math.max(a, 1) : commonDivisor(b, a % b);
}
