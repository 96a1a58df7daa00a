import type { Term } from '../term.js';
import {
  addRational,
  invertRational,
  multiplyRational,
  negateRational,
  type Rational,
  rationalOf,
} from './rational.js';

/** The exact value of an exponent that is written with numbers alone, such as 2, 0.5, -1 or 3/2. */
export function exactExponent(term: Term): Rational | undefined {
  if (term.kind === 'number') return rationalOf(term.value);
  if (term.kind === 'negative') {
    const of = exactExponent(term.of);
    return of && negateRational(of);
  }
  if (term.kind !== 'binary') return undefined;
  const left = exactExponent(term.left);
  const right = exactExponent(term.right);
  if (!left || !right) return undefined;
  switch (term.operator) {
    case '+':
      return addRational(left, right);
    case '-':
      return addRational(left, negateRational(right));
    case '*':
      return multiplyRational(left, right);
    case '/': {
      const inverse = invertRational(right);
      return inverse && multiplyRational(left, inverse);
    }
    case '^':
      return undefined;
  }
}
