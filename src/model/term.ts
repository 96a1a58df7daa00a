import type { ConstantName, FunctionName } from './closed-list.js';

/** An operator between two terms. */
export type BinaryOperator = '+' | '-' | '*' | '/' | '^';

/**
 * An expression as a tree of the few things that it may hold. Whatever else a parser knows has no place here,
 * so nothing else can be evaluated, differentiated or printed.
 */
export type Term =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'constant'; readonly name: ConstantName }
  | { readonly kind: 'symbol'; readonly name: string }
  | { readonly kind: 'negative'; readonly of: Term }
  | BinaryTerm
  | CallTerm;

/** Two terms with an operator between them. */
export interface BinaryTerm {
  readonly kind: 'binary';
  readonly operator: BinaryOperator;
  readonly left: Term;
  readonly right: Term;
}

/** A call of a function of the closed list. */
export interface CallTerm {
  readonly kind: 'call';
  readonly name: FunctionName;
  readonly parts: readonly Term[];
}

/** The terms that a term is made of, from left to right. */
export function partsOf(term: Term): readonly Term[] {
  switch (term.kind) {
    case 'negative':
      return [term.of];
    case 'binary':
      return [term.left, term.right];
    case 'call':
      return term.parts;
    default:
      return [];
  }
}

/** The same term with other parts. */
export function withParts(term: Term, parts: readonly Term[]): Term {
  switch (term.kind) {
    case 'negative':
      return { ...term, of: parts[0] as Term };
    case 'binary':
      return { ...term, left: parts[0] as Term, right: parts[1] as Term };
    case 'call':
      return { ...term, parts };
    default:
      return term;
  }
}

/** Number of numbers, symbols, operators and functions in a term. */
export function countParts(term: Term): number {
  return partsOf(term).reduce((sum, part) => sum + countParts(part), 1);
}

/** Symbols of a term, sorted by their characters, each once. */
export function symbolsOf(term: Term): string[] {
  const found = new Set<string>();
  collectSymbols(term, found);
  return [...found].sort();
}

function collectSymbols(term: Term, found: Set<string>): void {
  if (term.kind === 'symbol') found.add(term.name);
  for (const part of partsOf(term)) collectSymbols(part, found);
}

/** Whether a symbol stands anywhere in a term. */
export function dependsOn(term: Term, symbol: string): boolean {
  return term.kind === 'symbol' ? term.name === symbol : partsOf(term).some((part) => dependsOn(part, symbol));
}

/** Whether two terms are written the same way. */
export function sameTerm(a: Term, b: Term): boolean {
  if (a === b) return true;
  if (a.kind !== b.kind) return false;
  if (a.kind === 'number') return a.value === (b as typeof a).value;
  if (a.kind === 'binary' && a.operator !== (b as typeof a).operator) return false;
  if (a.kind !== 'negative' && a.kind !== 'binary' && a.name !== (b as typeof a).name) return false;
  const others = partsOf(b);
  const parts = partsOf(a);
  return parts.length === others.length && parts.every((part, i) => sameTerm(part, others[i] as Term));
}
