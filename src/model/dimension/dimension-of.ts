import { describe, type Fault } from '../../checks/index.js';
import { printTerm } from '../print-term.js';
import type { Term } from '../term.js';
import { combineDimensions, type Dimension, isPlain, plain, raiseDimension, sameDimension } from './dimension.js';
import { exactExponent } from './exact-exponent.js';
import { nameDimension } from './name-dimension.js';
import type { Rational } from './rational.js';
import { printFactors } from './unit-factors.js';

/** The literal 0 has every dimension; what a fault was found in has none that is known. */
type Found = Dimension | 'every' | 'unknown';

/**
 * The dimension of a term from those of its symbols, by exact exponents.
 *
 * @param faults Receives every part that does not fit, named
 * @returns The dimension; undefined where a fault was found
 */
export function dimensionOf(
  term: Term,
  symbols: ReadonlyMap<string, Dimension>,
  faults: Fault[],
): Dimension | undefined {
  const found = find(term, symbols, faults);
  if (found === 'unknown') return undefined;
  return found === 'every' ? plain : found;
}

function find(term: Term, symbols: ReadonlyMap<string, Dimension>, faults: Fault[]): Found {
  const of = (part: Term) => find(part, symbols, faults);
  switch (term.kind) {
    case 'number':
      return term.value === 0 ? 'every' : plain;
    case 'constant':
      return plain;
    case 'symbol':
      return symbols.get(term.name) ?? 'unknown';
    case 'negative':
      return of(term.of);
    case 'binary':
      if (term.operator === '+' || term.operator === '-') return common(term, [term.left, term.right], of, faults);
      if (term.operator === '^') return raised(term, term.left, term.right, of, faults);
      return combined(of(term.left), of(term.right), term.operator === '*' ? 1 : -1);
    case 'call':
      return ofCall(term, of, faults);
  }
}

const half: Rational = { numerator: 1, denominator: 2 };
const third: Rational = { numerator: 1, denominator: 3 };
const two: Rational = { numerator: 2, denominator: 1 };

function ofCall(term: Term & { kind: 'call' }, of: (part: Term) => Found, faults: Fault[]): Found {
  const [first, second] = term.parts as [Term, Term];
  switch (term.name) {
    case 'abs':
      return of(first);
    case 'sqrt':
      return power(of(first), half);
    case 'cbrt':
      return power(of(first), third);
    case 'square':
      return power(of(first), two);
    case 'pow':
      return raised(term, first, second, of, faults);
    case 'hypot':
    case 'max':
    case 'min':
      return common(term, term.parts, of, faults);
    case 'atan2':
      return common(term, term.parts, of, faults) === 'unknown' ? 'unknown' : plain;
    default:
      return needPlain(term, first, of, faults) ? plain : 'unknown';
  }
}

/** The one dimension that terms share, or a fault that names each of them. */
function common(term: Term, parts: readonly Term[], of: (part: Term) => Found, faults: Fault[]): Found {
  const found = parts.map(of);
  const known = found.filter((dimension) => dimension !== 'every' && dimension !== 'unknown');
  const [first] = known;
  if (first && known.some((dimension) => !sameDimension(dimension, first))) {
    const each = parts.map((part, i) => `${shorten(part)} is in ${unitOf(found[i] as Found)}`);
    faults.push(fault('dimensions-differ', term, `must have terms of one dimension, but ${each.join(', ')}`));
    return 'unknown';
  }
  if (found.includes('unknown')) return 'unknown';
  return first ?? 'every';
}

function raised(term: Term, base: Term, exponent: Term, of: (part: Term) => Found, faults: Fault[]): Found {
  const dimension = of(base);
  if (!needPlain(term, exponent, of, faults)) return 'unknown';
  if (dimension === 'unknown' || dimension === 'every' || isPlain(dimension)) return dimension;
  const exact = exactExponent(exponent);
  const result = exact && raiseDimension(dimension, exact);
  if (result) return result;
  const requirement = `must have a plain number of few digits as exponent, since ${shorten(base)} is in ${unitOf(dimension)}`;
  faults.push(fault('exponent-not-plain', term, requirement));
  return 'unknown';
}

/** Whether a part has no dimension, or is not known to have one; a fault otherwise. */
function needPlain(term: Term, part: Term, of: (part: Term) => Found, faults: Fault[]): boolean {
  const found = of(part);
  if (found === 'unknown') return false;
  if (found === 'every' || isPlain(found)) return true;
  const requirement = `must have a plain number where ${shorten(part)} stands, which is in ${unitOf(found)}`;
  faults.push(fault('dimension-not-plain', term, requirement));
  return false;
}

function combined(left: Found, right: Found, sign: 1 | -1): Found {
  if (left === 'unknown' || right === 'unknown') return 'unknown';
  return combineDimensions(left === 'every' ? plain : left, right === 'every' ? plain : right, sign) ?? 'unknown';
}

function power(found: Found, exponent: Rational): Found {
  if (found === 'every' || found === 'unknown') return found;
  return raiseDimension(found, exponent) ?? 'unknown';
}

function fault(code: Fault['code'], term: Term, requirement: string): Fault {
  return { code, path: 'expression', received: describe(printTerm(term)), requirement };
}

function shorten(term: Term): string {
  const text = printTerm(term);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}

function unitOf(found: Found): string {
  if (typeof found === 'string') return found === 'every' ? 'any unit' : 'no known unit';
  return printFactors(nameDimension(found));
}
